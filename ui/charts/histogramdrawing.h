// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/curves.h"
#include "ui/charts/drawing.h"

namespace cradlepost {

/// How often each value was read, with the limits and the mean as hairlines.
class HistogramDrawing : public DrawingOf<HistogramFigure>
{
public:
    int itemCount() const override;
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;

    PlotFrame frame(const Stage& stage) const;

private:
    PlotSurround surround() const;
    std::vector<CurveBand> bands(const Roles& roles) const;
};

}
