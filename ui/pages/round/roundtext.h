// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/verdictbanner.h"

#include <QCoreApplication>

namespace cradlepost {

/** What the page of the round says about walks as a whole. */
class RoundText
{
    Q_DECLARE_TR_FUNCTIONS(RoundText)
public:
    /** "Round of the night shift", "Check before a birth" */
    [[nodiscard]] static QString title(RoundKind kind, const Shift& shift);
    [[nodiscard]] static VerdictState state(Readiness readiness);
    /** "Begin the round", "Take up the round · 31 of 60 answered" */
    [[nodiscard]] static QString begin(RoundKind kind, const Draft* draft);
    /** How many of the asked items have an answer. */
    [[nodiscard]] static int answered(const Draft& draft);
    /** "M. R., begun 19:12" */
    [[nodiscard]] static QString walker(const Draft& draft, const TimeText& times, Instant now);
    /** Empty for a walk of the present shift; else to which shift it counts. */
    [[nodiscard]] static QString late(const Draft& draft, const Shift& present, const TimeText& times);
};

}
