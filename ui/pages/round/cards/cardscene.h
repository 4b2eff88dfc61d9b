// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/judge.h"
#include "ui/text/timetext.h"

#include <functional>

namespace cradlepost {

/** What the cards of one walk share. Outlives them. */
struct CardScene
{
    const Language& language;
    TimeText times;
    std::function<Instant()> now;
    ChosenLimits limits;
    Date lastDay; ///< stock must be usable on it
};

}
