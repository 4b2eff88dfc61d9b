// SPDX-License-Identifier: MIT
#include "app/window.h"

#include "app/exitcode.h"
#include "app/log.h"
#include "app/paths.h"
#include "core/store/store.h"
#include "ui/text/errortext.h"
#include "ui/window/mainwindow.h"

#include <QApplication>
#include <QMessageBox>
#include <QScreen>
#include <QTimer>
#include <spdlog/spdlog.h>

namespace cradlepost {

namespace {

/** The window in its language and look; made anew when one of them changes. */
class Stage : public QObject
{
public:
    Stage(QApplication& application, Store& store, const Clock& clock, Settings settings, QString forcedLanguage)
        : m_application(application)
        , m_store(store)
        , m_clock(clock)
        , m_settings(std::move(settings))
        , m_forcedLanguage(std::move(forcedLanguage))
        , m_systemPalette(application.palette())
        , m_systemScale(systemTextScale(application.font(), application.primaryScreen()->logicalDotsPerInch()))
    {
    }

    void open()
    {
        const Place place = m_window ? m_window->place() : Place::ThisShift;
        const QRect where = m_window ? m_window->geometry() : QRect();
        m_window.reset();
        m_language.reset(); // one at a time
        m_language = std::make_unique<Language>(languageCode());
        m_application.setLayoutDirection(m_language->isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
        applyTheme(m_application,
            makeTheme(decideScheme(m_settings.scheme, m_systemPalette),
                m_settings.textScale > 0 ? m_settings.textScale : m_systemScale));
        m_window = std::make_unique<MainWindow>(m_store, m_clock, *m_language, m_settings);
        connect(m_window.get(), &MainWindow::settingsChanged, this, &Stage::change, Qt::QueuedConnection);
        connect(m_window.get(), &MainWindow::unitChanged, this, [this](const QString& unit) {
            m_settings.unit = unit;
            saveSettings(settingsFile(), m_settings);
        });
        if (where.isValid()) {
            m_window->setGeometry(where);
            m_window->openPlace(place);
            m_window->show();
        } else {
            m_window->resize(1366, 768);
            m_window->showMaximized();
        }
    }

private:
    void change(const Settings& settings)
    {
        m_settings = settings;
        m_forcedLanguage.clear();
        saveSettings(settingsFile(), m_settings);
        open();
    }

    [[nodiscard]] QString languageCode() const
    {
        if (!m_forcedLanguage.isEmpty())
            return m_forcedLanguage;
        return m_settings.language.isEmpty() ? QLocale::system().bcp47Name() : m_settings.language;
    }

    QApplication& m_application;
    Store& m_store;
    const Clock& m_clock;
    Settings m_settings;
    QString m_forcedLanguage;
    QPalette m_systemPalette;
    double m_systemScale;
    std::unique_ptr<Language> m_language;
    std::unique_ptr<MainWindow> m_window;
};

int refuse(const Error& error, const QString& path, const QString& language)
{
    spdlog::error("{}: {}", codeName(error.code), error.message);
    const Language spoken(language);
    QMessageBox box(QMessageBox::Critical, QStringLiteral("Cradlepost"), ErrorText::sentence(error));
    box.setInformativeText(path + QLatin1Char('\n') + ErrorText::advice(error));
    box.setDetailedText(qs(error.message));
    box.exec();
    return Failed;
}

}

int runWindow(int argc, char** argv, const CommonOptions& options)
{
    QApplication application(argc, argv);
    application.setApplicationName(QStringLiteral("cradlepost"));
    application.setApplicationDisplayName(QStringLiteral("Cradlepost"));
    Settings settings = loadSettings(settingsFile());
    const QString forced = QString::fromStdString(options.language);
    const QString path = options.database.empty() ? defaultDatabase() : QString::fromStdString(options.database);
    const SystemClock clock;
    auto store = Store::open(path.toStdString(), clock);
    if (!store) {
        startLog(options.logLevel);
        return refuse(store.error(), path, forced.isEmpty() ? settings.language : forced);
    }
    Stage stage(application, **store, clock, std::move(settings), forced);
    stage.open();
    // The log's file is opened once the answer is on the screen.
    QTimer::singleShot(0, &application, [&options, &path] {
        startLog(options.logLevel);
        spdlog::info("window opened on {}", path.toStdString());
    });
    return QApplication::exec();
}

}
