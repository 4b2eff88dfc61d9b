// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartaxis.h"

#include <optional>

namespace cradlepost {

// What the painted lists are drawn from. A `spoken` or `text` is the whole item in words, for hover and
// screen readers.

struct BarItem
{
    QString name; ///< wraps
    double value = 0.0;
    std::optional<double> low; ///< of the interval
    std::optional<double> high;
    QString text; ///< "31% · 27 of 88"
    QString cumulated; ///< "64% so far"; may be empty
    bool finding = false; ///< one of those that the title speaks of
    QString spoken;
};

struct BarsFigure
{
    std::vector<BarItem> items;
    double most = 1.0; ///< the value at which a bar fills its room; intervals may reach as far
};

struct ShareRow
{
    QString group; ///< "by shift": written where it changes
    QString name;
    std::optional<double> value; ///< none: no data
    std::optional<double> low;
    std::optional<double> high;
    QString text; ///< "63 of 88"
    bool finding = false;
    QString spoken;
};

struct ShareRowsFigure
{
    std::vector<ShareRow> rows;
    ChartAxis shares;
    std::optional<double> whole; ///< a hairline through all rows
    QString wholeLabel;
};

enum class ShiftDone { InTime, Late, Missing, Paper, NotDue };

struct CalendarShift
{
    ShiftDone done = ShiftDone::Missing;
    bool amended = false;
};

struct CalendarDay
{
    int column = 0; ///< 0..6 in the order of CalendarFigure::weekdays
    QString number; ///< "14"
    bool inSpan = true; ///< days beside the span are quiet
    std::vector<CalendarShift> shifts; ///< in the order of the day
    QString text;
};

struct CalendarFigure
{
    std::vector<QString> weekdays; ///< seven, short, in the order of the reader's week
    std::vector<CalendarDay> days; ///< in order of time; a new week starts where the column falls
};

struct MapCell
{
    std::optional<double> share; ///< 0..1, 1 the deepest shade; none: no data, a stroke instead
    QString label; ///< printed in the cell, short: "12"
    QString text;
};

struct MapFigure
{
    QString rowsTitle;
    QString columnsTitle;
    std::vector<QString> rows; ///< items
    std::vector<QString> columns; ///< weeks
    std::vector<std::vector<MapCell>> cells; ///< by row, a cell a column
    QString shadeTitle; ///< what a deeper shade means, for the legend
};

struct SmallPanel
{
    QString name;
    QString note; ///< under the name: "71% of 88"
    std::vector<std::optional<double>> values; ///< a period each; none: no data
    std::optional<double> centre;
    bool finding = false;
    QString text;
};

struct SmallMultiplesFigure
{
    std::vector<SmallPanel> panels;
    ChartAxis values; ///< of all panels
    QString firstPeriod;
    QString lastPeriod;
};

}
