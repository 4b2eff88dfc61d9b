// SPDX-License-Identifier: MIT
#include "packs.h"

#include "core/store/migration.h"
#include "core/store/projector.h"
#include "core/store/verification.h"

#include <random>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

const std::vector<std::string> unitNames{"sorrel-hill", "alder-fen", "heron-reach"};

/** Six stations, two for each unit, that exchange what they have by packs that get lost and come twice. */
class District
{
public:
    explicit District(unsigned seed)
        : m_random(seed)
    {
        for (unsigned char n = 1; n <= 6; ++n)
            m_stations.push_back(std::make_unique<Station>(n));
        for (std::size_t i = 0; i < 6; ++i)
            m_stations[i]->addUnit(unitNames[i % 3]);
        std::vector<const Station*> all;
        for (const auto& station : m_stations)
            all.push_back(station.get());
        m_wish = trusting(all);
        // Two stations claim one version for two documents: the same one must hold everywhere.
        must(m_stations[1]->store->adopt(unitNames[1], aPlainAdoption(14, 2), "AB"));
        must(m_stations[4]->store->adopt(unitNames[1], aPlainAdoption(12, 2), "AB"));
    }

    void step()
    {
        const std::size_t at = pick(6);
        work(*m_stations[at], unitNames[at % 3]);
        exchange();
    }

    /** Each asks each for what it lacks, until nobody lacks anything. */
    void settle()
    {
        for (int turn = 0; turn < 2; ++turn)
            for (auto& to : m_stations)
                for (auto& from : m_stations)
                    if (from != to)
                        must(to->take(answer(*from, *to), m_wish));
    }

    [[nodiscard]] const std::vector<std::unique_ptr<Station>>& stations() const { return m_stations; }
    [[nodiscard]] int lost() const { return m_lost; }
    [[nodiscard]] int again() const { return m_again; }
    [[nodiscard]] int early() const { return m_early; }

private:
    std::size_t pick(std::size_t n) { return m_random() % n; }

    void work(Station& station, const std::string& unit)
    {
        const int day = static_cast<int>(pick(60));
        const int shift = static_cast<int>(pick(2));
        const auto gaps = must(station.store->openGaps(unit));
        if (pick(4) == 0 && !gaps.empty())
            must(station.store->actOnGap(unit,
                {.item = gaps.front().item,
                    .nth = gaps.front().nth,
                    .owner = "N" + std::to_string(day),
                    .due = std::nullopt,
                    .remark = std::nullopt},
                "AB"));
        else if (must(station.store->rounds(unit, slotOf(addDays(firstDay, day), shift),
                          slotOf(addDays(firstDay, day), shift) + 1))
                     .empty())
            station.walk(unit, day, shift); // the clock jumps with it, back too
    }

    void exchange()
    {
        Station& from = *m_stations[pick(6)];
        Station& to = *m_stations[pick(6)];
        if (&from == &to)
            return;
        const std::string path = pick(2) == 0 ? answer(from, to) : parcel(from);
        m_kept.push_back(path);
        if (pick(3) == 0) {
            ++m_lost;
            return;
        }
        bring(to, path);
        if (pick(3) == 0) {
            ++m_again; // an old one comes late, or a second time
            bring(*m_stations[pick(6)], m_kept[pick(m_kept.size())]);
        }
    }

    /** It may begin behind what the receiver has; nothing else may be wrong with it. */
    void bring(Station& to, const std::string& path)
    {
        const std::string before = to.ledger();
        const auto taken = to.take(path, m_wish);
        if (taken)
            return;
        REQUIRE_MESSAGE(taken.error().code == ErrorCode::NotFound, taken.error().message);
        REQUIRE(to.ledger() == before);
        ++m_early;
    }

    std::string answer(const Station& from, const Station& to)
    {
        return write(from, {.have = must(whatIsHere(*to.store, to.clock.now()))});
    }
    std::string parcel(const Station& from)
    {
        PackWish wish;
        if (pick(2) == 0)
            wish.since = std::chrono::sys_days(addDays(firstDay, static_cast<int>(pick(60))));
        return write(from, wish);
    }
    std::string write(const Station& from, const PackWish& wish)
    {
        const std::string path = m_out.file(std::to_string(m_packs++) + ".pack");
        from.pack(path, wish);
        return path;
    }

    std::mt19937 m_random;
    std::vector<std::unique_ptr<Station>> m_stations;
    ImportWish m_wish;
    TempDir m_out;
    std::vector<std::string> m_kept;
    int m_packs = 0;
    int m_lost = 0;
    int m_again = 0;
    int m_early = 0;
};

}

TEST_CASE("six stations that exchange packs in any order, with losses and repeats, come to the same")
{
    District district(20261124);
    for (int i = 0; i < 300; ++i) {
        CAPTURE(i);
        district.step();
    }
    district.settle();
    const auto& stations = district.stations();
    for (std::size_t i = 0; i < 6; ++i) {
        CAPTURE(i);
        CHECK(difference(*stations[0], *stations[i]) == "");
        CHECK(textOf(stations[i]->store->verify()) == "");
    }
    // The walk was a wild one.
    CHECK(district.lost() > 30);
    CHECK(district.again() > 20);
    CHECK(district.early() > 5);
    MESSAGE("lost ", district.lost(), ", late or again ", district.again(), ", too early ", district.early());
}

TEST_CASE("what a pack brings at once projects as the same records do one by one")
{
    District district(7);
    for (int i = 0; i < 80; ++i)
        district.step();
    district.settle();
    Station fresh(9);
    std::vector<const Station*> all;
    for (const auto& station : district.stations())
        all.push_back(station.get());
    district.stations()[0]->pack(fresh.file("all.pack"));
    must(fresh.take(fresh.file("all.pack"), trusting(all)));
    Database taken(fresh.path(), Database::Access::ReadOnly);
    const auto other = Database::inMemory();
    migrate(*other, schemaSteps());
    LedgerTable ledger(*other);
    Projector projector(*other, *other);
    for (const Chain& chain : must(fresh.store->chains()))
        ledger.addStation(chain.station, chain.key);
    LedgerTable(taken).forEach([&](const Record& record) {
        ledger.insert(record);
        projector.apply(record, must(parseJson(record.body)));
    });
    const auto fault = compareProjections(taken, *other);
    CHECK_MESSAGE(!fault, (fault ? fault->where + ": " + fault->what : std::string()));
}
