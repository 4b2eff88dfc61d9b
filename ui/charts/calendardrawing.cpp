// SPDX-License-Identifier: MIT
#include "ui/charts/calendardrawing.h"
#include "ui/charts/pencil.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr double markSize = 12.0;
constexpr double dayGap = 6.0;
constexpr CalendarShift legend[] = {{ShiftDone::InTime}, {ShiftDone::Late}, {ShiftDone::Missing},
    {ShiftDone::Paper}, {ShiftDone::InTime, true}};
constexpr int legendCount = static_cast<int>(std::size(legend));
}

void paintShiftMark(const Pencil& pencil, const QRectF& box, const CalendarShift& shift)
{
    const double side = std::min(box.width(), box.height());
    switch (shift.done) {
    case ShiftDone::InTime:
        pencil.mark(box, Mark::Met);
        break;
    case ShiftDone::Late:
        pencil.mark(box, Mark::Late);
        break;
    case ShiftDone::Missing:
        pencil.mark(box, Mark::NotChecked);
        break;
    case ShiftDone::Paper:
        pencil.point(box.center(), PointShape::Ring, side * 0.66, pencil.roles().accent);
        break;
    case ShiftDone::NotDue:
        return;
    }
    if (shift.amended) {
        const double y = box.center().y() + side * 0.5;
        pencil.line({box.center().x() - side * 0.32, y}, {box.center().x() + side * 0.32, y},
            pencil.roles().ink, std::max(1.5, side * 0.12));
    }
}

int CalendarDrawing::itemCount() const { return static_cast<int>(figure().days.size()); }

QString CalendarDrawing::itemText(int index) const
{
    return figure().days[static_cast<std::size_t>(index)].text;
}

std::vector<int> CalendarDrawing::weeks() const
{
    std::vector<int> weeks;
    int week = 0;
    int before = -1;
    for (const CalendarDay& day : figure().days) {
        week += day.column <= before ? 1 : 0;
        before = day.column;
        weeks.push_back(week);
    }
    return weeks;
}

int CalendarDrawing::beside(int index, Qt::Key key) const
{
    if (key != Qt::Key_Up && key != Qt::Key_Down)
        return Drawing::beside(index, key);
    const int step = key == Qt::Key_Up ? -1 : 1;
    const int column = figure().days[static_cast<std::size_t>(index)].column;
    for (int i = index + step; i >= 0 && i < itemCount(); i += step) {
        if (figure().days[static_cast<std::size_t>(i)].column == column)
            return i;
    }
    return index;
}

int CalendarDrawing::markSide(const Stage& stage) const { return stage.theme.px(markSize); }

int CalendarDrawing::cellWidth(const Stage& stage) const
{
    int width = 0;
    for (const CalendarDay& day : figure().days)
        width = std::max(
            {width, static_cast<int>(day.shifts.size()) * markSide(stage), stage.widthOf(day.number)});
    for (const QString& name : figure().weekdays)
        width = std::max(width, stage.widthOf(name));
    return width + stage.theme.px(dayGap);
}

int CalendarDrawing::cellHeight(const Stage& stage) const
{
    return stage.line() + markSide(stage) + stage.theme.space(Space::Near);
}

int CalendarDrawing::headHeight(const Stage& stage) const
{
    int height = 0;
    for (const QString& name : figure().weekdays)
        height = std::max(height, stage.heightOf(name, 1 << 16));
    return height > 0 ? height + stage.theme.space(Space::Tight) : 0;
}

QString CalendarDrawing::word(int entry)
{
    switch (entry) {
    case 0:
        return tr("in time");
    case 1:
        return tr("late");
    case 2:
        return tr("missing");
    case 3:
        return tr("from paper");
    default:
        return tr("amended");
    }
}

std::vector<QRect> CalendarDrawing::legendBoxes(const Stage& stage, int width, int top) const
{
    std::vector<QRect> boxes;
    int x = 0;
    for (int i = 0; i < legendCount; ++i) {
        const int entry = markSide(stage) + stage.theme.px(4) + stage.widthOf(word(i));
        if (x > 0 && x + entry > width) {
            x = 0;
            top += stage.line() + stage.theme.space(Space::Tight);
        }
        boxes.emplace_back(x, top, std::min(entry, width), stage.line());
        x += entry + stage.theme.space(Space::Near);
    }
    return boxes;
}

int CalendarDrawing::leastWidth(const Stage& stage) const
{
    int least = 7 * cellWidth(stage);
    for (int i = 0; i < legendCount; ++i)
        least = std::max(least, markSide(stage) + stage.theme.px(4) + stage.widthOf(word(i)));
    return least;
}

int CalendarDrawing::heightFor(int width, const Stage& stage) const
{
    const auto rows = weeks();
    const int days = rows.empty() ? 0 : (rows.back() + 1) * cellHeight(stage);
    const QRect last = legendBoxes(stage, width, headHeight(stage) + days).back();
    return last.top() + last.height();
}

std::vector<QRect> CalendarDrawing::itemBoxes(const Stage& stage) const
{
    const auto rows = weeks();
    const int least = cellWidth(stage);
    const int width
        = std::clamp(stage.size.width() / 7, least, least * 2); // days that drift apart read badly
    const int height = cellHeight(stage);
    std::vector<QRect> boxes;
    for (std::size_t i = 0; i < rows.size(); ++i)
        boxes.emplace_back(
            figure().days[i].column * width, headHeight(stage) + rows[i] * height, width, height);
    return boxes;
}

void CalendarDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const auto cells = itemBoxes(stage);
    const int head = headHeight(stage) - stage.theme.space(Space::Tight);
    const int width = cells.front().width();
    for (int column = 0; column < static_cast<int>(figure().weekdays.size()); ++column)
        pencil.write({column * width, 0, width, std::max(0, head)},
            figure().weekdays[static_cast<std::size_t>(column)], pencil.roles().inkHint);
    for (std::size_t i = 0; i < cells.size(); ++i)
        paintDay(pencil, cells[i], figure().days[i]);
    const auto rows = weeks();
    paintLegend(pencil, headHeight(stage) + (rows.back() + 1) * cellHeight(stage));
}

void CalendarDrawing::paintDay(const Pencil& pencil, const QRect& cell, const CalendarDay& day) const
{
    const Stage& stage = pencil.stage();
    const Roles& roles = pencil.roles();
    const int side = markSide(stage);
    pencil.write({cell.left(), cell.top(), cell.width(), stage.line()}, day.number,
        day.inSpan ? roles.ink : roles.inkHint);
    int x = cell.left();
    for (const CalendarShift& shift : day.shifts) {
        paintShiftMark(pencil, QRectF(x, cell.top() + stage.line(), side, side), shift);
        x += side;
    }
}

void CalendarDrawing::paintLegend(const Pencil& pencil, int top) const
{
    const Stage& stage = pencil.stage();
    const auto boxes = legendBoxes(stage, stage.size.width(), top);
    const int skip = markSide(stage) + stage.theme.px(4);
    for (int i = 0; i < legendCount; ++i) {
        const QRect& box = boxes[static_cast<std::size_t>(i)];
        paintShiftMark(pencil, QRectF(box.left(), box.top(), markSide(stage), box.height()), legend[i]);
        pencil.write(box.adjusted(skip, 0, 0, 0), word(i), pencil.roles().inkHint);
    }
}

}
