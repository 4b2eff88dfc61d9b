// SPDX-License-Identifier: MIT
// The limits themselves are held against published figures in tests/core/stats/test_funnel.cpp
// (Spiegelhalter's interpolation) and test_overdispersion.cpp (DerSimonian and Laird's meta-analysis); here
// is what a review makes of them.
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

TEST_CASE("units that chance alone may part are not told apart, and stand by name")
{
    const auto history
        = test::handMadeDistrict({{"Alder", 70, 90}, {"Beck", 74, 90}, {"Cairn", 66, 90}, {"Dale", 72, 90}});
    const UnitFunnel funnel = unitFunnel(history, {});
    CHECK(funnel.whole.tally == stats::Tally{.x = 282, .n = 360});
    // z are -0.128, 0.897, -1.153, 0.384: chi-square 2.3 with 3 degrees of freedom is no over-dispersion.
    CHECK(funnel.dispersion.model == stats::DispersionModel::None);
    CHECK(funnel.dispersion.p == Approx(0.512).epsilon(0.01));
    REQUIRE(funnel.units.size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(funnel.units[i].band == UnitBand::NotToldApart);
        CHECK(funnel.units[i].unit == i);
        CHECK_FALSE(funnel.units[i].few);
    }
    CHECK(funnel.units[0].z == Approx(-0.128).epsilon(0.01));
}

TEST_CASE("a unit far below the others is clearly lower and comes before the others")
{
    const auto history = test::handMadeDistrict({{"Alder", 80, 90}, {"Beck", 78, 90}, {"Cairn", 79, 90},
        {"Dale", 30, 90}, {"Elm", 81, 90}, {"Fell", 80, 90}, {"Garth", 77, 90}, {"Holm", 79, 90}});
    const UnitFunnel funnel = unitFunnel(history, {});
    CHECK(funnel.dispersion.model != stats::DispersionModel::None);
    CHECK(funnel.units.front().unit == 3);
    CHECK(funnel.units.front().band == UnitBand::Lower);
    CHECK(funnel.units.front().pAdjusted >= funnel.units.front().p);
    for (std::size_t i = 1; i < funnel.units.size(); ++i)
        CHECK(funnel.units[i].band == UnitBand::NotToldApart);
}

TEST_CASE("a small unit with nothing amiss is told apart neither way, and said to be small")
{
    const auto history = test::handMadeDistrict({{"Alder", 70, 90}, {"Beck", 72, 90}, {"Tiny", 5, 5}});
    const UnitFunnel funnel = unitFunnel(history, {});
    const UnitStanding& tiny = funnel.units.back();
    REQUIRE(tiny.unit == 2);
    CHECK(tiny.band == UnitBand::NotToldApart);
    CHECK(tiny.few);
    // P(5 of 5) at 147/185 is 0.317; both tails 0.633.
    CHECK(tiny.p == Approx(0.633).epsilon(0.01));
}

TEST_CASE("a funnel without width or without rounds says why")
{
    CHECK(
        unitFunnel(test::handMadeDistrict({{"Alder", 9, 9}, {"Beck", 8, 8}}), {}).why == CannotSay::NoSpread);
    const UnitFunnel empty = unitFunnel(test::handMadeDistrict({{"Alder", 0, 0}}), {});
    CHECK(empty.why == CannotSay::NoData);
    CHECK(empty.units.empty());
    CHECK(unitFunnel(test::handMadeDistrict({}), {}).why == CannotSay::NoData);
}

TEST_CASE("the curve of the limits goes through the limits of a unit of that size")
{
    const auto history = test::handMadeDistrict({{"Alder", 60, 80}, {"Beck", 62, 80}});
    const UnitFunnel funnel = unitFunnel(history, {});
    for (const FunnelCurvePoint& at : funnel.curve) {
        CHECK(at.outer.low <= at.inner.low);
        CHECK(at.inner.high <= at.outer.high);
        if (at.n == 80) {
            CHECK(at.inner.low == Approx(funnel.units[0].inner.low));
            CHECK(at.outer.high == Approx(funnel.units[0].outer.high));
        }
    }
    CHECK(funnel.curve.back().n >= 80);
}
