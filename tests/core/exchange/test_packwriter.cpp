// SPDX-License-Identifier: MIT
#include "packs.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** A ward with a unit and `rounds` rounds, and a supervisor who has nothing yet. */
struct Pair
{
    explicit Pair(int rounds = 6)
    {
        ward.addUnit("sorrel-hill");
        for (int i = 0; i < rounds; ++i)
            ward.walk("sorrel-hill", i / 2, i % 2);
    }
    Station ward{1};
    Station supervisor{2};
};

HaveList listOf(const Station& station) { return must(whatIsHere(*station.store, station.clock.now())); }

}

TEST_CASE("a pack brings another station every record and the same projections")
{
    Pair pair;
    const PackWritten written = pair.ward.pack(pair.ward.file("all.pack"));
    CHECK(written.records == 10);
    const Imported imported = must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    CHECK(imported.fresh == 10);
    CHECK(imported.pack.known == 0);
    CHECK(imported.pack.arriving.at({"sorrel-hill", "round"}) == 6);
    CHECK(imported.pack.arriving.at({"sorrel-hill", "checklist-adopted"}) == 1);
    CHECK(imported.trusted == std::vector{pair.ward.key.id()});
    CHECK(difference(pair.ward, pair.supervisor) == "");
    CHECK(textOf(pair.supervisor.store->verify()) == "");
    CHECK(must(pair.supervisor.store->openGaps("sorrel-hill")).size()
        == must(pair.ward.store->openGaps("sorrel-hill")).size());
}

TEST_CASE("the same pack a second time changes nothing")
{
    Pair pair;
    pair.ward.pack(pair.ward.file("all.pack"));
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    const std::string before = bytesOf(pair.supervisor.path()) + bytesOf(pair.supervisor.path() + "-wal");
    const Imported again = must(pair.supervisor.take(pair.ward.file("all.pack")));
    CHECK(again.fresh == 0);
    CHECK(again.pack.known == 10);
    CHECK(bytesOf(pair.supervisor.path()) + bytesOf(pair.supervisor.path() + "-wal") == before);
}

TEST_CASE("a list of what is here is answered with what it lacks, and no more")
{
    Pair pair;
    pair.ward.pack(pair.ward.file("all.pack"));
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    must(writeHaveList(listOf(pair.supervisor), pair.supervisor.file("have"), Overwrite::Refuse));
    pair.ward.walk("sorrel-hill", 3);
    pair.ward.walk("sorrel-hill", 4);
    const HaveList have = must(readHaveList(pair.supervisor.file("have")));
    CHECK(have.station == pair.supervisor.key.id());
    const PackWritten written = pair.ward.pack(pair.ward.file("more.pack"), {.have = have});
    CHECK(written.records == 2);
    REQUIRE(written.chains.size() == 1);
    CHECK(written.chains[0].from == 11);
    CHECK(must(pair.supervisor.take(pair.ward.file("more.pack"))).fresh == 2);
    CHECK(difference(pair.ward, pair.supervisor) == "");
    CHECK(pair.ward.pack(pair.ward.file("none.pack"), {.have = listOf(pair.supervisor)}).records == 0);
    CHECK(must(pair.supervisor.take(pair.ward.file("none.pack"))).fresh == 0);
}

TEST_CASE("a list that is torn, or of something else, is refused")
{
    Pair pair;
    const std::string path = pair.ward.file("have");
    must(writeHaveList(listOf(pair.ward), path, Overwrite::Refuse));
    const std::string whole = bytesOf(path);
    for (std::size_t size = 0; size < whole.size(); ++size) {
        writeBytes(path, std::string_view(whole).substr(0, size));
        REQUIRE_FALSE(readHaveList(path).has_value());
    }
    writeBytes(path, whole + whole);
    CHECK(readHaveList(path).error().code == ErrorCode::BadDocument);
}

TEST_CASE("a receiver whose chain went another way is not answered")
{
    Pair pair;
    HaveList have = listOf(pair.ward);
    have.tips[0].hash[0] ^= 1;
    const auto written
        = writePack(*pair.ward.store, {.have = have}, pair.ward.file("x.pack"), pair.ward.clock.now());
    REQUIRE_FALSE(written.has_value());
    CHECK(written.error().code == ErrorCode::Forged);
    CHECK(written.error().message.find(pair.ward.key.id() + "/10") != std::string::npos);
    CHECK(bytesOf(pair.ward.file("x.pack")).empty());
}

TEST_CASE("since a day means each chain from its first record made then, and tells who lacks what is before")
{
    Pair pair;
    const Instant since = std::chrono::sys_days(addDays(firstDay, 2));
    const PackWritten written = pair.ward.pack(pair.ward.file("late.pack"), {.since = since});
    REQUIRE(written.chains.size() == 1);
    CHECK(written.chains[0].from > 1);
    CHECK(written.records == 11 - written.chains[0].from);
    const auto refused = pair.supervisor.take(pair.ward.file("late.pack"), trusting({&pair.ward}));
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::NotFound);
    CHECK(refused.error().message.find(
              "1 to " + std::to_string(written.chains[0].from - 1) + " of station " + pair.ward.key.id())
        != std::string::npos);
    CHECK(pair.supervisor.ledger() == "");
    pair.ward.pack(pair.ward.file("all.pack"));
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    CHECK(must(pair.supervisor.take(pair.ward.file("late.pack"))).pack.known == written.records);
}

TEST_CASE("a unit brings the chains of the stations that have written it")
{
    Pair pair;
    pair.supervisor.addUnit("alder-fen");
    pair.supervisor.walk("alder-fen", 1);
    pair.ward.pack(pair.ward.file("all.pack"));
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    const PackWritten one = pair.supervisor.pack(pair.supervisor.file("one.pack"), {.units = {"alder-fen"}});
    REQUIRE(one.chains.size() == 1);
    CHECK(one.chains[0].station == pair.supervisor.key.id());
    CHECK(pair.supervisor.pack(pair.supervisor.file("two.pack"), {.units = {"alder-fen", "sorrel-hill"}})
              .records
        == 15);
    const auto unknown = writePack(
        *pair.ward.store, {.units = {"nowhere"}}, pair.ward.file("x.pack"), pair.ward.clock.now());
    REQUIRE_FALSE(unknown.has_value());
    CHECK(unknown.error().code == ErrorCode::NotFound);
}

TEST_CASE("a file that is there is not overwritten unless that is said")
{
    Pair pair;
    const std::string path = pair.ward.file("a.pack");
    writeBytes(path, "mine");
    const auto refused = writePack(*pair.ward.store, {}, path, pair.ward.clock.now());
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::AlreadyExists);
    CHECK(bytesOf(path) == "mine");
    pair.ward.pack(path, {.overwrite = Overwrite::Replace});
    CHECK(must(pair.supervisor.take(path, trusting({&pair.ward}))).fresh == 10);
    const auto device
        = writePack(*pair.ward.store, {.overwrite = Overwrite::Replace}, "/dev/full", pair.ward.clock.now());
    REQUIRE_FALSE(device.has_value());
    CHECK(device.error().code == ErrorCode::InvalidArgument);
}

TEST_CASE("a station passes on what it took in from others")
{
    Pair pair;
    Station third(3);
    pair.ward.pack(pair.ward.file("all.pack"));
    must(pair.supervisor.take(pair.ward.file("all.pack"), trusting({&pair.ward})));
    pair.supervisor.pack(pair.supervisor.file("on.pack"));
    const Imported imported = must(third.take(pair.supervisor.file("on.pack"), trusting({&pair.ward})));
    CHECK(imported.pack.manifest.by == pair.supervisor.key.id());
    CHECK(difference(pair.ward, third) == "");
}

TEST_CASE("a dry run says what would come and changes nothing")
{
    Pair pair;
    pair.ward.pack(pair.ward.file("all.pack"));
    ImportWish wish = trusting({&pair.ward});
    wish.dryRun = true;
    CHECK(must(pair.supervisor.take(pair.ward.file("all.pack"), wish)).fresh == 10);
    CHECK(pair.supervisor.ledger() == "");
    pair.supervisor.open(OpenMode::ReadOnly);
    CHECK(must(pair.supervisor.take(pair.ward.file("all.pack"), wish)).fresh == 10);
}

TEST_CASE("a body of a kind that this program does not know travels and stays in the chain")
{
    Pair pair;
    pair.ward.pack(pair.ward.file("all.pack"));
    auto lines = linesOf(pair.ward.file("all.pack"));
    lines[lines.size() - 2] = recordWith(
        lines[lines.size() - 2],
        [](Record& record) {
            record.kind = "weather";
            record.body = R"({"sky":"clear"})";
        },
        &pair.ward.key);
    endAnew(lines, pair.ward.key);
    writeLines(pair.ward.file("weather.pack"), lines);
    const Imported imported
        = must(pair.supervisor.take(pair.ward.file("weather.pack"), trusting({&pair.ward})));
    CHECK(imported.pack.arriving.at({"sorrel-hill", "weather"}) == 1);
    CHECK(textOf(pair.supervisor.store->verify()) == "");
}
