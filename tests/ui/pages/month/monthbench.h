// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "ui/pages/month/monthpage.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QScrollArea>

namespace cradlepost::test {

/** Eight months of one ward of two shifts: item-3 is missing in every fourth round, on the nights of the last
 * month in every one. */
struct MonthBench
{
    static constexpr Date first = std::chrono::year(2026) / 3 / 1;
    static constexpr Date today = std::chrono::year(2026) / 11 / 3;

    MonthBench()
        : store(aStore(dir.file("ward.db"), clock, aPlainAdoption(12)))
        , checklist(must(store->checklistFor(unit, RoundKind::Shift, first)).checklist)
    {
        must(store->together([&]() -> Result<void> {
            int round = 0;
            for (Date day = first; day < today; day = addDays(day, 1)) {
                for (const int shift : {0, 1})
                    write(day, shift, round++);
            }
            return {};
        }));
        clock.set(std::chrono::sys_days(today) + std::chrono::hours(10));
        ward = std::make_unique<Ward>(*store, clock, language, unit);
        ward->refresh();
        ward->setActor("AB");
    }

    void write(Date day, int shift, int round)
    {
        RoundBuilder builder = aRound(checklist).on(day, shift);
        const bool lastMonth = day >= Date(std::chrono::year(2026) / 10 / 1);
        if (round % 8 == 3 || (lastMonth && shift == 1))
            builder.withGap("item-3");
        const RoundRecord record = builder.done();
        clock.set(record.finished);
        must(store->saveRound(unit, record, "AB"));
    }

    /** The page as it stands in the window: in a scroll area, shown. */
    MonthPage& open(std::optional<ReviewChoice> choice = std::nullopt)
    {
        auto* page = new MonthPage(*ward, std::move(choice));
        area.setWidgetResizable(true);
        area.setWidget(page);
        area.resize(1254, 716);
        area.show();
        QApplication::processEvents();
        return *page;
    }

    const std::string unit = "sorrel-hill";
    TempDir dir;
    FixedClock clock{std::chrono::sys_days(first)};
    std::unique_ptr<Store> store;
    Checklist checklist;
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
