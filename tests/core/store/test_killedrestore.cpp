// SPDX-License-Identifier: MIT
#include "ward.h"

#include <csignal>
#include <filesystem>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

namespace fs = std::filesystem;

/** A process of its own that restores `backup` to `path`; back once it has begun. */
class Restoring
{
public:
    Restoring(const std::string& backup, const std::string& path)
    {
        int ends[2];
        if (::pipe(ends) != 0)
            throw std::runtime_error("no pipe");
        m_process = ::fork();
        if (m_process == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::execl(RESTORER, RESTORER, backup.c_str(), path.c_str(), nullptr);
            ::_exit(127);
        }
        ::close(ends[1]);
        m_said = ends[0];
        char c = 0;
        while (::read(m_said, &c, 1) == 1 && c != '\n') { }
    }
    ~Restoring() { ::close(m_said); }
    Restoring(const Restoring&) = delete;
    Restoring& operator=(const Restoring&) = delete;

    /** Until it says that it is done, or is gone. */
    void awaitEnd()
    {
        char c = 0;
        while (::read(m_said, &c, 1) == 1) { }
    }
    /** Until it goes over from reading the backup to putting it in place, or has gone over already. */
    void awaitCopy(const std::string& path)
    {
        while (!fs::exists(path + ".restoring") && !isGone())
            std::this_thread::yield();
    }
    /** Whether it was killed before its end; false when it was quicker. */
    bool kill()
    {
        if (!m_status)
            ::kill(m_process, SIGKILL);
        if (!m_status)
            ::waitpid(m_process, &m_status.emplace(), 0);
        const bool killed = WIFSIGNALED(*m_status);
        CHECK((killed || WEXITSTATUS(*m_status) == 0));
        return killed;
    }

private:
    bool isGone()
    {
        int status = 0;
        if (::waitpid(m_process, &status, WNOHANG) == m_process)
            m_status = status;
        return m_status.has_value();
    }

    pid_t m_process = -1;
    int m_said = -1;
    std::optional<int> m_status;
};

/** A database of two rounds and a backup of it with one. */
struct Before : Ward
{
    Before()
    {
        save(round(0));
        must(store->backup(backup));
        save(round(1));
        store.reset();
    }
    const std::string backup = dir.file("backup.db");
    const std::string path = dir.file("ward.db");
};

using Time = std::chrono::microseconds;

/** How long a restore takes, whole, and from the moment on which it begins to write. */
struct Durations
{
    Time whole;
    Time writing;
};

Durations durationsOfOne()
{
    Before before;
    const auto start = std::chrono::steady_clock::now();
    Restoring restoring(before.backup, before.path);
    restoring.awaitCopy(before.path);
    const auto copied = std::chrono::steady_clock::now();
    restoring.awaitEnd();
    restoring.kill(); // gone already, or about to be
    const auto end = std::chrono::steady_clock::now();
    return {.whole = std::chrono::duration_cast<Time>(end - start),
        .writing = std::chrono::duration_cast<Time>(end - copied)};
}

/** How many rounds there are; the file must be sound and take another one. */
std::size_t roundsIn(Before& ward)
{
    REQUIRE(fs::exists(ward.path));
    ward.reopen();
    const std::size_t rounds = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size();
    CHECK(ward.fault() == "");
    ward.save(ward.round(5));
    CHECK(ward.fault() == "");
    ward.store.reset();
    return rounds;
}

}

TEST_CASE("50 kills in the middle of a restore leave the old file or the new one, whole")
{
    const Durations durations = durationsOfOne();
    std::mt19937 random(20261125);
    int killed = 0;
    int old = 0;
    for (int kill = 0; kill < 50; ++kill) {
        CAPTURE(kill);
        Before ward;
        Restoring restoring(ward.backup, ward.path);
        // Most of the time goes into checking the backup, so half of them wait for what comes after it.
        const bool late = kill % 2 == 1;
        if (late)
            restoring.awaitCopy(ward.path);
        const Time most = late ? durations.writing : durations.whole;
        // Every second of these at once: a busy machine is late anyway.
        if (kill % 4 != 3)
            std::this_thread::sleep_for(Time(random() % static_cast<std::uint64_t>(most.count() + 1)));
        killed += restoring.kill() ? 1 : 0;
        const std::size_t rounds = roundsIn(ward);
        CHECK((rounds == 1 || rounds == 2));
        old += rounds == 2 ? 1 : 0;
        // What it left lying does not stand in the way of the next one.
        must(Store::restore(ward.backup, ward.path, ward.clock));
        CHECK(roundsIn(ward) == 1);
    }
    CHECK(killed > 0);
    MESSAGE("killed before the end: ", killed, ", the old file in place: ", old);
}
