// SPDX-License-Identifier: MIT
#include "app/window.h"

#include "app/exitcode.h"
#include "app/log.h"
#include "app/paths.h"
#include "app/storeopening.h"
#include "app/windowkeeper.h"
#include "core/store/changefeed.h"
#include "core/store/postgresaddress.h"
#include "ui/text/errortext.h"
#include "ui/theme/fontset.h"

#include <QIcon>
#include <QMessageBox>
#include <QTimer>
#include <spdlog/spdlog.h>

namespace cradlepost {

namespace {

QIcon icon()
{
    QIcon icon;
    for (const char* size : {"16", "24", "32", "48", "64", "128", "256"})
        icon.addFile(QStringLiteral(":/icons/cradlepost-%1.png").arg(QLatin1String(size)));
    return icon;
}

int refuse(const Error& error, const QString& path)
{
    spdlog::error("{}: {}", codeName(error.code), error.message);
    QMessageBox box(QMessageBox::Critical, QStringLiteral("Cradlepost"), ErrorText::sentence(error));
    box.setInformativeText(path + QLatin1Char('\n') + ErrorText::advice(error));
    box.setDetailedText(qs(error.message));
    box.exec();
    return Failed;
}

}

int runWindow(int argc, char** argv, const CommonOptions& options)
{
    FontReading fonts;
    QCoreApplication::setApplicationName(QStringLiteral("cradlepost"));
    const QString forced = QString::fromStdString(options.language);
    const QString path = options.database.empty() ? defaultDatabase() : QString::fromStdString(options.database);
    const SystemClock clock;
    const std::string unit = options.unit.empty() ? loadSettings(settingsFile()).unit.toStdString() : options.unit;
    StoreOpening opening(path.toStdString(), clock, unit);
    QApplication application(argc, argv);
    application.setApplicationDisplayName(QStringLiteral("Cradlepost"));
    fonts.await();
    WindowKeeper keeper(application, settingsFile(), forced, QString::fromStdString(options.unit));
    auto store = opening.take();
    if (!store) {
        startLog(options.logLevel);
        const QString shown = isPostgresAddress(path.toStdString())
            ? QString::fromStdString(shownAddress(path.toStdString())) // without a password
            : path;
        return refuse(store.error(), shown);
    }
    keeper.open(**store, clock);
    const ChangeFeed feed(path.toStdString(), [&keeper] { keeper.window().ward().refresh(); });
    // Once the answer is on the screen.
    QTimer::singleShot(0, &application, [&options, &store] {
        QApplication::setWindowIcon(icon());
        startLog(options.logLevel);
        spdlog::info("window opened on {}", (*store)->path());
    });
    return QApplication::exec();
}

}
