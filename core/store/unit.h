// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/base/shiftcalendar.h"
#include "core/checklist/checklist.h"
#include "core/round/judge.h"

namespace cradlepost {

/** A labour ward. */
struct Unit
{
    std::string id; ///< [a-z0-9-]{1,24}
    std::string name; ///< as shown: "Sorrel Hill"
    std::string zone; ///< IANA name
    std::string level; ///< free: "primary", "district hospital"; may be empty
    bool operator==(const Unit&) const = default;
};

/** A unit's shift pattern from a day on. */
struct PatternFrom
{
    Date from;
    ShiftPattern pattern;
    bool operator==(const PatternFrom&) const = default;
};

/** Someone who may walk a round: initials and what they are. No full names needed. */
struct Person
{
    std::string initials; ///< 1 to 12 characters, the actor of records
    std::string role; ///< "in charge", "midwife"; may be empty
    bool operator==(const Person&) const = default;
};

/** A unit takes up a checklist version from a day on, with the limit sets that it has picked. */
struct Adoption
{
    Date from;
    Json document; ///< the whole checklist document
    ChosenLimits limits; ///< only where another set than the first is picked
};

struct AdoptedChecklist
{
    Checklist checklist;
    ChosenLimits limits;
};

}
