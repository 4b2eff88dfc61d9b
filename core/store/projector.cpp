// SPDX-License-Identifier: MIT
#include "core/store/projector.h"

#include "core/checklist/reader.h"
#include "core/ledger/canonical.h"
#include "core/store/bodies.h"
#include "core/store/failure.h"
#include "core/store/recordkind.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Whether the record is at fault, not the database: apply() would have refused it too. */
bool isOfTheBody(const Error& error)
{
    return error.code == ErrorCode::BadDocument || error.code == ErrorCode::InvalidArgument
        || error.code == ErrorCode::AlreadyExists || error.code == ErrorCode::NewerSchema;
}

/** A record that is at fault itself projects nothing. */
template <class F> void leaveUnreadable(F&& apply)
{
    try {
        apply();
    } catch (const Failure& failure) {
        if (!isOfTheBody(failure.error))
            throw;
    }
}

std::vector<ReadingFact> measuredIn(const RoundRecord& round)
{
    std::vector<ReadingFact> readings;
    for (std::size_t i = 0; i < round.answers.size(); ++i) {
        const auto* measured = std::get_if<Measured>(&round.answers[i]);
        if (measured != nullptr && round.outcomes[i] != 'u')
            readings.push_back({.position = i, .value = measured->value});
    }
    return readings;
}

}

const std::vector<ProjectionTable>& projectionTables()
{
    static const std::vector<ProjectionTable> tables{{"clock_back", 2}, {"unit", 1}, {"shift_pattern", 2},
        {"people", 1}, {"checklist", 2}, {"adoption", 3}, {"round", 4}, {"round_month", 2}, {"amendment", 5}, {"gap", 4},
        {"gap_action", 4}, {"gap_progress", 1}, {"change_idea", 2}, {"supply_fact", 6},
        {"stock_movement", 5}};
    return tables;
}

Projector::Projector(Database& ledger, Database& target)
    : m_target(target)
    , m_ledger(ledger)
    , m_units(target)
    , m_checklists(ledger, target)
    , m_rounds(target)
    , m_months(target)
    , m_amendments(ledger, target)
    , m_ideas(target)
    , m_supplies(target)
    , m_movements(target)
    , m_gaps(ledger, target, m_checklists)
{
}

void Projector::apply(const Record& record, const Json& body) { applyBody(record, body, originOf(record)); }

void Projector::beginReplay()
{
    for (const ProjectionTable& table : projectionTables())
        m_target.run(std::string("DELETE FROM ") + table.name);
    m_checklists.forget();
    m_gaps.postpone();
    m_months.gather();
    m_replaying = true;
}

void Projector::replay(const Record& record, const Json& body)
{
    const Origin origin = originOf(record);
    leaveUnreadable([&] { applyBody(record, body, origin); });
}

void Projector::replay(const Record& record, const RoundRecord& round)
{
    const Origin origin = originOf(record);
    leaveUnreadable([&] { applyRound(record, round, origin); });
}

void Projector::endReplay()
{
    for (const RecordId& round : m_amendments.rounds())
        recount(round, std::nullopt);
    m_gaps.carryPostponed();
    m_months.write();
    m_replaying = false;
    m_before.reset();
}

void Projector::replayAll()
{
    beginReplay();
    m_ledger.forEach([this](const Record& record) {
        const auto body = parseJson(record.body);
        replay(record, body ? *body : Json());
    });
    endReplay();
}

Origin Projector::originOf(const Record& record)
{
    const RecordId id{.station = record.station, .seq = record.seq};
    const RecordId before{.station = record.station, .seq = record.seq - 1};
    Instant latest = record.madeAt;
    if (m_before && m_before->id == before) {
        latest = m_before->latest;
    } else if (before.seq > 0) {
        Statement row = m_target.prepare("SELECT latest FROM clock_back WHERE station = ? AND seq = ?");
        row.bind(before.station).bind(before.seq);
        latest = row.next() ? row.time(0) : m_ledger.madeAt(before);
    }
    const Instant at = std::max(latest, record.madeAt);
    if (at > record.madeAt)
        m_target.prepare("INSERT INTO clock_back (station, seq, latest) VALUES (?, ?, ?)")
            .bind(record.station)
            .bind(record.seq)
            .bind(at)
            .run();
    if (m_replaying || m_gathering)
        m_before.emplace(ChainEnd{.id = id, .latest = at});
    return {.at = at, .id = id};
}

void Projector::applyBody(const Record& record, const Json& body, const Origin& origin)
{
    if (record.kind == recordkind::unit)
        m_units.put(need(unitFromBody(record.unit, body)), origin);
    else if (record.kind == recordkind::shiftPattern)
        m_units.put(record.unit, need(patternFromBody(body)), origin);
    else if (record.kind == recordkind::people)
        m_units.put(record.unit, need(peopleFromBody(body)), origin);
    else if (record.kind == recordkind::checklistAdopted)
        applyAdoption(record, body, origin);
    else if (record.kind == recordkind::round || record.kind == recordkind::observation)
        applyRound(record, need(roundFromBody(body)), origin);
    else if (record.kind == recordkind::roundAmended)
        applyAmendment(need(amendmentFromBody(body)), origin);
    else if (record.kind == recordkind::gapAction)
        m_gaps.take(record.unit, {.origin = origin, .what = need(gapActionFromBody(body))});
    else if (record.kind == recordkind::noteOfChange)
        m_ideas.put(record.unit, need(changeIdeaFromBody(body)), origin);
    else if (record.kind == recordkind::stock && !isItemBody(body))
        m_movements.put(record.unit, need(stockMovementFromBody(body)), origin.id);
    else if (const auto place = supplyPlaceOf(record.kind, body))
        m_supplies.put(record.unit, *place, origin.id, canonicalText(body));
}

void Projector::applyAdoption(const Record& record, const Json& body, const Origin& origin)
{
    const Adoption adoption = need(adoptionFromBody(body));
    const Checklist checklist = need(readChecklist(adoption.document));
    const bool isNew = m_checklists.put(checklist, adoption.document, origin);
    m_checklists.put(record.unit, checklist, adoption, origin);
    if (!isNew)
        return;
    // Rounds of another station may have come before the document they were walked with.
    for (const std::string& unit : m_rounds.unitsUsing(checklist.id, checklist.version))
        m_gaps.carryAnew(unit);
}

void Projector::apply(const Record& record, const RoundRecord& round)
{
    applyRound(record, round, originOf(record));
}

void Projector::gatherLate()
{
    m_gaps.gatherLate();
    m_months.gather();
    m_before.reset();
    m_gathering = true;
}

void Projector::carryLate()
{
    m_gaps.carryLate();
    m_months.write();
    m_before.reset();
    m_gathering = false;
}

void Projector::forget()
{
    m_checklists.forget();
    m_gaps.forgetLate();
    m_months.forget();
    m_before.reset();
    m_gathering = false;
}

void Projector::applyRound(const Record& record, const RoundRecord& round, const Origin& origin)
{
    const bool spotCheck = round.kind == RoundKind::SpotCheck;
    if (spotCheck != (record.kind == recordkind::observation))
        refuse(ErrorCode::BadDocument,
            "record of kind '" + record.kind + "': it holds a '" + codeName(round.kind) + '\'');
    const auto setBack = origin.at - record.madeAt;
    const RoundRow row{.slot = round.shift.slot(),
        .id = origin.id,
        .kind = round.kind,
        .checklist = round.checklist,
        .version = round.version,
        .outcomes = round.outcomes,
        .state = round.state,
        .met = round.met,
        .applicable = round.applicable,
        .index = round.index,
        .started = round.started,
        .finished = round.finished,
        .actor = record.actor,
        .recorded = origin.at,
        .fromPaper = round.fromPaper};
    const auto readings = measuredIn(round);
    m_rounds.put(record.unit, row, readings, setBack);
    if (round.kind == RoundKind::Shift)
        m_months.put(record.unit, row, readings);
    // Whoever looks behind a round changes nothing of it, nor of what is being mended.
    if (!spotCheck)
        m_gaps.take(record.unit,
            {.origin = {.at = round.finished + setBack, .id = origin.id}, .what = findingsOf(round, origin.id)});
    if (!m_replaying && m_amendments.knows(origin.id))
        recount(origin.id, std::nullopt);
}

void Projector::applyAmendment(const RoundAmendment& amendment, const Origin& origin)
{
    m_amendments.put(amendment.amends, origin);
    // It may have come before its round, which then finds it; a replay looks at all of them at its end.
    if (!m_replaying)
        recount(amendment.amends, origin.id);
}

void Projector::recount(const RecordId& id, const std::optional<RecordId>& newest)
{
    const auto counted = attempt([&] { return m_amendments.read(id); });
    if (!counted && (counted.error().code == ErrorCode::NotFound || isOfTheBody(counted.error())))
        return; // it names no round, or one that has not come yet or cannot be read
    if (need(counted).amendments.empty())
        return;
    const auto readings = measuredIn(counted->round);
    const RoundTable::Amended amended{
        .times = static_cast<int>(counted->amendments.size()), .last = counted->amendments.back().at};
    const auto setBack = m_rounds.amend(counted->unit, id, counted->round, readings, amended);
    if (!setBack)
        return;
    if (counted->round.kind == RoundKind::Shift)
        m_months.amend(counted->unit, id, counted->round, readings, amended);
    RoundFindings findings = findingsOf(counted->round, id);
    const RoundRecord before = (newest ? m_amendments.read(id, newest) : m_amendments.readFirst(id)).round;
    if (m_replaying || findingsOf(before, id) != findings)
        m_gaps.amend(counted->unit,
            {.origin = {.at = counted->round.finished + *setBack, .id = id}, .what = std::move(findings)});
}

}
