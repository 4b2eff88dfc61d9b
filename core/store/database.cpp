// SPDX-License-Identifier: MIT
#include "core/store/database.h"

#include "core/store/sqlerror.h"

#include <atomic>
#include <cerrno>
#include <QSqlDriver>
#include <QSqlError>
#include <QSqlResult>
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

QString fileName(const std::string& path, Database::Access access)
{
    const QString name = QString::fromStdString(path);
    if (access != Database::Access::Immutable)
        return name;
    return QStringLiteral("file:") + QString::fromLatin1(QUrl::toPercentEncoding(name, "/"))
        + QStringLiteral("?immutable=1");
}

QString options(Database::Access access)
{
    switch (access) {
    case Database::Access::ReadWrite:
        return {};
    case Database::Access::ReadOnly:
        return QStringLiteral("QSQLITE_OPEN_READONLY");
    case Database::Access::Immutable:
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

Database::Database(const std::string& path, Access access)
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

std::unique_ptr<Database> Database::inMemory()
{
    return std::make_unique<Database>(":memory:", Access::ReadWrite);
}

Database::~Database()
{
    m_prepared.clear();
    const QString name = m_connection.connectionName();
    m_connection.close();
    m_connection = QSqlDatabase();
    QSqlDatabase::removeDatabase(name);
}

std::unique_ptr<PreparedQuery> Database::prepareFresh(const std::string& sql)
{
    auto prepared = std::make_unique<PreparedQuery>(PreparedQuery{.query = QSqlQuery(m_connection)});
    if (!prepared->query.prepare(QString::fromStdString(sql)))
        throw lastFailure();
    const QVariant handle = prepared->query.result()->handle();
    prepared->handle = *static_cast<sqlite3_stmt* const*>(handle.constData());
    return prepared;
}

Statement Database::prepare(const std::string& sql)
{
    auto at = m_prepared.find(sql);
    if (at == m_prepared.end())
        at = m_prepared.emplace(sql, prepareFresh(sql)).first;
    if (at->second->inUse)
        return Statement(*this, prepareFresh(sql));
    return Statement(*this, *at->second);
}

void Database::run(const std::string& sql) { runScript(sql); }

void Database::runScript(const std::string& script)
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

std::int64_t Database::integerOf(const std::string& sql)
{
    Statement statement = prepare(sql);
    return statement.next() ? statement.integer(0) : 0;
}

std::string Database::textOf(const std::string& sql)
{
    Statement statement = prepare(sql);
    return statement.next() ? statement.text(0) : std::string();
}

void Database::setBusyTimeout(std::chrono::milliseconds timeout)
{
    sqlite3_busy_timeout(m_handle, static_cast<int>(timeout.count()));
}

bool Database::inTransaction() const { return sqlite3_get_autocommit(m_handle) == 0; }

bool Database::canWrite() const { return sqlite3_db_readonly(m_handle, "main") == 0; }

Failure Database::lastFailure() const
{
    const int errnoNow = errno; // SQLite keeps it for some of its faults only
    const int kept = sqlite3_system_errno(m_handle);
    return Failure{sqliteError(
        sqlite3_extended_errcode(m_handle), kept != 0 ? kept : errnoNow, m_path, sqlite3_errmsg(m_handle))};
}

}
