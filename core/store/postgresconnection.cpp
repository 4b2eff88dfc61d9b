// SPDX-License-Identifier: MIT
#include "core/store/postgresconnection.h"

#include "core/store/libpq.h"
#include "core/store/postgresaddress.h"
#include "core/store/postgreserror.h"
#include "core/store/postgresquery.h"

namespace cradlepost {

namespace {

// Enough to keep the server busy; what it answers to so many fits its socket's buffer.
constexpr int mostQueued = 256;
constexpr std::chrono::seconds longWait{1};
constexpr std::chrono::seconds leaveAlone{20};
constexpr std::size_t mostQueuedBytes = 512U << 10U;

/** All writers hold it shared; whoever touches more than one unit holds it alone. */
constexpr const char* lockAlone = "SELECT pg_advisory_xact_lock(4855236401)";
constexpr const char* lockShared = "SELECT pg_advisory_xact_lock_shared(4855236401)";

struct Arguments
{
    explicit Arguments(const PostgresValues& values)
    {
        for (std::size_t i = 0; i < values.bytes.size(); ++i) {
            pointers.push_back(values.isNull[i] ? nullptr : values.bytes[i].c_str());
            sizes.push_back(static_cast<int>(values.bytes[i].size()));
        }
    }
    std::vector<const char*> pointers;
    std::vector<int> sizes;
};

bool isFault(ExecStatusType status)
{
    return status == PGRES_FATAL_ERROR || status == PGRES_BAD_RESPONSE || status == PGRES_NONFATAL_ERROR;
}

}

void PostgresResultEnd::operator()(pg_result* result) const { libpq().PQclear(result); }

PostgresConnection::PostgresConnection(const std::string& address, bool readOnly)
    : m_address(address)
    , m_shown(shownAddress(address))
    , m_password(passwordIn(address))
    , m_readOnly(readOnly)
{
    need(loadLibpq());
    // What libpq says of a broken address repeats it, the password too.
    if (!canBeRead(address))
        refuse(ErrorCode::InvalidArgument, "the address of the database server cannot be read",
            "Write it as postgresql://USER@HOST/NAME.");
    connect();
}

PostgresConnection::~PostgresConnection() { libpq().PQfinish(m_connection); }

void PostgresConnection::connect()
{
    libpq().PQfinish(m_connection);
    m_prepared.clear();
    m_unproven.clear();
    m_queued = 0;
    m_queuedBytes = 0;
    m_begun = false;
    // What the address says counts for more than what stands before it.
    const char* names[] = {"connect_timeout", "tcp_user_timeout", "fallback_application_name", "dbname",
        "client_encoding", nullptr};
    const char* values[] = {"5", "10000", "cradlepost", m_address.c_str(), "UTF8", nullptr};
    const auto from = std::chrono::steady_clock::now();
    m_connection = libpq().PQconnectdbParams(names, values, 1);
    if (libpq().PQstatus(m_connection) != CONNECTION_OK) {
        // A window that waited for every look at the shift would stand still.
        if (const auto now = std::chrono::steady_clock::now(); now - from > longWait)
            m_notBefore = now + leaveAlone;
        const std::string said = clean(libpq().PQerrorMessage(m_connection));
        // libpq keeps no SQLSTATE of a connection that was refused.
        const bool badPassword = said.find("assword") != std::string::npos
            || said.find("authentication") != std::string::npos || said.find("role \"") != std::string::npos;
        const bool noDatabase = said.find("database \"") != std::string::npos
            && said.find("does not exist") != std::string::npos;
        throw postgresFailure(noDatabase ? "3D000" : badPassword ? "28000" : "", m_shown, said);
    }
    libpq().PQsetNoticeProcessor(
        m_connection, [](void*, const char*) {}, nullptr);
    std::string start
        = "SET synchronous_commit = on; SET lock_timeout = " + std::to_string(m_timeout.count());
    if (m_readOnly)
        start += "; SET default_transaction_read_only = on";
    for (const std::string& channel : m_channels)
        start += "; LISTEN " + channel;
    start += "; SELECT current_schema()";
    const PostgresResult result(libpq().PQexec(m_connection, start.c_str()));
    if (libpq().PQresultStatus(result.get()) != PGRES_TUPLES_OK)
        fail(result.get());
    m_schema = libpq().PQgetvalue(result.get(), 0, 0);
}

bool PostgresConnection::isLost() const { return libpq().PQstatus(m_connection) != CONNECTION_OK; }

void PostgresConnection::ensure()
{
    if (!isLost())
        return;
    if (m_begun)
        throw postgresFailure("", m_shown, "the connection was lost");
    if (std::chrono::steady_clock::now() < m_notBefore)
        throw postgresFailure("", m_shown, "it is tried again in a moment");
    connect();
}

std::string PostgresConnection::clean(const char* text) const
{
    std::string said = text == nullptr ? "" : text;
    while (!said.empty() && (said.back() == '\n' || said.back() == ' '))
        said.pop_back();
    for (char& c : said)
        if (c == '\n')
            c = ' ';
    for (std::size_t at = 0; !m_password.empty() && (at = said.find(m_password, at)) != std::string::npos;)
        said.replace(at, m_password.size(), "…");
    return said;
}

void PostgresConnection::fail(const pg_result* result) const
{
    const char* state = result == nullptr ? nullptr : libpq().PQresultErrorField(result, PG_DIAG_SQLSTATE);
    const char* text = result == nullptr ? nullptr : libpq().PQresultErrorField(result, PG_DIAG_MESSAGE_PRIMARY);
    // Its details would show the values of a row.
    Failure failure = postgresFailure(state == nullptr || isLost() ? "" : state, m_shown,
        clean(text != nullptr ? text : libpq().PQerrorMessage(m_connection)));
    if (isLost()) {
        failure.isPassing = true;
        failure.isInDoubt = m_committing;
    }
    throw failure;
}

void PostgresConnection::queue(const std::string& sql, const PostgresValues& values, bool keep)
{
    if (libpq().PQpipelineStatus(m_connection) == PQ_PIPELINE_OFF)
        libpq().PQenterPipelineMode(m_connection);
    const Arguments arguments(values);
    const auto count = static_cast<int>(values.bytes.size());
    bool sent = true;
    if (keep) {
        auto at = m_prepared.find(sql);
        if (at == m_prepared.end()) {
            at = m_prepared.emplace(sql, "s" + std::to_string(++m_names)).first;
            m_unproven.push_back(sql);
            sent = libpq().PQsendPrepare(m_connection, at->second.c_str(), sql.c_str(), 0, nullptr) == 1;
        }
        sent = sent
            && libpq().PQsendQueryPrepared(m_connection, at->second.c_str(), count, arguments.pointers.data(),
                   arguments.sizes.data(), values.formats.data(), 1)
                == 1;
    } else {
        sent = libpq().PQsendQueryParams(m_connection, sql.c_str(), count, nullptr, arguments.pointers.data(),
                   arguments.sizes.data(), values.formats.data(), 1)
            == 1;
    }
    ++m_queued;
    for (const std::string& bytes : values.bytes)
        m_queuedBytes += bytes.size();
    if (!sent && !isLost())
        fail(nullptr);
}

PostgresResult PostgresConnection::settle()
{
    PostgresResult last;
    PostgresResult fault;
    bool atEnd = libpq().PQpipelineSync(m_connection) != 1;
    while (!atEnd && !isLost()) {
        PostgresResult one(libpq().PQgetResult(m_connection));
        const ExecStatusType status = libpq().PQresultStatus(one.get());
        if (!one || status == PGRES_PIPELINE_ABORTED)
            continue;
        atEnd = status == PGRES_PIPELINE_SYNC;
        if (isFault(status) && !fault)
            fault = std::move(one);
        else if (!atEnd)
            last = std::move(one);
    }
    m_queued = 0;
    m_queuedBytes = 0;
    if (fault || isLost()) {
        for (const std::string& sql : m_unproven)
            m_prepared.erase(sql);
        m_unproven.clear();
        fail(fault.get());
    }
    m_unproven.clear();
    return last;
}

PostgresResult PostgresConnection::settleOrRepeat(
    const std::string& sql, const PostgresValues& values, bool keep)
{
    ensure();
    const bool alone = !m_begun;
    queue(sql, values, keep);
    try {
        return settle();
    } catch (const Failure&) {
        // Outside a transaction it is a reading, or a write that does no harm twice.
        if (!alone || !isLost())
            throw;
    }
    connect();
    queue(sql, values, keep);
    return settle();
}

void PostgresConnection::send(const std::string& sql, const PostgresValues& values)
{
    if (!m_begun) {
        settleOrRepeat(sql, values, true);
        return;
    }
    ensure();
    queue(sql, values, true);
    if (m_queued >= mostQueued || m_queuedBytes >= mostQueuedBytes)
        settle();
}

PostgresResult PostgresConnection::ask(const std::string& sql, const PostgresValues& values)
{
    return settleOrRepeat(sql, values, true);
}

PostgresResult PostgresConnection::askOnce(const std::string& sql, const PostgresValues& values)
{
    return settleOrRepeat(sql, values, false);
}

std::string PostgresConnection::freshCursor() { return "scan" + std::to_string(++m_names); }

std::unique_ptr<Query> PostgresConnection::prepare(const std::string& sql)
{
    return std::make_unique<PostgresQuery>(*this, sql, PostgresQuery::Rows::AtOnce);
}

std::unique_ptr<Query> PostgresConnection::scan(const std::string& sql)
{
    return std::make_unique<PostgresQuery>(
        *this, sql, m_begun ? PostgresQuery::Rows::InPortions : PostgresQuery::Rows::AtOnce);
}

void PostgresConnection::runScript(const std::string& script)
{
    ensure();
    if (m_queued > 0)
        settle();
    if (libpq().PQpipelineStatus(m_connection) != PQ_PIPELINE_OFF)
        libpq().PQexitPipelineMode(m_connection);
    const PostgresResult result(libpq().PQexec(m_connection, script.c_str()));
    m_begun = m_begun || libpq().PQtransactionStatus(m_connection) == PQTRANS_INTRANS;
    if (isFault(libpq().PQresultStatus(result.get())) || isLost())
        fail(result.get());
}

void PostgresConnection::beginWriting(WriteScope scope)
{
    ensure();
    m_begun = true;
    m_committing = false;
    queue("BEGIN ISOLATION LEVEL READ COMMITTED", {}, true);
    queue(scope == WriteScope::Whole ? lockAlone : lockShared, {}, true);
}

void PostgresConnection::lock(std::string_view what)
{
    send("SELECT pg_advisory_xact_lock(hashtextextended($1, 0))",
        {.bytes = {std::string(what)}, .isNull = {false}, .formats = {1}});
}

void PostgresConnection::beginReading()
{
    ensure();
    m_begun = true;
    m_committing = false;
    queue("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", {}, true);
}

void PostgresConnection::commit()
{
    ensure();
    m_committing = true;
    queue("COMMIT", {}, true);
    const PostgresResult said = settle();
    m_begun = false;
    m_committing = false;
    if (said && std::string_view(libpq().PQcmdStatus(said.get())) != "COMMIT")
        throw postgresFailure("25P02", m_shown, "the transaction had failed before");
}

void PostgresConnection::rollback()
{
    m_committing = false;
    m_begun = false;
    if (!isLost()) {
        try {
            queue("ROLLBACK", {}, false);
            settle();
        } catch (const Failure&) {
            // What was queued before it may have failed: then only that was thrown, and this was skipped.
            if (!isLost() && libpq().PQtransactionStatus(m_connection) != PQTRANS_IDLE) {
                queue("ROLLBACK", {}, false);
                settle();
            }
        }
    }
}

void PostgresConnection::setBusyTimeout(std::chrono::milliseconds timeout)
{
    m_timeout = timeout;
    runScript("SET lock_timeout = " + std::to_string(timeout.count()));
}

void PostgresConnection::listen(const std::string& channel)
{
    m_channels.push_back(channel);
    runScript("LISTEN " + channel);
}

int PostgresConnection::socket() const { return isLost() ? -1 : libpq().PQsocket(m_connection); }

int PostgresConnection::takeNotifications()
{
    if (isLost() || libpq().PQconsumeInput(m_connection) == 0)
        return 0;
    int count = 0;
    while (PGnotify* one = libpq().PQnotifies(m_connection)) {
        ++count;
        libpq().PQfreemem(one);
    }
    return count;
}

}
