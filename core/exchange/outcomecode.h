// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/reason.h"

namespace cradlepost {

/** An outcome's letter as the word that files for other programs use. */
constexpr const char* outcomeCode(char letter)
{
    switch (static_cast<Outcome>(letter)) {
    case Outcome::Met:
        return "met";
    case Outcome::Gap:
        return "gap";
    case Outcome::DoesNotApply:
        return "does-not-apply";
    case Outcome::NotChecked:
        break;
    }
    return "not-checked";
}

}
