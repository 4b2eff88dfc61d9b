// SPDX-License-Identifier: MIT
// Many stations at once on one server, which is killed meanwhile.
#include "ward.h"

#include <atomic>
#include <cstdlib>
#include <thread>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

constexpr int writers = 20;

/** How much is written, and among how many units. */
struct Size
{
    int rounds = 800;
    int units = 8;
};

Size size()
{
    return std::getenv("CRADLEPOST_FULL_TESTS") != nullptr ? Size{.rounds = 10'000, .units = writers}
                                                           : Size();
}

std::string unitOf(int n) { return "unit-" + std::to_string(n % size().units); }

/** What one writer was told was saved. */
struct Told
{
    std::vector<RecordId> saved;
    int foundThere = 0; ///< saved, though the answer was lost
    std::string fault;
};

/** Writes its share of the rounds, each until it is told that it stands. */
void write(
    const std::string& address, int writer, const Checklist& checklist, std::atomic<int>& done, Told& told)
{
    FixedClock clock(std::chrono::sys_days(firstDay) + std::chrono::days(5000));
    const auto [rounds, units] = size();
    std::unique_ptr<Store> store;
    for (int n = writer, failed = 0; n < rounds && failed < 2000;) {
        if (!store) {
            auto opened = Store::open(address, clock);
            if (opened) {
                store = std::move(*opened);
                store->signWith(aKey(static_cast<unsigned char>(10 + writer)));
                store->setBusyTimeout(std::chrono::seconds(60));
            }
        }
        const Date day = addDays(firstDay, n / units / 2);
        const auto saved = store
            ? store->saveRound(unitOf(n),
                aRound(checklist).on(day, n / units % 2).withGap("item-" + std::to_string(n % 12)), "AB")
            : Result<RecordId>(fail(ErrorCode::Io, "not open"));
        if (saved || saved.error().code == ErrorCode::AlreadyExists) {
            if (saved)
                told.saved.push_back(*saved);
            else
                ++told.foundThere;
            n += writers;
            ++done;
            continue;
        }
        told.fault = saved.error().message;
        ++failed;
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
}

}

TEST_CASE(
    "twenty stations write at once while the server is killed twice: what was acknowledged is there, whole")
{
    const auto [rounds, units] = size();
    Ward ward;
    for (int n = 0; n < units; ++n)
        addUnit(*ward.store, aUnit(unitOf(n)), aPlainAdoption(12));
    std::atomic<int> done{0};
    std::vector<Told> told(writers);
    std::vector<std::thread> threads;
    for (int writer = 0; writer < writers; ++writer)
        threads.emplace_back([&, writer] {
            write(ward.address, writer, ward.checklist, done, told[static_cast<std::size_t>(writer)]);
        });
    int kills = 0;
    for (int wait = 0; kills < 2 && wait < 30'000; ++wait) {
        if (done > rounds * (kills + 1) / 3) {
            sharedServer().kill();
            sharedServer().start();
            ++kills;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
    }
    for (std::thread& thread : threads)
        thread.join();
    CHECK(kills == 2);
    CHECK(done == rounds);
    int foundThere = 0;
    for (const Told& one : told) {
        CAPTURE(one.fault);
        for (const RecordId& id : one.saved)
            REQUIRE(ward.store->round(id).has_value());
        foundThere += one.foundThere;
    }
    std::size_t there = 0;
    for (int n = 0; n < units; ++n)
        there += must(ward.store->rounds(unitOf(n), 0, slotOf(addDays(firstDay, 10'000), 0))).size();
    CHECK(there == static_cast<std::size_t>(rounds));
    CHECK(ward.fault() == "");
    MESSAGE("rounds: ", rounds, ", saved though the answer was lost: ", foundThere);
}
