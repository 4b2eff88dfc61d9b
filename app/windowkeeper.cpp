// SPDX-License-Identifier: MIT
#include "app/windowkeeper.h"

#include <QScreen>

namespace cradlepost {

namespace {
constexpr QSize firstSize {1366, 768}; // the old ward PC's whole screen
}

WindowKeeper::WindowKeeper(
    QApplication& application, QString settingsFile, QString forcedLanguage, const QString& unit)
    : m_application(application)
    , m_settingsFile(std::move(settingsFile))
    , m_settings(loadSettings(m_settingsFile))
    , m_forcedLanguage(std::move(forcedLanguage))
    , m_systemPalette(application.palette())
    , m_systemScale(systemTextScale(application.font(), application.primaryScreen()->logicalDotsPerInch()))
{
    if (!unit.isEmpty())
        m_settings.unit = unit;
    dress();
}

void WindowKeeper::open(Store& store, const Clock& clock)
{
    m_store = &store;
    m_clock = &clock;
    makeWindow();
    m_window->resize(firstSize.boundedTo(m_application.primaryScreen()->availableSize()));
    m_window->showMaximized();
}

void WindowKeeper::dress()
{
    m_language.reset(); // one at a time
    m_language = std::make_unique<Language>(languageCode());
    m_application.setLayoutDirection(m_language->isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    applyTheme(m_application,
        makeTheme(decideScheme(m_settings.scheme, m_systemPalette),
            m_settings.textScale > 0 ? m_settings.textScale : m_systemScale));
}

void WindowKeeper::makeWindow()
{
    m_window = std::make_unique<MainWindow>(*m_store, *m_clock, *m_language, m_settings);
    connect(m_window.get(), &MainWindow::settingsChanged, this, &WindowKeeper::change, Qt::QueuedConnection);
    connect(m_window.get(), &MainWindow::settingsKept, this, [this](const Settings& settings) {
        m_settings = settings;
        saveSettings(m_settingsFile, m_settings);
    });
}

void WindowKeeper::change(const Settings& settings)
{
    m_settings = settings;
    m_forcedLanguage.clear();
    saveSettings(m_settingsFile, m_settings);
    const Place place = m_window->place();
    const QRect where = m_window->geometry();
    m_window.reset();
    dress();
    makeWindow();
    m_window->setGeometry(where);
    m_window->openPlace(place);
    m_window->show();
}

QString WindowKeeper::languageCode() const
{
    if (!m_forcedLanguage.isEmpty())
        return m_forcedLanguage;
    return m_settings.language.isEmpty() ? QLocale::system().bcp47Name() : m_settings.language;
}

}
