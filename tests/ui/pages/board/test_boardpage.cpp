// SPDX-License-Identifier: MIT
#include "ui/pages/board/boardpage.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"
#include "ui/pages/round/cards/valuefield.h"
#include "ui/widgets/factsheet.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

TEST_CASE("B on This shift opens the board; a birth is put up by keys alone, with nothing that says who")
{
    WardWindow ward;
    ward.open();
    ward.press(Qt::Key_B);
    REQUIRE(ward.window->place() == Place::Board);
    const auto& time = ward.find<ValueField>("birthTimeEdit");
    CHECK(QApplication::focusWidget() == &time);
    CHECK(time.hint() == QStringLiteral("16:30")); // how to type it
    CHECK(ward.find<ValueField>("switchTimeEdit").hint() == QStringLiteral("now"));
    ward.type(QStringLiteral("1630"));
    CHECK(time.hint().isEmpty());
    ward.press(Qt::Key_Tab);
    ward.press(Qt::Key_Up); // twins
    ward.press(Qt::Key_Tab);
    ward.press(Qt::Key_Space); // preterm
    ward.press(Qt::Key_Tab);
    ward.press(Qt::Key_Space); // put up
    const auto board = must(ward.store->birthBoard("sorrel-hill"));
    REQUIRE(board.size() == 1);
    CHECK(board[0].what.expected == sys_days(2026y / 11 / 24) + 11h); // 16:30 there
    CHECK(board[0].what.babies == 2);
    CHECK(board[0].what.preterm);
    CHECK(ward.row("birthsTable", 0).contains(QStringLiteral("twins, preterm")));
    CHECK(ward.row("birthsTable", 0)
              .contains(QStringLiteral("switch Warmer 1 on by 16:00; switch Warmer 2 on by 16:00")));
    CHECK(ward.text("boardAnswer") == QStringLiteral("Switch Warmer 1 on by 16:00"));
    CHECK(QApplication::focusWidget() == &ward.find("birthTimeEdit")); // ready for the next one
    ward.press(Qt::Key_Escape);
    CHECK(ward.window->place() == Place::ThisShift);
    CHECK_FALSE(must(ward.store->verify()).fault);
}

TEST_CASE("Enter on a warmer switches it, at the time typed or now; its clock runs")
{
    WardWindow ward;
    ward.open();
    ward.press(Qt::Key_B);
    auto& warmers = ward.find<ActionTable>("warmersTable");
    warmers.setFocus();
    ward.press(Qt::Key_Return);
    auto runs = must(ward.store->warmerRuns("sorrel-hill"));
    REQUIRE(runs.size() == 1);
    CHECK(runs[0].device == "warmer-1");
    CHECK(runs[0].on == ward.clock.now());
    CHECK(ward.row("warmersTable", 0).contains(QStringLiteral("ready at 14:30")));
    ward.tick(18min);
    CHECK(ward.row("warmersTable", 0).contains(QStringLiteral("on for 18 min, since 14:00")));
    ward.tick(12min);
    CHECK(ward.row("warmersTable", 0).contains(QStringLiteral("warm since 14:30")));
    ward.press(Qt::Key_Down);
    ward.find("switchTimeEdit").setFocus();
    ward.type(QStringLiteral("1405\n"));
    runs = must(ward.store->warmerRuns("sorrel-hill"));
    REQUIRE(runs.size() == 2);
    CHECK(runs[1].device == "warmer-2");
    CHECK(runs[1].on == sys_days(2026y / 11 / 24) + 8h + 35min);
}

TEST_CASE("a warmer that goes off with a birth near is asked after")
{
    WardWindow ward;
    must(ward.store->switchWarmer(
        "sorrel-hill", {.device = "warmer-1", .at = ward.clock.now() - 40min, .on = true}, "AB"));
    must(ward.store->noteBirth(
        "sorrel-hill", {.birth = "b1", .at = ward.clock.now(), .expected = ward.clock.now() + 1h}, "AB"));
    ward.open();
    ward.press(Qt::Key_B);
    CHECK(ward.text("boardAnswer") == QStringLiteral("A warm place for every baby expected"));
    ward.find("warmersTable").setFocus();
    ward.tick(5min);
    ward.press(Qt::Key_Return);
    CHECK(ward.row("warmersTable", 0)
              .contains(QStringLiteral("went off at 14:05 with a birth expected about 15:00")));
    ward.press(Qt::Key_Return); // on again: no question any more
    CHECK_FALSE(ward.row("warmersTable", 0).contains(QStringLiteral("by mistake")));
}

TEST_CASE("D, M and C take the chosen birth off the board, and the record says which it was")
{
    WardWindow ward;
    const Instant now = ward.clock.now();
    for (const auto& [birth, after] : {std::pair("b1", 1h), std::pair("b2", 2h), std::pair("b3", 3h)})
        must(
            ward.store->noteBirth("sorrel-hill", {.birth = birth, .at = now, .expected = now + after}, "AB"));
    ward.open();
    ward.press(Qt::Key_B);
    auto& births = ward.find<ActionTable>("birthsTable");
    REQUIRE(births.itemCount() == 3);
    births.setFocus();
    ward.press(Qt::Key_D);
    CHECK(births.itemCount() == 2);
    ward.press(Qt::Key_M);
    ward.press(Qt::Key_C);
    CHECK(births.itemCount() == 0);
    std::vector<std::optional<BirthChange>> ends;
    for (const BirthSpan& span : must(ward.store->birthBoard("sorrel-hill")))
        ends.push_back(span.end);
    CHECK(ends
        == std::vector<std::optional<BirthChange>>{
            BirthChange::Done, BirthChange::Moved, BirthChange::Cancelled});
}

TEST_CASE("what is no time of day, or entered by nobody, is said and nothing is written")
{
    WardWindow ward;
    ward.open();
    ward.press(Qt::Key_B);
    ward.type(QStringLiteral("2561\n"));
    CHECK(ward.find("boardSaid").isVisible());
    ward.window->ward().setActor({});
    ward.find<QLineEdit>("birthTimeEdit").clear();
    ward.type(QStringLiteral("1630\n"));
    CHECK(ward.text("boardSaid") == QStringLiteral("First choose who is in charge, at the top."));
    CHECK(must(ward.store->birthBoard("sorrel-hill")).empty());
}

TEST_CASE("a warmer that the round saw on is not called off; once its clock runs, the clock is shown")
{
    WardWindow ward;
    ward.walk(); // every item met: the warmer has been on long enough
    ward.open();
    const auto first
        = [&]() -> const Fact& { return ward.window->findChildren<FactSheet*>().front()->fact(); };
    CHECK(first().title == QStringLiteral("Warmer on since"));
    CHECK(first().value.startsWith(QStringLiteral("warm since")));
    ward.press(Qt::Key_B);
    ward.find<ActionTable>("warmersTable").setFocus();
    ward.press(Qt::Key_Return);
    ward.press(Qt::Key_Escape);
    CHECK(first().title == QStringLiteral("Warmer 1"));
    CHECK(first().value == QStringLiteral("ready at 14:30"));
}

TEST_CASE("a mistyped time is said with how to type it, and nothing is written")
{
    WardWindow ward;
    ward.open();
    ward.press(Qt::Key_B);
    ward.type(QStringLiteral("\n"));
    CHECK(ward.text("boardSaid") == QStringLiteral("Type the time of day: 16:30 or 1630."));
    ward.type(QStringLiteral("2570\n"));
    CHECK(ward.text("boardSaid") == QStringLiteral("“2570” is no time of day. Type it as 16:30 or 1630."));
    CHECK(must(ward.store->birthBoard("sorrel-hill")).empty());
    ward.find("switchTimeEdit").setFocus();
    ward.type(QStringLiteral("99\n"));
    CHECK(ward.text("boardSaid") == QStringLiteral("“99” is no time of day. Type it as 16:30 or 1630."));
    CHECK(must(ward.store->warmerRuns("sorrel-hill")).empty());
}
