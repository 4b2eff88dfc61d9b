// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/reason.h"

#include <string_view>

namespace cradlepost {

/** How one section stood in one round, worst first. */
enum class SectionState { CriticalGap, Gap, NotChecked, Met, DoesNotApply };

/** One state a section, from a round's letters. `outcomes` must have one letter an item of `checklist`. */
std::vector<SectionState> sectionStates(const Checklist& checklist, std::string_view outcomes);

/** What a strip of rounds says in one line. */
struct StripFinding
{
    int rounds = 0; ///< shifts with a round
    int missing = 0; ///< shifts without one
    std::optional<std::size_t> section; ///< the one with a gap in most rounds; the first of equals; none without gaps
    int gaps = 0; ///< rounds in which that section had a gap
};

/** `columns`: one entry a shift, states by section, empty where there was no round. */
StripFinding findingOf(const std::vector<std::vector<SectionState>>& columns);

}
