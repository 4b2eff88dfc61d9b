// SPDX-License-Identifier: MIT
#include "core/round/strip.h"

#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {
using States = std::vector<SectionState>;
constexpr auto Critical = SectionState::CriticalGap;
constexpr auto Gap = SectionState::Gap;
constexpr auto Open = SectionState::NotChecked;
constexpr auto Met = SectionState::Met;
constexpr auto None = SectionState::DoesNotApply;
}

TEST_CASE("a section shows the worst of its items")
{
    const Checklist checklist
        = plainChecklist({{Severity::Critical, Severity::Minor}, {Severity::Major, Severity::Minor}, {}});
    CHECK(sectionStates(checklist, "mmmm") == States{Met, Met, None});
    CHECK(sectionStates(checklist, "gugu") == States{Critical, Gap, None});
    CHECK(sectionStates(checklist, "mgum") == States{Gap, Open, None});
    CHECK(sectionStates(checklist, "nmnn") == States{Met, None, None});
    CHECK(sectionStates(checklist, "unnu") == States{Open, Open, None});
}

TEST_CASE("a strip names the section with a gap in most rounds, the first of equals")
{
    const StripFinding finding
        = findingOf({{Met, Gap, Critical}, {}, {Gap, Critical, Met}, {Open, Met, Gap}, {}});
    CHECK(finding.rounds == 3);
    CHECK(finding.missing == 2);
    CHECK(finding.section == 1U);
    CHECK(finding.gaps == 2);
}

TEST_CASE("a strip without rounds or without gaps names no section")
{
    const StripFinding empty = findingOf({});
    CHECK(empty.rounds == 0);
    CHECK(empty.missing == 0);
    CHECK_FALSE(empty.section.has_value());
    const StripFinding clean = findingOf({{Met, Open, None}, {}});
    CHECK(clean.rounds == 1);
    CHECK(clean.missing == 1);
    CHECK_FALSE(clean.section.has_value());
    CHECK(clean.gaps == 0);
}
