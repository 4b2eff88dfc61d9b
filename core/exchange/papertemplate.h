// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"

namespace cradlepost {

/** A sheet for the rounds of one checklist: the header line "date,shift,finished,initials" and an item a
 * column. */
std::string paperTemplate(const Checklist& checklist);

/** What the columns of that sheet mean: "column,section,wording,kind,cell", an item a line; RFC 4180 too. */
std::string paperGuide(const Checklist& checklist, std::string_view language);

}
