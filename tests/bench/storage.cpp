// SPDX-License-Identifier: MIT
// Figures of the store: durable save against a bare SQLite commit, reads of *This shift*, bytes a round.
#include "core/store/shiftview.h"
#include "tests/support/builders.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <sqlite3.h>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

double medianMs(int times, const std::function<void()>& run)
{
    std::vector<double> took;
    for (int i = 0; i < times; ++i) {
        const auto from = steady_clock::now();
        run();
        took.push_back(duration<double, std::milli>(steady_clock::now() - from).count());
    }
    std::sort(took.begin(), took.end());
    return took[took.size() / 2];
}

/** One row of so many bytes, committed with WAL and synchronous=FULL through SQLite's own interface. */
class BareCommit
{
public:
    BareCommit(const std::string& file, int pageSize, std::size_t bytes)
        : m_blob(bytes, 'x')
    {
        sqlite3_open(file.c_str(), &m_db);
        const std::string start = "PRAGMA page_size=" + std::to_string(pageSize)
            + "; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE t(b BLOB)";
        sqlite3_exec(m_db, start.c_str(), nullptr, nullptr, nullptr);
        sqlite3_prepare_v2(m_db, "INSERT INTO t VALUES(?)", -1, &m_insert, nullptr);
    }
    ~BareCommit()
    {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_db);
    }
    BareCommit(const BareCommit&) = delete;
    BareCommit& operator=(const BareCommit&) = delete;
    void operator()()
    {
        sqlite3_bind_blob(m_insert, 1, m_blob.data(), static_cast<int>(m_blob.size()), SQLITE_STATIC);
        sqlite3_step(m_insert);
        sqlite3_reset(m_insert);
    }

private:
    sqlite3* m_db = nullptr;
    sqlite3_stmt* m_insert = nullptr;
    std::string m_blob;
};

/** About one item in twenty is a gap, moving through the list, as in a real unit. */
RoundRecord realRound(const Checklist& checklist, Date day, int shift, int n)
{
    RoundBuilder builder(checklist);
    builder.on(day, shift);
    for (std::size_t k = 0; k < 3; ++k)
        builder.withGap(checklist.item((static_cast<std::size_t>(n) / 5 * 7 + k * 19) % checklist.itemCount()).id);
    return builder.done();
}

int pageSizeOf(const std::string& file)
{
    sqlite3* db = nullptr;
    sqlite3_stmt* query = nullptr;
    sqlite3_open(file.c_str(), &db);
    sqlite3_prepare_v2(db, "PRAGMA page_size", -1, &query, nullptr);
    sqlite3_step(query);
    const int size = sqlite3_column_int(query, 0);
    sqlite3_finalize(query);
    sqlite3_close(db);
    return size;
}

std::uintmax_t settledBytes(const std::string& file)
{
    sqlite3* db = nullptr;
    sqlite3_open(file.c_str(), &db);
    sqlite3_exec(db, "PRAGMA wal_checkpoint(TRUNCATE)", nullptr, nullptr, nullptr);
    sqlite3_close(db);
    return std::filesystem::file_size(file);
}

void line(const char* what, double value, const char* unit, double target)
{
    std::printf("%-58s %9.3f %-7s target %.2f  %s\n", what, value, unit, target, value <= target ? "met" : "MISSED");
}

}

int main(int argc, char** argv)
{
    const TempDir temp;
    const std::string folder = argc > 1 ? argv[1] : temp.path().string();
    const std::string file = folder + "/bench.cradlepost";
    FixedClock clock(sys_days(2026y / 11 / 24) + 14h);
    auto store = aStore(file, clock);
    const auto checklist = must(store->checklist("shift-readiness", 1));
    const std::uintmax_t before = settledBytes(file);

    constexpr int days = 5 * 365;
    int n = 0;
    must(store->together([&]() -> Result<void> {
        for (int d = days; d > 1; --d) {
            for (int shift = 0; shift < 2; ++shift) {
                if (auto saved = store->saveRound("sorrel-hill",
                        realRound(checklist, addDays(2026y / 11 / 24, -d), shift, n++), "M. R.");
                    !saved)
                    return tl::unexpected(saved.error());
            }
        }
        return {};
    }));
    const double bytes = static_cast<double>(settledBytes(file) - before) / n;
    std::printf("%d rounds of %zu items, five years of one unit\n", n, checklist.itemCount());
    line("file bytes a round, record, projections and indexes in", bytes, "B", 1800);

    const Instant now = clock.now();
    line("This shift and the strip of 14 days", medianMs(201, [&] {
        const auto view = must(shiftView(*store, "sorrel-hill", now));
        must(strip(*store, view, 14));
    }), "ms", 5);
    const auto [from, to] = slotsOfMonth(2026y / 10);
    line("one unit-month by item", medianMs(201, [&, f = from, t = to] { must(store->itemTallies("sorrel-hill", f, t)); }),
        "ms", 1);

    BareCommit bare(folder + "/bare.sqlite", pageSizeOf(file), static_cast<std::size_t>(bytes));
    std::vector<double> ratios;
    for (int turn = 0; turn < 5; ++turn) {
        const double raw = medianMs(40, [&] { bare(); });
        // Walked before the clock runs: only the save is measured.
        std::vector<RoundRecord> rounds;
        for (int i = 0; i < 40; ++i)
            rounds.push_back(realRound(checklist, addDays(2027y / 1 / 1, turn * 40 + i), 0, n++));
        auto next = rounds.begin();
        const double saved = medianMs(40, [&] { must(store->saveRound("sorrel-hill", *next++, "M. R.")); });
        std::printf("  durable: bare commit %.3f ms, one round %.3f ms\n", raw, saved);
        ratios.push_back(saved / raw);
    }
    std::sort(ratios.begin(), ratios.end());
    line("one round saved, against the bare commit", ratios[2], "times", 2);
    return 0;
}
