// SPDX-License-Identifier: MIT
#include "core/store/sqliteconnection.h"

#include "core/store/sqlerror.h"
#include "core/store/sqlitequery.h"

#include <atomic>
#include <cerrno>
#include <QSqlDriver>
#include <QSqlError>
#include <QUrl>
#include <QVariant>
#include <sqlite3.h>

namespace cradlepost {

namespace {

/** Qt's connections have names; ours are never looked up by them. */
QString freshName()
{
    static std::atomic<int> count{0};
    return QStringLiteral("cradlepost-%1").arg(++count);
}

QString fileName(const std::string& path, SqliteConnection::Access access)
{
    const QString name = QString::fromStdString(path);
    if (access != SqliteConnection::Access::Immutable)
        return name;
    return QStringLiteral("file:") + QString::fromLatin1(QUrl::toPercentEncoding(name, "/"))
        + QStringLiteral("?immutable=1");
}

QString options(SqliteConnection::Access access)
{
    switch (access) {
    case SqliteConnection::Access::ReadWrite:
        return {};
    case SqliteConnection::Access::ReadOnly:
        return QStringLiteral("QSQLITE_OPEN_READONLY");
    case SqliteConnection::Access::Immutable:
        return QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI");
    }
    return {};
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
    , m_connection(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), freshName()))
{
    m_connection.setDatabaseName(fileName(path, access));
    m_connection.setConnectOptions(options(access));
    const bool opened = m_connection.open();
    const QVariant handle = m_connection.driver()->handle();
    if (opened && handle.isValid() && qstrcmp(handle.typeName(), "sqlite3*") == 0)
        m_handle = *static_cast<sqlite3* const*>(handle.constData());
    if (m_handle == nullptr) {
        const QSqlError error = m_connection.lastError();
        const int systemErrno = errno;
        const QString name = m_connection.connectionName();
        m_connection = QSqlDatabase();
        QSqlDatabase::removeDatabase(name);
        throw Failure{
            sqliteError(error.nativeErrorCode().toInt(), systemErrno, path, error.text().toStdString())};
    }
}

SqliteConnection::~SqliteConnection()
{
    m_begin.reset();
    m_commit.reset();
    const QString name = m_connection.connectionName();
    m_connection.close();
    m_connection = QSqlDatabase();
    QSqlDatabase::removeDatabase(name);
}

std::unique_ptr<Query> SqliteConnection::prepare(const std::string& sql)
{
    QSqlQuery query(m_connection);
    if (!query.prepare(QString::fromStdString(sql)))
        throw lastFailure();
    return std::make_unique<SqliteQuery>(*this, std::move(query));
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
