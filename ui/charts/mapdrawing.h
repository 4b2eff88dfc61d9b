// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"

#include <QCoreApplication>

namespace cradlepost {

class Pencil;

/// Items by weeks: the deeper a cell the more was lost, with the number in it; a stroke where nobody
/// looked.
class MapDrawing : public DrawingOf<MapFigure>
{
    Q_DECLARE_TR_FUNCTIONS(MapDrawing)
public:
    int itemCount() const override; ///< rows times columns
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;
    int beside(int index, Qt::Key key) const override;

private:
    struct Grid
    {
        int names = 0; ///< width
        int cell = 0; ///< width
        std::vector<int> tops; ///< of the rows, and the end of the last
        int legendTop = 0;
        int height = 0;
    };
    const MapCell* cellAt(std::size_t row, std::size_t column) const;
    int leastCell(const Stage& stage) const;
    Grid grid(const Stage& stage, int width) const;
    std::vector<QRect> legendBoxes(const Stage& stage, int width, int top) const;
    void paintHeads(const Pencil& pencil, const Grid& grid) const;
    void paintCell(const Pencil& pencil, const QRect& box, const MapCell* cell) const;
    void paintLegend(const Pencil& pencil, const Grid& grid) const;
};

/// From the sheet to halfway to the warning colour: numbers in ink stay readable on every shade.
QColor mapShade(const Roles& roles, double share);

}
