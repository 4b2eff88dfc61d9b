// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"

namespace cradlepost {

class Pencil;

/// Many small lines on one scale, each with its name, in as many columns as fit.
class MultiplesDrawing : public DrawingOf<SmallMultiplesFigure>
{
public:
    int itemCount() const override;
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;
    int beside(int index, Qt::Key key) const override;

private:
    struct Grid
    {
        int columns = 1;
        int scale = 0; ///< width of the scale's labels at the leading side
        int panel = 0; ///< width
        std::vector<int> heads; ///< height of the names in each row
        std::vector<int> tops; ///< of the rows, and the end of the last
    };
    Grid grid(const Stage& stage, int width) const;
    QRect plotOf(const Stage& stage, const Grid& grid, std::size_t index) const;
    void paintPanel(const Pencil& pencil, const Grid& grid, std::size_t index) const;
    void paintLine(const Pencil& pencil, const QRect& plot, const SmallPanel& panel) const;
    void paintScale(const Pencil& pencil, const Grid& grid, std::size_t index) const;

    mutable int m_columns = 1; ///< of the last layout, for the arrows
};

}
