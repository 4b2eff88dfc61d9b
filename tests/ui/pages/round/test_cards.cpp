// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/pages/round/roundbench.h"
#include "ui/pages/round/cards/reasonrow.h"
#include "ui/pages/round/cards/valuefield.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/wraplabel.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QKeyEvent>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** A round of the night shift in hand. */
class Walking : public RoundBench
{
public:
    Walking()
    {
        ward->setActor("AB");
        page->begin(RoundKind::Shift);
        settle();
    }
    [[nodiscard]] std::string text(const std::string& item, const char* field) const
    {
        return card(item).findChild<QLineEdit*>(QLatin1String(field))->text().toStdString();
    }
    [[nodiscard]] QString label(const std::string& item, const char* name) const
    {
        return card(item).findChild<WrapLabel*>(QLatin1String(name))->text();
    }
};

Decimal decimal(const char* text) { return must(Decimal::parse(text)); }

}

TEST_CASE_FIXTURE(Walking, "Enter on a confirm card is met and goes on")
{
    at("draught");
    press(Qt::Key_Return);
    CHECK(answer("draught") == Answer(Confirmed{}));
    CHECK(card("draught").mark() == Mark::Met);
    CHECK(current() == "light");
}

TEST_CASE_FIXTURE(Walking, "a gap is kept at the minus and a digit says why")
{
    at("light");
    type(QStringLiteral("-"));
    CHECK(answer("light") == Answer(GapFound{GapReason::NotKnown}));
    CHECK(card("light").mark() == Mark::Gap);
    CHECK(card("light").asksReason());
    type(QStringLiteral("2"));
    CHECK(answer("light") == Answer(GapFound{GapReason::NotWorking}));
    CHECK(current() == "light");
    press(Qt::Key_Return);
    CHECK(!card("light").asksReason());
    CHECK(current() == "room-clean");
}

TEST_CASE_FIXTURE(Walking, "Esc takes a gap back to what was there before")
{
    at("draught");
    press(Qt::Key_Return);
    at("draught");
    type(QStringLiteral("-"));
    CHECK(answer("draught") == Answer(GapFound{GapReason::NotKnown}));
    type(QStringLiteral("4"));
    press(Qt::Key_Escape);
    CHECK(answer("draught") == Answer(Confirmed{}));
    at("light");
    type(QStringLiteral("-"));
    press(Qt::Key_Escape);
    CHECK(answer("light") == Answer(NotChecked{}));
}

TEST_CASE_FIXTURE(Walking, "a key that is leant on answers one item, not ten")
{
    at("draught");
    QKeyEvent repeated(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), true);
    QApplication::sendEvent(QApplication::focusWidget(), &repeated);
    settle();
    CHECK(answer("draught") == Answer(NotChecked{}));
    CHECK(current() == "draught");
}

TEST_CASE_FIXTURE(Walking, "the slash is taken only where the item may not apply")
{
    at("skin-probe");
    type(QStringLiteral("/"));
    CHECK(answer("skin-probe") == Answer(DoesNotApply{}));
    CHECK(card("skin-probe").mark() == Mark::DoesNotApply);
    ItemCard& draught = at("draught");
    type(QStringLiteral("/"));
    CHECK(answer("draught") == Answer(NotChecked{}));
    CHECK(!draught.message().isEmpty());
}

TEST_CASE_FIXTURE(Walking, "digits go straight into a measure and Enter keeps them")
{
    CHECK(current() == "room-temperature");
    type(QStringLiteral("26,8"));
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("26.8")}));
    CHECK(card("room-temperature").mark() == Mark::Met);
    CHECK(current() == "draught");
}

TEST_CASE_FIXTURE(Walking, "a reading out of the limits is a critical gap that says so")
{
    type(QStringLiteral("21"));
    press(Qt::Key_Return);
    CHECK(card("room-temperature").mark() == Mark::GapCritical);
    CHECK(card("room-temperature").accessibleName().contains(QStringLiteral("below 26")));
}

TEST_CASE_FIXTURE(Walking, "a slip of the keyboard is refused, says why, and keeps the keyboard")
{
    type(QStringLiteral("266"));
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(NotChecked{}));
    CHECK(current() == "room-temperature");
    CHECK(card("room-temperature").message().contains(QStringLiteral("266 cannot be")));
    press(Qt::Key_Down);
    CHECK(current() == "room-temperature");
    press(Qt::Key_Backspace);
    CHECK(card("room-temperature").message().isEmpty());
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("26")}));
}

TEST_CASE_FIXTURE(Walking, "letters do not get into a number")
{
    type(QStringLiteral("2x6q"));
    CHECK(text("room-temperature", "valueField") == "26");
}

TEST_CASE_FIXTURE(Walking, "a key that only moves keeps a first reading and never replaces one")
{
    type(QStringLiteral("27"));
    press(Qt::Key_Down);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    press(Qt::Key_Up);
    type(QStringLiteral("5"));
    press(Qt::Key_Down);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    CHECK(current() == "room-temperature");
    CHECK(card("room-temperature").message().contains(QStringLiteral("27")));
    press(Qt::Key_Escape);
    CHECK(text("room-temperature", "valueField") == "27");
    press(Qt::Key_Down);
    CHECK(current() == "draught");
}

TEST_CASE_FIXTURE(Walking, "a minus over a reading asks before the reading goes")
{
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    at("room-temperature");
    type(QStringLiteral("-"));
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    type(QStringLiteral("1"));
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    press(Qt::Key_Escape);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    type(QStringLiteral("-"));
    type(QStringLiteral("1"));
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(GapFound{GapReason::Absent}));
}

TEST_CASE_FIXTURE(Walking, "Delete takes a reading back and Esc brings it again")
{
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    at("room-temperature");
    press(Qt::Key_Delete);
    CHECK(answer("room-temperature") == Answer(NotChecked{}));
    CHECK(text("room-temperature", "valueField").empty());
    press(Qt::Key_Escape);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    press(Qt::Key_Backspace);
    CHECK(answer("room-temperature") == Answer(Measured{decimal("27")}));
    press(Qt::Key_Backspace);
    CHECK(answer("room-temperature") == Answer(NotChecked{}));
}

TEST_CASE_FIXTURE(Walking, "a minus begins a number where readings below zero are possible")
{
    at("scale-check");
    type(QStringLiteral("-5"));
    press(Qt::Key_Return);
    CHECK(answer("scale-check") == Answer(Measured{decimal("-5")}));
    at("fridge-temperature");
    type(QStringLiteral("-"));
    CHECK(answer("fridge-temperature") == Answer(NotChecked{}));
    press(Qt::Key_Return);
    CHECK(answer("fridge-temperature") == Answer(GapFound{GapReason::NotKnown}));
    CHECK(card("fridge-temperature").asksReason());
}

TEST_CASE_FIXTURE(Walking, "a clock time is warming until its minutes have run")
{
    at("warmer-on-since");
    type(QStringLiteral("1848"));
    press(Qt::Key_Return);
    ItemCard& warmer = card("warmer-on-since");
    CHECK(text("warmer-on-since", "valueField") == "18:48");
    CHECK(warmer.mark() == Mark::GapCritical);
    const auto company = [&] {
        QString all;
        for (const WrapLabel* one : warmer.editor().findChildren<WrapLabel*>())
            all += one->text();
        return all;
    };
    CHECK(company().contains(QStringLiteral("ready at 19:18")));
    CHECK(company().contains(QStringLiteral("8 min")));
    clock.advance(std::chrono::minutes(9));
    warmer.tick(page->hand()->judged(position("warmer-on-since")));
    CHECK(warmer.mark() == Mark::Met);
    CHECK(company().contains(QStringLiteral("warm since 19:18")));
}

TEST_CASE_FIXTURE(Walking, "Enter on an empty clock time means just now, and a wrong one is refused")
{
    at("warmer-on-since");
    type(QStringLiteral("2561"));
    press(Qt::Key_Return);
    CHECK(answer("warmer-on-since") == Answer(NotChecked{}));
    CHECK(card("warmer-on-since").message().contains(QStringLiteral("2561")));
    for (int i = 0; i < 4; ++i)
        press(Qt::Key_Backspace);
    press(Qt::Key_Return);
    CHECK(answer("warmer-on-since") == Answer(RunningSince{clock.now()}));
}

TEST_CASE_FIXTURE(Walking, "what is off is a gap that is not working")
{
    at("warmer-on-since");
    type(QStringLiteral("-"));
    press(Qt::Key_Return);
    CHECK(answer("warmer-on-since") == Answer(GapFound{GapReason::NotWorking}));
}

TEST_CASE_FIXTURE(Walking, "steps pass one by one and keep the number of the device")
{
    at("mask-size-1");
    type(QStringLiteral("M12"));
    press(Qt::Key_Return);
    CHECK(answer("mask-size-1") == Answer(StepsDone{.marks = "p--", .device = "M12"}));
    CHECK(card("mask-size-1").mark() == Mark::NotChecked);
    press(Qt::Key_Return);
    press(Qt::Key_Backspace);
    CHECK(answer("mask-size-1") == Answer(StepsDone{.marks = "p--", .device = "M12"}));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    CHECK(answer("mask-size-1") == Answer(StepsDone{.marks = "ppp", .device = "M12"}));
    CHECK(card("mask-size-1").mark() == Mark::Met);
    CHECK(current() == "mask-size-0");
    CHECK(text("mask-size-0", "deviceField").empty());
}

TEST_CASE_FIXTURE(Walking, "the first failed step ends the test and says what to do")
{
    at("mask-size-1");
    press(Qt::Key_Return);
    type(QStringLiteral("-"));
    CHECK(answer("mask-size-1") == Answer(StepsDone{.marks = "pf-", .device = {}}));
    CHECK(card("mask-size-1").mark() == Mark::GapCritical);
    CHECK(label("mask-size-1", "stepsAdvice").contains(QStringLiteral("Bring another size 1 mask")));
    CHECK(current() == "mask-size-1");
    press(Qt::Key_Return);
    CHECK(current() == "mask-size-0");
}

TEST_CASE_FIXTURE(Walking, "a test that has ended can be a gap of the whole")
{
    at("mask-size-1");
    type(QStringLiteral("--1"));
    CHECK(answer("mask-size-1") == Answer(StepsDone{.marks = "f--", .device = {}}));
    press(Qt::Key_Return);
    CHECK(answer("mask-size-1") == Answer(GapFound{GapReason::Absent}));
}

TEST_CASE_FIXTURE(Walking, "lots are typed with their expiry, and the dash within a date is no gap")
{
    at("oxytocin");
    type(QStringLiteral("12 2027-03, 4 10/2026"));
    press(Qt::Key_Return);
    const auto& counted = std::get<Counted>(answer("oxytocin"));
    REQUIRE(counted.lots.size() == 2);
    CHECK(counted.lots[0].quantity == 12);
    CHECK(counted.lots[1].expiry == std::chrono::year(2026) / 10 / 31);
    CHECK(card("oxytocin").mark() == Mark::Met);
    CHECK(text("oxytocin", "valueField") == "12 03/2027, 4 10/2026");
    const auto labels = card("oxytocin").editor().findChildren<WrapLabel*>();
    REQUIRE(!labels.empty());
    CHECK(labels.front()->text().contains(QStringLiteral("12 in date")));
    CHECK(labels.front()->text().contains(QStringLiteral("4 of 10/2026")));
}

TEST_CASE_FIXTURE(Walking, "a lot without an expiry is refused with the way to write it")
{
    at("oxytocin");
    type(QStringLiteral("12"));
    press(Qt::Key_Return);
    CHECK(answer("oxytocin") == Answer(NotChecked{}));
    CHECK(card("oxytocin").message().contains(QStringLiteral("6 03/2027")));
}

TEST_CASE_FIXTURE(Walking, "the parts of a kit follow each other and show the whole kits")
{
    at("delivery-kits");
    for (const char* pieces : {"5", "5", "4", "6", "30"}) {
        type(QLatin1String(pieces));
        press(Qt::Key_Return);
    }
    CHECK(answer("delivery-kits") == Answer(NotChecked{}));
    type(QStringLiteral("9"));
    CHECK(label("delivery-kits", "wholeKits").contains(QStringLiteral("2 whole kit")));
    press(Qt::Key_Return);
    CHECK(answer("delivery-kits") == Answer(KitCounted{.parts = {5, 5, 4, 6, 30, 9}}));
    CHECK(card("delivery-kits").mark() == Mark::GapCritical);
    CHECK(current() == "cord-tie-blade");
}

TEST_CASE_FIXTURE(Walking, "a part that was not counted is asked for")
{
    at("delivery-kits");
    type(QStringLiteral("5"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    CHECK(answer("delivery-kits") == Answer(NotChecked{}));
    CHECK(!card("delivery-kits").message().isEmpty());
    CHECK(current() == "delivery-kits");
}

TEST_CASE_FIXTURE(Walking, "a cylinder shows its minutes while the gauge is typed")
{
    at("oxygen-cylinder");
    type(QStringLiteral("90"));
    CHECK(label("oxygen-cylinder", "minutesLeft").contains(QStringLiteral("152 min")));
    type(QStringLiteral("s"));
    CHECK(!label("oxygen-cylinder", "minutesLeft").contains(QStringLiteral("152 min")));
    press(Qt::Key_Return);
    CHECK(answer("oxygen-cylinder")
        == Answer(CylinderRead{.gauge = decimal("90"), .size = "in-b-psi", .flow = decimal("5")}));
}

TEST_CASE_FIXTURE(Walking, "a gauge above the full cylinder is refused")
{
    at("oxygen-cylinder");
    type(QStringLiteral("900"));
    press(Qt::Key_Return);
    CHECK(answer("oxygen-cylinder") == Answer(NotChecked{}));
    CHECK(card("oxygen-cylinder").message().contains(QStringLiteral("147")));
}

TEST_CASE_FIXTURE(Walking, "a click answers as the key does")
{
    ItemCard& draught = card("draught");
    QTest::mouseClick(draught.findChild<ChoiceButton*>(QStringLiteral("metButton")), Qt::LeftButton);
    settle();
    CHECK(answer("draught") == Answer(Confirmed{}));
    ItemCard& light = card("light");
    QTest::mouseClick(light.findChild<ChoiceButton*>(QStringLiteral("gapButton")), Qt::LeftButton);
    settle();
    CHECK(light.asksReason());
    QTest::mouseClick(light.findChild<ChoiceButton*>(QStringLiteral("reason-absent")), Qt::LeftButton);
    settle();
    CHECK(answer("light") == Answer(GapFound{GapReason::Absent}));
}

TEST_CASE_FIXTURE(Walking, "a card is named by its item, its outcome and its limits")
{
    const QString before = card("room-temperature").accessibleName();
    CHECK(before.contains(QStringLiteral("Room temperature")));
    CHECK(before.contains(QStringLiteral("not checked")));
    CHECK(before.contains(QStringLiteral("26 to 28")));
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    CHECK(card("room-temperature").accessibleName().contains(QStringLiteral("met")));
}
