// SPDX-License-Identifier: MIT
#include "core/supply/stockuse.h"

#include "shelf.h"
#include "tests/core/stats/near.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono_literals;
using Kind = MovementKind;
using stats::isPrinted;
using stats::isRefused;
using stats::isUndefined;
using stats::near;

TEST_CASE("average use counts only the time in which there was stock")
{
    // MDS-3: Managing Access to Medicines and Health Technologies, 2012 (example from memory): 89 000 used in
    // 6 months with 34 days out of stock is 18 218 a month.
    CHECK(isPrinted(averageMonthlyUse(89000, 6, 34).value(), 18218, 0));
    CHECK(averageMonthlyUse(89000, 6, 34).value() == near(89000 / (6 - 34 / 30.5)));
}

TEST_CASE("average use without days out is the plain mean")
{
    // Computed: 120, 150 and 135 in three months. Formula: The Logistics Handbook, 2nd ed. 2011, sec. 3.2.
    const std::vector<MonthUse> months{{.month = 2026y / 1, .used = 120}, {.month = 2026y / 2, .used = 150},
        {.month = 2026y / 3, .used = 135}};
    CHECK(averageMonthlyUse(months).value() == near(135));
    CHECK(averageMonthlyUse(0, 3, 0).value() == 0);
}

TEST_CASE("average use has no value when there never was stock, and refuses nonsense")
{
    CHECK(isUndefined(averageMonthlyUse(0, 2, 61)));
    CHECK(averageMonthlyUse(0, 2, 60).has_value());
    CHECK(isRefused(averageMonthlyUse(-1, 2, 0)));
    CHECK(isRefused(averageMonthlyUse(1, 0, 0)));
    CHECK(isRefused(averageMonthlyUse(1, 2, -1)));
    CHECK(isRefused(averageMonthlyUse(std::span<const MonthUse>())));
}

TEST_CASE("use a birth is what was used over the births")
{
    CHECK(usePerBirth(132, 110).value() == near(1.2));
    CHECK(usePerBirth(0, 110).value() == 0);
    CHECK(isUndefined(usePerBirth(5, 0)));
    CHECK(isRefused(usePerBirth(-5, 1)));
    CHECK(isRefused(usePerBirth(5, -1)));
}

TEST_CASE("the wastage factor of a rate agrees with the published ones")
{
    // OpenLearn / Ethiopia Ministry of Health, vaccine wastage: 30 % is 1.43; the others computed by its
    // formula.
    CHECK(isPrinted(wastageFactor(0.30).value(), 1.43, 2));
    CHECK(isPrinted(wastageFactor(0.05).value(), 1.05, 2));
    CHECK(isPrinted(wastageFactor(0.10).value(), 1.11, 2));
    CHECK(isPrinted(wastageFactor(0.15).value(), 1.18, 2));
    CHECK(isPrinted(wastageFactor(0.25).value(), 1.33, 2));
    CHECK(isPrinted(wastageFactor(0.50).value(), 2.00, 2));
    CHECK(wastageFactor(0).value() == 1);
    CHECK(isRefused(wastageFactor(1)));
    CHECK(isRefused(wastageFactor(-0.1)));
    CHECK(isRefused(wastageFactor(stats::none)));
}

TEST_CASE("the wastage rate is the share that reached nobody")
{
    // Computed: 70 given and 30 lost of 100 used.
    CHECK(wastage(70, 30).value().rate == near(0.3));
    CHECK(isPrinted(wastage(70, 30).value().factor, 1.43, 2));
    CHECK(wastage(70, 0).value().rate == 0);
    CHECK(isUndefined(wastage(0, 30)));
    CHECK(isRefused(wastage(-1, 30)));
    CHECK(isRefused(wastage(1, -30)));
}

TEST_CASE("use by month adds what was issued and counts the days that ended without stock")
{
    const auto facts = recordedAll<StockMovement>({moved(Kind::Receipt, 10, "2026-09-05 08:00", "2027-03-31"),
        moved(Kind::Issue, 4, "2026-09-06 08:00"), moved(Kind::Issue, 6, "2026-09-28 08:00"),
        moved(Kind::Receipt, 5, "2026-10-04 08:00", "2027-03-31"),
        moved(Kind::Wastage, 2, "2026-10-10 08:00"), moved(Kind::Issue, 3, "2026-11-10 08:00")});
    const auto months = useByMonth(facts, "oxytocin", TimeZone::utc(), 2026y / 9, 3);
    REQUIRE(months.size() == 3);
    // Out on the evenings of 28, 29 and 30 September; the days before the first receipt are not counted.
    CHECK(months[0] == MonthUse{.month = 2026y / 9, .used = 10, .wasted = 0, .daysOut = 3});
    CHECK(months[1] == MonthUse{.month = 2026y / 10, .used = 0, .wasted = 2, .daysOut = 3});
    CHECK(months[2] == MonthUse{.month = 2026y / 11, .used = 3, .wasted = 0, .daysOut = 21});
}

TEST_CASE("a day on which all that is left has expired is a day out")
{
    const auto facts = recordedAll<StockMovement>({moved(Kind::Receipt, 10, "2026-09-01 08:00", "2026-09-20"),
        moved(Kind::ExpiredRemoved, 10, "2026-09-25 08:00")});
    const auto months = useByMonth(facts, "oxytocin", TimeZone::utc(), 2026y / 9, 1);
    CHECK(months.at(0) == MonthUse{.month = 2026y / 9, .used = 0, .wasted = 10, .daysOut = 10});
}

TEST_CASE("use by month does not mix items, and starts with the book of the month before")
{
    auto other = moved(Kind::Issue, 9, "2026-09-06 08:00");
    other.item = "gauze";
    const auto facts = recordedAll<StockMovement>({moved(Kind::Receipt, 10, "2026-08-05 08:00", "2027-03-31"),
        moved(Kind::Issue, 1, "2026-08-06 08:00"), other});
    const auto months = useByMonth(facts, "oxytocin", TimeZone::utc(), 2026y / 9, 1);
    CHECK(months.at(0) == MonthUse{.month = 2026y / 9, .used = 0, .wasted = 0, .daysOut = 0});
    CHECK(useByMonth({}, "oxytocin", TimeZone::utc(), 2026y / 9, 2).at(1).daysOut == 0);
}
