// SPDX-License-Identifier: MIT
#include "ui/charts/multiplesdrawing.h"
#include "ui/charts/pencil.h"
#include "ui/charts/plotlabels.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {
constexpr double leastPanel = 150.0;
constexpr double plotHeight = 52.0;
constexpr double lineReach = 4.0;

double heightAt(const QRect& plot, const ChartAxis& axis, double value)
{
    const double part = axis.to > axis.from ? (value - axis.from) / (axis.to - axis.from) : 0.0;
    return plot.top() + plot.height() * (1.0 - std::clamp(part, 0.0, 1.0));
}
}

int MultiplesDrawing::itemCount() const { return static_cast<int>(figure().panels.size()); }

QString MultiplesDrawing::itemText(int index) const
{
    return figure().panels[static_cast<std::size_t>(index)].text;
}

MultiplesDrawing::Grid MultiplesDrawing::grid(const Stage& stage, int width) const
{
    Grid grid;
    const int gap = stage.theme.space(Space::Wide);
    for (const AxisTick& tick : figure().values.ticks)
        grid.scale = std::max(grid.scale, stage.widthOf(tick.label));
    grid.scale += stage.theme.space(Space::Close);
    int least = stage.theme.px(leastPanel);
    for (const SmallPanel& panel : figure().panels)
        least = std::max({least, stage.ink(panel.name).widestWord(), stage.widthOf(panel.note)});
    const int room = std::max(least, width - grid.scale - stage.theme.px(lineReach));
    grid.columns = std::clamp((room + gap) / (least + gap), 1, std::max(1, itemCount()));
    grid.panel = (room - gap * (grid.columns - 1)) / grid.columns;
    m_columns = grid.columns;
    const int count = itemCount();
    int top = 0;
    for (int first = 0; first < count; first += grid.columns) {
        int head = 0;
        for (int i = first; i < std::min(count, first + grid.columns); ++i) {
            const SmallPanel& panel = figure().panels[static_cast<std::size_t>(i)];
            const int mark = panel.finding ? stage.theme.px(16) : 0;
            head = std::max(
                head, stage.heightOf(panel.name, grid.panel - mark) + stage.heightOf(panel.note, grid.panel));
        }
        grid.heads.push_back(head);
        grid.tops.push_back(top);
        top += head + stage.theme.px(plotHeight + 2 * lineReach) + stage.line() + gap / 2;
    }
    grid.tops.push_back(top);
    return grid;
}

int MultiplesDrawing::leastWidth(const Stage& stage) const
{
    int least = stage.theme.px(leastPanel);
    for (const SmallPanel& panel : figure().panels)
        least = std::max({least, stage.ink(panel.name).widestWord(), stage.widthOf(panel.note)});
    return least + grid(stage, least).scale + stage.theme.px(lineReach);
}

int MultiplesDrawing::heightFor(int width, const Stage& stage) const
{
    return grid(stage, width).tops.back();
}

int MultiplesDrawing::beside(int index, Qt::Key key) const
{
    const int step = key == Qt::Key_Up ? -m_columns : key == Qt::Key_Down ? m_columns : 0;
    if (step == 0)
        return Drawing::beside(index, key);
    return index + step >= 0 && index + step < itemCount() ? index + step : index;
}

std::vector<QRect> MultiplesDrawing::itemBoxes(const Stage& stage) const
{
    const Grid g = grid(stage, stage.size.width());
    const int gap = stage.theme.space(Space::Wide);
    std::vector<QRect> boxes;
    for (int i = 0; i < itemCount(); ++i) {
        const auto row = static_cast<std::size_t>(i / g.columns);
        boxes.emplace_back(g.scale + (i % g.columns) * (g.panel + gap), g.tops[row], g.panel,
            g.tops[row + 1] - g.tops[row] - gap / 2);
    }
    return boxes;
}

QRect MultiplesDrawing::plotOf(const Stage& stage, const Grid& g, std::size_t index) const
{
    const int gap = stage.theme.space(Space::Wide);
    const int at = static_cast<int>(index);
    const auto row = static_cast<std::size_t>(at / g.columns);
    return {g.scale + (at % g.columns) * (g.panel + gap),
        g.tops[row] + g.heads[row] + stage.theme.px(lineReach), g.panel, stage.theme.px(plotHeight)};
}

void MultiplesDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const Grid g = grid(stage, stage.size.width());
    for (std::size_t i = 0; i < figure().panels.size(); ++i) {
        paintScale(pencil, g, i);
        paintPanel(pencil, g, i);
    }
}

void MultiplesDrawing::paintScale(const Pencil& pencil, const Grid& g, std::size_t index) const
{
    const Stage& stage = pencil.stage();
    const QRect plot = plotOf(stage, g, index);
    const auto& ticks = figure().values.ticks;
    for (const AxisTick& tick : ticks) {
        const double y = heightAt(plot, figure().values, tick.at);
        pencil.line({1.0 * plot.left(), y}, {plot.right() + 1.0, y}, pencil.roles().line);
        const bool isEnd = &tick == &ticks.front() || &tick == &ticks.back();
        if (isEnd && static_cast<int>(index) % g.columns == 0)
            pencil.write({0, static_cast<int>(y) - stage.line() / 2,
                             g.scale - stage.theme.space(Space::Close) / 2, stage.line()},
                tick.label, pencil.roles().inkSoft, Place::Trailing);
    }
    if (static_cast<int>(index) + g.columns < itemCount())
        return;
    const int top = plot.bottom() + stage.theme.px(lineReach);
    const std::vector<LabelWish> wishes{{plot.left(), stage.widthOf(figure().firstPeriod)},
        {plot.right() + 1, stage.widthOf(figure().lastPeriod)}};
    const auto lefts = spacedLabels(wishes, plot.left(), plot.right() + 1, stage.theme.px(8), true);
    for (std::size_t i = 0; i < 2; ++i) {
        if (lefts[i] >= 0)
            pencil.write({lefts[i], top, wishes[i].width, stage.line()},
                i == 0 ? figure().firstPeriod : figure().lastPeriod, pencil.roles().inkSoft);
    }
}

void MultiplesDrawing::paintPanel(const Pencil& pencil, const Grid& g, std::size_t index) const
{
    const Stage& stage = pencil.stage();
    const Roles& roles = pencil.roles();
    const SmallPanel& panel = figure().panels[index];
    const QRect plot = plotOf(stage, g, index);
    const int mark = panel.finding ? stage.theme.px(16) : 0;
    const int name = stage.heightOf(panel.name, plot.width() - mark);
    const int note = stage.heightOf(panel.note, plot.width());
    const int top = plot.top() - stage.theme.px(lineReach) - name - note;
    if (panel.finding)
        pencil.mark(QRectF(plot.left(), top, stage.theme.px(12), stage.line()), Mark::GapCritical);
    pencil.write({plot.left() + mark, top, plot.width() - mark, name}, panel.name, roles.ink);
    pencil.write({plot.left(), top + name, plot.width(), note}, panel.note, roles.inkHint);
    paintLine(pencil, plot, panel);
}

void MultiplesDrawing::paintLine(const Pencil& pencil, const QRect& plot, const SmallPanel& panel) const
{
    const Roles& roles = pencil.roles();
    const double unit = pencil.stage().theme.px(1);
    const QColor colour = panel.finding ? roles.warning : roles.accent;
    if (panel.centre) {
        const double y = heightAt(plot, figure().values, *panel.centre);
        pencil.line({1.0 * plot.left(), y}, {plot.right() + 1.0, y}, roles.ink, unit);
    }
    const std::size_t count = panel.values.size();
    const double step = count > 1 ? plot.width() / static_cast<double>(count - 1) : 0.0;
    const auto at = [&](std::size_t i) {
        return QPointF(
            plot.left() + step * static_cast<double>(i), heightAt(plot, figure().values, *panel.values[i]));
    };
    for (std::size_t i = 0; i < count; ++i) {
        if (!panel.values[i])
            continue;
        const bool before = i > 0 && panel.values[i - 1].has_value();
        const bool after = i + 1 < count && panel.values[i + 1].has_value();
        if (before)
            pencil.line(at(i - 1), at(i), colour, 1.6 * unit);
        if ((!before && !after) || i + 1 == count) // alone between gaps, and the last one
            pencil.point(at(i), panel.finding ? PointShape::Diamond : PointShape::Disc, 6.0 * unit, colour);
    }
}

}
