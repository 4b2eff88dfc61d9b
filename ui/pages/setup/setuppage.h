// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/pages/setup/settings.h"

#include <QWidget>

class QComboBox;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace cradlepost {

class Sheet;
class WrapLabel;

/** *Set-up*: the ward, its shifts and people, the limits it has picked, language and look, the database. */
class SetupPage : public QWidget
{
    Q_OBJECT
public:
    SetupPage(Ward& ward, Settings settings, QWidget* parent = nullptr);

Q_SIGNALS:
    /** Language, text size or light and dark were changed: the window is made anew. */
    void settingsChanged(const Settings& settings);
    /** A ward was set up or renamed. */
    void unitSaved(const std::string& unit);

private:
    Sheet* makeWard();
    Sheet* makeLook();
    Sheet* makeDatabase();
    QString fillLimits(); ///< returns what the limits are of
    void load();
    void saveWard();
    [[nodiscard]] std::vector<Person> typedPeople() const;
    Result<std::string> writeWard();
    Result<void> writeLimits(const std::string& unit, const std::string& actor, Date today);
    void saveLook();
    void verify();
    void backup();
    void say(const QString& text, bool bad);

    Ward& m_ward;
    Settings m_settings;
    QLineEdit* m_name;
    QComboBox* m_zone;
    QComboBox* m_pattern;
    QLineEdit* m_starts;
    QLineEdit* m_people;
    QComboBox* m_limits;
    QComboBox* m_language;
    QComboBox* m_text;
    QComboBox* m_scheme;
    WrapLabel* m_source;
    WrapLabel* m_said;
    WrapLabel* m_checked;
};

}
