// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/widgets/actiontable.h"

#include <QWidget>

class QBoxLayout;
class QPushButton;

namespace cradlepost {

class FactSheet;
class MarksLegend;
class ReadinessStrip;
class ShiftText;
class VerdictBanner;

/** *This shift*: the verdict now, what to mend first, the warmer's minutes, the last 14 days. */
class ThisShiftPage : public QWidget
{
    Q_OBJECT
public:
    explicit ThisShiftPage(Ward& ward, QWidget* parent = nullptr);

Q_SIGNALS:
    void roundWanted(RoundKind kind);
    void gapsWanted();
    void boardWanted();
    void handoverWanted();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeAnswer();
    QWidget* makeButtons();
    QWidget* makeWays();
    void fit();
    void show(const ShiftView& view);
    void showFault(const Error& fault);
    void showFacts(const ShiftText& text);
    void showButtons(const ShiftView& view);
    void refresh();

    Ward& m_ward;
    VerdictBanner* m_banner;
    ActionTable* m_mend;
    QPushButton* m_primary;
    QPushButton* m_preBirth;
    QPushButton* m_afterUse;
    QPushButton* m_more;
    QBoxLayout* m_top;
    QBoxLayout* m_factColumn;
    QWidget* m_factHolder;
    std::vector<FactSheet*> m_facts;
    ReadinessStrip* m_strip;
    MarksLegend* m_legend;
    std::vector<ActionRow> m_rows; ///< the first ones of what is missing
    std::size_t m_rowCount = 0; ///< of all
    RoundKind m_primaryKind = RoundKind::Shift;
};

}
