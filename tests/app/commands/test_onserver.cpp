// SPDX-License-Identifier: MIT
// The command line against a database on a server: the program itself, as a scheduled job runs it.
#include "core/base/json.h"
#include "tests/support/builders.h"
#include "tests/support/postgresserver.h"

#include <cstdlib>
#include <doctest/doctest.h>
#include <fstream>
#include <sys/wait.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

constexpr char unit[] = "sorrel-hill";
constexpr Date firstDay = std::chrono::year(2025) / 10 / 1;

std::string contentOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

struct Ran
{
    int exit = -1;
    std::string out;
    std::string complaint;
};

/** Records that an import says were new. */
std::int64_t newIn(const Ran& import)
{
    const Json said = must(parseJson(import.out));
    return *said.findInteger("new");
}

/** A district's server with one ward of a month, written by one station. */
struct District
{
    District()
        : store(must(Store::open(place, clock)))
    {
        store->signWith(aKey(1));
        addUnit(*store, aUnit(), anAdoption());
        const Checklist checklist = must(store->checklist("shift-readiness", 1));
        for (int day = 0; day < 31; ++day) {
            RoundBuilder round(checklist);
            round.on(addDays(firstDay, day), day % 2);
            if (day % 3 == 0)
                round.withGap("room-temperature");
            const RoundRecord done = round.done();
            clock.set(done.finished);
            must(store->saveRound(unit, done, "AB"));
        }
    }

    Ran run(const std::string& address, const std::string& words) const
    {
        const std::string out = dir.file("out");
        const std::string complaint = dir.file("complaint");
        const std::string command = std::string("'") + CRADLEPOST_PROGRAM + "' --language en --log-level off --database '" + address
            + "' " + words + " >'" + out + "' 2>'" + complaint + "'";
        const int status = std::system(command.c_str()); // NOLINT: as from a shell is what is tested
        return {.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1,
            .out = contentOf(out),
            .complaint = contentOf(complaint)};
    }
    Ran run(const std::string& words) const { return run(place, words); }

    TempDir dir;
    std::string place = sharedServer().freshPlace();
    FixedClock clock{std::chrono::sys_days(firstDay)};
    std::unique_ptr<Store> store;
};

}

TEST_CASE("status, reports, verify and rebuild work on a server from the command line")
{
    const District district;
    const Ran status = district.run("status --json");
    CHECK_MESSAGE(status.exit == 3, status.complaint); // no round of this shift
    CHECK(status.out.find("sorrel-hill") != std::string::npos);
    for (const std::string report : {"report month --unit sorrel-hill --month 2025-10", "report units --from 2025-10"})
        for (const std::string ending : {"json", "csv", "xlsx", "html", "pdf"}) {
            const std::string file = district.dir.file("report." + ending);
            const Ran ran = district.run(report + " --out '" + file + "'");
            CHECK_MESSAGE(ran.exit == 0, report, ": ", ran.complaint);
            CHECK(contentOf(file).size() > 1000);
        }
    const Ran verified = district.run("verify --json");
    CHECK_MESSAGE(verified.exit == 0, verified.complaint);
    const Json said = must(parseJson(verified.out));
    CHECK(said.find("fault")->isNull());
    CHECK(*said.findInteger("records") == 35);
    CHECK_MESSAGE(district.run("rebuild").exit == 0, "rebuild");
    CHECK(district.run("verify").exit == 0);
}

TEST_CASE("a pack goes from one server to another from the command line, and only once")
{
    const District district;
    const std::string pack = district.dir.file("ward.pack");
    const Ran exported = district.run("export --out '" + pack + "'");
    CHECK_MESSAGE(exported.exit == 0, exported.complaint);
    const std::string other = sharedServer().freshPlace();
    const Ran untrusted = district.run(other, "import '" + pack + "'");
    CHECK(untrusted.exit == 1);
    CHECK(untrusted.complaint.find(aKey(1).id()) != std::string::npos);
    const std::string import = "import '" + pack + "' --json --trust " + aKey(1).id();
    const Ran first = district.run(other, import);
    REQUIRE_MESSAGE(first.exit == 0, first.complaint);
    CHECK(newIn(first) == 35);
    const Ran again = district.run(other, import);
    REQUIRE_MESSAGE(again.exit == 0, again.complaint);
    CHECK(newIn(again) == 0);
    CHECK(district.run(other, "verify").exit == 0);
    const auto taken = must(Store::open(other, district.clock, OpenMode::ReadOnly));
    CHECK(must(taken->rounds(unit, 0, slotOf(addDays(firstDay, 40), 0))).size() == 31);
}

TEST_CASE("a server that is not there is told from a full disk, and ends with 1")
{
    const District district;
    const Ran ran = district.run("postgresql://127.0.0.1:1/ward", "verify");
    CHECK(ran.exit == 1);
    CHECK(ran.complaint.find("does not answer") != std::string::npos);
}
