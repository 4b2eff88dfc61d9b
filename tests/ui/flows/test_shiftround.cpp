// SPDX-License-Identifier: MIT
// The main job, whole: a round entered through the real window with key events only, killed in the middle, taken
// up, finished, verified, rebuilt.
#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"
#include "tests/ui/flows/keywalk.h"
#include "ui/window/mainwindow.h"

#include <csignal>
#include <doctest/doctest.h>
#include <QApplication>
#include <QProcess>
#include <QTest>
#include <unistd.h>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr int answeredBeforeTheKill = 31;

/** 07:20 of the day shift, 24 November 2026, in the zone of aUnit() (UTC+05:30). */
Instant morning() { return sys_days(2026y / 11 / 24) + 1h + 50min; }

/** The three gaps of this round: a cold room, two whole kits of four, the small mask that fails its first step. */
Keys gapKeys(const Checklist& checklist)
{
    const auto& kit = std::get<KitRule>(checklist.item(*checklist.position("delivery-kits")).rule);
    QString parts;
    for (const KitPart& part : kit.parts)
        parts += QString::number(part.perKit * 2) + QLatin1Char('\n');
    return {{"room-temperature", QStringLiteral("24.5\n")}, {"delivery-kits", parts}, {"mask-size-0", QStringLiteral("-\n")}};
}

/** The window on a store, as the program opens it. */
struct Station
{
    explicit Station(const std::string& file)
        : clock(morning())
        , store(must(Store::open(file, clock)))
        , language(QStringLiteral("en"))
        , window(*store, clock, language, {})
    {
        window.resize(1366, 768);
        window.show();
        window.activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(&window));
    }
    /** Alt+2, then Enter on what *Round* offers. */
    void takeUpByKeys()
    {
        window.ward().setActor("M. R.");
        QTest::keyClick(&window, Qt::Key_2, Qt::AltModifier);
        QApplication::processEvents();
        REQUIRE(window.place() == Place::Round);
        type(QStringLiteral("\n"));
    }

    FixedClock clock;
    std::unique_ptr<Store> store;
    Language language;
    MainWindow window;
};

}

// Not run by itself: the other case starts it in a process of its own and expects it to die.
TEST_CASE("child: walk until killed" * doctest::skip())
{
    Station station(qEnvironmentVariable("CRADLEPOST_TEST_FILE").toStdString());
    const Checklist checklist = must(station.store->checklist("shift-readiness", 1));
    station.takeUpByKeys();
    walkByKeys(checklist, gapKeys(checklist), [](int answered) {
        if (answered == answeredBeforeTheKill)
            kill(getpid(), SIGKILL);
        return false;
    });
    FAIL("it was not killed");
}

TEST_CASE("a round of the full checklist by keys alone survives kill -9 and keeps the verdict worked out by hand")
{
    const TempDir temp;
    const std::string file = temp.file("ward.cradlepost");
    {
        const FixedClock clock(morning());
        aStore(file, clock);
    }
    QProcess child;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("CRADLEPOST_TEST_FILE"), QString::fromStdString(file));
    child.setProcessEnvironment(environment);
    child.start(QCoreApplication::applicationFilePath(),
        {QStringLiteral("--no-skip"), QStringLiteral("--test-case=child: walk until killed")});
    REQUIRE(child.waitForFinished(120000));
    REQUIRE(child.exitStatus() == QProcess::CrashExit);

    Station station(file);
    Store& store = *station.store;
    const Checklist checklist = must(store.checklist("shift-readiness", 1));
    REQUIRE(checklist.itemCount() == 63);
    const auto drafts = must(store.drafts("sorrel-hill"));
    REQUIRE(drafts.size() == 1);
    CHECK(std::count_if(drafts[0].answers.begin(), drafts[0].answers.end(), isChecked) == answeredBeforeTheKill);
    CHECK(must(store.openGaps("sorrel-hill")).empty());

    station.takeUpByKeys();
    CHECK(cardWithFocus() == checklist.item(answeredBeforeTheKill).id);
    CHECK(walkByKeys(checklist, gapKeys(checklist)) == 63 - answeredBeforeTheKill);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    QApplication::processEvents();

    const Slot slot = slotOf(2026y / 11 / 24, 0);
    const auto saved = must(store.roundsOfShift("sorrel-hill", slot));
    REQUIRE(saved.size() == 1);
    const RoundRecord& round = saved[0].round;
    // By hand: 3 of 63 are gaps, two of them critical, so not ready. Shares met by section: room 7/8, resuscitation
    // 10/11, kits and linen 7/8, the other five whole: (7/8 + 10/11 + 7/8 + 5) / 8 = 0.95739.
    CHECK(round.state == Readiness::NotReady);
    CHECK(round.met == 60);
    CHECK(round.applicable == 63);
    CHECK(round.index == 9574);
    CHECK(round.outcomes == "g" "mmmmmmm" "mmmmmmmm" "mm" "g" "mmmmmmmm" "g" "mmmmmmm" "mmmmmmmm" "mmmmmmmmm" "mmmm" "mmmmmmm");
    REQUIRE(round.gaps.size() == 3);
    CHECK(round.gaps[0].code == ReasonCode::TooLow);
    CHECK(round.gaps[0].value == "24.5");
    CHECK(round.gaps[0].limit == "26");
    CHECK(round.gaps[1].code == ReasonCode::StepFailed);
    CHECK(round.gaps[2].code == ReasonCode::KitsIncomplete);
    CHECK(round.gaps[2].value == "2");
    CHECK(must(store.drafts("sorrel-hill")).empty());
    CHECK(must(store.openGaps("sorrel-hill")).size() == 3);

    CHECK_FALSE(must(store.verify()).fault);
    const auto rows = must(store.rounds("sorrel-hill", slot, slot + 1));
    must(store.rebuild());
    CHECK_FALSE(must(store.verify()).fault);
    const auto again = must(store.rounds("sorrel-hill", slot, slot + 1));
    REQUIRE(again.size() == rows.size());
    CHECK(again[0].outcomes == rows[0].outcomes);
    CHECK(again[0].state == Readiness::NotReady);
    CHECK(must(store.roundsOfShift("sorrel-hill", slot))[0].round == round);
}
