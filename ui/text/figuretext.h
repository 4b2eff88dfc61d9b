// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/share.h"
#include "ui/text/language.h"

#include <QCoreApplication>

namespace cradlepost {

/** Figures with their company: never a bare percentage. */
class FigureText
{
    Q_DECLARE_TR_FUNCTIONS(FigureText)
public:
    explicit FigureText(const Language& language)
        : m_language(language)
    {
    }

    [[nodiscard]] QString number(double value, int decimals = 0) const;
    [[nodiscard]] QString count(std::int64_t value) const;
    /** "71%"; `share` is 0 to 1. */
    [[nodiscard]] QString percent(double share, int decimals = 0) const;
    /** "63 of 88" */
    [[nodiscard]] QString of(stats::Tally tally) const;
    /** "71% (63 of 88)"; "none seen" for 0 of 0. */
    [[nodiscard]] QString share(stats::Tally tally) const;
    /** "61 to 80%" */
    [[nodiscard]] QString percents(const stats::Interval& interval) const;
    /** "71% (63 of 88; 61 to 80%)" */
    [[nodiscard]] QString share(const Share& share) const;
    /** "13 h", "40 min", "3.5 days" */
    [[nodiscard]] QString hours(double hours) const;
    /** "a, b and c" */
    [[nodiscard]] QString list(const QStringList& parts) const;
    /** "0.013", "below 0.001" */
    [[nodiscard]] QString chance(double p) const;
    /** Why a figure is missing, as a sentence. */
    [[nodiscard]] static QString cannotSay(CannotSay why);

private:
    const Language& m_language;
};

}
