// SPDX-License-Identifier: MIT
// Pictures of the page of the round in its states: roundpictures FOLDER [look...]
#include "tests/ui/pages/round/roundbench.h"
#include "ui/theme/theme.h"

#include <cstdio>
#include <QApplication>
#include <QDir>

using namespace cradlepost;
using namespace cradlepost::test;

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

void save(RoundBench& bench, const QDir& folder, const Look& look, const char* state)
{
    settle();
    QTest::qWait(30);
    const QString name = QStringLiteral("%1-%2.png").arg(QLatin1String(state), QLatin1String(look.name));
    bench.page->grab().save(folder.filePath(name));
}

void roomAndWarmer()
{
    type(QStringLiteral("26.8"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    type(QStringLiteral("-2"));
    for (int i = 0; i < 6; ++i)
        press(Qt::Key_Return);
    type(QStringLiteral("w7"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
}

void walk(RoundBench& bench, const QDir& folder, const Look& look)
{
    save(bench, folder, look, "start");
    bench.ward->setActor("AB");
    bench.page->begin(RoundKind::Shift);
    save(bench, folder, look, "room");
    roomAndWarmer();
    save(bench, folder, look, "steps");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    type(QStringLiteral("1848"));
    press(Qt::Key_Return);
    type(QStringLiteral("2"));
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    type(QStringLiteral("-"));
    save(bench, folder, look, "reasons");
    type(QStringLiteral("3"));
    press(Qt::Key_Return);
    type(QStringLiteral("/"));
    bench.at("warmer-on-since");
    save(bench, folder, look, "warmer");
    bench.at("suction-pressure");
    type(QStringLiteral("900"));
    press(Qt::Key_Return);
    save(bench, folder, look, "refused");
    bench.at("suction-manual");
    type(QStringLiteral("6 03/2027, 4 10/2026"));
    press(Qt::Key_Return);
    bench.at("oxygen-cylinder");
    type(QStringLiteral("90"));
    save(bench, folder, look, "cylinder");
    bench.at("delivery-kits");
    for (const char* pieces : {"5", "5", "4", "6", "30", "9"}) {
        type(QLatin1String(pieces));
        press(Qt::Key_Return);
    }
    bench.at("delivery-kits");
    save(bench, folder, look, "kit");
    press(Qt::Key_Return, Qt::ControlModifier);
    save(bench, folder, look, "finish");
    press(Qt::Key_Right);
    press(Qt::Key_Return);
    save(bench, folder, look, "result");
}

/** What was recorded is put right. */
void putRight(const QDir& folder, const Look& look)
{
    RoundBench bench{QLatin1String(look.language)};
    const Checklist list = must(bench.store->checklist("shift-readiness", 1));
    const RecordId id = must(bench.store->saveRound("sorrel-hill",
        aRound(list).on(std::chrono::year(2026) / 11 / 24).withGap("light").measuring("room-temperature", "26.0").done(),
        "CD"));
    bench.ward->refresh();
    bench.ward->setActor("AB");
    bench.page->putRight(must(bench.store->round(id)));
    save(bench, folder, look, "recorded");
    bench.at("light");
    press(Qt::Key_Return);
    bench.at("room-temperature");
    press(Qt::Key_Delete);
    type(QStringLiteral("24.0"));
    press(Qt::Key_Return);
    press(Qt::Key_Return, Qt::ControlModifier);
    type(QStringLiteral("the other lamp was looked at"));
    save(bench, folder, look, "put-right");
}

}

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 2 || !QDir().mkpath(arguments.at(1))) {
        std::fprintf(stderr, "roundpictures FOLDER [look...]\n");
        return 2;
    }
    for (const Look& look : looks) {
        if (arguments.size() > 2 && !arguments.mid(2).contains(QLatin1String(look.name)))
            continue;
        applyTheme(application, makeTheme(look.scheme, look.scale));
        const QLatin1String code(look.language);
        QGuiApplication::setLayoutDirection(
            Language(code).isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
        RoundBench bench(code);
        walk(bench, QDir(arguments.at(1)), look);
        putRight(QDir(arguments.at(1)), look);
    }
    return 0;
}
