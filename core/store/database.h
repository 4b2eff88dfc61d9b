// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/connection.h"
#include "core/store/failure.h"
#include "core/store/statement.h"

#include <map>

namespace cradlepost {

/**
 * One connection to one database, with the statements that are kept prepared. Its functions throw Failure.
 * For one thread.
 */
class Database
{
public:
    enum class Access {
        ReadWrite, ///< makes a file when there is none
        ReadOnly,
        Immutable, ///< read-only media: no lock and no shared memory beside the file
    };

    /** `address`: a SQLite file, or a server ("postgresql://…"). */
    Database(const std::string& address, Access access);
    /** A database in memory, gone when dropped. */
    static std::unique_ptr<Database> inMemory();

    [[nodiscard]] Dialect dialect() const { return m_connection->dialect(); }
    [[nodiscard]] Connection& connection() { return *m_connection; }

    /** A statement of this text, prepared once and kept. */
    Statement prepare(const std::string& sql);
    /** One whose rows are fetched in portions. Inside a transaction or snapshot. */
    Statement scan(const std::string& sql);
    /** Runs one statement and forgets it. */
    void run(const std::string& sql);
    /** Runs many statements, one after the other; the first fault ends it. */
    void runScript(const std::string& script);
    /** The first column of the first row. */
    std::int64_t integerOf(const std::string& sql);
    std::string textOf(const std::string& sql);

    void setBusyTimeout(std::chrono::milliseconds timeout);
    [[nodiscard]] bool inTransaction() const;
    [[nodiscard]] bool canWrite() const;
    [[nodiscard]] std::string schema() const { return m_connection->schema(); }
    /** The file, or the server's address without a password. */
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    std::string m_path;
    std::unique_ptr<Connection> m_connection;
    std::map<std::string, std::unique_ptr<Query>, std::less<>> m_prepared;
};

}
