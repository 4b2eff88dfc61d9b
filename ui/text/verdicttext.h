// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/standing.h"
#include "ui/text/reasontext.h"

namespace cradlepost {

/** The sentence under the verdict. `**` marks what is printed bold. */
class VerdictText
{
    Q_DECLARE_TR_FUNCTIONS(VerdictText)
public:
    VerdictText(const Language& language, const TimeText& times)
        : m_language(language)
        , m_times(times)
    {
    }

    /** "One critical gap: **warmer on for 18 of 30 minutes**. Two lesser gaps. 54 of 57 items met, round finished
        19:40." */
    [[nodiscard]] QString sentence(const Checklist& checklist, const Standing& standing, Instant now) const;
    /** While a round is walked: "warmer on for 18 of 30 minutes; 49 items to go". */
    [[nodiscard]] QString forming(const Checklist& checklist, const Verdict& verdict, std::size_t toGo) const;
    /** "54 of 57 items met · index 0.947 over 8 sections" */
    [[nodiscard]] static QString figures(const Verdict& verdict);

private:
    [[nodiscard]] QString first(const Checklist& checklist, const Verdict& verdict) const;

    const Language& m_language;
    const TimeText& m_times;
};

}
