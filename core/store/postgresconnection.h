// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/connection.h"
#include "core/store/failure.h"

#include <map>
#include <vector>

struct pg_conn;
struct pg_result;

namespace cradlepost {

struct PostgresResultEnd
{
    void operator()(pg_result* result) const;
};
using PostgresResult = std::unique_ptr<pg_result, PostgresResultEnd>;

/** Values for the placeholders of one query, in the forms that libpq sends. */
struct PostgresValues
{
    std::vector<std::string> bytes;
    std::vector<bool> isNull;
    std::vector<int> formats; ///< 0 text, 1 binary
};

/**
 * A PostgreSQL server, spoken to through libpq. Inside a transaction what gives no rows is sent on without
 * waiting (pipeline mode): its faults come with the next query that gives rows, at the latest with commit().
 * A connection that was lost is made anew at the next use outside a transaction.
 */
class PostgresConnection final : public Connection
{
public:
    PostgresConnection(const std::string& address, bool readOnly);
    ~PostgresConnection() override;

    [[nodiscard]] Dialect dialect() const override { return Dialect::Postgres; }
    std::unique_ptr<Query> prepare(const std::string& sql) override;
    std::unique_ptr<Query> scan(const std::string& sql) override;
    void runScript(const std::string& script) override;
    void beginWriting(WriteScope scope) override;
    void beginReading() override;
    void lock(std::string_view what) override;
    void commit() override;
    void rollback() override;
    [[nodiscard]] bool inTransaction() const override { return m_begun; }
    [[nodiscard]] bool canWrite() const override { return !m_readOnly; }
    [[nodiscard]] std::string schema() const override { return m_schema; }
    void setBusyTimeout(std::chrono::milliseconds timeout) override;

    /** Sends it on; in a transaction without waiting for what comes of it. `sql` with placeholders $1, $2 …
     */
    void send(const std::string& sql, const PostgresValues& values);
    /** Sends it and waits for its rows. */
    PostgresResult ask(const std::string& sql, const PostgresValues& values);
    /** The same without preparing it, for what is said once. */
    PostgresResult askOnce(const std::string& sql, const PostgresValues& values);
    std::string freshCursor();

    // Notifications
    /** Listens on the channel from now on, also after a connection was made anew. */
    void listen(const std::string& channel);
    /** To be watched for reading; -1 while there is none. */
    [[nodiscard]] int socket() const;
    /** How many notifications came in since the last call. Does not wait. */
    int takeNotifications();

private:
    void connect();
    /** Throws when the connection was lost inside a transaction; else makes it anew. */
    void ensure();
    [[nodiscard]] bool isLost() const;
    void queue(const std::string& sql, const PostgresValues& values, bool keep);
    /** Waits for all that was sent; throws its first fault, gives what came last. */
    PostgresResult settle();
    PostgresResult settleOrRepeat(const std::string& sql, const PostgresValues& values, bool keep);
    [[noreturn]] void fail(const pg_result* result) const;
    /** What libpq says, without line ends and without the password. */
    [[nodiscard]] std::string clean(const char* text) const;

    std::string m_address;
    std::string m_shown;
    std::string m_password;
    bool m_readOnly;
    std::chrono::milliseconds m_timeout{5000};
    std::chrono::steady_clock::time_point
        m_notBefore; ///< a host that does not even refuse is left alone for a while
    pg_conn* m_connection = nullptr;
    bool m_begun = false;
    bool m_committing = false;
    int m_queued = 0;
    std::size_t m_queuedBytes = 0;
    int m_names = 0;
    std::map<std::string, std::string, std::less<>> m_prepared; ///< text to the server's name for it
    std::vector<std::string> m_unproven; ///< texts whose preparing was sent and not yet acknowledged
    std::vector<std::string> m_channels;
    std::string m_schema;
};

}
