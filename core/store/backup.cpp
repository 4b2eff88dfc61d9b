// SPDX-License-Identifier: MIT
#include "core/store/backup.h"

#include "core/store/failure.h"
#include "core/store/filecopy.h"

#include <filesystem>

namespace cradlepost {

namespace {

namespace fs = std::filesystem;

bool isThere(const std::string& path)
{
    std::error_code error;
    return fs::exists(path, error);
}

void removeIfThere(const std::string& path)
{
    std::error_code error;
    fs::remove(path, error);
}

/** Brings what stands in the log into the file and ends the log. Throws Locked while others have it open. */
void settle(const std::string& path)
{
    Database database(path, Database::Access::ReadWrite);
    if (database.textOf("PRAGMA journal_mode = DELETE") != "delete")
        refuse(ErrorCode::Locked, "database " + path + ": another program holds the file",
            "Close other windows of this program and try again.");
}

/** Keeps the file that is there, as it is, under names that end in `mark`. */
void keepOld(const std::string& path, const std::string& mark)
{
    try {
        settle(path);
    } catch (const Failure& failure) {
        // A damaged file is kept with its log, as it is; a file in use is not touched.
        const ErrorCode code = failure.error.code;
        if (code != ErrorCode::Damaged && code != ErrorCode::NotADatabase)
            throw;
    }
    keepUnder(path, path + mark);
    if (isThere(path + "-wal"))
        keepUnder(path + "-wal", path + mark + "-wal");
    syncFolderOf(path);
    // A log of the old file would be taken for one of the new.
    removeIfThere(path + "-wal");
    removeIfThere(path + "-shm");
    removeIfThere(path + "-journal");
}

std::string freeMark(const std::string& path, Instant now)
{
    const std::string mark = ".before-restore-" + std::to_string(toMs(now));
    std::string free = mark;
    for (int i = 2; isThere(path + free); ++i)
        free = mark + '-' + std::to_string(i);
    return free;
}

}

void copyInto(Database& database, const std::string& to)
{
    if (database.dialect() != Dialect::Sqlite)
        refuse(ErrorCode::InvalidArgument,
            "database " + database.path() + " lies on a server: no file is copied",
            "A server is backed up by its own tools (pg_dump, pg_basebackup); export writes its records into "
            "a "
            "pack.");
    if (isThere(to))
        refuse(ErrorCode::AlreadyExists, "cannot write " + to + ": the file is there already",
            "Choose another name.");
    if (database.inTransaction())
        refuse(ErrorCode::InvalidArgument, "no copy can be made inside a transaction");
    const std::string draft = to + ".part";
    removeIfThere(draft);
    try {
        database.prepare("VACUUM INTO ?").bind(draft).run();
        syncFile(draft);
        publish(draft, to);
    } catch (const Failure&) {
        removeIfThere(draft);
        throw;
    }
}

void putInPlace(const std::string& backup, const std::string& path, Instant now)
{
    const std::string draft = path + ".restoring";
    try {
        copyFile(backup, draft);
        const std::string mark = freeMark(path, now);
        if (isThere(path))
            keepOld(path, mark);
        // Before the file changes: with the old key the chain of the backup could go on twice.
        std::error_code error;
        fs::rename(path + ".key", path + ".key" + mark, error);
        if (error && error != std::errc::no_such_file_or_directory)
            refuse(ErrorCode::Io, "cannot put the key " + path + ".key aside: " + error.message());
        syncFolderOf(path);
        fs::rename(draft, path, error);
        if (error)
            refuse(ErrorCode::Io, "cannot rename " + draft + ": " + error.message());
        syncFolderOf(path);
    } catch (const Failure&) {
        removeIfThere(draft);
        throw;
    }
}

}
