// SPDX-License-Identifier: MIT
#include "core/store/store.h"

#include "core/store/backup.h"
#include "core/store/migration.h"
#include "core/store/parts.h"
#include "core/store/postgresaddress.h"
#include "core/store/verification.h"

#include <filesystem>

namespace cradlepost {

namespace {

void setUpConnection(Database& database)
{
    database.run("PRAGMA foreign_keys = ON");
    database.run("PRAGMA synchronous = FULL");
    // A megabyte, a quarter of SQLite's own: from then on a save writes over what is there instead of making the file
    // longer, which costs the file system as much again as the save.
    database.run("PRAGMA wal_autocheckpoint = 250");
}

[[noreturn]] void refuseToWrite(const std::string& path)
{
    refuse(ErrorCode::ReadOnly, "database " + path + ": the file or its folder cannot be written",
        "Check the rights of the file and its folder, or use a folder that can be written.");
}

/** Makes the file when there is none. */
std::unique_ptr<Database> openOrMake(const std::string& path)
{
    try {
        return std::make_unique<Database>(path, Database::Access::ReadWrite);
    } catch (const Failure& failure) {
        // In a folder that is there a file that cannot be made reads as "not found" to SQLite.
        std::error_code error;
        const auto folder = std::filesystem::absolute(path, error).parent_path();
        if (failure.error.code == ErrorCode::NotFound && std::filesystem::is_directory(folder, error))
            refuseToWrite(path);
        throw;
    }
}

void bringUp(Database& database)
{
    if (schemaVersion(database) != newestSchema(database.dialect()))
        migrate(database, schemaSteps(database.dialect()),
            [](Database& older) { Projector(older, older).replayAll(); });
}

std::unique_ptr<Database> openForWriting(const std::string& path)
{
    if (isPostgresAddress(path)) {
        auto server = std::make_unique<Database>(path, Database::Access::ReadWrite);
        bringUp(*server);
        return server;
    }
    auto database = openOrMake(path);
    if (!database->canWrite())
        refuseToWrite(path);
    setUpConnection(*database);
    const int version = schemaVersion(*database);
    if (version == 0)
        database->run("PRAGMA page_size = 4096"); // 8192 saves 8 % of the file, a save then takes 15 % longer
    if (version <= newestSchema())
        database->run("PRAGMA journal_mode = WAL");
    bringUp(*database);
    return database;
}

bool hasLog(const std::string& path)
{
    std::error_code error;
    const auto size = std::filesystem::file_size(path + "-wal", error);
    return !error && size > 0;
}

/** Media that cannot be written have no place for the shared memory beside the file. */
std::unique_ptr<Database> openToRead(const std::string& path)
{
    try {
        auto database = std::make_unique<Database>(path, Database::Access::ReadOnly);
        schemaVersion(*database);
        return database;
    } catch (const Failure& failure) {
        if (isPostgresAddress(path))
            throw;
        const bool closedFolder
            = failure.error.code == ErrorCode::ReadOnly || failure.error.code == ErrorCode::NotFound;
        std::error_code error;
        if (!closedFolder || hasLog(path) || !std::filesystem::exists(path, error))
            throw;
        return std::make_unique<Database>(path, Database::Access::Immutable);
    }
}

std::unique_ptr<Database> openForReading(const std::string& path)
{
    auto database = openToRead(path);
    const int version = schemaVersion(*database);
    const int newest = newestSchema(database->dialect());
    if (version > newest)
        migrate(*database, schemaSteps(database->dialect())); // says so
    if (version < newest)
        refuse(ErrorCode::ReadOnly,
            "database " + database->path() + " is of an older version (schema " + std::to_string(version)
                + " of " + std::to_string(newest) + ") and cannot be brought up while it is only read",
            "Open it once for writing.");
    return database;
}

}

Result<std::unique_ptr<Store>> Store::open(const std::string& path, const Clock& clock, OpenMode mode)
{
    return attempt([&] {
        auto database = mode == OpenMode::ReadWrite ? openForWriting(path) : openForReading(path);
        return std::unique_ptr<Store>(new Store(std::make_unique<Parts>(std::move(database), clock)));
    });
}

Store::Store(std::unique_ptr<Parts> parts)
    : m_parts(std::move(parts))
{
}

Store::~Store() = default;

void Store::signWith(StationKey key) { m_parts->key = std::move(key); }

void Store::setBusyTimeout(std::chrono::milliseconds timeout) { m_parts->database->setBusyTimeout(timeout); }

const std::string& Store::path() const { return m_parts->database->path(); }

Result<void> Store::together(const std::function<Result<void>()>& writes)
{
    return m_parts->inTransaction([&] { need(writes()); });
}

Result<Verified> Store::verify() const
{
    return attempt([&] { return verifyDatabase(*m_parts->database); });
}

Result<void> Store::rebuild()
{
    return m_parts->inTransaction([&] { m_parts->projector.replayAll(); });
}

Result<void> Store::backup(const std::string& to) const
{
    return attempt([&] { copyInto(*m_parts->database, to); });
}

Result<void> Store::restore(const std::string& backup, const std::string& path, const Clock& clock)
{
    return attempt([&] {
        if (isPostgresAddress(path) || isPostgresAddress(backup))
            refuse(ErrorCode::InvalidArgument, "a database on a server cannot be restored from a file",
                "A server is restored by its own tools (pg_restore); import brings records in from a pack.");
        {
            const auto store = need(open(backup, clock, OpenMode::ReadOnly));
            const Verified verified = need(store->verify());
            if (verified.fault)
                refuse(ErrorCode::Damaged,
                    "backup " + backup + " does not verify: " + verified.fault->where + ": "
                        + verified.fault->what,
                    "Use an earlier backup; nothing was changed.");
        }
        putInPlace(backup, path, clock.now());
    });
}

}
