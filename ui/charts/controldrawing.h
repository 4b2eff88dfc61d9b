// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"
#include "ui/charts/plotframe.h"

namespace cradlepost {

/// Points by period with centre line and limits as steps: all series in one plot, or a panel each.
class ControlDrawing : public DrawingOf<ControlFigure>
{
public:
    int itemCount() const override; ///< every period of every series, with or without data
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;
    int beside(int index, Qt::Key key) const override; ///< up and down lead to the other series

    std::vector<PlotFrame> frames(const Stage& stage) const; ///< a panel each

private:
    bool isApart() const;
    std::size_t panelCount() const;
    std::size_t periods() const;
    PlotSurround surround(std::size_t panel) const;
    std::vector<const ControlSeries*> seriesOf(std::size_t panel) const;
    void paintPanel(const Pencil& pencil, const PlotFrame& frame, std::size_t panel) const;
};

}
