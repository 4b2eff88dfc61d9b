// SPDX-License-Identifier: MIT
// bench_month [FOLDER]: figures of the month: history, review and tables of one month from five years of one
// unit. With a folder it leaves there what others need to answer the same questions: rounds.csv, answers.csv,
// readings.csv and cradlepost.txt with its own milliseconds.
#include "core/review/monthtables.h"
#include "core/store/unithistory.h"
#include "tests/support/builders.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <functional>
#include <random>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr int wholeYears = 5;
const Date lastDay = 2026y / 10 / 31;

/** Three rounds a day; gaps last some shifts, as in a real unit. */
class Ward
{
public:
    explicit Ward(const Checklist& checklist)
        : m_checklist(checklist)
        , m_faulty(checklist.itemCount())
    {
    }

    RoundRecord round(Date day, int shift)
    {
        const Shift worked = m_calendar.shift(day, shift);
        RoundBuilder builder(m_checklist);
        builder.on(day, 0).finishedAt(worked.begins + minutes(10 + static_cast<int>(m_random() % 40)));
        for (std::size_t i = 0; i < m_faulty.size(); ++i) {
            m_faulty[i] = m_faulty[i] ? real() < 0.8 : real() < 0.012;
            if (m_faulty[i])
                builder.withGap(m_checklist.item(i).id);
        }
        char value[32];
        std::snprintf(value, sizeof value, "%.1f", 26.2 + 1.6 * real());
        if (!m_faulty[*m_checklist.position("room-temperature")])
            builder.measuring("room-temperature", value);
        RoundRecord done = builder.done();
        done.shift = worked;
        return done;
    }

private:
    double real() { return std::uniform_real_distribution<double>()(m_random); }

    const Checklist& m_checklist;
    ShiftCalendar m_calendar{ShiftPattern::threeByEight(), aCalendar().zone()};
    std::vector<bool> m_faulty;
    std::mt19937 m_random{1};
};

double middle(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

struct Took
{
    double wall = 0; ///< milliseconds
    double processor = 0; ///< the same of this process alone: what a busy machine does not change
};

Took medianMs(int times, const std::function<void()>& run)
{
    std::vector<double> wall;
    std::vector<double> processor;
    for (int i = 0; i < times; ++i) {
        const auto from = steady_clock::now();
        const std::clock_t begun = std::clock();
        run();
        processor.push_back(1000.0 * static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC);
        wall.push_back(duration<double, std::milli>(steady_clock::now() - from).count());
    }
    return {.wall = middle(wall), .processor = middle(processor)};
}

/** One row a round, one an answer, one a reading. */
class Export
{
public:
    Export(const std::string& folder, const Checklist& checklist)
        : m_checklist(checklist)
        , m_rounds(folder + "/rounds.csv")
        , m_answers(folder + "/answers.csv")
        , m_readings(folder + "/readings.csv")
    {
        m_rounds << "round,day,shift,state,met,applicable\n";
        m_answers << "round,day,shift,item,weight,outcome\n";
        m_readings << "round,day,shift,item,value,outside\n";
    }

    void add(const RoundRecord& round)
    {
        const std::string key
            = std::to_string(m_count++) + "," + toIso(round.shift.date) + "," + round.shift.code;
        m_rounds << key << "," << codeName(round.state) << "," << round.met << "," << round.applicable
                 << "\n";
        for (std::size_t i = 0; i < round.outcomes.size(); ++i) {
            const Item& item = m_checklist.item(i);
            m_answers << key << "," << item.id << "," << SeverityWeights{}.of(item.severity) << ","
                      << round.outcomes[i] << "\n";
            if (const auto* measured = std::get_if<Measured>(&round.answers[i]))
                m_readings << key << "," << item.id << "," << measured->value.toString() << ","
                           << (round.outcomes[i] == 'g' ? 1 : 0) << "\n";
        }
    }

private:
    const Checklist& m_checklist;
    std::ofstream m_rounds;
    std::ofstream m_answers;
    std::ofstream m_readings;
    int m_count = 0;
};

void line(const char* what, const Took& took)
{
    std::printf("%-58s %9.3f ms, processor %9.3f ms\n", what, took.wall, took.processor);
}

}

int main(int count, char** arguments)
{
    const std::string folder = count > 1 ? arguments[1] : "";
    const TempDir temp;
    FixedClock clock(sys_days(addDays(lastDay, -365 * wholeYears)));
    auto store = aStore(temp.file("month.cradlepost"), clock);
    must(store->setPattern(
        "sorrel-hill", {.from = 2020y / 1 / 1, .pattern = ShiftPattern::threeByEight()}, "M. R."));
    const auto checklist = must(store->checklist("shift-readiness", 1));
    Ward ward(checklist);
    std::optional<Export> out;
    if (!folder.empty())
        out.emplace(folder, checklist);
    int rounds = 0;
    must(store->together([&]() -> Result<void> {
        for (Date day = addDays(lastDay, 1 - 365 * wholeYears); day <= lastDay; day = addDays(day, 1)) {
            for (int shift = 0; shift < 3; ++shift) {
                RoundRecord round = ward.round(day, shift);
                clock.set(round.finished + 2s);
                if (auto saved = store->saveRound("sorrel-hill", round, "M. R."); !saved)
                    return tl::unexpected(saved.error());
                if (out)
                    out->add(round);
                ++rounds;
            }
        }
        return {};
    }));
    const ReviewSpan span = ReviewSpan::ofMonth(2026y / October);
    const Instant now = clock.now() + 24h;
    std::printf("%d rounds of %zu items, %d years of one unit\n", rounds, checklist.itemCount(), wholeYears);
    UnitHistory history;
    line("history of a month and 26 weeks from the store",
        medianMs(51, [&] { history = must(unitHistory(*store, "sorrel-hill", span, now)); }));
    std::optional<MonthReview> review;
    line("review, every figure", medianMs(51, [&] { review = must(reviewMonth(history, span)); }));
    line("all tables", medianMs(51, [&] { monthTables(*review); }));
    const Took whole = medianMs(51, [&] {
        const UnitHistory fresh = must(unitHistory(*store, "sorrel-hill", span, now));
        must(reviewMonth(fresh, span));
    });
    line("month: history and review", whole);
    if (!folder.empty())
        std::ofstream(folder + "/cradlepost.txt") << whole.wall << " " << whole.processor << "\n";
    std::printf("target 20 ms: %s\n", whole.wall <= 20 ? "met" : "MISSED");
    return 0;
}
