// SPDX-License-Identifier: MIT
#include "larkmere.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <numeric>

using namespace cradlepost;

Larkmere::Larkmere()
    : m_clock(writtenAt)
    , m_stories(demo::storiesUpTo(std::chrono::year(2026) / 11 / 24, 18))
{
    const std::string file = m_folder.file("whole.sqlite");
    const auto written = writeDemo(file, writtenAt);
    REQUIRE_MESSAGE(written, (written ? "" : written.error().message));
    m_written = *written;
    auto store = Store::open(file, m_clock, OpenMode::ReadOnly);
    REQUIRE(store);
    m_store = std::move(*store);
}

const Larkmere& Larkmere::whole()
{
    static const Larkmere larkmere;
    return larkmere;
}

Span Larkmere::always() const { return {.from = m_stories.first, .to = addDays(m_stories.today, 1)}; }

std::vector<std::string> Larkmere::units()
{
    return {demo::sorrelHill, demo::tarnFerry, demo::quillmere, demo::ostrey, demo::pennyWeir, demo::ashLock,
        demo::hallowDown, demo::marlGate};
}

std::vector<RoundRow> Larkmere::rounds(const std::string& unit, Span span) const
{
    auto rows = m_store->rounds(unit, slotOf(span.from, 0), slotOf(span.to, 0));
    REQUIRE(rows);
    return *rows;
}

std::vector<RoundRow> Larkmere::shiftRounds(const std::string& unit, Span span) const
{
    auto rows = rounds(unit, span);
    std::erase_if(rows, [](const RoundRow& row) { return row.kind != RoundKind::Shift; });
    return rows;
}

std::vector<Reading> Larkmere::readings(const std::string& unit, const std::string& item, Span span) const
{
    auto readings = m_store->readings(unit, item, slotOf(span.from, 0), slotOf(span.to, 0));
    REQUIRE(readings);
    return *readings;
}

double Larkmere::gapShare(const std::string& unit, const std::string& item) const
{
    const auto tallies = m_store->itemTallies(unit, slotOf(always().from, 0), slotOf(always().to, 0));
    REQUIRE(tallies);
    int gaps = 0;
    int applicable = 0;
    for (const Store::ItemTally& tally : *tallies) {
        if (!item.empty() && tally.item != item)
            continue;
        gaps += tally.gaps;
        applicable += tally.met + tally.gaps + tally.notChecked;
    }
    REQUIRE(applicable > 0);
    return static_cast<double>(gaps) / applicable;
}

double Larkmere::medianDelay(const std::string& unit) const
{
    const auto calendar = m_store->calendar(unit, m_stories.today);
    REQUIRE(calendar);
    std::vector<double> delays;
    for (const RoundRow& row :
        shiftRounds(unit, {.from = addDays(m_stories.today, -60), .to = m_stories.today})) {
        const Shift shift = calendar->shift(dateOfSlot(row.slot), shiftOfSlot(row.slot));
        delays.push_back(std::chrono::duration<double, std::ratio<60>>(row.started - shift.begins).count());
    }
    REQUIRE(!delays.empty());
    std::sort(delays.begin(), delays.end());
    return delays[delays.size() / 2];
}

double meanIndex(const std::vector<RoundRow>& rounds)
{
    REQUIRE(!rounds.empty());
    const auto sum = std::accumulate(rounds.begin(), rounds.end(), 0.0,
        [](double before, const RoundRow& row) { return before + row.index; });
    return sum / 10000.0 / static_cast<double>(rounds.size());
}
