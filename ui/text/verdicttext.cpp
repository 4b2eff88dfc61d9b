// SPDX-License-Identifier: MIT
#include "ui/text/verdicttext.h"

#include <algorithm>

namespace cradlepost {

namespace {

const Item* itemOf(const Checklist& checklist, const Reason& reason)
{
    const auto at = checklist.position(reason.item);
    return at ? &checklist.item(*at) : nullptr;
}

struct Counts
{
    int criticalGaps = 0;
    int lesserGaps = 0;
    int criticalUnchecked = 0;
    int lesserUnchecked = 0;
};

Counts countsOf(const Verdict& verdict)
{
    Counts counts;
    for (const Reason& reason : verdict.reasons) {
        const bool critical = reason.severity == Severity::Critical;
        const bool unchecked = reason.code == ReasonCode::NotChecked || reason.code == ReasonCode::StepsUnfinished
            || reason.code == ReasonCode::UsedSince;
        ++(unchecked ? (critical ? counts.criticalUnchecked : counts.lesserUnchecked)
                     : (critical ? counts.criticalGaps : counts.lesserGaps));
    }
    return counts;
}

}

QString VerdictText::first(const Checklist& checklist, const Verdict& verdict) const
{
    const Reason& reason = verdict.reasons.front();
    const Item* item = itemOf(checklist, reason);
    const ReasonText reasons(m_language);
    //: %1 an item of the checklist, %2 why it is not met
    return tr("%1: %2").arg(reasons.title(reason, item), reasons.why(reason, item));
}

QString VerdictText::sentence(const Checklist& checklist, const Standing& standing, Instant now) const
{
    const Verdict& verdict = standing.verdict;
    const Counts counts = countsOf(verdict);
    QStringList parts;
    if (counts.criticalGaps > 0)
        parts << tr("%n critical gap(s).", nullptr, counts.criticalGaps);
    if (counts.criticalUnchecked > 0)
        parts << tr("%n critical item(s) not seen.", nullptr, counts.criticalUnchecked);
    if (!verdict.reasons.empty() && verdict.state == Readiness::NotReady)
        //: the worst of what is missing, as a sentence of its own; the stars set it in bold
        parts << tr("**%1**.").arg(first(checklist, verdict));
    if (counts.lesserGaps > 0)
        parts << (verdict.state == Readiness::NotReady ? tr("%n lesser gap(s).", nullptr, counts.lesserGaps)
                                                       : tr("%n gap(s), none critical.", nullptr, counts.lesserGaps));
    if (counts.lesserUnchecked > 0)
        parts << tr("%n lesser item(s) not seen.", nullptr, counts.lesserUnchecked);
    if (!standing.warmByClock.empty())
        parts << tr("What was warming is warm by the clock now.");
    parts << tr("%1 of %n item(s) met, round finished %2.", nullptr, verdict.applicable)
                 .arg(verdict.met)
                 .arg(m_times.moment(standing.round.finished, now));
    return parts.join(QLatin1Char(' '));
}

QString VerdictText::forming(const Checklist& checklist, const Verdict& verdict, std::size_t toGo) const
{
    QStringList parts;
    const auto found = std::find_if(verdict.reasons.begin(), verdict.reasons.end(),
        [](const Reason& r) { return r.code != ReasonCode::NotChecked; });
    if (found != verdict.reasons.end()) {
        const Item* item = itemOf(checklist, *found);
        const ReasonText reasons(m_language);
        parts << tr("%1: %2").arg(reasons.title(*found, item), reasons.why(*found, item));
    }
    if (toGo > 0 || parts.isEmpty())
        parts << tr("%n item(s) to go", nullptr, static_cast<int>(toGo));
    return parts.join(QStringLiteral("; "));
}

QString VerdictText::figures(const Verdict& verdict)
{
    const auto sections = std::count_if(
        verdict.sections.begin(), verdict.sections.end(), [](const SectionTally& t) { return t.applicable() > 0; });
    return tr("%1 of %2 items met · readiness index %3, mean of %n section(s)", nullptr, static_cast<int>(sections))
        .arg(verdict.met)
        .arg(verdict.applicable)
        .arg(QString::number(verdict.index / 10000.0, 'f', 3));
}

}
