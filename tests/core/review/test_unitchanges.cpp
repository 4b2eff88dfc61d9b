// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

TEST_CASE("a unit that fell since the span before is told of, one with too few rounds is not")
{
    auto history = test::handMadeDistrict({{"Alder", 40, 90}, {"Beck", 75, 90}, {"Cairn", 2, 8}});
    history.units[0].before = test::handMadeDistrict({{"", 80, 90}}).units[0].span;
    history.units[1].before = test::handMadeDistrict({{"", 76, 90}}).units[0].span;
    history.units[2].before = test::handMadeDistrict({{"", 90, 90}}).units[0].span;
    const auto changes = unitChanges(history, {});
    CHECK(changes[0].fell);
    CHECK(changes[0].difference->estimate == Approx(-40.0 / 90));
    CHECK_FALSE(changes[1].fell);
    CHECK_FALSE(changes[1].rose);
    CHECK(changes[2].why == CannotSay::TooFew);
}
