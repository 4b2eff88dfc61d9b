// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/curves.h"
#include "ui/charts/drawing.h"

namespace cradlepost {

/// Units by how much they sent, between limits that narrow with n.
class FunnelDrawing : public DrawingOf<FunnelFigure>
{
public:
    int itemCount() const override;
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;

    PlotFrame frame(const Stage& stage) const;
    /// Names beside their points: all of those outside, the others where there is room.
    std::vector<PlacedText> names(const Stage& stage, const PlotFrame& frame) const;

private:
    PlotSurround surround() const;
    std::vector<double> ends() const; ///< heights of the names at the curves' ends
    std::vector<Curve> curves(const Theme& theme) const;
    void paintPoints(const Pencil& pencil, const PlotFrame& frame) const;
};

}
