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

}
