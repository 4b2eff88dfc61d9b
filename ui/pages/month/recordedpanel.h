// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QDateEdit;
class QPushButton;

namespace cradlepost {

class WrapLabel;

/** Finds the recorded round of a day and shift, to put it right when something was entered wrong. */
class RecordedPanel : public Sheet
{
    Q_OBJECT
public:
    explicit RecordedPanel(Ward& ward, QWidget* parent = nullptr);

    /** Begins at the last day of [from, to] that is not after `today`. */
    void show(Date from, Date to, Date today);

Q_SIGNALS:
    void putRightWanted(const cradlepost::SavedRound& round);

private:
    void look();
    [[nodiscard]] QString words(const SavedRound& round) const;

    Ward& m_ward;
    QDateEdit* m_day;
    QComboBox* m_shift;
    WrapLabel* m_said;
    QPushButton* m_open;
    std::optional<SavedRound> m_round;
};

}
