// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/walkinhand.h"

#include <QWidget>

class QLineEdit;
class QPushButton;

namespace cradlepost {

class WhoRow;
class WrapLabel;

/** Ends a correction: what is different from what was recorded, why, by whom. */
class PutRightPane : public QWidget
{
    Q_OBJECT
public:
    PutRightPane(Ward& ward, WalkInHand& hand, QWidget* parent = nullptr);

    void takeFocus();

Q_SIGNALS:
    void recorded();
    void backWanted();
    /** The changes are given up. */
    void leaveWanted();

private:
    QWidget* makeButtons();
    [[nodiscard]] QString intro() const;
    void record();

    Ward& m_ward;
    WalkInHand& m_hand;
    QLineEdit* m_reason;
    WhoRow* m_who;
    WrapLabel* m_said;
    QPushButton* m_record;
    QPushButton* m_back;
};

}
