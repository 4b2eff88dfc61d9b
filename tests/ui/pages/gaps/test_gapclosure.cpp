// SPDX-License-Identifier: MIT
#include "ui/pages/gaps/gapspage.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"
#include "ui/pages/round/roundpage.h"
#include "ui/pages/round/walkinhand.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

/** A critical item that is answered with yes or no. */
std::string criticalItem(const Store& store)
{
    const Checklist checklist = must(store.checklist("shift-readiness", 1));
    for (std::size_t at = 0; at < checklist.itemCount(); ++at) {
        if (checklist.item(at).severity == Severity::Critical
            && checklist.item(at).kind() == ItemKind::Confirm)
            return checklist.item(at).id;
    }
    throw std::runtime_error("no such item");
}

}

TEST_CASE("M says who mended a critical gap, V of the same person is refused, of another it counts")
{
    WardWindow ward;
    const std::string item = criticalItem(*ward.store);
    ward.walk({item});
    ward.open();
    ward.press(Qt::Key_3, Qt::AltModifier);
    ward.find("openGapsTable").setFocus();
    ward.press(Qt::Key_M);
    CHECK(must(ward.store->openGaps("sorrel-hill"))[0].mendedBy == "A. T.");
    CHECK(ward.row("openGapsTable", 0).contains(QStringLiteral("a second person has to look")));
    ward.press(Qt::Key_V);
    CHECK(ward.text("gapSaid").startsWith(QStringLiteral("Who mended it cannot be the one who looks")));
    CHECK(must(ward.store->openGaps("sorrel-hill"))[0].verifiedBy.empty());
    ward.window->ward().setActor("N. K.");
    ward.press(Qt::Key_V);
    CHECK(must(ward.store->openGaps("sorrel-hill"))[0].verifiedBy == "N. K.");
    CHECK(ward.row("openGapsTable", 0).contains(QStringLiteral("looked at by N. K.")));
    ward.press(Qt::Key_M); // not mended after all
    const Gap gap = must(ward.store->openGaps("sorrel-hill"))[0];
    CHECK(gap.mendedBy.empty());
    CHECK(gap.reopened == 1);
    CHECK_FALSE(must(ward.store->verify()).fault);
}

TEST_CASE("R re-checks just that item by one key, and the answer closes the gap")
{
    WardWindow ward;
    const std::string item = criticalItem(*ward.store);
    ward.walk({item, "mask-size-0"});
    ward.open();
    ward.press(Qt::Key_3, Qt::AltModifier);
    REQUIRE(must(ward.store->openGaps("sorrel-hill")).size() == 2);
    const std::string first = must(ward.store->openGaps("sorrel-hill"))[0].item;
    ward.find("openGapsTable").setFocus();
    ward.press(Qt::Key_R);
    REQUIRE(ward.window->place() == Place::Round);
    const auto drafts = must(ward.store->drafts("sorrel-hill"));
    REQUIRE(drafts.size() == 1);
    CHECK(drafts[0].kind == RoundKind::Recheck);
    const Checklist checklist = must(ward.store->checklist("shift-readiness", 1));
    CHECK(drafts[0].asked == std::vector{*checklist.position(first)});
}

TEST_CASE("what helps until then is kept and shown, and how far a late gap has gone up")
{
    WardWindow ward;
    ward.walk({criticalItem(*ward.store)});
    ward.open();
    ward.press(Qt::Key_3, Qt::AltModifier);
    ward.find("measureEdit").setFocus();
    ward.type(QStringLiteral("spare\n"));
    CHECK(must(ward.store->openGaps("sorrel-hill"))[0].measure == "spare");
    CHECK(ward.row("openGapsTable", 0).contains(QStringLiteral("until then: spare")));
    // Found at 14:00, due at 19:00: for the owner from 16:30, for the in-charge from 19:00, half as long
    // again 21:30.
    CHECK(ward.text("gapLife").contains(QStringLiteral("for who mends it from 16:30")));
    ward.tick(150min);
    CHECK(
        ward.text("gapLife").contains(QStringLiteral("Now for who mends it, for the in-charge from 19:00")));
    CHECK_FALSE(ward.row("openGapsTable", 0).contains(QStringLiteral("in-charge")));
    ward.tick(151min);
    CHECK(ward.row("openGapsTable", 0)
              .contains(QStringLiteral("Now for the in-charge, for the quality officer from 21:30")));
}

TEST_CASE("who hears of a gap that lasts is set in Set-up, and Gaps says it so from then on")
{
    WardWindow ward;
    ward.walk({criticalItem(*ward.store)}); // found at 14:00, due at 19:00
    ward.open();
    ward.press(Qt::Key_7, Qt::AltModifier);
    CHECK(ward.find<QSpinBox>("escalation-owner").value() == 50);
    const auto set = [&](const char* box, const QString& percent) {
        auto& field = ward.find<QSpinBox>(box);
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, percent);
    };
    set("escalation-owner", QStringLiteral("100"));
    ward.find("escalationWhoEdit").setFocus();
    ward.press(Qt::Key_Return);
    CHECK(ward.text("escalationSaid").startsWith(QStringLiteral("Each has to hear later than the one before.")));
    set("escalation-owner", QStringLiteral("0")); // never
    set("escalation-in-charge", QStringLiteral("20"));
    ward.find("escalationWhoEdit").setFocus();
    ward.press(Qt::Key_Return);
    CHECK(ward.text("escalationSaid") == QStringLiteral("Kept."));
    CHECK(must(ward.store->escalation("sorrel-hill")).front()
        == EscalationLevel{.to = EscalationTo::InCharge, .percent = 20});
    ward.press(Qt::Key_3, Qt::AltModifier);
    CHECK(ward.text("gapLife").contains(QStringLiteral("for the in-charge from 15:00"))); // a fifth of five hours
    CHECK_FALSE(must(ward.store->verify()).fault);
}
