// SPDX-License-Identifier: MIT
#include "core/supply/stockdays.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace std::chrono;

namespace {

constexpr Date first = 2026y / 11 / 1;

Recorded<StockMovement> moved(int seq, MovementKind kind, int day, std::int64_t pieces)
{
    return {.id = {.station = "s", .seq = seq},
        .what
        = {.item = "towels", .kind = kind, .at = sys_days(first) + days(day) + hours(9), .quantity = pieces}};
}

}

TEST_CASE("days that end empty say nothing of the need, and days before the first movement are not there")
{
    const std::vector<Recorded<StockMovement>> movements{moved(1, MovementKind::Receipt, 2, 10),
        moved(2, MovementKind::Issue, 2, 4), moved(3, MovementKind::Issue, 4, 6),
        moved(4, MovementKind::Receipt, 6, 9), moved(5, MovementKind::Issue, 9, 1)};
    const ItemDays item = daysOfItem(movements, TimeZone::utc(), first, addDays(first, 7));
    REQUIRE(item.days.size() == 6); // the third to the eighth
    CHECK(item.days[0] == DayUse{.day = addDays(first, 2), .used = 4, .out = false});
    CHECK(item.days[2] == DayUse{.day = addDays(first, 4), .used = 6, .out = true});
    CHECK(item.days[3].out);
    CHECK_FALSE(item.days[4].out);
    CHECK(useWhileInStock(item.days) == std::vector<std::int64_t>{4, 0, 0, 0});
    CHECK(item.book.pieces() == 8); // the book goes on to the last movement
}

TEST_CASE("an item without movements has no days")
{
    CHECK(daysOfItem({}, TimeZone::utc(), first, addDays(first, 7)).days.empty());
}
