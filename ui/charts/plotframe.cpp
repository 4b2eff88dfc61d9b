// SPDX-License-Identifier: MIT
#include "ui/charts/plotframe.h"
#include "ui/charts/plotlabels.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {
constexpr double leastPlotWidth = 180.0;
constexpr double widestName = 96.0;
constexpr double markReach = 7.0;
constexpr double sampleWidth = 20.0;

int gapOf(const Stage& stage) { return stage.theme.space(Space::Close); }

int nameWidth(const Stage& stage, const QString& name)
{
    return std::min(stage.widthOf(name), std::max(stage.theme.px(widestName), stage.ink(name).widestWord()));
}

int sampleRoom(const Stage& stage, const PlotRow& row)
{
    return row.hasSample ? stage.theme.px(sampleWidth) + gapOf(stage) : 0;
}

int leadingColumn(const Stage& stage, const PlotSurround& around)
{
    int width = 0;
    for (const AxisTick& tick : around.up.ticks)
        width = std::max(width, stage.widthOf(tick.label));
    for (const PlotRow& row : around.rows)
        width = std::max(width,
            sampleRoom(stage, row) + nameWidth(stage, row.name) + stage.theme.px(8)); // half of the first number
    return width + gapOf(stage) + stage.theme.px(markReach);
}

int trailingColumn(const Stage& stage, const PlotSurround& around)
{
    int width = 0;
    for (const QString& name : around.endNames)
        width = std::max(width, nameWidth(stage, name));
    return stage.theme.px(markReach) + (width > 0 ? width + gapOf(stage) : 0);
}

int rowHeight(const Stage& stage, const PlotRow& row)
{
    int height = stage.line();
    if (!row.name.isEmpty())
        height = std::max(height, stage.heightOf(row.name, nameWidth(stage, row.name)));
    return height + stage.theme.space(Space::Tight) / 2;
}

int labelHeight(const Stage& stage, const ChartAxis& axis)
{
    int height = stage.line();
    for (const AxisTick& tick : axis.ticks)
        height = std::max(height, stage.heightOf(tick.label, 1 << 16));
    return height;
}

int belowHeight(const Stage& stage, int width, const PlotSurround& around)
{
    if (around.hidesAcross)
        return 0;
    int height
        = gapOf(stage) + labelHeight(stage, around.across) + stage.heightOf(around.across.title, width);
    if (!around.rows.empty())
        height += stage.theme.space(Space::Tight) + stage.heightOf(around.rowsTitle, width);
    for (const PlotRow& row : around.rows)
        height += rowHeight(stage, row);
    return height;
}

double share(double value, double from, double to) { return to > from ? (value - from) / (to - from) : 0.0; }

/// Heads of the flags from the top of `room` down, a row each where they would touch.
std::vector<PlacedText> flagHeads(
    const Stage& stage, int left, int right, int top, const PlotSurround& around)
{
    const int usual = std::max(stage.theme.px(150), (right - left) * 9 / 20);
    std::vector<PlacedText> heads;
    std::vector<RowedBox> rowed;
    std::vector<int> heights;
    for (std::size_t i = 0; i < around.flags.size(); ++i) {
        const PlotFlag& flag = around.flags[i];
        if (flag.label.isEmpty())
            continue;
        const int foot = left
            + static_cast<int>(
                std::lround(share(flag.at, around.across.from, around.across.to) * (right - left)));
        // On one line where that has room behind its own line.
        const int natural = stage.widthOf(flag.label);
        const int widest = foot + stage.theme.px(4) + natural <= right ? natural : usual;
        const int width = std::min(natural, std::min(widest, right - left));
        const int height = stage.heightOf(flag.label, width);
        const int x = std::clamp(foot + stage.theme.px(4), left, std::max(left, right - width));
        const QRect box(x, 0, width, height);
        const int row = freeRow(rowed, box, gapOf(stage));
        rowed.push_back({box, row});
        heights.resize(std::max(heights.size(), static_cast<std::size_t>(row) + 1), 0);
        heights[static_cast<std::size_t>(row)] = std::max(heights[static_cast<std::size_t>(row)], height);
        heads.push_back({box, flag.label, i});
    }
    for (std::size_t i = 0; i < heads.size(); ++i) {
        int y = top;
        for (int row = 0; row < rowed[i].row; ++row)
            y += heights[static_cast<std::size_t>(row)] + stage.theme.space(Space::Tight);
        heads[i].box.moveTop(y);
    }
    return heads;
}
}

QMargins PlotFrame::marginsOf(const Stage& stage, int width, const PlotSurround& around)
{
    const int left = leadingColumn(stage, around);
    const int right = trailingColumn(stage, around);
    int top = stage.heightOf(around.up.title, width);
    if (top > 0)
        top += stage.theme.space(Space::Tight);
    int bottom = top;
    for (const PlacedText& head : flagHeads(stage, left, std::max(left + 1, width - right), top, around))
        bottom = std::max(bottom, head.box.top() + head.box.height());
    return {left, std::max(bottom, stage.line() / 2) + stage.theme.px(markReach), right,
        stage.theme.px(markReach) + belowHeight(stage, width, around)};
}

int PlotFrame::leastWidth(const Stage& stage, const PlotSurround& around)
{
    return leadingColumn(stage, around) + trailingColumn(stage, around) + stage.theme.px(leastPlotWidth);
}

PlotFrame::PlotFrame(const Stage& stage, const QRect& room, PlotSurround surround)
    : m_stage(stage)
    , m_room(room)
    , m_around(std::move(surround))
{
    const QMargins margins = marginsOf(stage, room.width(), m_around);
    const QRect inner = room.marginsRemoved(margins);
    m_plot = QRectF(inner.x(), inner.y(), std::max(1, inner.width()), std::max(1, inner.height()));
    const int titled = stage.heightOf(m_around.up.title, room.width());
    const int top = room.top() + titled + (titled > 0 ? stage.theme.space(Space::Tight) : 0);
    m_flagLabels
        = flagHeads(stage, static_cast<int>(m_plot.left()), static_cast<int>(m_plot.right()), top, m_around);
    placeUp();
    placeAcross();
}

QPointF PlotFrame::at(double x, double y) const
{
    return {m_plot.left() + share(x, m_around.across.from, m_around.across.to) * m_plot.width(),
        m_plot.bottom() - share(y, m_around.up.from, m_around.up.to) * m_plot.height()};
}

double PlotFrame::markRoom() const { return m_stage.theme.px(markReach); }

void PlotFrame::placeUp()
{
    const int trailing = static_cast<int>(m_plot.left()) - m_stage.theme.px(markReach) - gapOf(m_stage) / 2;
    int reached = m_room.bottom() + m_room.height();
    for (std::size_t i = 0; i < m_around.up.ticks.size(); ++i) {
        const AxisTick& tick = m_around.up.ticks[i];
        const int width = m_stage.widthOf(tick.label);
        const int height = m_stage.heightOf(tick.label, width);
        const int middle = static_cast<int>(std::lround(at(0.0, tick.at).y()));
        const QRect box(trailing - width, middle - height / 2, width, height);
        if (tick.label.isEmpty() || box.bottom() > reached)
            continue;
        m_upLabels.push_back({box, tick.label, i});
        reached = box.top();
    }
}

void PlotFrame::placeAcross()
{
    if (m_around.hidesAcross)
        return;
    std::vector<LabelWish> wishes;
    for (const AxisTick& tick : m_around.across.ticks)
        wishes.push_back({static_cast<int>(std::lround(at(tick.at, 0.0).x())), m_stage.widthOf(tick.label)});
    const auto lefts = spacedLabels(wishes, static_cast<int>(m_plot.left()) - m_stage.theme.px(markReach),
        m_room.right() + 1, m_stage.theme.px(10), m_around.keepLastLabel);
    const int top = static_cast<int>(m_plot.bottom()) + m_stage.theme.px(markReach) + gapOf(m_stage) / 2;
    const int height = labelHeight(m_stage, m_around.across);
    for (std::size_t i = 0; i < lefts.size(); ++i) {
        if (lefts[i] >= 0)
            m_acrossLabels.push_back(
                {QRect(lefts[i], top, wishes[i].width, height), m_around.across.ticks[i].label, i});
    }
}

std::vector<PlacedText> PlotFrame::endNames(const std::vector<double>& values) const
{
    std::vector<PlacedText> names;
    std::vector<QRect> boxes;
    const int left = static_cast<int>(m_plot.right()) + m_stage.theme.px(markReach) + gapOf(m_stage) / 2;
    for (std::size_t i = 0; i < values.size() && i < m_around.endNames.size(); ++i) {
        const QString& name = m_around.endNames[i];
        if (name.isEmpty())
            continue;
        const int width = nameWidth(m_stage, name);
        const int height = m_stage.heightOf(name, width);
        const int middle = static_cast<int>(std::lround(at(0.0, values[i]).y()));
        boxes.emplace_back(left, middle - height / 2, width, height);
        names.push_back({{}, name, i});
    }
    spreadColumn(boxes, m_room.top(), static_cast<int>(m_plot.bottom()) + m_stage.line() / 2, 2);
    for (std::size_t i = 0; i < names.size(); ++i)
        names[i].box = boxes[i];
    return names;
}

void PlotFrame::paint(const Pencil& pencil) const
{
    const Roles& roles = pencil.roles();
    const double reach = markRoom();
    for (const AxisTick& tick : m_around.up.ticks) {
        const double y = at(0.0, tick.at).y();
        pencil.line({m_plot.left() - reach, y}, {m_plot.right() + reach, y}, roles.line);
    }
    for (const PlacedText& label : m_upLabels)
        pencil.write(label.box, label.text, roles.inkSoft, Place::Trailing);
    for (const PlacedText& label : m_acrossLabels)
        pencil.write(label.box, label.text, roles.inkSoft, Place::Middle);
    const int titled = m_stage.heightOf(m_around.up.title, m_room.width());
    pencil.write({m_room.left(), m_room.top(), m_room.width(), titled}, m_around.up.title, roles.inkHint);
    if (!m_around.hidesAcross)
        paintRows(pencil);
}

void PlotFrame::paintEndNames(const Pencil& pencil, const std::vector<double>& values) const
{
    for (const PlacedText& name : endNames(values))
        pencil.write(name.box, name.text, pencil.roles().inkSoft);
}

void PlotFrame::paintFlags(const Pencil& pencil) const
{
    for (const PlotFlag& flag : m_around.flags) {
        const double x = at(flag.at, 0.0).x();
        double head = m_plot.top() - markRoom();
        for (const PlacedText& label : m_flagLabels) {
            if (&m_around.flags[label.index] == &flag)
                head = label.box.top();
        }
        const double foot = m_plot.bottom() + markRoom();
        pencil.line({x, head}, {x, foot}, pencil.roles().sheet, 3.0); // so that it shows on a bar
        pencil.line({x, head}, {x, foot}, pencil.roles().inkSoft, 1.0, flag.style);
    }
    for (const PlacedText& label : m_flagLabels) { // over the other flags' lines
        pencil.fill(label.box, pencil.roles().sheet);
        pencil.write(label.box, label.text, pencil.roles().inkSoft);
    }
}

/// Below the labels across; the title of the axis stands there.
int PlotFrame::rowsTop() const
{
    return static_cast<int>(m_plot.bottom()) + m_stage.theme.px(markReach) + gapOf(m_stage)
        + labelHeight(m_stage, m_around.across);
}

std::vector<QRect> PlotFrame::sampleBoxes() const
{
    std::vector<QRect> boxes;
    int top = rowsTop() + m_stage.heightOf(m_around.across.title, m_room.width()) + m_stage.theme.space(Space::Tight)
        + m_stage.heightOf(m_around.rowsTitle, m_room.width());
    for (const PlotRow& row : m_around.rows) {
        const int height = rowHeight(m_stage, row);
        boxes.emplace_back(m_room.left(), top, row.hasSample ? m_stage.theme.px(sampleWidth) : 0, height);
        top += height;
    }
    return boxes;
}

void PlotFrame::paintRows(const Pencil& pencil) const
{
    const int title = m_stage.heightOf(m_around.across.title, m_room.width());
    int top = rowsTop();
    pencil.write({m_room.left(), top, m_room.width(), title}, m_around.across.title, pencil.roles().inkHint,
        Place::Trailing);
    top += title;
    if (m_around.rows.empty())
        return;
    top += m_stage.theme.space(Space::Tight);
    const int head = m_stage.heightOf(m_around.rowsTitle, m_room.width());
    pencil.write({m_room.left(), top, m_room.width(), head}, m_around.rowsTitle, pencil.roles().inkHint);
    const std::vector<QRect> boxes = sampleBoxes();
    for (std::size_t i = 0; i < m_around.rows.size(); ++i) {
        const PlotRow& row = m_around.rows[i];
        top = boxes[i].top();
        const int height = boxes[i].height();
        pencil.write({m_room.left() + sampleRoom(m_stage, row), top, nameWidth(m_stage, row.name), height}, row.name,
            pencil.roles().inkSoft);
        for (const PlacedText& label : m_acrossLabels) {
            if (label.index >= row.numbers.size())
                continue;
            const QString& number = row.numbers[label.index];
            const int width = m_stage.widthOf(number);
            const int left
                = std::clamp(label.box.center().x() - width / 2, 0, std::max(0, m_room.right() + 1 - width));
            pencil.write({left, top, width, height}, number, pencil.roles().inkSoft, Place::Middle);
        }
    }
}

}
