// SPDX-License-Identifier: MIT
#include "core/store/statement.h"

#include "core/store/database.h"
#include "core/store/failure.h"

#include <algorithm>
#include <QSqlError>
#include <QSqlField>
#include <QSqlRecord>
#include <QVariant>

namespace cradlepost {

Statement::Statement(Database& database, PreparedQuery& kept)
    : m_database(&database)
    , m_prepared(&kept)
{
    m_prepared->inUse = true;
}

Statement::Statement(Database& database, std::unique_ptr<PreparedQuery> own)
    : m_database(&database)
    , m_own(std::move(own))
    , m_prepared(m_own.get())
{
}

Statement::Statement(Statement&& other) noexcept
    : m_database(other.m_database)
    , m_own(std::move(other.m_own))
    , m_prepared(std::exchange(other.m_prepared, nullptr))
    , m_bound(other.m_bound)
    , m_running(other.m_running)
{
}

Statement::~Statement()
{
    if (m_prepared == nullptr)
        return;
    if (m_running)
        m_prepared->query.finish();
    m_prepared->inUse = false;
}

Statement& Statement::bind(std::int64_t value)
{
    m_prepared->query.bindValue(m_bound++, QVariant(static_cast<qlonglong>(value)));
    return *this;
}

Statement& Statement::bind(std::string_view text)
{
    // A null QString would be stored as NULL.
    m_prepared->query.bindValue(m_bound++,
        QVariant(text.empty() ? QStringLiteral("")
                              : QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))));
    return *this;
}

Statement& Statement::bind(std::span<const unsigned char> bytes)
{
    m_prepared->query.bindValue(m_bound++,
        QVariant(
            QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()))));
    return *this;
}

Statement& Statement::bindNull()
{
    m_prepared->query.bindValue(m_bound++, QVariant());
    return *this;
}

void Statement::execute()
{
    m_running = true;
    if (!m_prepared->query.exec())
        throw m_database->lastFailure();
}

void Statement::run()
{
    execute();
    m_prepared->query.finish();
    m_running = false;
    m_bound = 0;
}

bool Statement::next()
{
    if (!m_running)
        execute();
    if (m_prepared->query.next())
        return true;
    if (m_prepared->query.lastError().isValid())
        throw m_database->lastFailure();
    return false;
}

int Statement::columns() const { return m_prepared->query.record().count(); }

std::string Statement::columnName(int column) const
{
    return m_prepared->query.record().fieldName(column).toStdString();
}

std::int64_t Statement::integer(int column) const { return m_prepared->query.value(column).toLongLong(); }

std::string Statement::text(int column) const
{
    return m_prepared->query.value(column).toString().toStdString();
}

void Statement::copyBytes(int column, std::span<unsigned char> out) const
{
    const QByteArray bytes = m_prepared->query.value(column).toByteArray();
    std::copy_n(bytes.begin(), std::min<std::size_t>(static_cast<std::size_t>(bytes.size()), out.size()),
        out.begin());
}

}
