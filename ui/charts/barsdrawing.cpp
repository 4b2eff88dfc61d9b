// SPDX-License-Identifier: MIT
#include "ui/charts/barsdrawing.h"
#include "ui/charts/pencil.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {
constexpr double barHeight = 16.0;
constexpr double leastBar = 110.0;

int gapOf(const Stage& stage) { return stage.theme.space(Space::Near); }
}

int BarsDrawing::itemCount() const { return static_cast<int>(figure().items.size()); }

QString BarsDrawing::itemText(int index) const
{
    return figure().items[static_cast<std::size_t>(index)].spoken;
}

BarsDrawing::Columns BarsDrawing::columns(const Stage& stage, int width) const
{
    Columns columns;
    int word = 0;
    for (const BarItem& item : figure().items) {
        columns.name = std::max(columns.name, stage.widthOf(item.name, TextRole::Body));
        word = std::max(word, stage.ink(item.name, TextRole::Body).widestWord());
        columns.text = std::max(columns.text, stage.widthOf(item.text));
        columns.cumulated = std::max(columns.cumulated, stage.widthOf(item.cumulated));
    }
    const int gap = gapOf(stage);
    const int numbers = columns.text + gap + (columns.cumulated > 0 ? columns.cumulated + gap : 0);
    const int spare = width - numbers - gap - stage.theme.px(leastBar);
    // Reasons are read, and a bar needs no more than half beside them; a name is looked up.
    const int most = columns.name > width ? width / 2 : width * 3 / 10;
    columns.name = std::min(columns.name, std::max(word, std::min(spare, most)));
    columns.stacked = columns.name > spare;
    return columns;
}

BarsDrawing::Row BarsDrawing::rowAt(
    const Stage& stage, const Columns& columns, const BarItem& item, int top, int width) const
{
    const int gap = gapOf(stage);
    const int pad = stage.theme.space(Space::Tight);
    const int thick = stage.theme.px(barHeight);
    const int nameWidth = columns.stacked ? width : columns.name;
    const int nameHeight = stage.heightOf(item.name, nameWidth, TextRole::Body);
    const int textHeight = std::max(thick, stage.line());
    Row row;
    const int start = columns.stacked ? 0 : columns.name + gap;
    const int line = columns.stacked ? textHeight : std::max(nameHeight, textHeight);
    const int y = columns.stacked ? top + pad + nameHeight : top + pad;
    row.name = QRect(0, top + pad, nameWidth, columns.stacked ? nameHeight : line);
    int end = width;
    if (columns.cumulated > 0 && !columns.stacked) {
        row.cumulated = QRect(end - columns.cumulated, y, columns.cumulated, line);
        end -= columns.cumulated + gap;
    }
    row.text = QRect(end - columns.text, y, columns.text, line);
    row.bar = QRect(start, y + (line - thick) / 2, std::max(1, end - columns.text - gap - start), thick);
    int bottom = y + line;
    if (columns.cumulated > 0 && columns.stacked) {
        row.cumulated = QRect(width - columns.cumulated, bottom, columns.cumulated, stage.line());
        bottom += stage.line();
    }
    row.all = QRect(0, top, width, bottom + pad - top);
    return row;
}

std::vector<BarsDrawing::Row> BarsDrawing::rows(const Stage& stage, int width) const
{
    const Columns parts = columns(stage, width);
    std::vector<Row> rows;
    int top = 0;
    for (const BarItem& item : figure().items) {
        rows.push_back(rowAt(stage, parts, item, top, width));
        top += rows.back().all.height();
    }
    return rows;
}

int BarsDrawing::leastWidth(const Stage& stage) const
{
    int word = 0;
    int text = 0;
    for (const BarItem& item : figure().items) {
        word = std::max(word, stage.ink(item.name, TextRole::Body).widestWord());
        text = std::max({text, stage.widthOf(item.text), stage.widthOf(item.cumulated)});
    }
    return std::max(word, text + gapOf(stage) + stage.theme.px(leastBar) / 2);
}

int BarsDrawing::heightFor(int width, const Stage& stage) const
{
    const auto all = rows(stage, width);
    return all.empty() ? 0 : all.back().all.top() + all.back().all.height();
}

std::vector<QRect> BarsDrawing::itemBoxes(const Stage& stage) const
{
    std::vector<QRect> boxes;
    for (const Row& row : rows(stage, stage.size.width()))
        boxes.push_back(row.all);
    return boxes;
}

void BarsDrawing::paint(QPainter& painter, const Stage& stage)
{
    const Pencil pencil(painter, stage);
    const auto all = rows(stage, stage.size.width());
    for (std::size_t i = 0; i < all.size(); ++i)
        paintRow(pencil, all[i], figure().items[i]);
}

void BarsDrawing::paintRow(const Pencil& pencil, const Row& row, const BarItem& item) const
{
    const Roles& roles = pencil.roles();
    const double scale = figure().most > 0.0 ? row.bar.width() / figure().most : 0.0;
    const auto x = [&](double value) {
        return row.bar.left() + std::clamp(value * scale, 0.0, static_cast<double>(row.bar.width()));
    };
    pencil.write(row.name, item.name, roles.ink, Place::Leading, TextRole::Body);
    const double end = x(item.value);
    pencil.fill(QRectF(row.bar.left(), row.bar.top(), end - row.bar.left(), row.bar.height()),
        item.finding ? roles.warning : roles.barQuiet);
    if (item.low && item.high) { // in the sheet's colour where it lies on the bar, in ink beyond
        const double y = row.bar.top() + row.bar.height() / 2.0;
        const double width = pencil.stage().theme.px(1) * 1.6;
        pencil.line({x(*item.low), y}, {std::min(end, x(*item.high)), y}, roles.sheet, width);
        pencil.line({std::max(end, x(*item.low)), y}, {x(*item.high), y}, roles.ink, width);
    }
    pencil.write(row.text, item.text, roles.ink);
    pencil.write(row.cumulated, item.cumulated, roles.inkHint, Place::Trailing);
}

}
