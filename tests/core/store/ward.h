// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"

#include <doctest/doctest.h>

namespace cradlepost::test {

inline constexpr Date firstDay = std::chrono::year(2026) / 11 / 1;

/** "" or the fault as one text. */
inline std::string textOf(const Result<Verified>& verified)
{
    if (!verified)
        return "error: " + verified.error().message;
    return verified->fault ? verified->fault->where + ": " + verified->fault->what : "";
}

/** One unit in a store of its own, with a plain checklist of twelve items. */
struct Ward
{
    Ward()
        : Ward(aPlainAdoption(12))
    {
    }
    explicit Ward(const Adoption& adoption)
        : store(aStore(dir.file("ward.db"), clock, adoption))
        , checklist(must(store->checklistFor(unit, RoundKind::Shift, firstDay)).checklist)
    {
    }

    /** Saves at the moment the round is finished. */
    RecordId save(const RoundBuilder& round)
    {
        const RoundRecord record = round.done();
        clock.set(record.finished);
        return must(store->saveRound(unit, record, "AB"));
    }
    RoundBuilder round(int day, int shift = 0) const
    {
        return aRound(checklist).on(addDays(firstDay, day), shift);
    }
    Slot slot(int day, int shift = 0) const { return slotOf(addDays(firstDay, day), shift); }
    /** The store closed and opened again. */
    void reopen(OpenMode mode = OpenMode::ReadWrite)
    {
        store.reset();
        store = must(Store::open(dir.file("ward.db"), clock, mode));
    }
    [[nodiscard]] std::string fault() const { return textOf(store->verify()); }

    const std::string unit = "sorrel-hill";
    TempDir dir;
    FixedClock clock{std::chrono::sys_days(firstDay)};
    std::unique_ptr<Store> store;
    Checklist checklist;
};

}
