// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"

namespace cradlepost {

class Pencil;

/// Items with a bar, its interval and its numbers in words. Narrow, the name stands above its bar.
class BarsDrawing : public DrawingOf<BarsFigure>
{
public:
    struct Row
    {
        QRect all;
        QRect name;
        QRect bar; ///< room of a bar that is full
        QRect text;
        QRect cumulated;
    };

    int itemCount() const override;
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;

    std::vector<Row> rows(const Stage& stage, int width) const;

private:
    struct Columns
    {
        int name = 0;
        int text = 0;
        int cumulated = 0;
        bool stacked = false;
    };
    Columns columns(const Stage& stage, int width) const;
    Row rowAt(const Stage& stage, const Columns& columns, const BarItem& item, int top, int width) const;
    void paintRow(const Pencil& pencil, const Row& row, const BarItem& item) const;
};

}
