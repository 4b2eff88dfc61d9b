// SPDX-License-Identifier: MIT
#include "core/store/database.h"
#include "core/store/failure.h"
#include "tests/support/readonlyplace.h"
#include "ward.h"

#include <csignal>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace cradlepost;
using namespace cradlepost::test;
namespace fs = std::filesystem;

namespace {

/** The message names the file and the hint says what to do. */
void checkWording(const Error& error, const std::string& path)
{
    CHECK_MESSAGE(error.message.find(path) != std::string::npos, error.message);
    CHECK_FALSE(error.hint.empty());
}

std::size_t roundsIn(const std::string& path, OpenMode mode = OpenMode::ReadWrite)
{
    FixedClock clock(fromMs(0));
    const auto store = must(Store::open(path, clock, mode));
    CHECK(textOf(store->verify()) == "");
    return must(store->rounds("sorrel-hill", slotOf(firstDay, 0), slotOf(addDays(firstDay, 400), 0))).size();
}

/** Saves until it fails; the error, and how many were saved. */
std::pair<Error, std::size_t> saveUntilItFails(Ward& ward, int limit)
{
    std::size_t saved = 0;
    for (int day = 0; day < limit; ++day) {
        const auto id = ward.store->saveRound(ward.unit, ward.round(day), "AB");
        if (!id)
            return {id.error(), saved};
        ++saved;
    }
    return {Error{.code = ErrorCode::Io, .message = "it never failed", .hint = {}}, saved};
}

void overwrite(const std::string& path, std::streamoff at, const std::string& bytes)
{
    std::fstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file.seekp(at);
    file << bytes;
}

}

TEST_CASE("two stores on one file: each sees what the other has written")
{
    Ward ward;
    const auto other = must(Store::open(ward.dir.file("ward.db"), ward.clock));
    ward.save(ward.round(0));
    CHECK(must(other->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 1);
    must(other->saveRound(ward.unit, ward.round(1), "CD"));
    CHECK(other->saveRound(ward.unit, ward.round(0), "CD").error().code == ErrorCode::AlreadyExists);
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 2);
    CHECK(ward.fault() == "");
}

TEST_CASE("two stores on one file: the second writer fails with a plain message when the time is up")
{
    Ward ward;
    const auto other = must(Store::open(ward.dir.file("ward.db"), ward.clock));
    other->setBusyTimeout(std::chrono::milliseconds(20));
    must(ward.store->together([&]() -> Result<void> {
        must(ward.store->saveRound(ward.unit, ward.round(0), "AB"));
        const auto refused = other->saveRound(ward.unit, ward.round(1), "CD");
        REQUIRE_FALSE(refused.has_value());
        CHECK(refused.error().code == ErrorCode::Locked);
        CHECK(refused.error().message.find("another program holds the file") != std::string::npos);
        checkWording(refused.error(), ward.dir.file("ward.db"));
        // Reading goes on meanwhile.
        CHECK(must(other->rounds(ward.unit, ward.slot(0), ward.slot(9))).empty());
        return {};
    }));
    must(other->saveRound(ward.unit, ward.round(1), "CD"));
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 2);
}

TEST_CASE("two stores on one file: the second writer waits for the first")
{
    Ward ward;
    ward.save(ward.round(0));
    const std::string path = ward.dir.file("ward.db");
    std::size_t saved = 0;
    std::string failed;
    std::thread second([&] {
        FixedClock clock(fromMs(1'800'000'000'000));
        const auto other = must(Store::open(path, clock));
        for (int day = 100; day < 130; ++day) {
            if (const auto id = other->saveRound(ward.unit, ward.round(day), "CD"))
                ++saved;
            else
                failed = id.error().message;
        }
    });
    for (int day = 1; day < 31; ++day)
        must(ward.store->saveRound(ward.unit, ward.round(day), "AB"));
    second.join();
    CHECK(failed == "");
    CHECK(saved == 30);
    CHECK(roundsIn(path) == 61);
}

TEST_CASE("a store opened for reading refuses to write and says why")
{
    Ward ward;
    ward.save(ward.round(0));
    ward.reopen(OpenMode::ReadOnly);
    const auto saved = ward.store->saveRound(ward.unit, ward.round(1), "AB");
    REQUIRE_FALSE(saved.has_value());
    CHECK(saved.error().code == ErrorCode::ReadOnly);
    checkWording(saved.error(), ward.dir.file("ward.db"));
    CHECK(ward.store->saveDraft(ward.round(1).draft()).error().code == ErrorCode::ReadOnly);
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 1);
}

TEST_CASE("a file in a folder that cannot be written is refused for writing and can be read")
{
    Ward ward;
    ward.save(ward.round(0));
    ward.store.reset();
    const ClosedFolder closed(ward.dir.path().string());
    if (!closed.isClosed()) {
        MESSAGE("skipped: this user may write anywhere here, and the file system knows no immutable flag");
        return;
    }
    const auto opened = Store::open(ward.dir.file("ward.db"), ward.clock);
    REQUIRE_FALSE(opened.has_value());
    CHECK(opened.error().code == ErrorCode::ReadOnly);
    checkWording(opened.error(), ward.dir.file("ward.db"));
    CHECK(Store::open(ward.dir.file("fresh.db"), ward.clock).error().code == ErrorCode::ReadOnly);
    CHECK(roundsIn(ward.dir.file("ward.db"), OpenMode::ReadOnly) == 1);
}

TEST_CASE("a disk that is closed to writing is told from a missing file, and the rounds on it can be read")
{
    const TempDir dir;
    SmallDisk disk(dir.path().string(), 4096);
    if (!disk.isThere()) {
        MESSAGE("skipped: no file system can be mounted here");
        return;
    }
    FixedClock clock(fromMs(0));
    {
        const auto store = aStore(dir.file("ward.db"), clock, aPlainAdoption(12));
        must(store->saveRound("sorrel-hill", aRound(must(store->checklist("plain", 1))).on(firstDay), "AB"));
    }
    REQUIRE(disk.close());
    CHECK(Store::open(dir.file("ward.db"), clock).error().code == ErrorCode::ReadOnly);
    CHECK(Store::open(dir.file("other.db"), clock).error().code == ErrorCode::ReadOnly);
    CHECK(Store::open(dir.file("other.db"), clock, OpenMode::ReadOnly).error().code == ErrorCode::NotFound);
    CHECK(roundsIn(dir.file("ward.db"), OpenMode::ReadOnly) == 1);
}

TEST_CASE("a full disk refuses the round, keeps those before it, and goes on when there is room again")
{
    const TempDir dir;
    const SmallDisk disk(dir.path().string(), 400);
    if (!disk.isThere()) {
        MESSAGE("skipped: no file system can be mounted here");
        return;
    }
    FixedClock clock(fromMs(0));
    auto store = aStore(dir.file("ward.db"), clock, aPlainAdoption(12));
    const Checklist checklist = must(store->checklist("plain", 1));
    std::size_t saved = 0;
    Error error{.code = ErrorCode::Io, .message = "it never failed", .hint = {}};
    for (int day = 0; day < 300; ++day) {
        const auto id = store->saveRound("sorrel-hill", aRound(checklist).on(addDays(firstDay, day)), "AB");
        if (!id) {
            error = id.error();
            break;
        }
        ++saved;
    }
    CHECK(error.code == ErrorCode::DiskFull);
    checkWording(error, dir.file("ward.db"));
    CHECK(saved > 2);
    CHECK(store->backup(dir.file("backup.db")).error().code == ErrorCode::DiskFull);
    CHECK_FALSE(fs::exists(dir.file("backup.db.part")));
    CHECK(must(store->rounds("sorrel-hill", 0, slotOf(addDays(firstDay, 400), 0))).size() == saved);
    CHECK_FALSE(must(store->verify()).fault.has_value());
    REQUIRE(::mount("tmpfs", dir.path().c_str(), "tmpfs", MS_REMOUNT, "size=4096k") == 0);
    must(store->saveRound("sorrel-hill", aRound(checklist).on(addDays(firstDay, 350)), "AB"));
    store.reset();
    CHECK(roundsIn(dir.file("ward.db")) == saved + 1);
}

TEST_CASE("a limit on the size of files is a full disk: nothing acknowledged is lost")
{
    Ward ward;
    ward.save(ward.round(399));
    const std::string path = ward.dir.file("ward.db");
    ward.store.reset();
    int pipe[2];
    REQUIRE(::pipe(pipe) == 0);
    const pid_t child = ::fork();
    if (child == 0) {
        ::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{.rlim_cur = 300'000, .rlim_max = 300'000};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        ward.store = must(Store::open(path, ward.clock));
        const auto [error, saved] = saveUntilItFails(ward, 300);
        const std::string said = std::to_string(static_cast<int>(error.code)) + ' ' + std::to_string(saved);
        [[maybe_unused]] const auto written = ::write(pipe[1], said.data(), said.size());
        ::_exit(0);
    }
    ::close(pipe[1]);
    char text[64]{};
    const ssize_t size = ::read(pipe[0], text, sizeof text - 1);
    ::close(pipe[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(size > 0);
    int code = -1;
    std::size_t saved = 0;
    std::istringstream(text) >> code >> saved;
    CHECK(static_cast<ErrorCode>(code) == ErrorCode::DiskFull);
    CHECK(saved > 5);
    CHECK(saved < 300);
    CHECK(roundsIn(path) == saved + 1);
}

TEST_CASE("a database that has reached its largest size says that there is no room")
{
    const TempDir dir;
    Database database(dir.file("a.db"), Database::Access::ReadWrite);
    database.runScript("CREATE TABLE t (a TEXT); PRAGMA max_page_count = 4");
    const auto filled = attempt([&] {
        for (int i = 0; i < 1000; ++i)
            database.prepare("INSERT INTO t VALUES (?)").bind(std::string(500, 'x')).run();
    });
    REQUIRE_FALSE(filled.has_value());
    CHECK(filled.error().code == ErrorCode::DiskFull);
    CHECK(database.integerOf("SELECT count(*) FROM t") > 0);
}

TEST_CASE("a file that is no database is refused and left as it is")
{
    const TempDir dir;
    FixedClock clock(fromMs(0));
    const std::string text = "Dear ward,\n" + std::string(5000, '.') + "\n";
    std::ofstream(dir.file("letter.txt")) << text;
    for (const OpenMode mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const auto opened = Store::open(dir.file("letter.txt"), clock, mode);
        REQUIRE_FALSE(opened.has_value());
        CHECK(opened.error().code == ErrorCode::NotADatabase);
        checkWording(opened.error(), dir.file("letter.txt"));
    }
    CHECK(fs::file_size(dir.file("letter.txt")) == text.size());
}

TEST_CASE("a file whose header is overwritten is refused")
{
    Ward ward;
    ward.save(ward.round(0));
    ward.store.reset();
    overwrite(ward.dir.file("ward.db"), 0, std::string(64, '#'));
    const auto opened = Store::open(ward.dir.file("ward.db"), ward.clock);
    REQUIRE_FALSE(opened.has_value());
    CHECK(opened.error().code == ErrorCode::NotADatabase);
}

TEST_CASE("a file with a hole in its middle is found damaged by verify, which does not crash")
{
    Ward ward;
    for (int day = 0; day < 60; ++day)
        ward.save(ward.round(day));
    ward.store.reset();
    const auto size = static_cast<std::streamoff>(fs::file_size(ward.dir.file("ward.db")));
    for (const std::streamoff at : {size / 4, size / 2, 3 * size / 4}) {
        fs::copy_file(
            ward.dir.file("ward.db"), ward.dir.file("hurt.db"), fs::copy_options::overwrite_existing);
        overwrite(ward.dir.file("hurt.db"), at / 8192 * 8192, std::string(8192, '\x5A'));
        const auto store = Store::open(ward.dir.file("hurt.db"), ward.clock);
        if (!store) {
            CHECK(store.error().code == ErrorCode::Damaged);
            continue;
        }
        const auto verified = must((*store)->verify());
        REQUIRE(verified.fault.has_value());
        CHECK(verified.fault->where == "file");
    }
    CHECK(roundsIn(ward.dir.file("ward.db")) == 60);
}

TEST_CASE("a file that was cut short is found damaged when it is used")
{
    Ward ward;
    for (int day = 0; day < 60; ++day)
        ward.save(ward.round(day));
    ward.store.reset();
    fs::resize_file(ward.dir.file("ward.db"), fs::file_size(ward.dir.file("ward.db")) / 2);
    const auto store = Store::open(ward.dir.file("ward.db"), ward.clock);
    if (!store) {
        CHECK(store.error().code == ErrorCode::Damaged);
        return;
    }
    const auto verified = must((*store)->verify());
    REQUIRE(verified.fault.has_value());
    CHECK(verified.fault->where == "file");
    const auto saved = (*store)->saveRound(ward.unit, ward.round(100), "AB");
    CHECK((!saved && saved.error().code == ErrorCode::Damaged));
}

TEST_CASE("the ledger refuses to be changed by anybody's SQL")
{
    Ward ward;
    ward.save(ward.round(0));
    Database database(ward.dir.file("ward.db"), Database::Access::ReadWrite);
    for (const char* sql :
        {"DELETE FROM record", "UPDATE record SET actor = 'ZZ'", "UPDATE record SET body = x'00'",
            "INSERT OR REPLACE INTO record SELECT * FROM record WHERE seq = 2", "DELETE FROM station",
            "UPDATE station SET public_key = zeroblob(32)"}) {
        CAPTURE(sql);
        CHECK_FALSE(attempt([&] { database.run(sql); }).has_value());
    }
    CHECK(ward.fault() == "");
}
