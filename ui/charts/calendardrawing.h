// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/drawing.h"

#include <QCoreApplication>

namespace cradlepost {

class Pencil;

/// Weeks by weekday, a day's shifts as marks under its number.
class CalendarDrawing : public DrawingOf<CalendarFigure>
{
    Q_DECLARE_TR_FUNCTIONS(CalendarDrawing)
public:
    int itemCount() const override;
    QString itemText(int index) const override;
    int leastWidth(const Stage& stage) const override;
    int heightFor(int width, const Stage& stage) const override;
    std::vector<QRect> itemBoxes(const Stage& stage) const override;
    void paint(QPainter& painter, const Stage& stage) override;
    int beside(int index, Qt::Key key) const override; ///< up and down lead to the same weekday

private:
    std::vector<int> weeks() const; ///< row of each day
    int markSide(const Stage& stage) const;
    int cellHeight(const Stage& stage) const;
    int cellWidth(const Stage& stage) const; ///< the least
    int headHeight(const Stage& stage) const;
    std::vector<QRect> legendBoxes(const Stage& stage, int width, int top) const;
    static QString word(int entry);
    void paintDay(const Pencil& pencil, const QRect& cell, const CalendarDay& day) const;
    void paintLegend(const Pencil& pencil, int top) const;
};

/// One shift's mark: disc in time, half disc late, dotted ring missing, solid ring from paper; a short stroke
/// at its foot when it was amended.
void paintShiftMark(const Pencil& pencil, const QRectF& box, const CalendarShift& shift);

}
