// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/connection.h"
#include "core/store/failure.h"

struct sqlite3;

namespace cradlepost {

/** A SQLite file. Not Qt's driver, which hands on neither bytes nor whole numbers without a copy of each. */
class SqliteConnection final : public Connection
{
public:
    enum class Access {
        ReadWrite, ///< makes the file when there is none
        ReadOnly,
        Immutable, ///< read-only media: no lock and no shared memory beside the file
    };

    SqliteConnection(const std::string& path, Access access);
    ~SqliteConnection() override;

    [[nodiscard]] Dialect dialect() const override { return Dialect::Sqlite; }
    std::unique_ptr<Query> prepare(const std::string& sql) override;
    void runScript(const std::string& script) override;
    void beginWriting(WriteScope scope) override;
    void lock(std::string_view) override { } // beginWriting has locked the whole file
    void beginReading() override;
    void commit() override;
    void rollback() override;
    [[nodiscard]] bool inTransaction() const override;
    [[nodiscard]] bool canWrite() const override;
    void setBusyTimeout(std::chrono::milliseconds timeout) override;

    /** The error of this handle's last call. */
    [[nodiscard]] Failure lastFailure() const;

private:
    /** Runs one that is kept prepared: a save is mostly such small steps. */
    void runKept(std::unique_ptr<Query>& kept, const char* sql);

    std::string m_path;
    sqlite3* m_handle = nullptr;
    std::unique_ptr<Query> m_begin;
    std::unique_ptr<Query> m_commit;
};

}
