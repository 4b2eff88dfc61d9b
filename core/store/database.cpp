// SPDX-License-Identifier: MIT
#include "core/store/database.h"

#include "core/store/postgresaddress.h"
#include "core/store/postgresconnection.h"
#include "core/store/sqliteconnection.h"

namespace cradlepost {

namespace {

SqliteConnection::Access sqliteAccess(Database::Access access)
{
    switch (access) {
    case Database::Access::ReadOnly:
        return SqliteConnection::Access::ReadOnly;
    case Database::Access::Immutable:
        return SqliteConnection::Access::Immutable;
    case Database::Access::ReadWrite:
        break;
    }
    return SqliteConnection::Access::ReadWrite;
}

std::unique_ptr<Connection> connectionTo(const std::string& address, Database::Access access)
{
    if (isPostgresAddress(address))
        return std::make_unique<PostgresConnection>(address, access != Database::Access::ReadWrite);
    return std::make_unique<SqliteConnection>(address, sqliteAccess(access));
}

}

Database::Database(const std::string& address, Access access)
    : m_path(isPostgresAddress(address) ? shownAddress(address) : address)
    , m_connection(connectionTo(address, access))
{
}

std::unique_ptr<Database> Database::inMemory()
{
    return std::make_unique<Database>(":memory:", Access::ReadWrite);
}

Statement Database::prepare(const std::string& sql)
{
    auto at = m_prepared.find(sql);
    if (at == m_prepared.end())
        at = m_prepared.emplace(sql, m_connection->prepare(sql)).first;
    if (at->second->inUse)
        return Statement(m_connection->prepare(sql));
    return Statement(*at->second);
}

Statement Database::scan(const std::string& sql) { return Statement(m_connection->scan(sql)); }

void Database::run(const std::string& sql) { runScript(sql); }

void Database::runScript(const std::string& script) { m_connection->runScript(script); }

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

void Database::setBusyTimeout(std::chrono::milliseconds timeout) { m_connection->setBusyTimeout(timeout); }

bool Database::inTransaction() const { return m_connection->inTransaction(); }

bool Database::canWrite() const { return m_connection->canWrite(); }

}
