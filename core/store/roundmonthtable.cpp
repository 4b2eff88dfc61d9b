// SPDX-License-Identifier: MIT
#include "core/store/roundmonthtable.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

namespace {

constexpr unsigned monthBits = 7; // of a slot, see slotOf
constexpr std::size_t mostOpen = 100;

Slot monthOf(Slot slot) { return slot >> monthBits; }

auto placeOf(PackedMonth& month, Slot slot)
{
    return std::lower_bound(month.rounds.begin(), month.rounds.end(), slot,
        [](const PackedRound& round, Slot at) { return round.slot < at; });
}

PackedRound packed(PackedMonth& month, const RoundRow& row, const std::vector<ReadingFact>& readings)
{
    return {.slot = row.slot,
        .station = month.nameOf(row.id.station),
        .seq = row.id.seq,
        .checklist = month.nameOf(row.checklist),
        .version = row.version,
        .outcomes = row.outcomes,
        .state = row.state,
        .met = row.met,
        .applicable = row.applicable,
        .index = row.index,
        .started = row.started,
        .finished = row.finished,
        .recorded = row.recorded,
        .fromPaper = row.fromPaper,
        .amended = row.amendments,
        .amendedAt = row.amendedAt,
        .actor = month.nameOf(row.actor),
        .readings = readings};
}

}

void RoundMonthTable::put(
    const std::string& unit, const RoundRow& row, const std::vector<ReadingFact>& readings)
{
    PackedMonth& month = open(unit, row.slot);
    const auto at = placeOf(month, row.slot);
    if (at == month.rounds.end() || at->slot != row.slot)
        month.rounds.insert(at, packed(month, row, readings));
    else if (std::tie(row.recorded, row.id.station, row.id.seq)
        < std::tie(at->recorded, month.names[at->station], at->seq))
        *at = packed(month, row, readings);
    close();
}

void RoundMonthTable::amend(const std::string& unit, const RecordId& id, const RoundRecord& round,
    const std::vector<ReadingFact>& readings, const RoundTable::Amended& amended)
{
    PackedMonth& month = open(unit, round.shift.slot());
    const auto at = placeOf(month, round.shift.slot());
    if (at != month.rounds.end() && at->slot == round.shift.slot() && at->seq == id.seq
        && month.names[at->station] == id.station) {
        at->outcomes = round.outcomes;
        at->state = round.state;
        at->met = round.met;
        at->applicable = round.applicable;
        at->index = round.index;
        at->started = round.started;
        at->finished = round.finished;
        at->readings = readings;
        at->amended = amended.times;
        at->amendedAt = amended.last;
    }
    close();
}

PackedMonth& RoundMonthTable::open(const std::string& unit, Slot slot)
{
    const Key key(unit, monthOf(slot));
    if (const auto known = m_open.find(key); known != m_open.end())
        return known->second;
    PackedMonth& month = m_open[key];
    visit(unit, {.from = slot, .to = slot + 1}, [&](PackedMonth stored) { month = std::move(stored); });
    return month;
}

/** After each change. */
void RoundMonthTable::close()
{
    if (m_gathering && m_open.size() <= mostOpen)
        return;
    for (const auto& [key, month] : m_open)
        write(key, month);
    m_open.clear();
}

void RoundMonthTable::write()
{
    m_gathering = false;
    close();
}

void RoundMonthTable::forget()
{
    m_open.clear();
    m_gathering = false;
}

void RoundMonthTable::write(const Key& key, const PackedMonth& month)
{
    if (month.rounds.empty())
        return;
    const std::vector<unsigned char> rounds = packMonth(month);
    m_database
        .prepare("INSERT INTO round_month (unit, month, rounds) VALUES (?, ?, ?) "
                 "ON CONFLICT (unit, month) DO UPDATE SET rounds = excluded.rounds")
        .bind(key.first)
        .bind(key.second)
        .bind(std::span<const unsigned char>(rounds))
        .run();
}

void RoundMonthTable::visit(
    const std::string& unit, const Wish& wish, const std::function<void(PackedMonth)>& take) const
{
    Statement row = m_database.prepare(
        "SELECT rounds FROM round_month WHERE unit = ? AND month >= ? AND month < ? ORDER BY month");
    row.bind(unit).bind(monthOf(wish.from)).bind(monthOf(wish.to - 1) + 1);
    while (row.next())
        take(unpackMonth(row.blob(0), wish.wholeFrom));
}

}
