// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/reason.h"

#include <string_view>

namespace cradlepost {

/** How one section stood in one round, worst first. */
enum class SectionState { CriticalGap, Gap, NotChecked, Met, DoesNotApply };

/** One state a section, from a round's letters. `outcomes` must have one letter an item of `checklist`. */
std::vector<SectionState> sectionStates(const Checklist& checklist, std::string_view outcomes);

}
