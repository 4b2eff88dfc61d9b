// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"
#include "tests/support/postgresserver.h"

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

/** Where a store of its own is to be: the same tests run on a file and on a server. */
inline std::string freshAddress([[maybe_unused]] const TempDir& dir)
{
#ifdef ON_POSTGRES
    return sharedServer().freshPlace();
#else
    return dir.file("ward.db");
#endif
}

/** One unit in a store of its own, with a plain checklist of twelve items. */
struct Ward
{
    Ward()
        : Ward(aPlainAdoption(12))
    {
    }
    explicit Ward(const Adoption& adoption)
        : store(aStore(address, clock, adoption))
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
        store = must(Store::open(address, clock, mode));
    }
    /** An item with two lots, a warmer that is on, a fridge that was read, a birth expected, a handover. */
    void stockUp()
    {
        using namespace std::chrono;
        const Instant now = clock.now();
        const Date soon = addDays(firstDay, 40);
        must(store->describeStockItem(unit, anItem(now), "AB"));
        must(store->moveStock(unit,
            {{.item = "oxytocin", .at = now, .quantity = 40, .lot = "A1", .expiry = soon},
                {.item = "oxytocin", .at = now, .quantity = 20, .lot = "B2", .expiry = addDays(soon, 90)},
                {.item = "oxytocin", .kind = MovementKind::Issue, .at = now, .quantity = 6}},
            "AB"));
        for (const auto& [id, kind] :
            {std::pair("warmer-1", EquipmentKind::Warmer), std::pair("fridge-1", EquipmentKind::Fridge)})
            must(store->noteEquipment(unit,
                {{.device = id,
                    .at = now,
                    .deed = Added{.device = {.id = id, .kind = kind, .label = id, .serviceDays = 180}}}},
                "AB"));
        must(store->switchWarmer(unit, {.device = "warmer-1", .at = now, .on = true}, "AB"));
        must(store->noteFridge(unit, {.fridge = "fridge-1", .at = now, .celsius = Decimal{4500}}, "AB"));
        must(store->noteBirth(
            unit, {.birth = "b1", .at = now, .expected = now + hours(2), .babies = 2}, "AB"));
        must(store->giveHandover(
            unit, {.what = {.shift = "day", .date = firstDay}, .by = "AB", .at = now}, "AB"));
    }
    [[nodiscard]] static StockItem anItem(Instant at)
    {
        return {.id = "oxytocin",
            .name = "Oxytocin ampoules",
            .at = at,
            .levels = {.par = 80, .minimum = 30, .emergency = 10},
            .expires = true,
            .packSize = 10,
            .perBirth = Decimal{1000},
            .serves = {"item-1"}};
    }
    [[nodiscard]] std::string fault() const { return textOf(store->verify()); }

    const std::string unit = "sorrel-hill";
    TempDir dir;
    const std::string address = freshAddress(dir);
    FixedClock clock{std::chrono::sys_days(firstDay)};
    std::unique_ptr<Store> store;
    Checklist checklist;
};

}
