// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/database.h"
#include "core/store/failure.h"

namespace cradlepost {

/**
 * One transaction; rolls back when it is dropped without commit(). Takes its lock at once, so that what is
 * read in it still holds when it writes. Inside another one it is a savepoint of it.
 */
class Transaction
{
public:
    explicit Transaction(Database& database, WriteScope scope = WriteScope::Whole)
        : m_database(database)
        , m_nested(database.inTransaction())
    {
        if (m_nested)
            m_database.prepare("SAVEPOINT inner_write").run();
        else
            m_database.connection().beginWriting(scope);
    }
    ~Transaction()
    {
        if (m_done)
            return;
        try {
            // A full disk may have rolled all of it back already.
            if (!m_database.inTransaction())
                return;
            if (m_nested)
                m_database.run("ROLLBACK TO inner_write; RELEASE inner_write");
            else
                m_database.connection().rollback();
        } catch (const Failure&) {
            // The fault that brought us here is the one to tell.
        }
    }
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    void commit()
    {
        if (m_nested)
            m_database.prepare("RELEASE inner_write").run();
        else
            m_database.connection().commit();
        m_done = true;
    }

private:
    Database& m_database;
    bool m_nested;
    bool m_done = false;
};

/** One reading of the database as it stands at one moment. */
class Snapshot
{
public:
    explicit Snapshot(Database& database)
        : m_database(database)
        , m_nested(database.inTransaction())
    {
        if (!m_nested)
            m_database.connection().beginReading();
    }
    ~Snapshot()
    {
        try {
            if (!m_nested && m_database.inTransaction())
                m_database.connection().rollback();
        } catch (const Failure&) {
            // Nothing was written, so nothing is lost.
        }
    }
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

private:
    Database& m_database;
    bool m_nested;
};

}
