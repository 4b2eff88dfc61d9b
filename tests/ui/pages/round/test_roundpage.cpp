// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/pages/round/roundbench.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/sectionlist.h"
#include "ui/widgets/verdictbanner.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** The keys that meet an item, Enter left out where it only goes on. */
struct MeetingKeys
{
    QStringList operator()(const ConfirmRule&) const { return {QString()}; }
    QStringList operator()(const MeasureRule& rule) const
    {
        const LimitSet& set = rule.limits.front();
        return {qs((set.high ? *set.high : *set.low).toString())};
    }
    QStringList operator()(const SinceRule&) const { return {QStringLiteral("1805")}; }
    QStringList operator()(const StepsRule& rule) const
    {
        return QStringList(static_cast<qsizetype>(rule.steps.size()));
    }
    QStringList operator()(const CountRule& rule) const
    {
        const QString par = QString::number(rule.par);
        return {rule.expires && rule.par > 0 ? par + QStringLiteral(" 03/2029") : par};
    }
    QStringList operator()(const KitRule& rule) const
    {
        QStringList parts;
        for (const KitPart& part : rule.parts)
            parts << QString::number(part.perKit * rule.par);
        return parts;
    }
    QStringList operator()(const CylinderRule& rule) const
    {
        return {qs(rule.sizes.front().fullPressure.toString())};
    }
};

/** Types what meets the item and Enter after each part; returns how many keys that took. */
int meet(const Item& item)
{
    int keys = 0;
    for (const QString& part : std::visit(MeetingKeys{}, item.rule)) {
        type(part);
        press(Qt::Key_Return);
        keys += static_cast<int>(part.size()) + 1;
    }
    return keys;
}

class Bench : public RoundBench
{
public:
    void begin(RoundKind kind = RoundKind::Shift)
    {
        ward->setActor("AB");
        page->begin(kind);
        settle();
    }
    [[nodiscard]] QPushButton& button(const char* name) const { return find<QPushButton>(name); }
    [[nodiscard]] QString words(const char* name) const { return find<WrapLabel>(name).text(); }
};

}

TEST_CASE_FIXTURE(Bench, "a whole round is entered with keys only, in order")
{
    begin();
    const std::size_t count = checklist().itemCount();
    int keys = 0;
    int readings = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const Item& item = checklist().item(i);
        REQUIRE_MESSAGE(current() == item.id, "the keyboard is at ", current(), " instead of ", item.id);
        keys += meet(item);
        readings += item.kind() == ItemKind::Confirm ? 0 : 1;
        REQUIRE_MESSAGE(page->hand()->judged(i).outcome == Outcome::Met, item.id);
    }
    MESSAGE(count, " items, ", readings, " of them readings, in ", keys, " keys");
    CHECK(QApplication::focusWidget() == &button("finishRoundButton"));
    press(Qt::Key_Return);
    REQUIRE(recorded().size() == 1);
    const RoundRecord round = recorded().front().round;
    CHECK(round.outcomes == std::string(count, 'm'));
    CHECK(round.state == Readiness::Ready);
    CHECK(recorded().front().actor == "AB");
    CHECK(find<VerdictBanner>("resultBanner").state() == VerdictState::Ready);
    CHECK(drafts().empty());
}

TEST_CASE_FIXTURE(Bench, "every answer is on disk at once and is taken up by a new page")
{
    begin();
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    type(QStringLiteral("-3"));
    restart();
    CHECK(button("beginRoundButton").text().contains(QStringLiteral("3 of ")));
    CHECK(QApplication::focusWidget() == &button("beginRoundButton"));
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(Measured{must(Decimal::parse("27"))}));
    CHECK(answer("draught") == Answer(Confirmed{}));
    CHECK(answer("light") == Answer(GapFound{GapReason::NotClean}));
    CHECK(current() == "room-clean");
}

TEST_CASE_FIXTURE(Bench, "each answer says when it was saved")
{
    begin();
    QSignalSpy saved(page.get(), &RoundPage::saved);
    type(QStringLiteral("27"));
    CHECK(saved.isEmpty());
    press(Qt::Key_Return);
    REQUIRE(saved.size() == 1);
    CHECK(saved.front().front().value<Instant>() == clock.now());
}

TEST_CASE_FIXTURE(Bench, "nobody walks without initials, and typed ones will do")
{
    CHECK(QApplication::focusWidget() == &find<ChoiceButton>("person-AB"));
    button("beginRoundButton").click();
    settle();
    CHECK(page->hand() == nullptr);
    CHECK(!words("startFault").isEmpty());
    CHECK(QApplication::focusWidget() == &find<QLineEdit>("initialsEdit"));
    type(QStringLiteral("XY"));
    press(Qt::Key_Return);
    REQUIRE(page->hand() != nullptr);
    CHECK(page->hand()->walk().draft().actor == "XY");
}

TEST_CASE_FIXTURE(Bench, "initials are chosen by a key")
{
    press(Qt::Key_Return);
    CHECK(ward->actor() == "AB");
    CHECK(QApplication::focusWidget() == &button("beginRoundButton"));
}

TEST_CASE_FIXTURE(Bench, "finishing with open items asks once")
{
    begin();
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    press(Qt::Key_Return, Qt::ControlModifier);
    CHECK(recorded().empty());
    CHECK(words("finishWords").contains(QStringLiteral("not seen yet")));
    CHECK(QApplication::focusWidget() == &button("goOnButton"));
    press(Qt::Key_Return);
    CHECK(current() == "draught");
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(recorded().size() == 1);
    CHECK(recorded().front().round.outcomes.substr(0, 2) == "mu");
    CHECK(recorded().front().round.state == Readiness::NotReady);
}

TEST_CASE_FIXTURE(Bench, "the result names the record and leads to the shift")
{
    begin();
    press(Qt::Key_Return, Qt::ControlModifier);
    QSignalSpy finished(page.get(), &RoundPage::finished);
    QSignalSpy recordedKind(page.get(), &RoundPage::recorded);
    press(Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(recorded().size() == 1);
    CHECK(recordedKind.size() == 1);
    CHECK(finished.isEmpty());
    CHECK(words("savedLine").contains(QString::number(recorded().front().id.seq)));
    CHECK(QApplication::focusWidget() == &button("seeShiftButton"));
    press(Qt::Key_Return);
    REQUIRE(finished.size() == 1);
    CHECK(finished.front().front().value<RoundKind>() == RoundKind::Shift);
}

TEST_CASE_FIXTURE(Bench, "a re-check asks only what is missing")
{
    begin();
    for (std::size_t i = 0; i < checklist().itemCount(); ++i) {
        if (checklist().item(i).id == "light")
            type(QStringLiteral("-1"));
        checklist().item(i).id == "light" ? press(Qt::Key_Return)
                                          : static_cast<void>(meet(checklist().item(i)));
    }
    press(Qt::Key_Return);
    REQUIRE_MESSAGE(recorded().size() == 1, words("finishWords"));
    find<QPushButton>("anotherButton").click();
    settle();
    CHECK(button("beginRoundButton").text() == QStringLiteral("Re-check what is missing"));
    press(Qt::Key_Return);
    REQUIRE(page->hand() != nullptr);
    CHECK(page->hand()->walk().draft().asked == std::vector<std::size_t>{position("light")});
    CHECK(current() == "light");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    REQUIRE(recorded().size() == 2);
    CHECK(recorded().back().round.kind == RoundKind::Recheck);
    CHECK(recorded().back().round.state == Readiness::Ready);
}

TEST_CASE_FIXTURE(Bench, "a second round of the shift is refused in words")
{
    begin();
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    REQUIRE(recorded().size() == 1);
    page->begin(RoundKind::Shift);
    settle();
    CHECK(page->hand() == nullptr);
    CHECK(!words("startFault").isEmpty());
}

TEST_CASE_FIXTURE(Bench, "a draft of an earlier shift says to which it counts and can be put aside")
{
    begin();
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    clock.advance(std::chrono::hours(13));
    restart();
    const VerdictBanner& banner = find<VerdictBanner>("startBanner");
    CHECK(QString(banner.accessibleName() + banner.accessibleDescription())
              .contains(QStringLiteral("Tue 24 Nov")));
    QPushButton& aside = button("putAsideButton");
    aside.click();
    CHECK(drafts().size() == 1);
    CHECK(QApplication::focusWidget() == &button("keepDraftButton"));
    aside.click();
    settle();
    CHECK(drafts().empty());
    CHECK(button("beginRoundButton").text() == QStringLiteral("Begin the round"));
}

TEST_CASE_FIXTURE(Bench, "arrows and page keys go over cards and sections")
{
    begin();
    press(Qt::Key_Down);
    CHECK(current() == "draught");
    press(Qt::Key_Tab);
    CHECK(current() == "light");
    press(Qt::Key_Backtab);
    press(Qt::Key_Up);
    CHECK(current() == "room-temperature");
    press(Qt::Key_PageDown);
    CHECK(current() == "warmer-function-test");
    press(Qt::Key_Up);
    CHECK(current() == "backup-light");
    CHECK(words("sectionHeading").contains(QStringLiteral("Room")));
    press(Qt::Key_Down);
    CHECK(words("sectionHeading").contains(QStringLiteral("Warmer corner")));
    press(Qt::Key_PageUp);
    CHECK(current() == "room-temperature");
    press(Qt::Key_Up);
    CHECK(QApplication::focusWidget() == &find<SectionList>("sectionList"));
}

TEST_CASE_FIXTURE(Bench, "what is half typed outlives a look at another section")
{
    begin();
    type(QStringLiteral("2"));
    find<SectionList>("sectionList").activate(2);
    settle();
    CHECK(current() == "bag-function-test");
    CHECK(answer("room-temperature") == Answer(NotChecked{}));
    CHECK(card("room-temperature").message().contains(QStringLiteral("Not kept yet")));
    at("room-temperature");
    type(QStringLiteral("7"));
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(Measured{must(Decimal::parse("27"))}));
}

TEST_CASE_FIXTURE(Bench, "the verdict forms with the answers")
{
    begin();
    CHECK(words("standingWord") == QStringLiteral("Not ready"));
    CHECK(words("standingSentence").contains(QString::number(checklist().itemCount())));
    type(QStringLiteral("21"));
    press(Qt::Key_Return);
    CHECK(words("standingSentence").contains(QStringLiteral("Room temperature: 21 °C, below 26")));
    CHECK(find<SectionList>("sectionList").itemText(0).contains(QStringLiteral("1 of 8")));
}

TEST_CASE_FIXTURE(Bench, "Enter after the last answer leads back to what was passed over")
{
    begin(RoundKind::PreBirth);
    press(Qt::Key_Down);
    const std::string first = checklist().item(0).id;
    for (std::size_t i = 1; i < checklist().itemCount(); ++i)
        meet(checklist().item(i));
    CHECK(current() == first);
}

TEST_CASE_FIXTURE(Bench, "an answer that the disk refuses is held and kept with the next one")
{
    begin();
    auto other = must(Store::open(dir.file("ward.db"), clock));
    // Another program in the middle of a write: this one is told that the file is locked.
    static_cast<void>(other->together([&]() -> Result<void> {
        must(other->setPeople("sorrel-hill", {{.initials = "AB", .role = ""}}, "AB"));
        type(QStringLiteral("27"));
        press(Qt::Key_Return);
        CHECK(answer("room-temperature") == Answer(Measured{must(Decimal::parse("27"))}));
        CHECK(page->hand()->trouble().has_value());
        CHECK(words("troubleWords").contains(QStringLiteral("held here")));
        CHECK(find<WrapLabel>("troubleWords").isVisible());
        return {};
    }));
    press(Qt::Key_Return);
    CHECK(!page->hand()->trouble().has_value());
    CHECK(!find<WrapLabel>("troubleWords").isVisible());
    REQUIRE(drafts().size() == 1);
    CHECK(drafts().front().answers[0] == Answer(Measured{must(Decimal::parse("27"))}));
}

TEST_CASE_FIXTURE(Bench, "reading the ward again takes the keyboard from nobody")
{
    press(Qt::Key_Tab);
    REQUIRE(QApplication::focusWidget() == &find<ChoiceButton>("person-CD"));
    ward->refresh();
    settle();
    CHECK(QApplication::focusWidget() == &find<ChoiceButton>("person-CD"));
    begin();
    type(QStringLiteral("2"));
    ward->refresh();
    settle();
    type(QStringLiteral("7"));
    press(Qt::Key_Return);
    CHECK(answer("room-temperature") == Answer(Measured{must(Decimal::parse("27"))}));
}

TEST_CASE_FIXTURE(Bench, "another ward puts the walk down without losing an answer")
{
    must(store->describeUnit(
        {.id = "elm-ford", .name = "Elm Ford", .zone = "Asia/Kolkata", .level = {}}, "AB"));
    begin();
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    ward->setUnit("elm-ford");
    settle();
    CHECK(page->hand() == nullptr);
    ward->setUnit("sorrel-hill");
    settle();
    CHECK(button("beginRoundButton").text().contains(QStringLiteral("1 of ")));
}

TEST_CASE_FIXTURE(Bench, "a spot check is walked blind, may leave things out and says how many were looked at")
{
    ward->setActor("QO");
    page->begin(RoundKind::SpotCheck);
    settle();
    CHECK(std::none_of(page->hand()->walk().draft().answers.begin(), page->hand()->walk().draft().answers.end(),
        isChecked));
    type(QStringLiteral("27"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    REQUIRE(drafts().size() == 1);
    CHECK(drafts()[0].kind == RoundKind::SpotCheck);
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return, Qt::ControlModifier);
    settle();
    CHECK(recorded().empty());
    const Shift& shift = ward->view()->shift;
    const auto checks = must(store->spotChecks("sorrel-hill", shift.slot(), shift.slot() + 1));
    REQUIRE(checks.size() == 1);
    CHECK(checks[0].actor == "QO");
    CHECK(checks[0].round.outcomes.starts_with("mmu"));
    CHECK(words("spotCheckDone").contains(QStringLiteral("Spot check is done: 2 of ")));
    CHECK(page->findChild<VerdictBanner*>(QStringLiteral("resultBanner")) == nullptr);
    CHECK(drafts().empty());
}
