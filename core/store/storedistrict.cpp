// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/store/parts.h"

namespace cradlepost {

namespace {
constexpr std::chrono::minutes ahead{5}; // a clock time is typed in whole minutes, and clocks differ a little
}

Result<void> Store::setDistances(const std::vector<Distance>& distances, const std::string& actor)
{
    return m_parts->inTransaction([&] {
        for (const Distance& distance : distances) {
            need(checkDistance(distance));
            m_parts->knownUnit(distance.from);
            m_parts->knownUnit(distance.to);
            m_parts->append(recordkind::distance, distance.from, toBody(distance), actor);
        }
    });
}

Result<DistanceTable> Store::distances() const
{
    return attempt([&] {
        DistanceTable table;
        for (const Unit& unit : need(units())) {
            const auto read = [&](const Json& body) { return distanceFromBody(unit.id, body); };
            for (const auto& fact : m_parts->supplies.facts<Distance>(unit.id, recordkind::distance, read))
                table.set(fact.what);
        }
        return table;
    });
}

Result<RecordId> Store::noteVisit(const std::string& unit, const VisitResult& visit, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkVisit(visit));
        if (visit.at > m_parts->clock.now() + ahead)
            refuse(refused(refusal::aheadOfNow, {}, "visit: its day lies ahead of now",
                "Check the day that was given and the clock of this computer."));
        return m_parts->append(recordkind::visit, unit, toBody(visit), actor);
    });
}

Result<std::vector<VisitResult>> Store::visits(const std::string& unit, Instant since) const
{
    return attempt([&] {
        std::vector<VisitResult> visits;
        for (auto& fact : m_parts->supplies.facts<VisitResult>(
                 unit, recordkind::visit, visitResultFromBody, SupplyFactTable::visited, since))
            visits.push_back(std::move(fact.what));
        return visits;
    });
}

}
