// SPDX-License-Identifier: MIT
#include "core/store/roundtable.h"

#include "core/store/failure.h"

#include <algorithm>
#include <charconv>

namespace cradlepost {

namespace {

template <class T> T known(std::optional<T> value, const char* column)
{
    if (!value)
        refuse(ErrorCode::Damaged, std::string("a round has an unknown code in column ") + column,
            "Run verify, then rebuild.");
    return *value;
}

[[noreturn]] void refuseReadings(const std::string& text)
{
    refuse(
        ErrorCode::Damaged, "a round has readings that cannot be read: " + text, "Run verify, then rebuild.");
}

const char* sourceName(bool fromPaper) { return fromPaper ? "paper" : "station"; }

RoundRow roundIn(const Statement& row)
{
    return {.slot = row.integer(0),
        .id = {.station = row.text(1), .seq = row.integer(2)},
        .kind = known(roundKindFromCode(row.text(3)), "kind"),
        .checklist = row.text(4),
        .version = row.number(5),
        .outcomes = row.text(6),
        .state = known(readinessFromCode(row.text(7)), "verdict"),
        .met = row.number(8),
        .applicable = row.number(9),
        .index = row.number(10),
        .started = row.time(11),
        .finished = row.time(12),
        .actor = row.text(13),
        .recorded = row.time(14),
        .fromPaper = row.textView(15) == sourceName(true),
        .amendments = row.number(16),
        .amendedAt = row.isNull(17) ? std::nullopt : std::optional(row.time(17))};
}

/** "0=26400 20=80000" */
std::string textOf(const std::vector<ReadingFact>& readings)
{
    std::string text;
    for (const ReadingFact& reading : readings)
        text += (text.empty() ? "" : " ") + std::to_string(reading.position) + '='
            + std::to_string(reading.value.thousandths);
    return text;
}

std::vector<ReadingFact> readingsFrom(const std::string& text)
{
    std::vector<ReadingFact> readings;
    const char* at = text.data();
    const char* const end = at + text.size();
    while (at < end) {
        ReadingFact reading;
        const auto position = std::from_chars(at, end, reading.position);
        if (position.ec != std::errc() || position.ptr == end || *position.ptr != '=')
            refuseReadings(text);
        const auto value = std::from_chars(position.ptr + 1, end, reading.value.thousandths);
        if (value.ec != std::errc() || (value.ptr != end && *value.ptr != ' '))
            refuseReadings(text);
        readings.push_back(reading);
        at = value.ptr + 1;
    }
    return readings;
}

void count(std::vector<std::array<int, 4>>& byPosition, std::string_view outcomes)
{
    if (byPosition.size() < outcomes.size())
        byPosition.resize(outcomes.size());
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        switch (outcomes[i]) {
        case 'm':
            ++byPosition[i][0];
            break;
        case 'g':
            ++byPosition[i][1];
            break;
        case 'n':
            ++byPosition[i][2];
            break;
        default:
            ++byPosition[i][3];
            break;
        }
    }
}

}

void RoundTable::put(const std::string& unit, const RoundRow& row,
    const std::vector<ReadingFact>& readings, std::chrono::milliseconds setBack)
{
    m_database
        .prepare(
            "INSERT INTO round (unit, slot, station, seq, kind, checklist, version, outcomes, verdict, met, "
            "applicable, readiness, started, finished, recorded, set_back, source, amended, actor, readings) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0, ?, ?)")
        .bind(unit)
        .bind(row.slot)
        .bind(row.id.station)
        .bind(row.id.seq)
        .bind(codeName(row.kind))
        .bind(row.checklist)
        .bind(row.version)
        .bind(row.outcomes)
        .bind(codeName(row.state))
        .bind(row.met)
        .bind(row.applicable)
        .bind(row.index)
        .bind(row.started)
        .bind(row.finished)
        .bind(row.recorded)
        .bind(std::int64_t{setBack.count()})
        .bind(sourceName(row.fromPaper))
        .bind(row.actor)
        .bind(textOf(readings))
        .run();
}

std::optional<std::chrono::milliseconds> RoundTable::amend(const std::string& unit, const RecordId& id,
    const RoundRecord& round, const std::vector<ReadingFact>& readings, const Amended& amended)
{
    Statement row = m_database.prepare(
        "UPDATE round SET outcomes = ?, verdict = ?, met = ?, applicable = ?, readiness = ?, started = ?, "
        "finished = ?, readings = ?, amended = ?, amended_at = ? "
        "WHERE unit = ? AND slot = ? AND station = ? AND seq = ? RETURNING set_back");
    row.bind(round.outcomes)
        .bind(codeName(round.state))
        .bind(round.met)
        .bind(round.applicable)
        .bind(round.index)
        .bind(round.started)
        .bind(round.finished)
        .bind(textOf(readings))
        .bind(amended.times)
        .bind(amended.last)
        .bind(unit)
        .bind(round.shift.slot())
        .bind(id.station)
        .bind(id.seq);
    std::optional<std::chrono::milliseconds> setBack;
    while (row.next())
        setBack = std::chrono::milliseconds(row.integer(0));
    return setBack;
}

std::vector<RoundRow> RoundTable::range(const std::string& unit, Slot from, Slot to) const
{
    std::vector<RoundRow> rows;
    Statement row = m_database.prepare("SELECT slot, station, seq, kind, checklist, version, outcomes, "
                                       "verdict, met, applicable, readiness, started, "
                                       "finished, actor, recorded, source, amended, amended_at "
                                       "FROM round WHERE unit = ? AND slot >= ? AND slot < ? "
                                       "ORDER BY slot, finished + set_back, station, seq");
    row.bind(unit).bind(from).bind(to);
    while (row.next())
        rows.push_back(roundIn(row));
    return rows;
}

std::vector<RecordId> RoundTable::ofShift(const std::string& unit, Slot slot) const
{
    std::vector<RecordId> ids;
    Statement row = m_database.prepare("SELECT station, seq FROM round WHERE unit = ? AND slot = ? "
                                       "AND kind <> 'spot-check' "
                                       "ORDER BY finished + set_back, station, seq");
    row.bind(unit).bind(slot);
    while (row.next())
        ids.push_back({.station = row.text(0), .seq = row.integer(1)});
    return ids;
}

bool RoundTable::hasShiftRound(const std::string& unit, Slot slot) const
{
    Statement row
        = m_database.prepare("SELECT 1 FROM round WHERE unit = ? AND slot = ? AND kind = ? LIMIT 1");
    row.bind(unit).bind(slot).bind(codeName(RoundKind::Shift));
    return row.next();
}

bool RoundTable::has(const std::string& unit, Slot slot, const RecordId& id, RoundKind kind) const
{
    Statement row = m_database.prepare(
        "SELECT 1 FROM round WHERE unit = ? AND slot = ? AND station = ? AND seq = ? AND kind = ?");
    row.bind(unit).bind(slot).bind(id.station).bind(id.seq).bind(codeName(kind));
    return row.next();
}

std::vector<RecordId> RoundTable::spotChecks(const std::string& unit, Slot from, Slot to) const
{
    std::vector<RecordId> ids;
    Statement row = m_database.prepare("SELECT station, seq FROM round WHERE unit = ? AND slot >= ? AND slot < ? "
                                       "AND kind = 'spot-check' ORDER BY finished + set_back, station, seq");
    row.bind(unit).bind(from).bind(to);
    while (row.next())
        ids.push_back({.station = row.text(0), .seq = row.integer(1)});
    return ids;
}

std::vector<RoundTable::Measurements> RoundTable::measurements(
    const std::string& unit, Slot from, Slot to) const
{
    std::vector<Measurements> all;
    Statement row = m_database.prepare("SELECT slot, station, seq, checklist, version, readings FROM round "
                                       "WHERE unit = ? AND slot >= ? AND slot < ? AND readings <> '' "
                                       "AND kind <> 'spot-check' "
                                       "ORDER BY slot, finished + set_back, station, seq");
    row.bind(unit).bind(from).bind(to);
    while (row.next())
        all.push_back({.slot = row.integer(0),
            .id = {.station = row.text(1), .seq = row.integer(2)},
            .checklist = row.text(3),
            .version = row.number(4),
            .readings = readingsFrom(row.text(5))});
    return all;
}

std::vector<std::string> RoundTable::unitsUsing(const std::string& checklist, int version) const
{
    std::vector<std::string> units;
    Statement row = m_database.prepare(
        "SELECT DISTINCT unit FROM round WHERE checklist = ? AND version = ? ORDER BY unit");
    row.bind(checklist).bind(version);
    while (row.next())
        units.push_back(row.text(0));
    return units;
}

std::vector<RoundTable::Place> RoundTable::places(const std::string& unit) const
{
    std::vector<Place> places;
    Statement row = m_database.prepare("SELECT finished + set_back, station, seq, amended FROM round "
                                       "WHERE unit = ? AND kind <> 'spot-check'");
    row.bind(unit);
    while (row.next())
        places.push_back({.at = row.time(0),
            .id = {.station = row.text(1), .seq = row.integer(2)},
            .isAmended = row.number(3) > 0});
    return places;
}

std::vector<RoundTable::VersionTally> RoundTable::tallies(const std::string& unit, Slot from, Slot to) const
{
    std::vector<VersionTally> tallies;
    Statement row = m_database.prepare("SELECT slot, checklist, version, outcomes FROM round "
                                       "WHERE unit = ? AND slot >= ? AND slot < ? AND kind = ?");
    row.bind(unit).bind(from).bind(to).bind(codeName(RoundKind::Shift));
    while (row.next()) {
        const std::string_view checklist = row.textView(1);
        const int version = row.number(2);
        auto at = std::find_if(tallies.begin(), tallies.end(),
            [&](const VersionTally& t) { return t.version == version && t.checklist == checklist; });
        if (at == tallies.end())
            at = tallies.insert(tallies.end(),
                {.checklist = std::string(checklist), .version = version, .latest = 0, .byPosition = {}});
        at->latest = std::max<Slot>(at->latest, row.integer(0));
        count(at->byPosition, row.textView(3));
    }
    return tallies;
}

}
