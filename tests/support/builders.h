// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"

#include <filesystem>

namespace cradlepost::test {

/** A folder of its own, gone with everything in it at the end. */
class TempDir
{
public:
    TempDir();
    ~TempDir();
    TempDir(const TempDir&) = delete;
    TempDir& operator=(const TempDir&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }
    [[nodiscard]] std::string file(const std::string& name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path;
};

/** The value; a test that gets an error instead ends here with its message. */
template <class T> T must(Result<T> result)
{
    if (!result)
        throw std::runtime_error(result.error().message);
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

/** "Sorrel Hill", Asia/Kolkata. */
Unit aUnit(const std::string& id = "sorrel-hill");
/** Two shifts of twelve hours in the zone of aUnit(). */
ShiftCalendar aCalendar();
/** An always different key that is the same in every run. */
StationKey aKey(unsigned char number);
/** The document that comes with the program, as an adoption from the start of 2020. */
Adoption anAdoption(RoundKind use = RoundKind::Shift);
/** A document of `items` items: a tenth measures, some critical, some that may not apply. */
Adoption aPlainAdoption(int items, int version = 1, const std::string& id = "plain");

/** A store at `path` with one unit that has shifts, people and `adoption`. */
std::unique_ptr<Store> aStore(
    const std::string& path, const Clock& clock, const Adoption& adoption = anAdoption());
/** The same for one more unit. */
void addUnit(Store& store, const Unit& unit, const Adoption& adoption);

/** An answer that meets the item at `reference`. */
Answer metAnswer(const Item& item, Instant reference, Date lastDay);

/** Walks a round: everything met unless told otherwise. */
class RoundBuilder
{
public:
    explicit RoundBuilder(const Checklist& checklist);

    RoundBuilder& on(Date date, int shift = 0);
    /** After the beginning of the shift; half an hour unless told otherwise. */
    RoundBuilder& finishedAfter(std::chrono::minutes time);
    RoundBuilder& finishedAt(Instant time);
    RoundBuilder& withGap(const std::string& item, GapReason reason = GapReason::Absent);
    RoundBuilder& withAnswer(const std::string& item, Answer answer);
    RoundBuilder& without(const std::string& item) { return withAnswer(item, NotChecked{}); }
    RoundBuilder& notApplicable(const std::string& item) { return withAnswer(item, DoesNotApply{}); }
    RoundBuilder& measuring(const std::string& item, const std::string& value);
    /** A re-check of these items of `round`; all that is not named stays as it was met. */
    RoundBuilder& rechecking(const RecordId& round, std::vector<std::string> items);

    [[nodiscard]] Draft draft(const std::string& unit = "sorrel-hill") const;
    [[nodiscard]] RoundRecord done() const;
    operator RoundRecord() const { return done(); } // NOLINT: reads as the round that it builds

private:
    [[nodiscard]] Shift shift() const;
    [[nodiscard]] Instant finish() const;
    [[nodiscard]] Answer answerTo(std::size_t position) const;

    const Checklist& m_checklist;
    Date m_date;
    int m_shift = 0;
    std::chrono::minutes m_after{30};
    std::optional<Instant> m_finish;
    std::map<std::string, Answer> m_answers;
    std::optional<RecordId> m_over;
    std::vector<std::string> m_items;
};

inline RoundBuilder aRound(const Checklist& checklist) { return RoundBuilder(checklist); }

}
