// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/round/judge.h"

namespace cradlepost::demo {

/** The checklists that all of Larkmere walks with: those that come with the program. */
struct Lists
{
    struct Entry
    {
        Json document;
        Checklist checklist;
    };
    Entry shift;
    Entry preBirth;
    Entry afterUse;

    static Result<Lists> builtIn();
};

/** The chosen limits of the items that a checklist asks. */
ChosenLimits limitsOf(const Checklist& checklist, ChosenLimits chosen);

}
