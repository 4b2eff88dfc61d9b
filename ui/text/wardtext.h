// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/verdict.h"

#include <QCoreApplication>

namespace cradlepost {

/** The fixed words of the trade, one each. */
class WardText
{
    Q_DECLARE_TR_FUNCTIONS(WardText)
public:
    [[nodiscard]] static QString readiness(Readiness state);
    [[nodiscard]] static QString severity(Severity severity);
    [[nodiscard]] static QString outcome(Outcome outcome);
    [[nodiscard]] static QString gapReason(GapReason reason);
    [[nodiscard]] static QString roundKind(RoundKind kind);
    /** A cell of the strip in words. */
    [[nodiscard]] static QString sectionState(bool hasRound, Outcome worst, bool critical);
    /** The caution that stands on every round. */
    [[nodiscard]] static QString neverDelayCare();
    /** What the program is and is not; shown in Set-up and in reports. */
    [[nodiscard]] static QString cautions();
};

}
