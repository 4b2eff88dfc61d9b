// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/query.h"

#include <chrono>
#include <memory>
#include <string>

namespace cradlepost {

enum class Dialect { Sqlite, Postgres };

/** What a transaction writes: parts that it locks by name, or anything. A file has one lock for all. */
enum class WriteScope { Parts, Whole };

/** One open connection: what a Database works on. Its functions throw Failure. For one thread. */
class Connection
{
public:
    virtual ~Connection() = default;
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] virtual Dialect dialect() const = 0;
    virtual std::unique_ptr<Query> prepare(const std::string& sql) = 0;
    /** A query whose rows are fetched in portions, for more of them than memory should hold. */
    virtual std::unique_ptr<Query> scan(const std::string& sql) { return prepare(sql); }
    /** Runs many statements, one after the other; the first fault ends it. */
    virtual void runScript(const std::string& script) = 0;

    /** What is read after it still holds when it writes; of Parts what is read after their lock(). */
    virtual void beginWriting(WriteScope scope) = 0;
    /** Until the end of the transaction nobody else has this lock. First of a unit, then of a station. */
    virtual void lock(std::string_view what) = 0;
    /** All that is read until the end stands as at one moment. */
    virtual void beginReading() = 0;
    virtual void commit() = 0;
    virtual void rollback() = 0;
    [[nodiscard]] virtual bool inTransaction() const = 0;

    [[nodiscard]] virtual bool canWrite() const = 0;
    /** Where in the database its tables lie; empty when there is one place only. */
    [[nodiscard]] virtual std::string schema() const { return {}; }
    /** How long a write waits for another one. */
    virtual void setBusyTimeout(std::chrono::milliseconds timeout) = 0;

protected:
    Connection() = default;
};

}
