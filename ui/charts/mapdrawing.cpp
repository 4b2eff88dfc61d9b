// SPDX-License-Identifier: MIT
#include "ui/charts/mapdrawing.h"
#include "ui/charts/pencil.h"
#include "ui/charts/plotlabels.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {
constexpr double deepest = 0.5;

int gapOf(const Stage& stage) { return stage.theme.space(Space::Close); }
}

QColor mapShade(const Roles& roles, double share)
{
    const double part = std::clamp(share, 0.0, 1.0) * deepest;
    const auto between
        = [&](double from, double to) { return static_cast<float>(from + (to - from) * part); };
    return QColor::fromRgbF(between(roles.sheet.redF(), roles.warning.redF()),
        between(roles.sheet.greenF(), roles.warning.greenF()),
        between(roles.sheet.blueF(), roles.warning.blueF()));
}

int MapDrawing::itemCount() const { return static_cast<int>(figure().rows.size() * figure().columns.size()); }

const MapCell* MapDrawing::cellAt(std::size_t row, std::size_t column) const
{
    const auto& cells = figure().cells;
    return row < cells.size() && column < cells[row].size() ? &cells[row][column] : nullptr;
}

QString MapDrawing::itemText(int index) const
{
    const auto at = static_cast<std::size_t>(index);
    const MapCell* cell = cellAt(at / figure().columns.size(), at % figure().columns.size());
    return cell ? cell->text : QString();
}

int MapDrawing::beside(int index, Qt::Key key) const
{
    const int columns = static_cast<int>(figure().columns.size());
    if (columns == 0 || index < 0)
        return index;
    const int column = index % columns;
    switch (key) {
    case Qt::Key_Left:
        return column > 0 ? index - 1 : index;
    case Qt::Key_Right:
        return column + 1 < columns ? index + 1 : index;
    case Qt::Key_Up:
        return index >= columns ? index - columns : index;
    case Qt::Key_Down:
        return index + columns < itemCount() ? index + columns : index;
    default:
        return index;
    }
}

int MapDrawing::leastCell(const Stage& stage) const
{
    int width = stage.theme.px(24);
    for (const auto& row : figure().cells) {
        for (const MapCell& cell : row)
            width = std::max(width, stage.widthOf(cell.label) + stage.theme.px(8));
    }
    return width;
}

MapDrawing::Grid MapDrawing::grid(const Stage& stage, int width) const
{
    const int columns = static_cast<int>(figure().columns.size());
    Grid grid;
    int word = stage.widthOf(figure().rowsTitle);
    for (const QString& name : figure().rows) {
        grid.names = std::max(grid.names, stage.widthOf(name));
        word = std::max(word, stage.ink(name).widestWord());
    }
    const int spare = width - gapOf(stage) - columns * leastCell(stage);
    grid.names = std::max(word, std::min(grid.names, spare));
    grid.cell = std::clamp((width - grid.names - gapOf(stage)) / columns, leastCell(stage),
        std::max(leastCell(stage), stage.theme.px(72)));
    const int least = stage.theme.px(24);
    int top = stage.heightOf(figure().columnsTitle, width) + stage.line() + stage.theme.space(Space::Tight);
    for (const QString& name : figure().rows) {
        grid.tops.push_back(top);
        top += std::max(least, stage.heightOf(name, grid.names) + stage.theme.space(Space::Tight));
    }
    grid.tops.push_back(top);
    grid.legendTop = top + gapOf(stage);
    const QRect last = legendBoxes(stage, width, grid.legendTop).back();
    grid.height = last.top() + last.height();
    return grid;
}

std::vector<QRect> MapDrawing::legendBoxes(const Stage& stage, int width, int top) const
{
    std::vector<QRect> boxes;
    int x = 0;
    for (const QString& word : {tr("no data"), figure().shadeTitle}) {
        const int skip = stage.theme.px(20);
        const int entry = skip + stage.widthOf(word);
        if (x > 0 && x + entry > width) {
            x = 0;
            top += boxes.back().height() + stage.theme.space(Space::Tight);
        }
        const int fits = std::min(entry, width - x);
        boxes.emplace_back(x, top, fits, std::max(stage.line(), stage.heightOf(word, fits - skip)));
        x += entry + stage.theme.space(Space::Apart);
    }
    return boxes;
}

int MapDrawing::leastWidth(const Stage& stage) const
{
    int word = stage.widthOf(figure().rowsTitle);
    for (const QString& name : figure().rows)
        word = std::max(word, stage.ink(name).widestWord());
    return word + gapOf(stage) + static_cast<int>(figure().columns.size()) * leastCell(stage);
}

int MapDrawing::heightFor(int width, const Stage& stage) const { return grid(stage, width).height; }

std::vector<QRect> MapDrawing::itemBoxes(const Stage& stage) const
{
    const Grid g = grid(stage, stage.size.width());
    std::vector<QRect> boxes;
    for (std::size_t row = 0; row < figure().rows.size(); ++row) {
        for (std::size_t column = 0; column < figure().columns.size(); ++column)
            boxes.emplace_back(g.names + gapOf(stage) + static_cast<int>(column) * g.cell, g.tops[row],
                g.cell, g.tops[row + 1] - g.tops[row]);
    }
    return boxes;
}

void MapDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const Grid g = grid(stage, stage.size.width());
    paintHeads(pencil, g);
    const auto boxes = itemBoxes(stage);
    for (std::size_t i = 0; i < boxes.size(); ++i)
        paintCell(pencil, boxes[i], cellAt(i / figure().columns.size(), i % figure().columns.size()));
    paintLegend(pencil, g);
}

void MapDrawing::paintHeads(const Pencil& pencil, const Grid& g) const
{
    const Stage& stage = pencil.stage();
    const Roles& roles = pencil.roles();
    const int start = g.names + gapOf(stage);
    const int title = stage.heightOf(figure().columnsTitle, stage.size.width());
    pencil.write(
        {start, 0, std::max(1, stage.size.width() - start), title}, figure().columnsTitle, roles.inkHint);
    pencil.write({0, title, g.names, stage.line()}, figure().rowsTitle, roles.inkHint);
    std::vector<LabelWish> wishes;
    for (std::size_t i = 0; i < figure().columns.size(); ++i)
        wishes.push_back(
            {start + static_cast<int>(i) * g.cell + g.cell / 2, stage.widthOf(figure().columns[i])});
    const auto lefts = spacedLabels(wishes, start, stage.size.width(), stage.theme.px(6), true);
    for (std::size_t i = 0; i < lefts.size(); ++i) {
        if (lefts[i] >= 0)
            pencil.write({lefts[i], title, wishes[i].width, stage.line()}, figure().columns[i], roles.inkSoft,
                Place::Middle);
    }
    for (std::size_t row = 0; row < figure().rows.size(); ++row)
        pencil.write({0, g.tops[row], g.names, g.tops[row + 1] - g.tops[row]}, figure().rows[row], roles.ink);
}

void MapDrawing::paintCell(const Pencil& pencil, const QRect& box, const MapCell* cell) const
{
    const Roles& roles = pencil.roles();
    const QRectF inner = QRectF(box).adjusted(1, 1, -1, -1);
    if (!cell || !cell->share) {
        const double reach = std::min(inner.width(), inner.height()) * 0.25;
        pencil.line(
            inner.center() + QPointF(-reach, reach), inner.center() + QPointF(reach, -reach), roles.edge);
        return;
    }
    pencil.fill(inner, *cell->share > 0.0 ? mapShade(roles, *cell->share) : roles.paper);
    pencil.write(box, cell->label, roles.ink, Place::Middle);
}

void MapDrawing::paintLegend(const Pencil& pencil, const Grid& g) const
{
    const Stage& stage = pencil.stage();
    const auto boxes = legendBoxes(stage, stage.size.width(), g.legendTop);
    const MapCell unknown;
    const MapCell deep{.share = 1.0};
    const int side = stage.theme.px(14);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const QRect& box = boxes[i];
        const QString word = i == 0 ? tr("no data") : figure().shadeTitle;
        if (word.isEmpty())
            continue;
        paintCell(pencil, {box.left(), box.top() + (box.height() - side) / 2, side, side},
            i == 0 ? &unknown : &deep);
        pencil.write(box.adjusted(stage.theme.px(20), 0, 0, 0), word, pencil.roles().inkHint);
    }
}

}
