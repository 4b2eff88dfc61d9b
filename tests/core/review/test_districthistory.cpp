// SPDX-License-Identifier: MIT
#include "tests/core/review/handmadedistrict.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using doctest::Approx;

TEST_CASE("rounds that are alike count for fewer: the carry-over by hand")
{
    UnitTallies tallies;
    // C C C C N N N N: p = 1/2; of seven pairs three are both clear, so r = (3/7 - 1/4)/(1/4) = 5/7.
    for (const Readiness state :
        {Readiness::Ready, Readiness::ReadyWithGaps, Readiness::Ready, Readiness::Ready, Readiness::NotReady,
            Readiness::NotReady, Readiness::NotReady, Readiness::NotReady})
        tallies.add(state);
    CHECK(tallies.noCriticalGap() == stats::Tally{.x = 4, .n = 8});
    CHECK(tallies.carryOver() == Approx((1 + 5.0 / 7) / (1 - 5.0 / 7)));
    CHECK(UnitTallies().carryOver() == 1);
}

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

TEST_CASE("the span before a month is the month before, of days as many days")
{
    using namespace std::chrono;
    const ReviewSpan march = ReviewSpan::ofMonth(year(2026) / 3);
    CHECK(spanBefore(march) == ReviewSpan::ofMonth(year(2026) / 2));
    const ReviewSpan quarter{.from = year(2026) / 1 / 1, .to = year(2026) / 4 / 1};
    CHECK(spanBefore(quarter) == ReviewSpan{.from = year(2025) / 10 / 1, .to = year(2026) / 1 / 1});
    const ReviewSpan days{.from = year(2026) / 3 / 5, .to = year(2026) / 3 / 12};
    CHECK(spanBefore(days) == ReviewSpan{.from = year(2026) / 2 / 26, .to = year(2026) / 3 / 5});
    CHECK(seriesOf(march).front() == year(2025) / 4);
    CHECK(seriesOf(march).back() == year(2026) / 3);
}
