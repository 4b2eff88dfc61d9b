// SPDX-License-Identifier: MIT
#pragma once

#include "ui/window/mainwindow.h"

#include <QApplication>
#include <QPalette>

namespace cradlepost {

/** Holds the window in its language and look, and makes it anew when one of them changes. */
class WindowKeeper : public QObject
{
public:
    /**
     * Language and look are set at once: the store may still be opening meanwhile. `settingsFile`: where changes are
     * kept. Language and unit from the command line come before them.
     */
    WindowKeeper(QApplication& application, QString settingsFile, QString forcedLanguage, const QString& unit);

    /** Both outlive this. */
    void open(Store& store, const Clock& clock);
    [[nodiscard]] MainWindow& window() { return *m_window; }

private:
    void dress();
    void makeWindow();
    void change(const Settings& settings);
    [[nodiscard]] QString languageCode() const;

    QApplication& m_application;
    Store* m_store = nullptr;
    const Clock* m_clock = nullptr;
    QString m_settingsFile;
    Settings m_settings;
    QString m_forcedLanguage;
    QPalette m_systemPalette;
    double m_systemScale;
    std::unique_ptr<Language> m_language;
    std::unique_ptr<MainWindow> m_window;
};

}
