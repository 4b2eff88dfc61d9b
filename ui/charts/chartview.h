// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartsaving.h"
#include "ui/widgets/sheet.h"

class QToolButton;

namespace cradlepost {

class ChartCanvas;
class ChartTableView;
class WrapLabel;

/// The sheet that a chart lies on: what was found, the chart or the table behind it, n and the rule of its
/// limits in small print. T turns the chart over to its table and back.
class ChartView : public Sheet
{
    Q_OBJECT
public:
    explicit ChartView(QWidget* parent = nullptr);

    const ChartContent& shown() const { return m_content; }
    void setContent(const ChartContent& content);

    ChartCanvas& canvas() { return *m_canvas; }

    bool showsTable() const { return m_showsTable; }
    void showTable(bool table);

    /// Saves as it is shown; what failed is said below the chart until the next try.
    Result<void> saveTo(const QString& path);

Q_SIGNALS:
    void turned(bool toTable);
    void saved(const QString& path);

protected:
    void changeEvent(QEvent* event) override;

private:
    void addFoot();
    void dressFoot();
    void askAndSave();
    void nameIt();

    ChartContent m_content;
    bool m_showsTable = false;
    ChartCanvas* m_canvas;
    ChartTableView* m_table;
    WrapLabel* m_smallPrint;
    WrapLabel* m_trouble;
    QToolButton* m_turn;
    QToolButton* m_save;
};

}
