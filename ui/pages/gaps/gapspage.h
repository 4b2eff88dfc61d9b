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
    /** A re-check of this one item. */
    void itemWanted(const std::string& item);

private:
    QWidget* makeLists();
    void refresh();
    void showOpen(const std::vector<Gap>& gaps);
    void showMended();
    void choose(int row);
    void chooseMended(int row);
    void makeKeys();

    Ward& m_ward;
    WrapLabel* m_answer;
    WrapLabel* m_sentence;
    ActionTable* m_open;
    WrapLabel* m_mendedTitle;
    ActionTable* m_mended;
    QPushButton* m_recheck;
    std::vector<Gap> m_closed; ///< what the lower table shows
    GapEditor* m_editor;
};

}
