// SPDX-License-Identifier: MIT
#include "handmade.h"

#include "core/review/comparison.h"
#include "core/review/monthtables.h"
#include "tests/support/builders.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("two spans of one history, item by item")
{
    HandMade made;
    for (int day = 1; day <= 30; ++day)
        made.round(october(day), 0, day <= 15 ? "mmmg" : "mmmm");
    const ReviewSpan late{.from = october(16), .to = october(31)};
    const auto second = must(select(made.history, late));
    made.history.from = addDays(made.history.from, -14);
    const auto first = must(select(made.history, {.from = october(1), .to = october(16)}));
    const SpanComparison comparison = compareSpans(first, second);
    CHECK(comparison.first.readiness.ready.tally == stats::Tally{.x = 0, .n = 15});
    CHECK(comparison.second.readiness.ready.tally == stats::Tally{.x = 15, .n = 15});
    CHECK(comparison.ready->estimate == doctest::Approx(1));
    CHECK(*comparison.index == doctest::Approx(0.25));
    REQUIRE(comparison.items.size() == 4);
    CHECK(comparison.items[0].item.id == "paper");
    CHECK(comparison.items[0].difference->estimate == doctest::Approx(-1));
    // Fisher: 2 / (30 over 15) = 1.2893e-8; times four items.
    CHECK(*comparison.items[0].adjustedP == doctest::Approx(4 * 2 / 155117520.0));
    CHECK_FALSE(comparison.why);
    const auto tables = comparisonTables(comparison);
    REQUIRE(tables.size() == 2);
    for (const DataTable& table : tables) {
        for (const auto& row : table.rows)
            CHECK(row.size() == table.columns.size());
    }
}
