// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"

namespace cradlepost {

class Pencil;

/// Groups compared: a dot with its interval on one scale for all, and its counts in words.
class SharesDrawing : public DrawingOf<ShareRowsFigure>
{
public:
    int itemCount() const override;
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;

private:
    struct Layout
    {
        int name = 0; ///< width of the names
        int text = 0;
        QRect scale; ///< over all rows
        std::vector<QRect> heads; ///< of groups, empty where a row has none
        std::vector<QRect> rows;
        QRect wholeLabel;
        int axisTop = 0;
        int height = 0;
    };
    Layout layOut(const Stage& stage, int width) const;
    bool startsGroup(std::size_t row) const;
    double across(const Layout& layout, double share) const;
    void paintScale(const Pencil& pencil, const Layout& layout) const;
    void paintRow(const Pencil& pencil, const Layout& layout, std::size_t index) const;
};

}
