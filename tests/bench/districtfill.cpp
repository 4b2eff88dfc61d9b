// SPDX-License-Identifier: MIT
#include "tests/bench/districtfill.h"

#include "core/stats/tally.h"
#include "core/store/projector.h"
#include "core/store/recordkind.h"
#include "core/store/transaction.h"
#include "tests/support/builders.h"

#include <random>

namespace cradlepost::bench {

namespace {

using namespace cradlepost::test;
using namespace std::chrono;

constexpr int shelfItems = 6;
const char* const levels[] = {"primary", "community", "district"};
const Date firstDay = addDays(districtLastDay, 1 - districtDays);

std::string unitName(int unit) { return "unit-" + std::to_string(1000 + unit); }
std::string itemName(int item) { return "stock-" + std::to_string(item); }

void add(stats::Tally& sum, const stats::Tally& more)
{
    sum.x += more.x;
    sum.n += more.n;
}

/** A round of one unit after the other: all as in a walked one, then what is a gap, measured or late. */
class RoundMaker
{
public:
    RoundMaker(const Checklist& checklist, int unit)
        : m_checklist(checklist)
        , m_random(static_cast<unsigned>(unit) + 1)
        , m_base(RoundBuilder(checklist).on(firstDay))
        , m_faulty(checklist.itemCount())
        , m_thermometer(*checklist.position("room-temperature"))
        , m_load(0.004 + 0.012 * real())
        , m_done(0.88 + 0.12 * real())
    {
        for (std::size_t i = 0; i < checklist.itemCount(); ++i)
            m_sections.push_back(
                static_cast<std::size_t>(&checklist.sectionOf(i) - checklist.sections.data()));
    }

    /** Nothing when nobody walked one. */
    std::optional<RoundRecord> next(const Shift& shift)
    {
        for (std::size_t i = 0; i < m_faulty.size(); ++i)
            m_faulty[i] = real() < (m_faulty[i] ? 0.8 : m_load);
        if (real() > m_done)
            return std::nullopt;
        RoundRecord round = m_base;
        round.shift = shift;
        round.started = shift.begins + minutes(real() < 0.04 ? 300 : 5 + m_random() % 60);
        round.finished = round.started + seconds(420 + m_random() % 500);
        const auto tenths = static_cast<std::int64_t>(262 + m_random() % 17);
        round.answers[m_thermometer] = Measured{Decimal{100 * tenths}};
        for (std::size_t i = 0; i < m_faulty.size(); ++i)
            if (m_faulty[i])
                setGap(round, i);
        count(round);
        return round;
    }

private:
    double real() { return static_cast<double>(m_random()) / 4294967296.0; }

    void setGap(RoundRecord& round, std::size_t at) const
    {
        const Item& item = m_checklist.item(at);
        round.outcomes[at] = 'g';
        round.answers[at] = GapFound{GapReason::Absent};
        round.gaps.push_back({.code = ReasonCode::Absent, .item = item.id, .severity = item.severity});
    }

    void count(RoundRecord& round) const
    {
        std::vector<stats::Tally> sections(m_checklist.sections.size());
        round.state = Readiness::Ready;
        for (std::size_t i = 0; i < round.outcomes.size(); ++i) {
            if (round.outcomes[i] != 'n')
                add(sections[m_sections[i]], {.x = round.outcomes[i] == 'm' ? 1 : 0, .n = 1});
            if (round.outcomes[i] == 'g' && round.state != Readiness::NotReady)
                round.state = m_checklist.item(i).severity == Severity::Critical ? Readiness::NotReady
                                                                                 : Readiness::ReadyWithGaps;
        }
        stats::Tally all;
        double sum = 0;
        for (const stats::Tally& section : sections) {
            add(all, section);
            sum += section.n > 0 ? static_cast<double>(section.x) / static_cast<double>(section.n) : 1.0;
        }
        round.met = static_cast<int>(all.x);
        round.applicable = static_cast<int>(all.n);
        round.index = static_cast<int>(10'000 * sum / static_cast<double>(sections.size()));
    }

    const Checklist& m_checklist;
    std::mt19937 m_random;
    RoundRecord m_base;
    std::vector<bool> m_faulty;
    std::vector<std::size_t> m_sections; ///< of each item
    std::size_t m_thermometer;
    double m_load;
    double m_done;
};

/** A delivery each month, pieces given out each week as far as there are any. */
std::vector<StockMovement> lifeOf(int unit, int item)
{
    std::mt19937 random(static_cast<unsigned>(unit * shelfItems + item) + 1);
    std::vector<StockMovement> movements;
    std::int64_t pieces = 0;
    for (int day = 0; day < districtDays; ++day) {
        const Instant at = sys_days(addDays(firstDay, day)) + hours(6) + minutes(random() % 120);
        if (day % 30 == item) {
            movements.push_back({.item = itemName(item),
                .at = at,
                .quantity = 10 + 4 * (unit % 4),
                .lot = "L" + std::to_string(day),
                .expiry = addDays(firstDay, day + 400)});
            pieces += movements.back().quantity;
        } else if (day % 7 == item && pieces > 0) {
            movements.push_back({.item = itemName(item),
                .kind = MovementKind::Issue,
                .at = at,
                .quantity = std::min<std::int64_t>(pieces, 1 + static_cast<std::int64_t>(random() % 6))});
            pieces -= movements.back().quantity;
        }
    }
    return movements;
}

/** Where the facts of one unit go, in order of time. */
class Sink
{
public:
    virtual ~Sink() = default;
    virtual void begin(const std::string& unit) = 0;
    virtual void add(const RoundRecord& round) = 0;
    virtual void add(const std::vector<StockMovement>& movements) = 0;
};

class LedgerSink final : public Sink
{
public:
    LedgerSink(Store& store, FixedClock& clock)
        : m_store(store)
        , m_clock(clock)
    {
    }
    void begin(const std::string& unit) override { m_unit = unit; }
    void add(const RoundRecord& round) override
    {
        m_clock.set(round.finished + 2s);
        must(m_store.saveRound(m_unit, round, "AB"));
    }
    void add(const std::vector<StockMovement>& movements) override
    {
        m_clock.set(sys_days(addDays(districtLastDay, 1)));
        must(m_store.moveStock(m_unit, movements, "AB"));
    }

private:
    Store& m_store;
    FixedClock& m_clock;
    std::string m_unit;
};

class ProjectionSink final : public Sink
{
public:
    explicit ProjectionSink(Database& database)
        : m_projector(database, database)
    {
        m_projector.gatherLate();
    }
    void begin(const std::string& unit) override
    {
        m_record = {.station = "station-of-" + unit, .unit = unit, .actor = "AB"};
    }
    void add(const RoundRecord& round) override
    {
        next(recordkind::round, round.finished + 2s);
        m_projector.replay(m_record, round);
    }
    void add(const std::vector<StockMovement>& movements) override
    {
        for (const StockMovement& movement : movements) {
            next(recordkind::stock, sys_days(addDays(districtLastDay, 1)));
            m_projector.replay(m_record, toBody(movement));
        }
    }
    void finish() { m_projector.carryLate(); }

private:
    void next(const char* kind, Instant madeAt)
    {
        ++m_record.seq;
        m_record.kind = kind;
        m_record.madeAt = madeAt;
    }

    Projector m_projector;
    Record m_record;
};

/** One unit's three years, a month at a time. */
class UnitFill
{
public:
    UnitFill(const Checklist& checklist, int unit, bool shelves)
        : m_unit(unit)
        , m_shelves(shelves)
        , m_calendar(ShiftPattern::threeByEight(), aCalendar().zone())
        , m_maker(checklist, unit)
        , m_day(firstDay)
    {
    }

    bool isDone() const { return m_day > districtLastDay; }
    std::int64_t rounds() const { return m_rounds; }

    /** The rounds of the month, after those of the last one the movements of all. */
    void takeMonth(Sink& sink)
    {
        if (m_day == firstDay)
            sink.begin(unitName(m_unit));
        const auto month = m_day.month();
        for (; !isDone() && m_day.month() == month; m_day = addDays(m_day, 1))
            for (int shift = 0; shift < 3; ++shift)
                if (const auto round = m_maker.next(m_calendar.shift(m_day, shift))) {
                    sink.add(*round);
                    ++m_rounds;
                }
        for (int item = 0; isDone() && m_shelves && item < shelfItems; ++item)
            sink.add(lifeOf(m_unit, item));
    }

private:
    int m_unit;
    bool m_shelves;
    ShiftCalendar m_calendar;
    RoundMaker m_maker;
    Date m_day;
    std::int64_t m_rounds = 0;
};

void setUp(Store& store, int unit, bool shelves)
{
    Unit described = aUnit(unitName(unit));
    described.level = levels[unit % 3];
    addUnit(store, described, anAdoption());
    must(store.setPattern(described.id, {.from = 2020y / 1 / 1, .pattern = ShiftPattern::threeByEight()}, "AB"));
    for (int item = 0; shelves && item < shelfItems; ++item)
        must(store.describeStockItem(described.id,
            {.id = itemName(item),
                .name = "Item " + std::to_string(item),
                .at = sys_days(firstDay),
                .levels = {.par = 40, .minimum = 12, .emergency = 5},
                .expires = true,
                .packSize = 10},
            "AB"));
}

void setWays(Store& store, FixedClock& clock, int units)
{
    std::vector<Distance> ways;
    for (int unit = 0; unit < units; ++unit)
        for (int next = unit + 1; next < std::min(units, unit + 6); ++next)
            ways.push_back({.from = unitName(unit),
                .to = unitName(next),
                .metres = 4000 + 3000 * (next - unit),
                .at = clock.now()});
    must(store.setDistances(ways, "AB"));
}

}

std::int64_t fillDistrict(const std::string& address, int units, FillWay way, bool shelves)
{
    FixedClock clock{sys_days(firstDay)};
    const auto store = must(Store::open(address, clock));
    store->signWith(aKey(1));
    must(store->together([&]() -> Result<void> {
        for (int unit = 0; unit < units; ++unit)
            setUp(*store, unit, shelves);
        setWays(*store, clock, units);
        return {};
    }));
    const Checklist checklist = must(store->checklist("shift-readiness", 1));
    std::int64_t rounds = 0;
    if (way == FillWay::Ledger) {
        LedgerSink sink(*store, clock);
        for (int unit = 0; unit < units; ++unit) {
            clock.set(sys_days(firstDay));
            store->signWith(aKey(static_cast<unsigned char>(2 + unit % 250)));
            // A transaction a month: PostgreSQL gets slower with each change of one row in the same transaction.
            UnitFill fill(checklist, unit, shelves);
            while (!fill.isDone())
                must(store->together([&]() -> Result<void> {
                    fill.takeMonth(sink);
                    return {};
                }));
            rounds += fill.rounds();
        }
        return rounds;
    }
    Database database(address, Database::Access::ReadWrite);
    ProjectionSink sink(database);
    Transaction transaction(database);
    for (int unit = 0; unit < units; ++unit) {
        UnitFill fill(checklist, unit, shelves);
        while (!fill.isDone())
            fill.takeMonth(sink);
        rounds += fill.rounds();
    }
    sink.finish();
    transaction.commit();
    return rounds;
}

}
