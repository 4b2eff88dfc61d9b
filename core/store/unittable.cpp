// SPDX-License-Identifier: MIT
#include "core/store/unittable.h"

#include "core/ledger/canonical.h"
#include "core/store/bodies.h"
#include "core/store/failure.h"

namespace cradlepost {

namespace {

Unit unitIn(const Statement& row)
{
    return {.id = row.text(0), .name = row.text(1), .zone = row.text(2), .level = row.text(3)};
}

Json parsed(const std::string& text) { return need(parseJson(text)); }

}

void UnitTable::put(const Unit& unit, const Origin& origin)
{
    m_database
        .prepare("INSERT INTO unit (unit, name, zone, level, at, station, seq) VALUES (?, ?, ?, ?, ?, ?, ?) "
                 "ON CONFLICT (unit) DO UPDATE SET name = excluded.name, zone = excluded.zone, "
                 "level = excluded.level, at = excluded.at, station = excluded.station, seq = excluded.seq "
                 "WHERE (excluded.at, excluded.station, excluded.seq) > (unit.at, unit.station, unit.seq)")
        .bind(unit.id)
        .bind(unit.name)
        .bind(unit.zone)
        .bind(unit.level)
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .run();
}

void UnitTable::put(const std::string& unit, const PatternFrom& pattern, const Origin& origin)
{
    m_database
        .prepare(
            "INSERT INTO shift_pattern (unit, from_day, starts, at, station, seq) VALUES (?, ?, ?, ?, ?, ?) "
            "ON CONFLICT (unit, from_day) DO UPDATE SET starts = excluded.starts, at = excluded.at, "
            "station = excluded.station, seq = excluded.seq WHERE (excluded.at, excluded.station, "
            "excluded.seq) "
            "> (shift_pattern.at, shift_pattern.station, shift_pattern.seq)")
        .bind(unit)
        .bind(toIso(pattern.from))
        .bind(canonicalText(toBody(pattern)))
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .run();
}

void UnitTable::put(const std::string& unit, const std::vector<Person>& people, const Origin& origin)
{
    m_database
        .prepare(
            "INSERT INTO people (unit, list, at, station, seq) VALUES (?, ?, ?, ?, ?) "
            "ON CONFLICT (unit) DO UPDATE SET list = excluded.list, at = excluded.at, "
            "station = excluded.station, seq = excluded.seq "
            "WHERE (excluded.at, excluded.station, excluded.seq) > (people.at, people.station, people.seq)")
        .bind(unit)
        .bind(canonicalText(toBody(people)))
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .run();
}

std::vector<Unit> UnitTable::units() const
{
    std::vector<Unit> units;
    Statement rows = m_database.prepare("SELECT unit, name, zone, level FROM unit ORDER BY name, unit");
    while (rows.next())
        units.push_back(unitIn(rows));
    return units;
}

std::optional<Unit> UnitTable::unit(const std::string& id) const
{
    Statement row = m_database.prepare("SELECT unit, name, zone, level FROM unit WHERE unit = ?");
    row.bind(id);
    if (!row.next())
        return std::nullopt;
    return unitIn(row);
}

std::optional<PatternFrom> UnitTable::pattern(const std::string& unit, Date day) const
{
    Statement row = m_database.prepare("SELECT starts FROM shift_pattern WHERE unit = ? AND from_day <= ? "
                                       "ORDER BY from_day DESC LIMIT 1");
    row.bind(unit).bind(toIso(day));
    if (!row.next())
        return std::nullopt;
    return need(patternFromBody(parsed(row.text(0))));
}

std::vector<Person> UnitTable::people(const std::string& unit) const
{
    Statement row = m_database.prepare("SELECT list FROM people WHERE unit = ?");
    row.bind(unit);
    if (!row.next())
        return {};
    return need(peopleFromBody(parsed(row.text(0))));
}

}
