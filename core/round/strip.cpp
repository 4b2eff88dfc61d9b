// SPDX-License-Identifier: MIT
#include "core/round/strip.h"

#include <algorithm>

namespace cradlepost {

namespace {
SectionState stateOf(char outcome, Severity severity)
{
    switch (static_cast<Outcome>(outcome)) {
    case Outcome::Met:
        return SectionState::Met;
    case Outcome::Gap:
        return severity == Severity::Critical ? SectionState::CriticalGap : SectionState::Gap;
    case Outcome::DoesNotApply:
        return SectionState::DoesNotApply;
    case Outcome::NotChecked:
        break;
    }
    return SectionState::NotChecked;
}
}

std::vector<SectionState> sectionStates(const Checklist& checklist, std::string_view outcomes)
{
    std::vector<SectionState> states;
    std::size_t at = 0;
    for (const Section& section : checklist.sections) {
        SectionState worst = SectionState::DoesNotApply;
        for (const Item& item : section.items) {
            const char outcome = at < outcomes.size() ? outcomes[at] : static_cast<char>(Outcome::NotChecked);
            worst = std::min(worst, stateOf(outcome, item.severity));
            ++at;
        }
        states.push_back(worst);
    }
    return states;
}

StripFinding findingOf(const std::vector<std::vector<SectionState>>& columns)
{
    StripFinding finding;
    std::vector<int> gaps;
    for (const auto& states : columns) {
        ++(states.empty() ? finding.missing : finding.rounds);
        gaps.resize(std::max(gaps.size(), states.size()), 0);
        for (std::size_t at = 0; at < states.size(); ++at)
            gaps[at] += states[at] == SectionState::CriticalGap || states[at] == SectionState::Gap ? 1 : 0;
    }
    const auto most = std::max_element(gaps.begin(), gaps.end());
    if (most != gaps.end() && *most > 0) {
        finding.section = static_cast<std::size_t>(most - gaps.begin());
        finding.gaps = *most;
    }
    return finding;
}

}
