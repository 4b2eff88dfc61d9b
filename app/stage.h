// SPDX-License-Identifier: MIT
#pragma once

#include "ui/window/mainwindow.h"

#include <QApplication>
#include <QPalette>

namespace cradlepost {

/** Holds the window in its language and look, and makes it anew when one of them changes. */
class Stage : public QObject
{
public:
    /** `settingsFile`: where changes are kept. Language and unit from the command line come before them. */
    Stage(QApplication& application, Store& store, const Clock& clock, QString settingsFile, QString forcedLanguage,
        const QString& unit);

    void open();
    [[nodiscard]] MainWindow& window() { return *m_window; }

private:
    void change(const Settings& settings);
    [[nodiscard]] QString languageCode() const;

    QApplication& m_application;
    Store& m_store;
    const Clock& m_clock;
    QString m_settingsFile;
    Settings m_settings;
    QString m_forcedLanguage;
    QPalette m_systemPalette;
    double m_systemScale;
    std::unique_ptr<Language> m_language;
    std::unique_ptr<MainWindow> m_window;
};

}
