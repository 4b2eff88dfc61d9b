// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartfigure.h"
#include "ui/widgets/paintedlist.h"

#include <memory>

namespace cradlepost {

class Drawing;

/// One figure on screen. Its points, bars or cells are the items: the arrows walk them, hover and screen
/// readers get each in words.
class ChartCanvas : public PaintedList
{
    Q_OBJECT
public:
    explicit ChartCanvas(QWidget* parent = nullptr);
    ~ChartCanvas() override;

    const ChartFigure& figure() const { return m_figure; }
    void setFigure(const ChartFigure& figure);
    void setEmptyText(const QString& text);

    int itemCount() const override;
    QString listName() const override;
    QString itemText(int index) const override;
    QString itemToolTip(int index) const override;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    std::vector<QRect> layOutItems() const override;
    int itemBeside(int index, Qt::Key key) const override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    ChartFigure m_figure;
    QString m_emptyText;
    std::unique_ptr<Drawing> m_drawing; ///< kept while the kind of figure stays, and its series with it
};

}
