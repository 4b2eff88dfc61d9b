// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/checklist/checklist.h"

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

}
