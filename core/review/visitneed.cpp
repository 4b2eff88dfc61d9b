// SPDX-License-Identifier: MIT
#include "core/review/visitneed.h"

#include <algorithm>
#include <map>

namespace cradlepost {

namespace {

constexpr std::size_t mostNamed = 3;
constexpr double hoursAWeek = 7 * 24;

VisitHelp helpFor(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Count:
    case ItemKind::Kit:
    case ItemKind::Cylinder:
        return VisitHelp::Supplies;
    case ItemKind::Steps:
    case ItemKind::Since:
    case ItemKind::Measure:
        return VisitHelp::Engineer;
    case ItemKind::Confirm:
        break;
    }
    return VisitHelp::Supervisor;
}

/** Gathers the reasons of one unit. */
class NeedOf
{
public:
    NeedOf(const DistrictHistory& history, std::size_t unit, const DistrictOptions& options)
        : m_history(history)
        , m_unit(history.units[unit])
        , m_options(options)
        , m_weights(options.weights)
    {
        m_need.unit = unit;
    }

    void addOpen()
    {
        VisitReason reason{.code = VisitReasonCode::CriticalOpen};
        for (const StandingGap& gap : m_unit.open) {
            if (gap.severity != Severity::Critical)
                continue;
            ++reason.count;
            reason.hours = std::max(reason.hours, gap.hours);
            if (reason.items.size() < mostNamed)
                reason.items.push_back(gap.item);
        }
        const auto gaps = std::min<std::int64_t>(reason.count, m_weights.mostCriticalGaps);
        reason.points = m_weights.criticalGap * static_cast<double>(gaps)
            + m_weights.criticalWeek * std::min(reason.hours / hoursAWeek, m_weights.mostWeeks);
        give(std::move(reason));
    }

    void addOften()
    {
        std::vector<VisitReason> often;
        for (std::size_t item = 0; item < m_unit.gaps.size(); ++item) {
            const Share share = shareOf(m_unit.gaps[item]);
            const bool isOften = m_history.items[item].severity == Severity::Critical && share.interval
                && share.tally.n >= m_options.fewestRounds && share.interval->low > m_options.oftenShare;
            if (isOften)
                often.push_back({.code = VisitReasonCode::OftenMissing,
                    .points = m_weights.oftenMissing,
                    .items = {m_history.items[item].id},
                    .share = share});
        }
        std::stable_sort(often.begin(), often.end(),
            [](const VisitReason& a, const VisitReason& b) { return *a.share.value() > *b.share.value(); });
        for (std::size_t i = 0; i < often.size() && i < static_cast<std::size_t>(m_weights.mostOftenMissing);
             ++i)
            give(std::move(often[i]));
    }

    void addBelow(const UnitFunnel& funnel)
    {
        for (const UnitStanding& standing : funnel.units) {
            if (standing.unit == m_need.unit && standing.band == UnitBand::Lower)
                give({.code = VisitReasonCode::Below, .points = m_weights.below, .share = standing.share});
        }
    }

    void addFell(const UnitChange& change)
    {
        if (change.fell)
            give({.code = VisitReasonCode::Fell,
                .points = m_weights.fell,
                .share = change.after,
                .before = change.before});
    }

    void addReporting(const UnitReporting& reporting)
    {
        if (reporting.isSilent) {
            const int days = std::max(reporting.longestSilence, static_cast<int>(reporting.silentDays));
            give({.code = VisitReasonCode::Silent,
                .points = m_weights.silentWeek * std::min(days / 7.0, m_weights.mostSilentWeeks),
                .count = static_cast<std::int64_t>(reporting.silentDays),
                .days = days});
        }
        const auto questions = reporting.questions.value_or(0);
        if (questions > 0)
            give({.code = VisitReasonCode::Questions,
                .points = m_weights.question
                    * static_cast<double>(std::min<std::int64_t>(questions, m_weights.mostQuestions)),
                .count = questions});
    }

    void addStock()
    {
        if (m_need.unit >= m_history.shelves.size())
            return;
        VisitReason reason{.code = VisitReasonCode::RunsOut};
        for (const ShelfStand& shelf : m_history.shelves[m_need.unit].shelves) {
            if (shelf.item.retired || !runsOut(shelf) || shortage(shelf) == 0)
                continue;
            ++reason.count;
            if (reason.names.size() < mostNamed)
                reason.names.push_back(shelf.item.name);
        }
        reason.points = m_weights.runsOut
            * static_cast<double>(std::min<std::int64_t>(reason.count, m_weights.mostRunningOut));
        give(std::move(reason));
    }

    VisitNeed done()
    {
        std::map<VisitHelp, double> help;
        for (const VisitReason& reason : m_need.reasons) {
            m_need.points += reason.points;
            if (reason.code == VisitReasonCode::RunsOut)
                help[VisitHelp::Supplies] += reason.points;
            else if (reason.items.empty())
                help[VisitHelp::Supervisor] += reason.points;
            for (const std::string& item : reason.items)
                help[helpFor(kindOf(item))] += reason.points / static_cast<double>(reason.items.size());
        }
        for (const auto& [one, points] : help) {
            if (points > help[m_need.help])
                m_need.help = one;
        }
        std::stable_sort(m_need.reasons.begin(), m_need.reasons.end(),
            [](const VisitReason& a, const VisitReason& b) { return a.points > b.points; });
        return std::move(m_need);
    }

private:
    void give(VisitReason reason)
    {
        if (reason.points > 0)
            m_need.reasons.push_back(std::move(reason));
    }

    [[nodiscard]] ItemKind kindOf(const std::string& id) const
    {
        const auto at = std::find_if(m_history.items.begin(), m_history.items.end(),
            [&](const ReviewItem& item) { return item.id == id; });
        if (at != m_history.items.end())
            return at->kind;
        for (const auto& list : m_history.others) {
            if (const auto place = list->position(id))
                return list->item(*place).kind();
        }
        return ItemKind::Confirm;
    }

    const DistrictHistory& m_history;
    const DistrictUnit& m_unit;
    const DistrictOptions& m_options;
    const VisitWeights& m_weights;
    VisitNeed m_need;
};

}

const char* codeName(VisitReasonCode code)
{
    switch (code) {
    case VisitReasonCode::CriticalOpen:
        return "critical-open";
    case VisitReasonCode::OftenMissing:
        return "often-missing";
    case VisitReasonCode::Below:
        return "below";
    case VisitReasonCode::Fell:
        return "fell";
    case VisitReasonCode::Silent:
        return "silent";
    case VisitReasonCode::RunsOut:
        return "runs-out";
    case VisitReasonCode::Questions:
        break;
    }
    return "questions";
}

const char* codeName(VisitHelp help)
{
    switch (help) {
    case VisitHelp::Supplies:
        return "supplies";
    case VisitHelp::Engineer:
        return "engineer";
    case VisitHelp::Supervisor:
        break;
    }
    return "supervisor";
}

std::vector<VisitNeed> visitNeeds(
    const DistrictHistory& history, const VisitEvidence& evidence, const DistrictOptions& options)
{
    std::vector<VisitNeed> needs;
    for (std::size_t unit = 0; unit < history.units.size(); ++unit) {
        NeedOf need(history, unit, options);
        need.addOpen();
        need.addOften();
        need.addBelow(evidence.funnel);
        need.addFell(evidence.changes[unit]);
        need.addReporting(evidence.reporting[unit]);
        need.addStock();
        VisitNeed one = need.done();
        if (!one.reasons.empty())
            needs.push_back(std::move(one));
    }
    std::stable_sort(needs.begin(), needs.end(),
        [](const VisitNeed& a, const VisitNeed& b) { return a.points > b.points; });
    return needs;
}

}
