// SPDX-License-Identifier: MIT
#include "core/store/projector.h"

#include "core/checklist/reader.h"
#include "core/store/bodies.h"
#include "core/store/failure.h"
#include "core/store/gapfold.h"
#include "core/store/recordkind.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Whether the record is at fault, not the database: apply() would have refused it too. */
bool isOfTheBody(const Error& error)
{
    return error.code == ErrorCode::BadDocument || error.code == ErrorCode::InvalidArgument
        || error.code == ErrorCode::AlreadyExists;
}

}

Projector::Projector(Database& ledger, Database& target)
    : m_target(target)
    , m_ledger(ledger)
    , m_units(target)
    , m_checklists(ledger, target)
    , m_rounds(target)
    , m_gaps(target)
{
}

const std::vector<ProjectionTable>& projectionTables()
{
    static const std::vector<ProjectionTable> tables{{"clock_back", 2}, {"unit", 1}, {"shift_pattern", 2},
        {"people", 1}, {"checklist", 2}, {"adoption", 3}, {"round", 4}, {"reading", 5}, {"gap", 3},
        {"gap_action", 4}, {"gap_progress", 1}};
    return tables;
}

void Projector::apply(const Record& record)
{
    const Origin origin = originOf(record);
    applyBody(record, need(parseJson(record.body)), origin);
}

void Projector::replay()
{
    for (const ProjectionTable& table : projectionTables())
        m_target.run(std::string("DELETE FROM ") + table.name);
    m_checklists.forget();
    m_later.emplace();
    m_ledger.forEach([this](const Record& record) {
        const Origin origin = originOf(record);
        const auto body = parseJson(record.body);
        const auto applied = attempt([&] { applyBody(record, need(body), origin); });
        if (!applied && !isOfTheBody(applied.error()))
            throw Failure{applied.error()};
    });
    const auto units = *std::exchange(m_later, std::nullopt);
    m_latest.reset();
    for (const std::string& unit : units)
        carryAnew(unit);
}

Origin Projector::originOf(const Record& record)
{
    const RecordId id{.station = record.station, .seq = record.seq};
    std::optional<Instant> latest;
    if (m_latest && m_latest->first == RecordId{.station = record.station, .seq = record.seq - 1}) {
        latest = m_latest->second;
    } else if (record.seq > 1) {
        Statement row = m_target.prepare("SELECT latest FROM clock_back WHERE station = ? AND seq = ?");
        row.bind(record.station).bind(record.seq - 1);
        latest
            = row.next() ? row.time(0) : m_ledger.madeAt({.station = record.station, .seq = record.seq - 1});
    }
    const Instant at = latest ? std::max(*latest, record.madeAt) : record.madeAt;
    if (at > record.madeAt)
        m_target.prepare("INSERT INTO clock_back (station, seq, latest) VALUES (?, ?, ?)")
            .bind(record.station)
            .bind(record.seq)
            .bind(at)
            .run();
    if (m_later)
        m_latest.emplace(id, at);
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
    else if (record.kind == recordkind::round)
        applyRound(record, body, origin);
    else if (record.kind == recordkind::gapAction)
        applyAction(record, body, origin);
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
    for (const std::string& unit : m_rounds.unitsUsing(checklist.id, checklist.version)) {
        if (m_later)
            m_later->insert(unit);
        else
            carryAnew(unit);
    }
}

void Projector::applyRound(const Record& record, const Json& body, const Origin& origin)
{
    const RoundRecord round = need(roundFromBody(body));
    const auto setBack = origin.at - record.madeAt;
    m_rounds.put(record.unit,
        {.slot = round.shift.slot(),
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
            .actor = record.actor},
        setBack);
    if (m_later) {
        m_later->insert(record.unit);
        return;
    }
    const Origin place{.at = round.finished + setBack, .id = origin.id};
    if (comesLate(record.unit, place)) {
        carryAnew(record.unit);
        return;
    }
    if (const auto checklist = checklistOf(round)) {
        putReadings(record.unit, *checklist, round, origin.id);
        carryGaps(record.unit, *checklist, round, origin.id);
    }
    m_gaps.setProgress(record.unit, {.last = place, .held = 0});
}

void Projector::applyAction(const Record& record, const Json& body, const Origin& origin)
{
    const GapAction action = need(gapActionFromBody(body));
    m_gaps.putAction(record.unit, origin);
    if (m_later) {
        m_later->insert(record.unit);
        return;
    }
    if (comesLate(record.unit, origin)) {
        carryAnew(record.unit);
        return;
    }
    const auto gap = m_gaps.find(record.unit, action.item, action.nth);
    if (gap)
        m_gaps.put(withAction(*gap, action));
    m_gaps.setProgress(record.unit, {.last = origin, .held = gap ? 0 : 1});
}

std::shared_ptr<const Checklist> Projector::checklistOf(const RoundRecord& round)
{
    auto checklist = m_checklists.find(round.checklist, round.version);
    return checklist && checklist->itemCount() == round.outcomes.size() ? checklist : nullptr;
}

void Projector::putReadings(
    const std::string& unit, const Checklist& checklist, const RoundRecord& round, const RecordId& id)
{
    std::size_t position = 0;
    for (const Section& section : checklist.sections) {
        for (const Item& item : section.items) {
            const auto* measured = std::get_if<Measured>(&round.answers[position]);
            if (measured != nullptr && round.outcomes[position] != 'u')
                m_rounds.put(unit,
                    Reading{.slot = round.shift.slot(),
                        .id = id,
                        .item = item.id,
                        .thousandths = measured->value.thousandths});
            ++position;
        }
    }
}

void Projector::carryGaps(
    const std::string& unit, const Checklist& checklist, const RoundRecord& round, const RecordId& id)
{
    std::map<std::string, Gap> open;
    for (Gap& gap : m_gaps.open(unit))
        open.emplace(gap.item, std::move(gap));
    for (const Finding& finding : findingsOf(unit, checklist, round, id)) {
        const auto at = open.find(finding.item);
        if (at == open.end() && finding.outcome != Outcome::Gap)
            continue;
        const auto carried = at != open.end()
            ? carry(at->second, at->second.nth, finding)
            : carry(std::nullopt, m_gaps.count(unit, finding.item), finding);
        if (carried)
            m_gaps.put(*carried);
    }
}

bool Projector::comesLate(const std::string& unit, const Origin& origin) const
{
    const auto progress = m_gaps.progress(unit);
    return progress && (progress->held > 0 || origin < progress->last);
}

void Projector::carryAnew(const std::string& unit)
{
    m_rounds.dropReadings(unit);
    m_gaps.drop(unit);
    struct Entry
    {
        Origin origin;
        bool isRound;
    };
    std::vector<Entry> entries;
    for (const RoundTable::Place& place : m_rounds.places(unit))
        entries.push_back({.origin = {.at = place.at, .id = place.id}, .isRound = true});
    for (const Origin& action : m_gaps.actions(unit))
        entries.push_back({.origin = action, .isRound = false});
    if (entries.empty())
        return;
    std::sort(
        entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.origin < b.origin; });
    GapFold fold;
    for (const Entry& entry : entries) {
        if (entry.isRound)
            takeRound(fold, unit, entry.origin.id);
        else
            fold.take(need(gapActionFromBody(need(parseJson(m_ledger.body(entry.origin.id))))));
    }
    for (const Gap& gap : fold.gaps())
        m_gaps.put(gap);
    m_gaps.setProgress(unit, {.last = entries.back().origin, .held = fold.held()});
}

void Projector::takeRound(GapFold& fold, const std::string& unit, const RecordId& id)
{
    const RoundRecord round = need(roundFromBody(need(parseJson(m_ledger.body(id)))));
    const auto checklist = checklistOf(round);
    if (!checklist)
        return;
    putReadings(unit, *checklist, round, id);
    for (const Finding& finding : findingsOf(unit, *checklist, round, id))
        fold.take(finding);
}

}
