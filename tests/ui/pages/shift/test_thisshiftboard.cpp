// SPDX-License-Identifier: MIT
#include "ui/pages/shift/thisshiftpage.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"
#include "ui/widgets/factsheet.h"

#include <QScrollArea>
#include <QScrollBar>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

std::vector<Fact> shownFacts(const WardWindow& ward)
{
    std::vector<Fact> facts;
    for (const FactSheet* sheet : ward.window->findChildren<FactSheet*>()) {
        if (sheet->isVisible())
            facts.push_back(sheet->fact());
    }
    return facts;
}

}

TEST_CASE("This shift shows the warmer's clock and the next birth against warmers and kits")
{
    WardWindow ward;
    const Instant now = ward.clock.now();
    ward.walk();
    must(
        ward.store->switchWarmer("sorrel-hill", {.device = "warmer-2", .at = now - 18min, .on = true}, "AB"));
    must(ward.store->noteBirth("sorrel-hill",
        {.birth = "b1", .at = now, .expected = now + 150min, .babies = 2, .preterm = true}, "AB"));
    ward.open();
    const auto facts = shownFacts(ward);
    REQUIRE(facts.size() >= 2);
    CHECK(facts[0].title == QStringLiteral("Warmer 2"));
    CHECK(facts[0].value == QStringLiteral("ready at 14:12"));
    CHECK(facts[0].progress == doctest::Approx(0.6));
    CHECK(facts[1].title == QStringLiteral("Births expected"));
    CHECK(facts[1].value == QStringLiteral("1"));
    CHECK(facts[1].lines.at(0) == QStringLiteral("about 16:30, twins, preterm"));
    CHECK(facts[1].lines.at(1).contains(QStringLiteral("switch Warmer 1 on by 16:00")));
}

TEST_CASE("This shift needs no scroll bar on a ward PC, with a board and three things to mend")
{
    WardWindow ward;
    ward.walk({"mask-size-0", "room-temperature", "suction-pressure"});
    ward.open();
    for (const QScrollArea* area : ward.window->findChildren<QScrollArea*>()) {
        if (area->isVisible() && area->widget()->inherits("cradlepost::ThisShiftPage"))
            CHECK_FALSE(area->verticalScrollBar()->isVisible());
    }
}
