// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/pages/round/roundbench.h"
#include "ui/pages/round/putrightpane.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

/** A round of the day shift, recorded with the light out and 26.0 degrees, opened to be put right. */
class Recorded : public RoundBench
{
public:
    Recorded()
    {
        const Checklist list
            = must(store->checklistFor("sorrel-hill", RoundKind::Shift, 2026y / 11 / 24)).checklist;
        id = must(store->saveRound("sorrel-hill",
            aRound(list).on(2026y / 11 / 24, 0).withGap("light").measuring("room-temperature", "26.0").done(),
            "CD"));
        ward->refresh();
        ward->setActor("AB");
        page->putRight(must(store->round(id)));
        settle();
    }
    [[nodiscard]] QPushButton& button(const char* name) const { return find<QPushButton>(name); }
    [[nodiscard]] SavedRound now() const { return must(store->round(id)); }

    RecordId id;
};

}

TEST_CASE_FIXTURE(
    Recorded, "an answer entered wrong is put right by keys, with its reason, and the first record stays")
{
    const SavedRound before = now();
    at("light");
    press(Qt::Key_Return);
    CHECK(drafts().empty());
    CHECK(now().amendments.empty());
    press(Qt::Key_Return, Qt::ControlModifier);
    auto& changes = find<ActionTable>("changesTable");
    REQUIRE(changes.itemCount() == 1);
    CHECK(changes.itemText(0).contains(QStringLiteral("Met")));
    QSignalSpy finished(page.get(), &RoundPage::finished);
    type(QStringLiteral("the other lamp was looked at"));
    press(Qt::Key_Return);
    CHECK(finished.size() == 1);

    const SavedRound after = now();
    const std::size_t light
        = must(store->checklist(after.round.checklist, after.round.version)).position("light").value();
    CHECK(before.round.outcomes[light] == 'g');
    CHECK(after.round.outcomes[light] == 'm');
    CHECK(after.round.met == before.round.met + 1);
    CHECK(after.round.finished == before.round.finished);
    CHECK(after.actor == "CD");
    REQUIRE(after.amendments.size() == 1);
    CHECK(after.amendments[0].actor == "AB");
    CHECK(after.amendments[0].reason == "the other lamp was looked at");
    CHECK(must(store->firstRecorded(id)).round == before.round);
    CHECK_FALSE(must(store->verify()).fault);
}

TEST_CASE_FIXTURE(
    Recorded, "a correction without a reason, or without anybody's initials, is asked for and not recorded")
{
    at("light");
    press(Qt::Key_Return);
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return);
    CHECK(find<WrapLabel>("putRightSaid").isVisible());
    CHECK(now().amendments.empty());
    ward->setActor({});
    find<QLineEdit>("reasonEdit").setFocus();
    type(QStringLiteral("wrong lamp"));
    press(Qt::Key_Return);
    CHECK(now().amendments.empty());
    CHECK(find<WrapLabel>("putRightSaid").isVisible());
}

TEST_CASE_FIXTURE(Recorded, "with nothing changed there is nothing to record, and leaving changes nothing")
{
    press(Qt::Key_Return, Qt::ControlModifier);
    CHECK_FALSE(button("recordCorrectionButton").isEnabled());
    QTest::mouseClick(&button("leaveRecordedButton"), Qt::LeftButton);
    settle();
    CHECK(page->walkPane() == nullptr);
    CHECK(now().amendments.empty());
    CHECK(drafts().empty());
}

TEST_CASE_FIXTURE(Recorded, "what is changed is shown before it is left, and one can go back to the items")
{
    at("room-temperature");
    press(Qt::Key_Delete);
    type(QStringLiteral("24.0"));
    press(Qt::Key_Return);
    Q_EMIT page->walkPane()->leaveWanted();
    settle();
    auto& changes = find<ActionTable>("changesTable");
    REQUIRE(changes.itemCount() == 1);
    CHECK(changes.itemText(0).contains(QStringLiteral("24")));
    CHECK(changes.itemText(0).contains(QStringLiteral("26")));
    QTest::mouseClick(&button("backToItemsButton"), Qt::LeftButton);
    settle();
    CHECK(current() == "room-temperature");
    CHECK(now().amendments.empty());
}
