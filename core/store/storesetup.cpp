// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/base/refusal.h"
#include "core/checklist/reader.h"
#include "core/store/bodies.h"
#include "core/store/parts.h"

namespace cradlepost {

Result<std::vector<Unit>> Store::units() const
{
    return attempt([&] { return m_parts->units.units(); });
}

Result<void> Store::describeUnit(const Unit& unit, const std::string& actor)
{
    return m_parts->inUnit(unit.id, [&] {
        need(checkUnit(unit));
        m_parts->append(recordkind::unit, unit.id, toBody(unit), actor);
    });
}

Result<void> Store::setPattern(const std::string& unit, const PatternFrom& pattern, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(pattern.pattern.check());
        m_parts->append(recordkind::shiftPattern, unit, toBody(pattern), actor);
    });
}

Result<ShiftCalendar> Store::calendar(const std::string& unit, Date day) const
{
    return attempt([&] {
        const Unit known = m_parts->knownUnit(unit);
        auto pattern = m_parts->units.pattern(unit, day);
        if (!pattern)
            refuse(refused(refusal::shiftsMissing, {}, "unit '" + unit + "' has no shift pattern on " + toIso(day),
                "Set its shifts in the set-up first.", ErrorCode::NotFound));
        return ShiftCalendar(std::move(pattern->pattern), need(TimeZone::named(known.zone)));
    });
}

Result<void> Store::setPeople(
    const std::string& unit, const std::vector<Person>& people, const std::string& actor)
{
    return m_parts->inUnit(unit, [&] {
        m_parts->knownUnit(unit);
        need(checkPeople(people));
        m_parts->append(recordkind::people, unit, toBody(people), actor);
    });
}

Result<std::vector<Person>> Store::people(const std::string& unit) const
{
    return attempt([&] { return m_parts->units.people(unit); });
}

Result<void> Store::adopt(const std::string& unit, const Adoption& adoption, const std::string& actor)
{
    return m_parts->inTransaction([&] {
        m_parts->knownUnit(unit);
        const Checklist checklist = need(readChecklist(adoption.document));
        need(checkLimits(checklist, adoption.limits));
        m_parts->projector.checklists().refuseAnother(checklist, adoption.document);
        m_parts->append(recordkind::checklistAdopted, unit, toBody(adoption), actor);
    });
}

Result<AdoptedChecklist> Store::checklistFor(const std::string& unit, RoundKind use, Date day) const
{
    return attempt([&] {
        const RoundKind kind = checklistUse(use);
        auto adopted = m_parts->projector.checklists().adopted(unit, kind, day);
        if (!adopted)
            refuse(refused(refusal::checklistMissing, {},
                "unit '" + unit + "' has no checklist for '" + codeName(kind) + "' on " + toIso(day),
                "Adopt one in the set-up first.", ErrorCode::NotFound));
        return AdoptedChecklist{.checklist = *m_parts->knownChecklist(adopted->checklist, adopted->version),
            .limits = std::move(adopted->limits)};
    });
}

Result<Checklist> Store::checklist(const std::string& id, int version) const
{
    return attempt([&] { return *m_parts->knownChecklist(id, version); });
}

}
