// SPDX-License-Identifier: MIT
#include "ui/charts/sharesdrawing.h"
#include "ui/charts/pencil.h"
#include "ui/charts/plotlabels.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {
constexpr double leastScale = 120.0;
constexpr double markReach = 7.0;

int gapOf(const Stage& stage) { return stage.theme.space(Space::Near); }
}

int SharesDrawing::itemCount() const { return static_cast<int>(figure().rows.size()); }

QString SharesDrawing::itemText(int index) const
{
    return figure().rows[static_cast<std::size_t>(index)].spoken;
}

bool SharesDrawing::startsGroup(std::size_t row) const
{
    const auto& rows = figure().rows;
    return !rows[row].group.isEmpty() && (row == 0 || rows[row - 1].group != rows[row].group);
}

SharesDrawing::Layout SharesDrawing::layOut(const Stage& stage, int width) const
{
    Layout layout;
    const int gap = gapOf(stage);
    const int pad = stage.theme.space(Space::Tight);
    int word = 0;
    for (const ShareRow& row : figure().rows) {
        layout.name = std::max(layout.name, stage.widthOf(row.name, TextRole::Body));
        word = std::max(word, stage.ink(row.name, TextRole::Body).widestWord());
        layout.text = std::max(layout.text, stage.widthOf(row.text));
    }
    const int spare = width - layout.text - 2 * gap - stage.theme.px(leastScale);
    layout.name = std::min(layout.name, std::max(word, std::min(spare, width * 4 / 10)));
    int top = 0;
    if (figure().whole)
        top = stage.heightOf(figure().wholeLabel, width) + pad;
    layout.wholeLabel
        = QRect(0, 0, std::min(width, stage.widthOf(figure().wholeLabel)), std::max(0, top - pad));
    const int first = top;
    for (std::size_t i = 0; i < figure().rows.size(); ++i) {
        const ShareRow& row = figure().rows[i];
        const int head = startsGroup(i) ? stage.heightOf(row.group, width) + pad : 0;
        layout.heads.push_back(head > 0 ? QRect(0, top, width, head) : QRect());
        top += head;
        const int height
            = std::max(stage.heightOf(row.name, layout.name, TextRole::Body), stage.line()) + 2 * pad;
        layout.rows.emplace_back(0, top, width, height);
        top += height;
    }
    const int reach = stage.theme.px(markReach);
    const int start = layout.name + gap + reach;
    layout.scale = QRect(start, first, std::max(1, width - layout.text - gap - reach - start), top - first);
    const int shift = layout.scale.left() + static_cast<int>(across(layout, figure().whole.value_or(0.0)));
    layout.wholeLabel.moveLeft(
        std::clamp(shift - layout.scale.left(), 0, std::max(0, width - layout.wholeLabel.width())));
    layout.axisTop = top + pad;
    layout.height = layout.axisTop + stage.line() + stage.heightOf(figure().shares.title, width);
    return layout;
}

double SharesDrawing::across(const Layout& layout, double share) const
{
    const ChartAxis& axis = figure().shares;
    const double part = axis.to > axis.from ? (share - axis.from) / (axis.to - axis.from) : 0.0;
    return layout.scale.left() + std::clamp(part, 0.0, 1.0) * layout.scale.width();
}

int SharesDrawing::leastWidth(const Stage& stage) const
{
    int word = 0;
    int text = 0;
    for (const ShareRow& row : figure().rows) {
        word = std::max(word, stage.ink(row.name, TextRole::Body).widestWord());
        text = std::max(text, stage.widthOf(row.text));
    }
    return word + text + 2 * gapOf(stage) + stage.theme.px(leastScale);
}

int SharesDrawing::heightFor(int width, const Stage& stage) const { return layOut(stage, width).height; }

std::vector<QRect> SharesDrawing::itemBoxes(const Stage& stage) const
{
    return layOut(stage, stage.size.width()).rows;
}

void SharesDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const Layout layout = layOut(stage, stage.size.width());
    paintScale(pencil, layout);
    for (std::size_t i = 0; i < layout.rows.size(); ++i)
        paintRow(pencil, layout, i);
}

void SharesDrawing::paintScale(const Pencil& pencil, const Layout& layout) const
{
    const Stage& stage = pencil.stage();
    const Roles& roles = pencil.roles();
    std::vector<LabelWish> wishes;
    for (const AxisTick& tick : figure().shares.ticks) {
        const double x = across(layout, tick.at);
        pencil.line({x, 1.0 * layout.scale.top()}, {x, 1.0 * layout.axisTop}, roles.line);
        wishes.push_back({static_cast<int>(std::lround(x)), stage.widthOf(tick.label)});
    }
    const auto lefts = spacedLabels(wishes, layout.name, stage.size.width(), stage.theme.px(8), false);
    for (std::size_t i = 0; i < lefts.size(); ++i) {
        if (lefts[i] >= 0)
            pencil.write({lefts[i], layout.axisTop, wishes[i].width, stage.line()},
                figure().shares.ticks[i].label, roles.inkSoft, Place::Middle);
    }
    const int title = stage.heightOf(figure().shares.title, stage.size.width());
    pencil.write({0, layout.axisTop + stage.line(), stage.size.width(), title}, figure().shares.title,
        roles.inkHint, Place::Trailing);
    if (!figure().whole)
        return;
    const double x = across(layout, *figure().whole);
    pencil.line({x, 1.0 * layout.wholeLabel.bottom()}, {x, 1.0 * layout.axisTop}, roles.ink);
    pencil.write(layout.wholeLabel, figure().wholeLabel, roles.inkSoft);
}

void SharesDrawing::paintRow(const Pencil& pencil, const Layout& layout, std::size_t index) const
{
    const Stage& stage = pencil.stage();
    const Roles& roles = pencil.roles();
    const ShareRow& row = figure().rows[index];
    const QRect& box = layout.rows[index];
    if (!layout.heads[index].isEmpty())
        pencil.write(layout.heads[index], row.group, roles.inkHint);
    pencil.write(
        {0, box.top(), layout.name, box.height()}, row.name, roles.ink, Place::Leading, TextRole::Body);
    pencil.write({box.right() + 1 - layout.text, box.top(), layout.text, box.height()}, row.text,
        roles.inkSoft, Place::Trailing);
    const double y = box.top() + box.height() / 2.0;
    if (!row.value) {
        const double side = stage.theme.px(14);
        pencil.mark({layout.scale.left() - side / 2.0, y - side / 2.0, side, side}, Mark::NotChecked);
        return;
    }
    const QColor colour = row.finding ? roles.warning : roles.accent;
    if (row.low && row.high)
        pencil.line(
            {across(layout, *row.low), y}, {across(layout, *row.high), y}, colour, 1.6 * stage.theme.px(1));
    pencil.point({across(layout, *row.value), y}, row.finding ? PointShape::Diamond : PointShape::Disc,
        stage.theme.px(10), colour);
}

}
