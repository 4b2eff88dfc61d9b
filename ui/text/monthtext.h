// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/month.h"
#include "ui/text/figuretext.h"
#include "ui/text/itemnames.h"
#include "ui/text/timetext.h"

namespace cradlepost {

/** What a review of a month says, in sentences: none stronger than the finding it is made from. */
class MonthText
{
    Q_DECLARE_TR_FUNCTIONS(MonthText)
public:
    /** All must outlive it. */
    MonthText(
        const Language& language, const TimeText& times, const ItemNames& names, const MonthReview& review)
        : m_times(times)
        , m_names(names)
        , m_review(review)
        , m_figures(language)
    {
    }

    /** The largest thing on the page: "71% of shifts ready", "too little to say". */
    [[nodiscard]] QString answer() const;
    /** Its company: "63 of 88 rounds without a critical gap · 61 to 80% · 5 shifts without a round". */
    [[nodiscard]] QString company() const;
    /** One finding as a sentence. */
    [[nodiscard]] QString sentence(const MonthFinding& finding) const;
    /** "Nights", "Days": rounds of one shift; "All shifts" for an empty code. */
    [[nodiscard]] static QString shifts(const std::string& code);
    /** "Mondays": 1 Monday to 7 Sunday. */
    [[nodiscard]] static QString weekdays(int weekday);
    [[nodiscard]] QString items(const std::vector<std::string>& ids) const;

private:
    [[nodiscard]] QString percentOf(stats::Tally tally) const;
    [[nodiscard]] QString howReady(const MonthFinding& finding) const;
    [[nodiscard]] QString change(const MonthFinding& finding) const;
    [[nodiscard]] QString lostMost(const MonthFinding& finding) const;
    [[nodiscard]] QString differs(const MonthFinding& finding) const;
    [[nodiscard]] QString equipment(const MonthFinding& finding) const;
    [[nodiscard]] QString restore(const MonthFinding& finding) const;
    [[nodiscard]] QString idea(const MonthFinding& finding) const;
    [[nodiscard]] QString question(const MonthFinding& finding) const;

    const TimeText& m_times;
    const ItemNames& m_names;
    const MonthReview& m_review;
    FigureText m_figures;
};

}
