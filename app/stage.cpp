// SPDX-License-Identifier: MIT
#include "app/stage.h"

#include <QScreen>

namespace cradlepost {

namespace {
constexpr QSize firstSize {1366, 768}; // the old ward PC's whole screen
}

Stage::Stage(
    QApplication& application, Store& store, const Clock& clock, QString settingsFile, QString forcedLanguage,
    const QString& unit)
    : m_application(application)
    , m_store(store)
    , m_clock(clock)
    , m_settingsFile(std::move(settingsFile))
    , m_settings(loadSettings(m_settingsFile))
    , m_forcedLanguage(std::move(forcedLanguage))
    , m_systemPalette(application.palette())
    , m_systemScale(systemTextScale(application.font(), application.primaryScreen()->logicalDotsPerInch()))
{
    if (!unit.isEmpty())
        m_settings.unit = unit;
}

void Stage::open()
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
    connect(m_window.get(), &MainWindow::settingsKept, this, [this](const Settings& settings) {
        m_settings = settings;
        saveSettings(m_settingsFile, m_settings);
    });
    if (where.isValid()) {
        m_window->setGeometry(where);
        m_window->openPlace(place);
        m_window->show();
    } else {
        m_window->resize(firstSize);
        m_window->showMaximized();
    }
}

void Stage::change(const Settings& settings)
{
    m_settings = settings;
    m_forcedLanguage.clear();
    saveSettings(m_settingsFile, m_settings);
    open();
}

QString Stage::languageCode() const
{
    if (!m_forcedLanguage.isEmpty())
        return m_forcedLanguage;
    return m_settings.language.isEmpty() ? QLocale::system().bcp47Name() : m_settings.language;
}

}
