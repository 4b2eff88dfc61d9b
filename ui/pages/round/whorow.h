// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QLineEdit;

namespace cradlepost {

class ChoiceButton;
class TileFlow;

/** Who walks: one of the ward's people, or initials typed. */
class WhoRow : public QWidget
{
    Q_OBJECT
public:
    explicit WhoRow(Ward& ward, QWidget* parent = nullptr);

    /** The people of the ward may have changed. */
    void refresh();
    /** Takes what is typed; whether somebody is named now. */
    bool take();
    /** To the first of the people. */
    void takeFocus();
    /** To the field for initials. */
    void askForInitials();

Q_SIGNALS:
    /** One of the people was chosen. */
    void chosen();
    /** Initials were typed and Enter pressed. */
    void entered();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showActor();

    Ward& m_ward;
    std::vector<Person> m_people;
    std::vector<ChoiceButton*> m_choices;
    TileFlow* m_flow;
    QLineEdit* m_initials;
};

}
