// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/store/parts.h"

namespace cradlepost {

namespace {

/** No other record can make the same: a station's id and the seq of its next record. */
std::string newIdeaId(const StationKey& station, const ChainTip& tip)
{
    return station.id().substr(0, 16) + '-' + std::to_string(tip.seq + 1);
}

}

Result<RecordId> Store::amendRound(
    const RecordId& id, const RoundRecord& corrected, const std::string& reason, const std::string& actor)
{
    return m_parts->inTransaction([&] {
        const CountedRound counted = m_parts->amendments.read(id);
        need(checkAmendment(m_parts->amendments.readFirst(id).round, corrected));
        need(checkAmendmentReason(reason));
        if (corrected == counted.round)
            refuse(refused(
                refusal::nothingChanged, {}, "amendment: nothing is different", "Change an answer first."));
        m_parts->mayStandFor(corrected);
        return m_parts->append(recordkind::roundAmended, counted.unit,
            toBody(RoundAmendment{.amends = id, .reason = reason, .round = corrected}), actor);
    });
}

Result<SavedRound> Store::firstRecorded(const RecordId& id) const
{
    return attempt([&] {
        CountedRound first = m_parts->amendments.readFirst(id);
        return SavedRound{.id = id, .actor = std::move(first.actor), .round = std::move(first.round)};
    });
}

Result<std::vector<SavedRound>> Store::spotChecks(const std::string& unit, Slot from, Slot to) const
{
    return attempt([&] {
        std::vector<SavedRound> checks;
        for (const RecordId& id : m_parts->rounds.spotChecks(unit, from, to))
            checks.push_back(m_parts->savedRound(id));
        return checks;
    });
}

Result<std::string> Store::noteChange(
    const std::string& unit, const ChangeIdea& idea, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        ChangeIdea noted = idea;
        if (noted.id.empty()) {
            const StationKey& station = m_parts->signingKey();
            noted.id = newIdeaId(station, m_parts->ledger.tip(station.id()));
        }
        need(checkChangeIdea(noted));
        m_parts->append(recordkind::noteOfChange, unit, toBody(noted), actor);
        return noted.id;
    });
}

Result<std::vector<ChangeIdea>> Store::changeIdeas(const std::string& unit) const
{
    return attempt([&] { return m_parts->ideas.of(unit); });
}

}
