// SPDX-License-Identifier: MIT
#include "handmade.h"
#include "stableunit.h"

#include "tests/support/builders.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Whether a review says that something changed or differs, or asks about the entries. */
bool tellsStory(const MonthReview& review)
{
    return std::any_of(review.findings.begin(), review.findings.end(),
        [](const MonthFinding& finding) { return finding.claimsChange || finding.isQuestion; });
}

}

// Stated rate: at most one month in twenty. 4000 other months of the same ward (seeds from 20000 on) told a
// story in 85, that is 2.1 % (1.7 to 2.6): a fall in 81 of the sentences, a rise in 19, haste in 2. A change
// idea, which only somebody who notes one brings in, adds its own interval of 95 %.
TEST_CASE("a ward in which nothing changes is told a story of in at most one month in twenty")
{
    int told = 0;
    constexpr int months = 200;
    for (unsigned seed = 1; seed <= months; ++seed) {
        const StableUnit unit = stableUnit(seed);
        told += tellsStory(must(reviewMonth(unit.history, unit.span))) ? 1 : 0;
    }
    MESSAGE(told << " of " << months << " months told a story");
    CHECK(told <= months / 20);
}

TEST_CASE("nights that get much worse are found most of the time, and on nights")
{
    int found = 0;
    constexpr int months = 20;
    for (unsigned seed = 1; seed <= months; ++seed) {
        const StableUnit unit = worsened(seed, {.daysBeforeEnd = 31, .nightsOnly = true, .addedShare = 0.12});
        const MonthReview review = must(reviewMonth(unit.history, unit.span));
        found += std::any_of(review.findings.begin(), review.findings.end(),
                     [](const MonthFinding& finding) {
                         return finding.code == MonthFindingCode::Fell && finding.group == "night";
                     })
            ? 1
            : 0;
    }
    CHECK(found >= 16);
}
