// SPDX-License-Identifier: MIT
#include "packs.h"

#include <chrono>
#include <csignal>
#include <filesystem>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Starts the importer and waits until it begins. */
pid_t begin(const std::string& database, const std::string& pack, const std::string& trusted)
{
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const pid_t process = ::fork();
    if (process == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::execl(PACK_IMPORTER, PACK_IMPORTER, database.c_str(), pack.c_str(), trusted.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    char c = 0;
    while (::read(ends[0], &c, 1) == 1 && c != '\n') { }
    ::close(ends[0]);
    return process;
}

}

TEST_CASE("a kill in the middle of an import leaves all of the pack or nothing of it")
{
    Station ward(1);
    ward.addUnit("sorrel-hill");
    must(ward.store->together([&]() -> Result<void> {
        for (int i = 0; i < 400; ++i)
            ward.walk("sorrel-hill", i / 2, i % 2);
        return {};
    }));
    const std::string pack = ward.file("all.pack");
    ward.pack(pack);
    std::mt19937 random(20261124);
    int nothing = 0;
    int all = 0;
    int microseconds = 200'000; // hunts for the moment of the commit
    for (int kill = 0; kill < 60; ++kill) {
        const TempDir dir;
        const std::string database = dir.file("killed.db");
        const FixedClock clock(ward.clock.now());
        must(Store::open(database, clock));
        const pid_t process = begin(database, pack, ward.key.id());
        std::this_thread::sleep_for(
            std::chrono::microseconds(static_cast<int>(random() % 1000) * microseconds / 500));
        ::kill(process, SIGKILL);
        int status = 0;
        ::waitpid(process, &status, 0);
        const auto store = must(Store::open(database, clock));
        const auto verified = must(store->verify());
        REQUIRE(textOf(verified) == "");
        REQUIRE((verified.records == 0 || verified.records == 404));
        REQUIRE(must(store->trustedStations()).size() == (verified.records == 0 ? 0U : 1U));
        ++(verified.records == 0 ? nothing : all);
        microseconds = std::clamp(
            verified.records == 0 ? microseconds * 5 / 4 : microseconds * 4 / 5, 1000, 5'000'000);
    }
    CHECK(nothing > 0);
    CHECK(all > 0);
    MESSAGE("kills that left nothing: ", nothing, ", everything: ", all);
}
