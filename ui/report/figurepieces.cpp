// SPDX-License-Identifier: MIT
#include "ui/report/figurepieces.h"

#include <algorithm>

namespace cradlepost {

namespace {

template <class Row> std::vector<Row> part(const std::vector<Row>& rows, std::size_t from, std::size_t to)
{
    const auto at
        = [&](std::size_t i) { return rows.begin() + static_cast<std::ptrdiff_t>(std::min(i, rows.size())); };
    return {at(from), at(to)};
}

/// Where each week of a calendar begins, and its end.
std::vector<std::size_t> weeksOf(const CalendarFigure& figure)
{
    std::vector<std::size_t> starts{0};
    for (std::size_t i = 1; i < figure.days.size(); ++i) {
        if (figure.days[i].column <= figure.days[i - 1].column)
            starts.push_back(i);
    }
    starts.push_back(figure.days.size());
    return starts;
}

/// How many rows a figure has that may be parted; curves have one.
struct RowCount
{
    template <class Curve> std::size_t operator()(const Curve& /*curve*/) const { return 1; }
    std::size_t operator()(const BarsFigure& figure) const { return figure.items.size(); }
    std::size_t operator()(const ShareRowsFigure& figure) const { return figure.rows.size(); }
    std::size_t operator()(const MapFigure& figure) const { return figure.rows.size(); }
    std::size_t operator()(const SmallMultiplesFigure& figure) const { return figure.panels.size(); }
    std::size_t operator()(const CalendarFigure& figure) const { return weeksOf(figure).size() - 1; }
};

/// The figure with rows from..to only.
struct RowsOf
{
    std::size_t from;
    std::size_t to;

    template <class Curve> ChartFigure operator()(const Curve& curve) const { return curve; }
    ChartFigure operator()(BarsFigure figure) const
    {
        figure.items = part(figure.items, from, to);
        return figure;
    }
    ChartFigure operator()(ShareRowsFigure figure) const
    {
        figure.rows = part(figure.rows, from, to);
        return figure;
    }
    ChartFigure operator()(MapFigure figure) const
    {
        figure.rows = part(figure.rows, from, to);
        figure.cells = part(figure.cells, from, to);
        return figure;
    }
    ChartFigure operator()(SmallMultiplesFigure figure) const
    {
        figure.panels = part(figure.panels, from, to);
        return figure;
    }
    ChartFigure operator()(CalendarFigure figure) const
    {
        const auto weeks = weeksOf(figure);
        figure.days = part(figure.days, weeks[from], weeks[to]);
        return figure;
    }
};

std::vector<ChartFigure> inPieces(const ChartFigure& figure, std::size_t rows, std::size_t pieces)
{
    std::vector<ChartFigure> out;
    for (std::size_t i = 0; i < pieces; ++i)
        out.push_back(std::visit(RowsOf{i * rows / pieces, (i + 1) * rows / pieces}, figure));
    return out;
}

}

std::vector<ChartFigure> figurePieces(
    const ChartFigure& figure, const std::function<bool(const ChartFigure&)>& fits)
{
    const std::size_t rows = std::visit(RowCount(), figure);
    std::vector<ChartFigure> pieces{figure};
    for (std::size_t count = 2; count <= rows && !std::all_of(pieces.begin(), pieces.end(), fits); ++count)
        pieces = inPieces(figure, rows, count);
    return pieces;
}

}
