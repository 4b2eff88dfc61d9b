// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

class ActionTable;
class BirthForm;
class ValueField;
class WrapLabel;

/** The board: births expected against warmers and kits, and the clock of each warmer. Enter on a warmer
 * switches it; D, M and C on a birth take it off the board. */
class BoardPage : public QWidget
{
    Q_OBJECT
public:
    explicit BoardPage(Ward& ward, QWidget* parent = nullptr);

    /** To the field for the next birth. */
    void takeFocus();

Q_SIGNALS:
    /** Back to how the shift stands. */
    void leaveWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeBirths();
    QWidget* makeWarmers();
    QWidget* makeEnds();
    QPushButton* makeEnd(const QString& text, Qt::Key key, BirthChange how, const char* name);
    void refresh();
    void showBirths();
    void showWarmers();
    void showSwitch();
    void endBirth(BirthChange how);
    void switchWarmer(int row);
    void say(const Result<void>& done);
    void sayMistyped(const QString& time);
    void warn(const QString& text);

    Ward& m_ward;
    WrapLabel* m_answer;
    WrapLabel* m_sentence;
    ActionTable* m_births;
    BirthForm* m_form;
    ActionTable* m_warmers;
    ValueField* m_at;
    QWidget* m_ends = nullptr;
    QWidget* m_switching = nullptr;
    QPushButton* m_switch;
    WrapLabel* m_said;
};

}
