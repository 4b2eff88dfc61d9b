// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "ui/pages/units/unitspage.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QScrollArea>

namespace cradlepost::test {

/** October in three wards of two levels, with stock: Penny Weir lacks gloves that Quillmere can spare. */
struct UnitsBench
{
    static constexpr Date october = std::chrono::year(2026) / 10 / 1;

    UnitsBench()
        : store(aStore(folder.file("district.db"), clock, aPlainAdoption(12)))
    {
        addUnit(*store,
            {.id = "penny-weir", .name = "Penny Weir", .zone = "Asia/Kolkata", .level = "district"},
            aPlainAdoption(12));
        addUnit(*store, {.id = "quillmere", .name = "Quillmere", .zone = "Asia/Kolkata", .level = "primary"},
            aPlainAdoption(12));
        walk("sorrel-hill", 10);
        walk("penny-weir", 2);
        walk("quillmere", 11);
        stock("penny-weir", 3);
        stock("quillmere", 200);
        ward = std::make_unique<Ward>(*store, clock, language, "sorrel-hill");
        ward->refresh();
        ward->setActor("DS");
    }

    /** A critical gap on one day in `gapEvery`. */
    void walk(const std::string& unit, int gapEvery)
    {
        const Checklist checklist = must(store->checklist("plain", 1));
        std::vector<WalkedRound> rounds;
        for (int day = 0; day < 31; ++day) {
            RoundBuilder round = aRound(checklist).on(addDays(october, day));
            if (day % gapEvery == 1)
                round.withGap("item-0");
            rounds.push_back({.round = round.done(), .actor = "AB"});
        }
        must(store->saveRounds(unit, rounds));
    }

    void stock(const std::string& unit, std::int64_t pieces)
    {
        const Instant at = std::chrono::sys_days(october);
        must(store->describeStockItem(unit,
            {.id = "gloves",
                .name = "Gloves",
                .at = at,
                .levels = {.par = 60, .minimum = 20, .emergency = 5}},
            "AB"));
        must(store->moveStock(unit, {{.item = "gloves", .at = at, .quantity = pieces}}, "AB"));
    }

    /** The page as it stands in the window: in a scroll area, shown. */
    UnitsPage& open(std::optional<UnitsChoice> choice = std::nullopt, const VisitWeights& weights = {})
    {
        auto* page = new UnitsPage(*ward, std::move(choice), weights);
        area.setWidgetResizable(true);
        area.setWidget(page);
        area.resize(1254, 716);
        area.show();
        QApplication::processEvents();
        return *page;
    }

    TempDir folder;
    FixedClock clock{std::chrono::sys_days(std::chrono::year(2026) / 11 / 3) + std::chrono::hours(6)};
    std::unique_ptr<Store> store;
    Language language{QStringLiteral("en")};
    std::unique_ptr<Ward> ward;
    QScrollArea area;
};

template <class T> T& find(QWidget& page, const char* name)
{
    T* found = page.findChild<T*>(QLatin1String(name));
    REQUIRE_MESSAGE(found != nullptr, name);
    return *found;
}

}
