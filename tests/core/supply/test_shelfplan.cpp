// SPDX-License-Identifier: MIT
#include "core/supply/shelfplan.h"

#include "core/checklist/reader.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a stock book begins with what the checklist counts, each count and each part of a kit once")
{
    const auto read = builtInChecklist(RoundKind::Shift);
    REQUIRE(read.has_value());
    const Checklist& list = *read;
    const Instant at = std::chrono::sys_days(std::chrono::year(2026) / 11 / 24);
    const auto shelves = shelvesOf(list, "en", at);
    std::size_t counts = 0;
    for (std::size_t i = 0; i < list.itemCount(); ++i)
        counts += std::holds_alternative<CountRule>(list.item(i).rule) ? 1 : 0;
    CHECK(shelves.size() > counts); // and the parts of kits
    for (const StockItem& item : shelves) {
        CAPTURE(item.id);
        CHECK(checkItem(item).has_value());
        const auto same = [&](const StockItem& other) { return other.id == item.id; };
        CHECK(std::count_if(shelves.begin(), shelves.end(), same) == 1);
    }
    for (const StockItem& item : shelvesOf(list, "hi", at))
        CHECK(checkItem(item).has_value());
}
