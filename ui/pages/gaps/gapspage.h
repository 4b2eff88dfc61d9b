// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

class ActionTable;
class GapEditor;
class WrapLabel;

/** *Gaps*: each open gap, how long and how often before, who mends it by when; and what was mended lately. */
class GapsPage : public QWidget
{
    Q_OBJECT
public:
    explicit GapsPage(Ward& ward, QWidget* parent = nullptr);

Q_SIGNALS:
    void roundWanted(RoundKind kind);

private:
    QWidget* makeLists();
    void refresh();
    void showOpen(const std::vector<Gap>& gaps);
    void showMended();
    void choose(int row);

    Ward& m_ward;
    WrapLabel* m_answer;
    WrapLabel* m_sentence;
    ActionTable* m_open;
    WrapLabel* m_mendedTitle;
    ActionTable* m_mended;
    QPushButton* m_recheck;
    GapEditor* m_editor;
};

}
