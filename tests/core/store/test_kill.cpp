// SPDX-License-Identifier: MIT
#include "ward.h"

#include <csignal>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** A round_writer at work on a file. */
class Writer
{
public:
    explicit Writer(const std::string& path)
    {
        int ends[2];
        if (::pipe(ends) != 0)
            throw std::runtime_error("no pipe");
        m_process = ::fork();
        if (m_process == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::execl(ROUND_WRITER, ROUND_WRITER, path.c_str(), nullptr);
            ::_exit(127);
        }
        ::close(ends[1]);
        m_said = ends[0];
    }
    ~Writer() { ::close(m_said); }
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    /** Waits for the first acknowledged round, so that a kill falls between saves and not before the first.
     */
    void awaitFirst()
    {
        char c = 0;
        while (::read(m_said, &c, 1) == 1) {
            m_text += c;
            if (c == '\n')
                return;
        }
    }

    /** Kills it and returns the rounds that it had acknowledged. */
    std::vector<RecordId> kill()
    {
        ::kill(m_process, SIGKILL);
        int status = 0;
        ::waitpid(m_process, &status, 0);
        CHECK(WIFSIGNALED(status));
        char part[4096];
        for (ssize_t n = 0; (n = ::read(m_said, part, sizeof part)) > 0;)
            m_text.append(part, static_cast<std::size_t>(n));
        std::vector<RecordId> ids;
        for (std::size_t at = 0, end = 0; (end = m_text.find('\n', at)) != std::string::npos; at = end + 1) {
            const std::string line = m_text.substr(at, end - at);
            ids.push_back(
                {.station = line.substr(0, line.find(' ')), .seq = std::stoll(line.substr(line.find(' ')))});
        }
        return ids;
    }

private:
    pid_t m_process = -1;
    int m_said = -1;
    std::string m_text;
};

}

TEST_CASE("200 kills at random moments lose no acknowledged round and leave none half")
{
    Ward ward;
    ward.store.reset();
    const std::string path = ward.dir.file("ward.db");
    std::mt19937 random(20261124);
    std::size_t acknowledged = 0;
    for (int kill = 0; kill < 200; ++kill) {
        Writer writer(path);
        // Every fourth dies while it starts or in its first save, the others between and in later ones.
        if (kill % 4 != 0)
            writer.awaitFirst();
        std::this_thread::sleep_for(std::chrono::microseconds(random() % (kill % 4 == 0 ? 30'000 : 25'000)));
        const auto ids = writer.kill();
        acknowledged += ids.size();
        const auto store = must(Store::open(path, ward.clock));
        for (const RecordId& id : ids)
            REQUIRE(store->round(id).has_value());
        // A round that was saved and not acknowledged any more is whole; then its draft is gone with it.
        if (kill % 20 == 19)
            REQUIRE(textOf(store->verify()) == "");
    }
    const auto store = must(Store::open(path, ward.clock));
    const auto verified = must(store->verify());
    CHECK(textOf(verified) == "");
    CHECK(static_cast<std::size_t>(verified.records) >= acknowledged + 4);
    CHECK(static_cast<std::size_t>(verified.records) <= acknowledged + 4 + 200);
    MESSAGE("acknowledged rounds over 200 kills: ", acknowledged);
}
