// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/failure.h"
#include "core/store/statement.h"

#include <chrono>
#include <map>
#include <memory>
#include <QSqlDatabase>
#include <string>

struct sqlite3;

namespace cradlepost {

/** One connection to one SQLite file. Its functions throw Failure. For one thread. */
class Database
{
public:
    enum class Access {
        ReadWrite, ///< makes the file when there is none
        ReadOnly,
        Immutable, ///< read-only media: no lock and no shared memory beside the file
    };

    Database(const std::string& path, Access access);
    /** A database in memory, gone when dropped. */
    static std::unique_ptr<Database> inMemory();
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /** A statement of this text, prepared once and kept. */
    Statement prepare(const std::string& sql);
    /** Runs one statement and forgets it. */
    void run(const std::string& sql);
    /** Runs many statements, one after the other; the first fault ends it. */
    void runScript(const std::string& script);
    /** The first column of the first row, for pragmas. */
    std::int64_t integerOf(const std::string& sql);
    std::string textOf(const std::string& sql);

    void setBusyTimeout(std::chrono::milliseconds timeout);
    [[nodiscard]] bool inTransaction() const;
    [[nodiscard]] bool canWrite() const;
    [[nodiscard]] sqlite3* handle() const { return m_handle; }
    [[nodiscard]] const std::string& path() const { return m_path; }
    /** The error of this handle's last call. */
    [[nodiscard]] Failure lastFailure() const;

private:
    std::unique_ptr<PreparedQuery> prepareFresh(const std::string& sql);

    std::string m_path;
    QSqlDatabase m_connection;
    sqlite3* m_handle = nullptr;
    std::map<std::string, std::unique_ptr<PreparedQuery>, std::less<>> m_prepared;
};

}
