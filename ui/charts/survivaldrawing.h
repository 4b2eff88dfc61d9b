// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"
#include "ui/charts/plotframe.h"

namespace cradlepost {

/// What is still open after a time, as falling steps, with the numbers at risk below the axis.
class SurvivalDrawing : public DrawingOf<SurvivalFigure>
{
public:
    int itemCount() const override; ///< every step of every curve
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;

    PlotFrame frame(const Stage& stage) const;

private:
    PlotSurround surround() const;
    void paintMarks(const Pencil& pencil, const PlotFrame& frame) const;
};

}
