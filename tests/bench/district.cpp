// SPDX-License-Identifier: MIT
// Figures of *Units*, each with a program of its own so that its memory is its own:
//   bench_district fill UNITS FILE [projections] [shelves]   an invented district of three years
//   bench_district read FILE [NAME]                every figure of the last month, from cold and again
//   bench_district export FILE FOLDER              rounds.csv, readings.csv and items.csv, for others to answer the same
//   bench_district server UNITS                    fills and reads on a throw-away PostgreSQL
#include "core/review/district.h"
#include "core/store/districthistory.h"
#include "tests/bench/districtfill.h"
#include "tests/support/builders.h"
#include "tests/support/postgresserver.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fcntl.h>
#include <fstream>
#include <unistd.h>

using namespace cradlepost;
using namespace cradlepost::bench;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

const ReviewSpan span = ReviewSpan::ofMonth(districtLastDay.year() / districtLastDay.month());
const Instant now = sys_days(addDays(districtLastDay, 1)) + hours(6);

struct Took
{
    double wall = 0; ///< milliseconds
    double processor = 0; ///< the same of this process alone: what a busy machine does not change
};

Took took(const std::function<void()>& run)
{
    const auto from = steady_clock::now();
    const std::clock_t begun = std::clock();
    run();
    return {.wall = duration<double, std::milli>(steady_clock::now() - from).count(),
        .processor = 1000.0 * static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC};
}

void print(const char* what, const Took& took)
{
    std::printf("    %-52s %9.1f ms, processor %9.1f ms\n", what, took.wall, took.processor);
}

Took middle(int times, const std::function<void()>& run)
{
    std::vector<Took> all(static_cast<std::size_t>(times));
    for (Took& one : all)
        one = took(run);
    const auto at = all.begin() + times / 2;
    std::nth_element(all.begin(), at, all.end(), [](const Took& a, const Took& b) { return a.wall < b.wall; });
    return *at;
}

/** The most memory this process has had resident, in MiB. */
double mostMemory()
{
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word)
        if (word == "VmHWM:" && status >> word)
            return std::stod(word) / 1024;
    return 0;
}

bool isFile(const std::string& address) { return std::filesystem::exists(address); }

/** So that the first reading is one from the disk. */
void dropFromCache(const std::string& path)
{
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return;
    ::fsync(file);
    ::posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
    ::close(file);
}

std::size_t everyFigure(const std::string& address, EntryQuestions questions = EntryQuestions::Ask)
{
    FixedClock clock(now);
    const auto store = must(Store::open(address, clock, OpenMode::ReadOnly));
    const DistrictReview review = reviewDistrict(must(districtHistory(*store, span, now, questions)));
    return review.findings.size();
}

int fill(int units, const std::string& address, FillWay way, bool shelves)
{
    std::int64_t rounds = 0;
    const Took whole = took([&] { rounds = fillDistrict(address, units, way, shelves); });
    std::printf("%d units, %lld rounds%s, written %s at %.0f rounds/s", units, static_cast<long long>(rounds),
        shelves ? ", six shelf items each" : "",
        way == FillWay::Ledger ? "through the ledger" : "as projections without records",
        static_cast<double>(rounds) / whole.wall * 1000);
    if (isFile(address))
        std::printf(", %.0f MiB on disk", static_cast<double>(std::filesystem::file_size(address)) / (1 << 20));
    std::printf("\n");
    return 0;
}

int read(const std::string& address, const std::string& results)
{
    if (isFile(address))
        dropFromCache(address);
    std::size_t findings = 0;
    print("every figure, new process, file not in memory", took([&] { findings = everyFigure(address); }));
    const double most = mostMemory();
    const Took cold = middle(7, [&] { everyFigure(address); });
    print("every figure, newly opened", cold);
    const Took part = middle(7, [&] { everyFigure(address, EntryQuestions::LeaveOut); });
    print("the same without the entries looked into", part);
    FixedClock clock(now);
    const auto store = must(Store::open(address, clock, OpenMode::ReadOnly));
    DistrictHistory history;
    print("  history", middle(7, [&] { history = must(districtHistory(*store, span, now)); }));
    print("  review", middle(7, [&] { reviewDistrict(history); }));
    std::int64_t gaps = 0;
    for (const DistrictUnit& unit : history.units)
        for (const stats::Tally& item : unit.gaps)
            gaps += item.x;
    std::printf("    %lld gaps in the month, %zu findings, most memory %.0f MiB after the first one\n",
        static_cast<long long>(gaps), findings, most);
    if (!results.empty())
        std::ofstream(results) << cold.wall << ' ' << cold.processor << ' ' << part.wall << ' ' << part.processor
                               << '\n';
    return 0;
}

void exportReadings(const Store& store, const Unit& unit, const Checklist& list, std::ostream& out)
{
    for (std::size_t i = 0; i < list.itemCount(); ++i) {
        const Item& item = list.item(i);
        if (item.kind() != ItemKind::Measure)
            continue;
        for (const Reading& reading : must(store.readings(unit.id, item.id, 0, slotOf(addDays(districtLastDay, 1), 0))))
            out << unit.id << ',' << toIso(dateOfSlot(reading.slot)) << ',' << shiftOfSlot(reading.slot) << ','
                << item.id << ',' << reading.thousandths << '\n';
    }
}

int exportRounds(const std::string& address, const std::string& folder)
{
    FixedClock clock(now);
    const auto store = must(Store::open(address, clock, OpenMode::ReadOnly));
    std::ofstream out(folder + "/rounds.csv");
    out << "unit,day,shift,state,met,applicable,late,seconds,after_shift,actor,outcomes\n";
    std::ofstream readings(folder + "/readings.csv");
    readings << "unit,day,shift,item,thousandths\n";
    const ShiftCalendar calendar(ShiftPattern::threeByEight(), aCalendar().zone());
    std::optional<Checklist> list;
    for (const Unit& unit : must(store->units())) {
        for (const RoundRow& row : must(store->rounds(unit.id, 0, slotOf(addDays(districtLastDay, 1), 0)))) {
            if (!list)
                list = must(store->checklist(row.checklist, row.version));
            const Shift shift = calendar.shift(dateOfSlot(row.slot), shiftOfSlot(row.slot));
            const auto allowed
                = duration<double, std::milli>(shift.ends - shift.begins) * ReviewOptions{}.inTimeShare;
            const bool isLate = std::max(row.finished, row.recorded) - shift.begins >= allowed;
            out << unit.id << ',' << toIso(dateOfSlot(row.slot)) << ',' << shiftOfSlot(row.slot) << ','
                << codeName(row.state) << ',' << row.met << ',' << row.applicable << ',' << (isLate ? 1 : 0) << ','
                << duration<double>(row.finished - row.started).count() << ',' << (row.recorded > shift.ends ? 1 : 0)
                << ',' << row.actor << ',' << row.outcomes << '\n';
        }
        exportReadings(*store, unit, list.value(), readings);
    }
    std::ofstream items(folder + "/items.csv");
    items << "item\n";
    for (std::size_t i = 0; list && i < list->itemCount(); ++i)
        items << list->item(i).id << '\n';
    return 0;
}

int server(int units)
{
    PostgresServer postgres;
    const std::string place = postgres.freshPlace();
    fill(units, place, FillWay::Ledger, false);
    postgres.run("VACUUM ANALYZE");
    return read(place, "");
}

}

int main(int count, char** arguments)
{
    const std::vector<std::string> words(arguments + 1, arguments + count);
    const auto is = [&](const char* mode, std::size_t least) {
        return words.size() >= least && words.front() == mode;
    };
    const auto has = [&](const char* word) { return std::find(words.begin(), words.end(), word) != words.end(); };
    if (is("fill", 3))
        return fill(std::stoi(words[1]), words[2],
            has("projections") ? FillWay::Projections : FillWay::Ledger, has("shelves"));
    if (is("read", 2))
        return read(words[1], words.size() > 2 ? words[2] : "");
    if (is("export", 3))
        return exportRounds(words[1], words[2]);
    if (is("server", 2))
        return server(std::stoi(words[1]));
    std::fprintf(stderr, "see the head of district.cpp\n");
    return 2;
}
