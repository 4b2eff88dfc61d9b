// SPDX-License-Identifier: MIT
#include "core/exchange/paperrounds.h"

#include "core/base/characters.h"
#include "core/exchange/papercell.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace cradlepost {

namespace {

using namespace std::chrono;

struct DayRules
{
    std::optional<ShiftCalendar> calendar;
    std::optional<AdoptedChecklist> adopted;
};

/** HH:MM, nothing else. */
std::optional<minutes> clockTime(std::string_view text)
{
    const auto digit = [&](std::size_t at) { return text[at] >= '0' && text[at] <= '9'; };
    if (text.size() != 5 || text[2] != ':' || !digit(0) || !digit(1) || !digit(3) || !digit(4))
        return std::nullopt;
    const int h = (text[0] - '0') * 10 + (text[1] - '0');
    const int m = (text[3] - '0') * 10 + (text[4] - '0');
    return h < 24 && m < 60 ? std::optional(hours(h) + minutes(m)) : std::nullopt;
}

std::string clockText(minutes t)
{
    const auto two = [](std::int64_t n) { return (n < 10 ? "0" : "") + std::to_string(n); };
    return two(t.count() / 60) + ':' + two(t.count() % 60);
}

bool isOwn(const std::string& column)
{
    return std::find(paperColumns.begin(), paperColumns.end(), column) != paperColumns.end();
}

/** Reads the rows of one sheet. */
class RowReader
{
public:
    RowReader(const Store& store, const std::string& unit, PaperSheet sheet, Instant now)
        : m_store(store)
        , m_unit(unit)
        , m_sheet(std::move(sheet))
        , m_now(now)
    {
        m_preview.faults = std::move(m_sheet.faults);
        for (std::size_t i = 0; i < m_sheet.header.size(); ++i)
            m_columns.emplace(m_sheet.header[i].text, i);
        for (const char* name : paperColumns)
            if (!m_columns.empty() && !m_columns.contains(name))
                headFault(PaperFaultCode::ColumnMissing, name);
    }

    Result<PaperPreview> read()
    {
        if (auto known = readPeople(); !known)
            return tl::unexpected(known.error());
        if (hasOwnColumns()) {
            for (const auto& row : m_sheet.rows)
                if (auto done = readRow(row); !done)
                    return tl::unexpected(done.error());
            checkColumns();
        }
        arrange();
        return std::move(m_preview);
    }

private:
    [[nodiscard]] bool hasOwnColumns() const
    {
        return std::all_of(paperColumns.begin(), paperColumns.end(),
            [&](const char* name) { return m_columns.contains(name); });
    }

    Result<void> readPeople()
    {
        const auto units = m_store.units();
        const auto people = m_store.people(m_unit);
        if (!units || !people)
            return tl::unexpected(units ? people.error() : units.error());
        if (std::none_of(units->begin(), units->end(), [&](const Unit& u) { return u.id == m_unit; }))
            return fail(ErrorCode::NotFound, "there is no unit '" + m_unit + "' in this database");
        for (const Person& person : *people)
            m_people.insert(person.initials);
        return {};
    }

    void headFault(PaperFaultCode code, const std::string& name)
    {
        const auto at = m_columns.find(name);
        m_preview.faults.push_back({.code = code,
            .line = m_sheet.header.empty() ? 1 : m_sheet.header.front().line,
            .column = at != m_columns.end() ? static_cast<int>(at->second) + 1 : 0,
            .name = name});
    }

    PaperFault faultAt(
        PaperFaultCode code, const CsvCell& cell, const std::string& name, std::string limit = {}) const
    {
        return {.code = code,
            .line = cell.line,
            .column = static_cast<int>(m_columns.at(name)) + 1,
            .name = name,
            .value = cell.text,
            .limit = std::move(limit)};
    }

    void fault(PaperFaultCode code, const CsvCell& cell, const std::string& name, std::string limit = {})
    {
        m_preview.faults.push_back(faultAt(code, cell, name, std::move(limit)));
    }

    /** What was in force on a day; an error only where it cannot be read. */
    Result<const DayRules*> rulesOf(Date day)
    {
        const auto known = m_days.find(day);
        if (known != m_days.end())
            return &known->second;
        auto calendar = m_store.calendar(m_unit, day);
        auto adopted = m_store.checklistFor(m_unit, RoundKind::Shift, day);
        if (!calendar && calendar.error().code != ErrorCode::NotFound)
            return tl::unexpected(calendar.error());
        if (!adopted && adopted.error().code != ErrorCode::NotFound)
            return tl::unexpected(adopted.error());
        DayRules rules;
        if (calendar)
            rules.calendar = std::move(*calendar);
        if (adopted)
            rules.adopted = std::move(*adopted);
        return &m_days.emplace(day, std::move(rules)).first->second;
    }

    /** The shift of the row, or nothing after a fault. */
    std::optional<Shift> shiftOf(const std::vector<CsvCell>& row, const ShiftCalendar& calendar, Date day)
    {
        const CsvCell& cell = row[m_columns.at("shift")];
        std::string codes;
        const auto& starts = calendar.pattern().starts;
        for (std::size_t i = 0; i < starts.size(); ++i) {
            if (starts[i].code == cell.text)
                return calendar.shift(day, static_cast<int>(i));
            codes += (codes.empty() ? "" : ", ") + starts[i].code;
        }
        fault(PaperFaultCode::WrongShift, cell, "shift", codes);
        return std::nullopt;
    }

    /** When the round was finished: the first such time after the shift began. */
    std::optional<Instant> finishOf(
        const std::vector<CsvCell>& row, const ShiftCalendar& calendar, const Shift& shift)
    {
        const CsvCell& cell = row[m_columns.at("finished")];
        const auto time = clockTime(cell.text);
        if (!time) {
            fault(PaperFaultCode::WrongTime, cell, "finished");
            return std::nullopt;
        }
        const TimeZone& zone = calendar.zone();
        Instant at = zone.toInstant({shift.date, *time});
        if (at < shift.begins)
            at = zone.toInstant({addDays(shift.date, 1), *time});
        if (at < shift.begins || at > shift.ends + paperGrace) {
            fault(PaperFaultCode::TimeOutsideShift, cell, "finished",
                clockText(zone.toLocal(shift.begins).sinceMidnight) + '-'
                    + clockText(zone.toLocal(shift.ends).sinceMidnight));
            return std::nullopt;
        }
        if (at > m_now) {
            fault(PaperFaultCode::InFuture, row[m_columns.at("date")], "date");
            return std::nullopt;
        }
        return at;
    }

    void readInitials(const CsvCell& cell)
    {
        const std::size_t length = countCharacters(cell.text);
        if (length < 1 || length > 12 || !isOneLine(cell.text))
            fault(PaperFaultCode::WrongInitials, cell, "initials");
        else if (!m_people.contains(cell.text) && m_strangers.insert(cell.text).second)
            m_preview.warnings.push_back(faultAt(PaperFaultCode::UnknownInitials, cell, "initials"));
    }

    Result<void> checkPlace(const CsvCell& cell, const Shift& shift)
    {
        const auto [first, isNew] = m_lines.emplace(shift.slot(), cell.line);
        if (!isNew)
            fault(PaperFaultCode::TwiceInSheet, cell, "date", std::to_string(first->second));
        const auto rows = m_store.rounds(m_unit, shift.slot(), shift.slot() + 1);
        if (!rows)
            return tl::unexpected(rows.error());
        if (std::any_of(
                rows->begin(), rows->end(), [](const RoundRow& r) { return r.kind == RoundKind::Shift; }))
            fault(PaperFaultCode::AlreadyThere, cell, "date");
        return {};
    }

    /** `finished`: when it is not known, what the cells say is looked at all the same. */
    std::vector<Answer> answersOf(
        const std::vector<CsvCell>& row, const Checklist& checklist, Instant finished, const TimeZone& zone)
    {
        std::vector<Answer> answers(checklist.itemCount());
        for (const auto& [name, column] : m_columns) {
            const auto at = checklist.position(name);
            const CsvCell& cell = row[column];
            if (!at) {
                if (!isOwn(name) && !cell.text.empty())
                    m_unasked.push_back(faultAt(PaperFaultCode::NotAsked, cell, name));
                continue;
            }
            const Item& item = checklist.item(*at);
            auto answer = readPaperCell(item, cell.text, finished, zone);
            if (answer) {
                answers[*at] = std::move(*answer);
                continue;
            }
            fault(PaperFaultCode::WrongValue, cell, name, paperCellForms(item));
            m_preview.faults.back().kind = item.kind();
        }
        if (std::none_of(answers.begin(), answers.end(), isChecked))
            fault(PaperFaultCode::NothingChecked, row.front(), m_sheet.header.front().text);
        return answers;
    }

    Result<void> readRow(const std::vector<CsvCell>& row)
    {
        const std::size_t before = m_preview.faults.size();
        const CsvCell& dateCell = row[m_columns.at("date")];
        const CsvCell& initials = row[m_columns.at("initials")];
        readInitials(initials);
        const auto day = dateFromIso(dateCell.text);
        if (!day) {
            fault(PaperFaultCode::WrongDate, dateCell, "date");
            return {};
        }
        const auto rules = rulesOf(*day);
        if (!rules)
            return tl::unexpected(rules.error());
        const auto& [calendar, adopted] = **rules;
        if (!calendar)
            fault(PaperFaultCode::NoPattern, dateCell, "date");
        if (!adopted)
            fault(PaperFaultCode::BeforeAdoption, dateCell, "date");
        if (!calendar || !adopted)
            return {};
        const auto shift = shiftOf(row, *calendar, *day);
        const auto finished = shift ? finishOf(row, *calendar, *shift) : std::nullopt;
        if (shift) {
            if (auto placed = checkPlace(dateCell, *shift); !placed)
                return placed;
        }
        noteItems(adopted->checklist);
        auto answers = answersOf(row, adopted->checklist, finished.value_or(m_now), calendar->zone());
        if (m_preview.faults.size() > before || !shift || !finished)
            return {};
        Draft draft = Walk::begin(
            adopted->checklist, RoundKind::Shift, m_unit, initials.text, *shift, adopted->limits, *finished);
        draft.answers = std::move(answers);
        const auto walk = Walk::of(adopted->checklist, calendar->zone(), std::move(draft));
        if (!walk)
            return tl::unexpected(walk.error());
        RoundRecord round = walk->finish(*finished);
        round.fromPaper = true;
        m_preview.rounds.push_back(
            {.line = dateCell.line, .walked = {.round = std::move(round), .actor = initials.text}});
        return {};
    }

    void noteItems(const Checklist& checklist)
    {
        if (!m_versions.emplace(checklist.id, checklist.version).second)
            return;
        for (std::size_t at = 0; at < checklist.itemCount(); ++at)
            m_items.insert(checklist.item(at).id);
    }

    /** Against the checklists of all days in the sheet. */
    void checkColumns()
    {
        if (m_versions.empty())
            return; // no row could be placed, which is said already
        for (PaperFault& unasked : m_unasked)
            if (m_items.contains(unasked.name)) // else the whole column is not known
                m_preview.faults.push_back(std::move(unasked));
        for (const std::string& item : m_items)
            if (!m_columns.contains(item))
                headFault(PaperFaultCode::ColumnMissing, item);
        for (const auto& [name, column] : m_columns) {
            if (!isOwn(name) && !name.empty() && !m_items.contains(name))
                headFault(PaperFaultCode::ColumnUnknown, name);
        }
    }

    void arrange()
    {
        auto& faults = m_preview.faults;
        std::stable_sort(faults.begin(), faults.end(), [](const PaperFault& a, const PaperFault& b) {
            return std::tie(a.line, a.column) < std::tie(b.line, b.column);
        });
        if (faults.size() > maxPaperFaults)
            faults.resize(maxPaperFaults);
        std::sort(
            m_preview.rounds.begin(), m_preview.rounds.end(), [](const PaperRound& a, const PaperRound& b) {
                return a.walked.round.shift.slot() < b.walked.round.shift.slot();
            });
    }

    const Store& m_store;
    const std::string& m_unit;
    PaperSheet m_sheet;
    Instant m_now;
    PaperPreview m_preview;
    std::map<std::string, std::size_t> m_columns;
    std::set<std::string> m_people;
    std::set<std::string> m_strangers; ///< warned of already
    std::map<Date, DayRules> m_days;
    std::map<Slot, int> m_lines; ///< shift to the first line that has it
    std::set<std::pair<std::string, int>> m_versions; ///< of checklists that the days of the sheet use
    std::set<std::string> m_items; ///< that those ask
    std::vector<PaperFault> m_unasked; ///< answers to items that the day's checklist does not ask
};

}

Result<PaperPreview> readPaperRounds(
    const Store& store, const std::string& unit, std::string_view sheet, Instant now)
{
    return RowReader(store, unit, readPaperSheet(sheet), now).read();
}

Result<std::vector<RecordId>> importPaperRounds(
    Store& store, const std::string& unit, const PaperPreview& preview)
{
    if (!preview.isSound())
        return fail(ErrorCode::InvalidArgument, "paper backlog: the sheet has faults or no rounds",
            "mend the sheet and read it again");
    std::vector<WalkedRound> rounds;
    rounds.reserve(preview.rounds.size());
    for (const PaperRound& round : preview.rounds)
        rounds.push_back(round.walked);
    return store.saveRounds(unit, rounds);
}

}
