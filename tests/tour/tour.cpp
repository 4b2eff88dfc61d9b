// SPDX-License-Identifier: MIT
// Writes a picture of each page and state, light and dark, in each language, at 100 % and 200 % text:
//   tour FOLDER [STATE]
#include "app/demo/demo.h"
#include "tests/support/builders.h"
#include "ui/pages/round/roundpage.h"
#include "ui/theme/fontset.h"
#include "ui/widgets/actiontable.h"
#include "ui/window/mainwindow.h"

#include <cstdio>
#include <functional>
#include <QAbstractButton>
#include <QApplication>
#include <QDir>
#include <QScrollArea>

using namespace cradlepost;

namespace {

struct Look
{
    const char* name;
    const char* language;
    Scheme scheme;
    double scale;
};

constexpr Look looks[] = {{"en-light", "en", Scheme::Light, 1.0}, {"en-dark", "en", Scheme::Dark, 1.0},
    {"hi-light", "hi", Scheme::Light, 1.0}, {"pseudo-light", "pseudo", Scheme::Light, 1.0},
    {"en-light-200", "en", Scheme::Light, 2.0}, {"hi-dark-200", "hi", Scheme::Dark, 2.0},
    {"pseudo-light-200", "pseudo", Scheme::Light, 2.0}};

/** One database in one state at one moment. */
struct Scene
{
    std::string file;
    FixedClock clock;
};

class Tour
{
public:
    Tour(QApplication& application, QDir folder, QString only)
        : m_application(application)
        , m_folder(std::move(folder))
        , m_only(std::move(only))
    {
    }

    void photograph(Scene& scene, const QString& state, Place place, RoundKind* kind = nullptr,
        const std::function<void(MainWindow&)>& then = {})
    {
        if (!state.contains(m_only))
            return;
        for (const Look& look : looks) {
            auto store = test::must(Store::open(scene.file, scene.clock));
            const Language language(QString::fromLatin1(look.language));
            m_application.setLayoutDirection(language.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
            applyTheme(m_application, makeTheme(look.scheme, look.scale));
            MainWindow window(*store, scene.clock, language, {.unit = QStringLiteral("sorrel-hill")});
            window.resize(1366, 768);
            window.show();
            window.openPlace(place);
            if (kind != nullptr)
                window.beginRound(*kind);
            if (then)
                then(window);
            for (int i = 0; i < 5; ++i)
                QApplication::processEvents();
            const QString file = m_folder.filePath(QStringLiteral("%1-%2.png").arg(state, QLatin1String(look.name)));
            window.grab().save(file);
            std::printf("%s\n", file.toUtf8().constData());
            photographWhole(window, QString(file).replace(QStringLiteral(".png"), QStringLiteral("-whole.png")));
        }
    }

private:
    /** What scrolling would bring into view, in one tall picture. */
    static void photographWhole(const MainWindow& window, const QString& file)
    {
        for (const QScrollArea* area : window.findChildren<QScrollArea*>()) {
            QWidget* page = area->widget();
            if (area->isVisible() && page != nullptr && page->height() > area->viewport()->height() * 3 / 2)
                page->grab().save(file);
        }
    }

    QApplication& m_application;
    QDir m_folder;
    QString m_only; ///< states whose name holds this; all of them when empty
};

/** Answers the first `n` items of the shift round of the first unit; all of them and finishes when `n` is 0. */
void walk(Scene& scene, std::size_t n)
{
    auto store = test::must(Store::open(scene.file, scene.clock));
    const Language language(QStringLiteral("en"));
    Ward ward(*store, scene.clock, language, "sorrel-hill");
    ward.refresh();
    ward.setActor("A. T.");
    Walk round = test::must(ward.takeUp(RoundKind::Shift));
    const Date lastDay = round.context(scene.clock.now()).lastDay;
    const std::size_t count = n == 0 ? round.checklist().itemCount() : n;
    for (std::size_t at = 0; at < count; ++at) {
        scene.clock.advance(std::chrono::seconds(7));
        Answer answer = test::metAnswer(round.checklist().item(at), scene.clock.now(), lastDay);
        const bool gap = n != 0 && at % 9 == 4;
        test::must(round.give(at, gap ? Answer(GapFound {GapReason::Absent}) : std::move(answer), scene.clock.now()));
    }
    test::must(ward.keep(round));
    if (n == 0)
        test::must(ward.finish(round));
}

}

namespace {

/** Clicks the buttons of those names, one after another. */
std::function<void(MainWindow&)> clicks(const std::vector<const char*>& buttons)
{
    return [buttons](MainWindow& window) {
        for (const char* button : buttons)
            window.findChild<QAbstractButton*>(QLatin1String(button))->click();
    };
}

/** Goes to the source of oxygen, which the ward named itself: the same in every language. */
void showOxygen(MainWindow& window)
{
    window.findChild<QAbstractButton*>(QStringLiteral("devicesButton"))->click();
    auto* table = window.findChild<ActionTable*>(QStringLiteral("devicesTable"));
    for (int row = 0; row < table->itemCount(); ++row) {
        if (table->itemText(row).contains(QStringLiteral("xygen")))
            table->setCursorAt(row);
    }
}

/** A handover that was taken, then two births on the board, a warmer that is on and one that has to go on. */
void setUpBoard(Scene& scene)
{
    using namespace std::chrono;
    const std::string unit = "sorrel-hill";
    auto store = test::must(Store::open(scene.file, scene.clock));
    const Language language(QStringLiteral("en"));
    Ward ward(*store, scene.clock, language, unit);
    ward.refresh();
    ward.setActor("A. T.");
    test::must(ward.giveHandover());
    ward.setActor("N. K.");
    test::must(ward.takeHandover());
    std::vector<std::string> warmers;
    for (const WarmerRow& row : ward.board().warmers)
        warmers.push_back(row.device.id);
    for (int nth = static_cast<int>(warmers.size()) + 1; nth <= 2; ++nth) {
        const std::string id = "tour-warmer-" + std::to_string(nth);
        test::must(store->noteEquipment(unit,
            {{.device = id,
                .at = scene.clock.now(),
                .deed = Added {.device = {.id = id, .kind = EquipmentKind::Warmer, .label = "Warmer " + std::to_string(nth)}}}},
            "N. K."));
        warmers.push_back(id);
    }
    test::must(ward.switchWarmer(warmers[0], true, scene.clock.now() - minutes(18)));
    test::must(ward.expectBirth(scene.clock.now() + minutes(50), 2, true));
    scene.clock.advance(seconds(20));
    test::must(ward.expectBirth(scene.clock.now() + hours(4), 1, false));
}

}

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    FontReading fonts; // letters as the program draws them
    QApplication application(argc, argv);
    fonts.await();
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("tour"));
    folder.mkpath(QStringLiteral("."));
    using namespace std::chrono;
    const Instant until = sys_days(2026y / 11 / 24) + 14h + 12min; // 19:42 in the demo's zone
    const test::TempDir temp;
    Scene scene {temp.file("demo.cradlepost"), FixedClock(until)};
    test::must(writeDemo(scene.file, until));
    Tour tour(application, folder, argc > 2 ? QString::fromLocal8Bit(argv[2]) : QString());
    RoundKind recheck = RoundKind::Recheck;
    RoundKind shift = RoundKind::Shift;
    tour.photograph(scene, QStringLiteral("shift-not-ready"), Place::ThisShift);
    tour.photograph(scene, QStringLiteral("gaps"), Place::Gaps);
    tour.photograph(scene, QStringLiteral("units"), Place::Units);
    tour.photograph(scene, QStringLiteral("stores"), Place::Stores);
    tour.photograph(scene, QStringLiteral("stores-devices"), Place::Stores, nullptr, clicks({"devicesButton"}));
    tour.photograph(scene, QStringLiteral("stores-fridge"), Place::Stores, nullptr, clicks({"fridgeButton"}));
    tour.photograph(scene, QStringLiteral("stores-new-shelf"), Place::Stores, nullptr, clicks({"newShelfButton"}));
    tour.photograph(
        scene, QStringLiteral("stores-refusal"), Place::Stores, nullptr, clicks({"newShelfButton", "keepShelfButton"}));
    tour.photograph(scene, QStringLiteral("stores-cylinder"), Place::Stores, nullptr, showOxygen);
    tour.photograph(scene, QStringLiteral("setup"), Place::Setup);
    tour.photograph(scene, QStringLiteral("month"), Place::Month);
    tour.photograph(scene, QStringLiteral("round-recheck"), Place::Round, &recheck);
    setUpBoard(scene);
    tour.photograph(scene, QStringLiteral("shift-board"), Place::ThisShift);
    tour.photograph(scene, QStringLiteral("board"), Place::Board);
    tour.photograph(scene, QStringLiteral("handover"), Place::Handover);
    scene.clock.advance(hours(8));
    tour.photograph(scene, QStringLiteral("shift-no-round"), Place::ThisShift);
    tour.photograph(scene, QStringLiteral("round-start"), Place::Round);
    walk(scene, 23);
    tour.photograph(scene, QStringLiteral("round-mid"), Place::Round, &shift);
    tour.photograph(scene, QStringLiteral("shift-mid-round"), Place::ThisShift);
    walk(scene, 0);
    tour.photograph(scene, QStringLiteral("shift-ready"), Place::ThisShift);
    Scene empty {temp.file("empty.cradlepost"), FixedClock(until)};
    tour.photograph(empty, QStringLiteral("setup-first"), Place::Setup);
    return 0;
}
