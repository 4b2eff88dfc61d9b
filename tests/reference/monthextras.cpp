// SPDX-License-Identifier: MIT
// month_extras DATABASE UNIT YEAR-MONTH: what the demo does not have. Into a copy of it go spot checks,
// amended rounds, rounds from paper for shifts without one, and change ideas, so that every figure of a month
// is not 0.
#include "core/store/store.h"
#include "tests/support/builders.h"

#include <cstdio>
#include <random>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

class Extras
{
public:
    Extras(Store& store, std::string unit, std::chrono::year_month month)
        : m_store(store)
        , m_unit(std::move(unit))
        , m_month(month)
        , m_calendar(must(store.calendar(m_unit, month / 1)))
        , m_checklist(must(store.checklistFor(m_unit, RoundKind::Shift, month / 1)).checklist)
    {
    }

    void write()
    {
        std::optional<SavedRound> before;
        int nth = 0;
        for (Shift shift = m_calendar.shift(m_month / 1, 0);
             std::chrono::year_month(shift.date.year(), shift.date.month()) == m_month;
             shift = m_calendar.next(shift)) {
            const auto done = shiftRound(shift);
            if (!done && before)
                fromPaper(before->round, shift);
            if (done && ++nth % 7 == 0)
                spotCheck(done->round);
            if (done && nth % 13 == 0)
                amend(*done);
            if (done)
                before = done;
        }
        noteChanges();
    }

private:
    std::optional<SavedRound> shiftRound(const Shift& shift) const
    {
        for (const SavedRound& saved : must(m_store.roundsOfShift(m_unit, shift.slot()))) {
            if (saved.round.kind == RoundKind::Shift)
                return saved;
        }
        return std::nullopt;
    }

    /** The other answer to some of the items, one in `every`. */
    std::vector<Answer> otherwise(const RoundRecord& round, unsigned every)
    {
        auto answers = round.answers;
        const Date last = lastDayOf(round.shift, m_calendar.zone());
        for (std::size_t i = 0; i < answers.size(); ++i) {
            if (round.outcomes[i] == 'n' || m_random() % every != 0)
                continue;
            if (round.outcomes[i] == 'm')
                answers[i] = GapFound{GapReason::NotWorking};
            else
                answers[i] = metAnswer(m_checklist.item(i), round.finished, last);
        }
        return answers;
    }

    RoundRecord judged(const RoundRecord& round, std::vector<Answer> answers) const
    {
        return must(withAnswers(m_checklist, m_calendar.zone(), round, std::move(answers)));
    }

    void spotCheck(const RoundRecord& round)
    {
        auto answers = otherwise(round, 12);
        for (std::size_t i = 0; i < answers.size(); i += 3)
            answers[i] = NotChecked{};
        RoundRecord check = judged(round, std::move(answers));
        check.kind = RoundKind::SpotCheck;
        must(m_store.saveRound(m_unit, check, "QO"));
    }

    void amend(const SavedRound& saved)
    {
        const RoundRecord again = judged(saved.round, otherwise(saved.round, 15));
        if (again.outcomes != saved.round.outcomes)
            must(m_store.amendRound(saved.id, again, "looked at again", "QO"));
    }

    void fromPaper(RoundRecord round, const Shift& shift)
    {
        const auto later = shift.begins - round.shift.begins;
        round.shift = shift;
        round.started += later;
        round.finished += later;
        round.fromPaper = true;
        round.seconds.assign(round.answers.size(), std::nullopt);
        must(m_store.saveRound(m_unit, judged(round, otherwise(round, 20)), "QO"));
    }

    void noteChanges()
    {
        const auto first = m_checklist.item(0).id;
        const auto last = m_checklist.item(m_checklist.itemCount() - 1).id;
        must(m_store.noteChange(m_unit,
            {.id = {}, .title = "Count at every handover", .from = m_month / 16, .items = {first, last}},
            "QO"));
        must(m_store.noteChange(m_unit,
            {.id = {}, .title = "Two walk together", .from = m_month / 8, .until = Date(m_month / 21)},
            "QO"));
    }

    Store& m_store;
    std::string m_unit;
    std::chrono::year_month m_month;
    ShiftCalendar m_calendar;
    Checklist m_checklist;
    std::mt19937 m_random{7};
};

}

int main(int count, char** arguments)
{
    int year = 0;
    unsigned month = 0;
    if (count != 4 || std::sscanf(arguments[3], "%d-%u", &year, &month) != 2)
        return 2;
    const SystemClock clock;
    const auto store = must(Store::open(arguments[1], clock));
    Extras(*store, arguments[2], std::chrono::year(year) / std::chrono::month(month)).write();
    return 0;
}
