// SPDX-License-Identifier: MIT
#include "core/store/sqliteconnection.h"

#include "core/store/sqlerror.h"
#include "core/store/sqlitequery.h"

#include <cerrno>
#include <QByteArray>
#include <sqlite3.h>

namespace cradlepost {

namespace {

constexpr int patience = 5000; // milliseconds that a write waits for another one, unless told otherwise

std::string fileName(const std::string& path, SqliteConnection::Access access)
{
    if (access != SqliteConnection::Access::Immutable)
        return path;
    return "file:" + QByteArray::fromStdString(path).toPercentEncoding("/").toStdString() + "?immutable=1";
}

int flags(SqliteConnection::Access access)
{
    // Each connection belongs to one thread at a time, so SQLite need not lock it.
    switch (access) {
    case SqliteConnection::Access::ReadWrite:
        return SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOMUTEX;
    case SqliteConnection::Access::ReadOnly:
        return SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX;
    case SqliteConnection::Access::Immutable:
        return SQLITE_OPEN_READONLY | SQLITE_OPEN_URI | SQLITE_OPEN_NOMUTEX;
    }
    return 0;
}

/** Nobody asks SQLite how much memory it has; counting locks a mutex for each piece. */
void leaveMemoryUncounted()
{
    // Refused, without harm, once another part of the process has used SQLite.
    [[maybe_unused]] static const int done = sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0);
}

/** Ends a raw statement when dropped. */
struct Finalizer
{
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};
using RawStatement = std::unique_ptr<sqlite3_stmt, Finalizer>;

}

SqliteConnection::SqliteConnection(const std::string& path, Access access)
    : m_path(path)
{
    leaveMemoryUncounted();
    const int code = sqlite3_open_v2(fileName(path, access).c_str(), &m_handle, flags(access), nullptr);
    if (code != SQLITE_OK) {
        const int systemErrno = errno;
        const Failure failure = m_handle != nullptr
            ? lastFailure()
            : Failure{sqliteError(code, systemErrno, path, sqlite3_errstr(code))};
        sqlite3_close(m_handle);
        throw failure;
    }
    sqlite3_busy_timeout(m_handle, patience);
}

SqliteConnection::~SqliteConnection()
{
    m_begin.reset();
    m_commit.reset();
    sqlite3_close(m_handle);
}

std::unique_ptr<Query> SqliteConnection::prepare(const std::string& sql)
{
    sqlite3_stmt* statement = nullptr;
    // With the zero at its end, which spares SQLite a copy.
    if (sqlite3_prepare_v3(m_handle, sql.c_str(), static_cast<int>(sql.size() + 1), SQLITE_PREPARE_PERSISTENT,
            &statement, nullptr)
        != SQLITE_OK)
        throw lastFailure();
    return std::make_unique<SqliteQuery>(*this, statement);
}

void SqliteConnection::runScript(const std::string& script)
{
    const char* rest = script.c_str();
    while (*rest != '\0') {
        sqlite3_stmt* raw = nullptr;
        if (sqlite3_prepare_v2(m_handle, rest, -1, &raw, &rest) != SQLITE_OK)
            throw lastFailure();
        const RawStatement statement(raw);
        if (!statement)
            continue; // white space or a comment
        int step = SQLITE_ROW;
        while (step == SQLITE_ROW)
            step = sqlite3_step(raw);
        if (step != SQLITE_DONE)
            throw lastFailure();
    }
}

void SqliteConnection::runKept(std::unique_ptr<Query>& kept, const char* sql)
{
    if (!kept)
        kept = prepare(sql);
    try {
        kept->run();
    } catch (const Failure&) {
        kept->reset();
        throw;
    }
}

// The write lock at once, so that what is read in it still holds when it writes.
void SqliteConnection::beginWriting(WriteScope) { runKept(m_begin, "BEGIN IMMEDIATE"); }

void SqliteConnection::beginReading() { runScript("BEGIN"); }

void SqliteConnection::commit() { runKept(m_commit, "COMMIT"); }

void SqliteConnection::rollback() { runScript("ROLLBACK"); }

void SqliteConnection::setBusyTimeout(std::chrono::milliseconds timeout)
{
    sqlite3_busy_timeout(m_handle, static_cast<int>(timeout.count()));
}

bool SqliteConnection::inTransaction() const { return sqlite3_get_autocommit(m_handle) == 0; }

bool SqliteConnection::canWrite() const { return sqlite3_db_readonly(m_handle, "main") == 0; }

Failure SqliteConnection::lastFailure() const
{
    const int errnoNow = errno; // SQLite keeps it for some of its faults only
    const int kept = sqlite3_system_errno(m_handle);
    return Failure{sqliteError(
        sqlite3_extended_errcode(m_handle), kept != 0 ? kept : errnoNow, m_path, sqlite3_errmsg(m_handle))};
}

}
