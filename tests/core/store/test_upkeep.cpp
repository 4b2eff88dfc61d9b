// SPDX-License-Identifier: MIT
#include "ward.h"

#include <filesystem>
#include <fstream>

using namespace cradlepost;
using namespace cradlepost::test;
namespace fs = std::filesystem;

namespace {

std::string contentOf(const std::string& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/** A week with gaps, an action, a re-check, a late round and a clock that was set back. */
void liveAWeek(Ward& ward)
{
    for (int day = 0; day < 7; ++day) {
        if (day == 3)
            continue;
        auto round = ward.round(day);
        round.withGap("item-" + std::to_string(day)).withGap("item-9");
        const RecordId id = ward.save(round);
        ward.save(ward.round(day)
                      .rechecking(id, {"item-" + std::to_string(day)})
                      .finishedAfter(std::chrono::hours(3)));
    }
    must(ward.store->actOnGap(ward.unit,
        {.item = "item-9", .nth = 1, .owner = "CD", .due = std::nullopt, .remark = "ordered"}, "AB"));
    must(ward.store->saveRound(ward.unit, ward.round(3).withGap("item-11"), "CD"));
    ward.clock.advance(-std::chrono::hours(30));
    must(ward.store->saveRound(ward.unit, ward.round(7), "CD"));
}

int filesIn(const TempDir& dir, const std::string& part)
{
    int count = 0;
    for (const auto& entry : fs::directory_iterator(dir.path()))
        count += entry.path().filename().string().find(part) != std::string::npos ? 1 : 0;
    return count;
}

}

TEST_CASE("a week of work verifies, with the counts of records and stations")
{
    Ward ward;
    liveAWeek(ward);
    const Verified verified = must(ward.store->verify());
    CHECK(ward.fault() == "");
    CHECK(verified.records == 4 + 12 + 3);
    CHECK(verified.stations == 1);
    CHECK(verified.clockSetBack == 1);
}

TEST_CASE("a fresh store verifies and so does one that is only read")
{
    Ward ward;
    CHECK(ward.fault() == "");
    ward.reopen(OpenMode::ReadOnly);
    CHECK(ward.fault() == "");
}

TEST_CASE("rebuild changes nothing that was right")
{
    Ward ward;
    liveAWeek(ward);
    const auto rounds = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(20)));
    const auto gaps = must(ward.store->gapsOf(ward.unit, "item-9"));
    must(ward.store->rebuild());
    CHECK(ward.fault() == "");
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(20))).size() == rounds.size());
    CHECK(must(ward.store->gapsOf(ward.unit, "item-9")) == gaps);
    ward.save(ward.round(9));
    CHECK(ward.fault() == "");
}

TEST_CASE("two stations on one file keep a chain each")
{
    Ward ward;
    ward.store->signWith(aKey(1));
    const RecordId first = ward.save(ward.round(0).withGap("item-1"));
    ward.store->signWith(aKey(2));
    const RecordId second = ward.save(ward.round(1));
    CHECK(first.station == aKey(1).id());
    CHECK(second.station == aKey(2).id());
    CHECK(first.seq == 1);
    CHECK(second.seq == 1);
    const Verified verified = must(ward.store->verify());
    CHECK_FALSE(verified.fault.has_value());
    CHECK(verified.stations == 3);
}

TEST_CASE("together writes all or nothing")
{
    Ward ward;
    const auto failed = ward.store->together([&]() -> Result<void> {
        must(ward.store->saveRound(ward.unit, ward.round(0).withGap("item-1"), "AB"));
        must(ward.store->adopt(ward.unit, aPlainAdoption(14, 2), "AB"));
        must(ward.store->saveRound(
            ward.unit, aRound(must(ward.store->checklist("plain", 2))).on(firstDay, 1), "AB"));
        return fail(ErrorCode::InvalidArgument, "stop here");
    });
    CHECK(failed.error().message == "stop here");
    CHECK(must(ward.store->verify()).records == 4);
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    CHECK(ward.store->checklist("plain", 2).error().code == ErrorCode::NotFound);
    must(ward.store->together([&]() -> Result<void> {
        must(ward.store->saveRound(ward.unit, ward.round(0), "AB"));
        // One that is refused takes back only itself.
        CHECK_FALSE(ward.store->saveRound(ward.unit, ward.round(0), "AB").has_value());
        must(ward.store->saveRound(ward.unit, ward.round(1), "AB"));
        return {};
    }));
    CHECK(must(ward.store->verify()).records == 6);
    CHECK(ward.fault() == "");
}

TEST_CASE("a backup is one file with everything in it")
{
    Ward ward;
    liveAWeek(ward);
    must(ward.store->saveDraft(ward.round(9).draft()));
    must(ward.store->backup(ward.dir.file("backup.db")));
    CHECK(filesIn(ward.dir, "backup.db") == 1);
    const auto copy = must(Store::open(ward.dir.file("backup.db"), ward.clock, OpenMode::ReadOnly));
    const Verified verified = must(copy->verify());
    CHECK_FALSE(verified.fault.has_value());
    CHECK(verified.records == must(ward.store->verify()).records);
    CHECK(must(copy->drafts(ward.unit)).size() == 1);
}

TEST_CASE("a backup does not overwrite a file and leaves no piece behind when it cannot be written")
{
    Ward ward;
    std::ofstream(ward.dir.file("taken")) << "something else";
    CHECK(ward.store->backup(ward.dir.file("taken")).error().code == ErrorCode::AlreadyExists);
    CHECK(contentOf(ward.dir.file("taken")) == "something else");
    CHECK(ward.store->backup(ward.dir.file("no/such/folder/backup.db")).error().code == ErrorCode::NotFound);
    CHECK(filesIn(ward.dir, ".part") == 0);
    const auto inside = ward.store->together([&] { return ward.store->backup(ward.dir.file("inside.db")); });
    CHECK(inside.error().code == ErrorCode::InvalidArgument);
}

TEST_CASE("a backup is sound while another program is in the middle of writing")
{
    Ward ward;
    ward.save(ward.round(0));
    const auto other = must(Store::open(ward.dir.file("ward.db"), ward.clock));
    must(other->together([&]() -> Result<void> {
        must(other->saveRound(ward.unit, ward.round(1), "AB"));
        return ward.store->backup(ward.dir.file("backup.db"));
    }));
    const auto copy = must(Store::open(ward.dir.file("backup.db"), ward.clock));
    CHECK(must(copy->verify()).records == 5);
    CHECK(must(ward.store->verify()).records == 6);
}

TEST_CASE("restore puts the backup in place, keeps the file before it and starts a new chain")
{
    Ward ward;
    ward.save(ward.round(0));
    must(ward.store->backup(ward.dir.file("backup.db")));
    const RecordId after = ward.save(ward.round(1));
    ward.store.reset();
    must(Store::restore(ward.dir.file("backup.db"), ward.dir.file("ward.db"), ward.clock));
    ward.reopen();
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 1);
    const RecordId next = ward.save(ward.round(1));
    CHECK(next.station != after.station);
    CHECK(next.seq == 1);
    CHECK(ward.fault() == "");
    // The file before, with its key, is all there.
    std::string kept;
    for (const auto& entry : fs::directory_iterator(ward.dir.path()))
        if (entry.path().filename().string().starts_with("ward.db.before-restore-"))
            kept = entry.path().string();
    REQUIRE_FALSE(kept.empty());
    const auto old = must(Store::open(kept, ward.clock));
    CHECK(must(old->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 2);
    CHECK(filesIn(ward.dir, "ward.db.key.before-restore-") == 1);
    CHECK(filesIn(ward.dir, "restoring") == 0);
}

TEST_CASE("restore into a place where nothing was works too")
{
    Ward ward;
    ward.save(ward.round(0));
    must(ward.store->backup(ward.dir.file("backup.db")));
    const TempDir elsewhere;
    must(Store::restore(ward.dir.file("backup.db"), elsewhere.file("ward.db"), ward.clock));
    const auto store = must(Store::open(elsewhere.file("ward.db"), ward.clock));
    CHECK(must(store->verify()).records == 5);
}

TEST_CASE("a backup that does not verify changes nothing")
{
    Ward ward;
    ward.save(ward.round(0));
    must(ward.store->backup(ward.dir.file("backup.db")));
    ward.save(ward.round(1));
    ward.store.reset();
    std::string bytes = contentOf(ward.dir.file("backup.db"));
    const auto at = bytes.find("mmmmmmmmmmmm"); // the outcomes of the round
    REQUIRE(at != std::string::npos);
    bytes[at + 3] = 'g';
    std::ofstream(ward.dir.file("backup.db"), std::ios::binary) << bytes;
    const std::string before = contentOf(ward.dir.file("ward.db"));
    const auto restored = Store::restore(ward.dir.file("backup.db"), ward.dir.file("ward.db"), ward.clock);
    REQUIRE_FALSE(restored.has_value());
    CHECK(restored.error().code == ErrorCode::Damaged);
    CHECK(contentOf(ward.dir.file("ward.db")) == before);
    CHECK(filesIn(ward.dir, "before-restore") == 0);
    CHECK(fs::exists(ward.dir.file("ward.db.key")));
    CHECK(Store::restore(ward.dir.file("nowhere.db"), ward.dir.file("ward.db"), ward.clock).error().code
        == ErrorCode::NotFound);
}

TEST_CASE("restore does not pull the file from under a program that has it open")
{
    Ward ward;
    ward.save(ward.round(0));
    must(ward.store->backup(ward.dir.file("backup.db")));
    ward.save(ward.round(1));
    const auto restored = Store::restore(ward.dir.file("backup.db"), ward.dir.file("ward.db"), ward.clock);
    REQUIRE_FALSE(restored.has_value());
    CHECK(restored.error().code == ErrorCode::Locked);
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 2);
    CHECK(filesIn(ward.dir, "restoring") == 0);
}

TEST_CASE("a damaged file can be replaced by its backup and is kept as it is")
{
    Ward ward;
    ward.save(ward.round(0));
    must(ward.store->backup(ward.dir.file("backup.db")));
    ward.store.reset();
    std::ofstream(ward.dir.file("ward.db"), std::ios::binary) << "this is no database any more, not at all";
    must(Store::restore(ward.dir.file("backup.db"), ward.dir.file("ward.db"), ward.clock));
    ward.reopen();
    CHECK(must(ward.store->verify()).records == 5);
    CHECK(filesIn(ward.dir, "ward.db.before-restore-") == 1);
}
