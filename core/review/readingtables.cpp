// SPDX-License-Identifier: MIT
#include "core/review/tablerow.h"

namespace cradlepost {

namespace {

void addPoints(DataTable& table, const MonthReview& review, const ReadingReview& reading)
{
    for (std::size_t row = 0; row < reading.points.size(); ++row) {
        const ReadingPoint& point = reading.points[row];
        // Every reading has a point of the chart: none is missing.
        const stats::ChartPoint* charted = reading.chart ? &reading.chart->values.points[row] : nullptr;
        const bool hasLimits = charted != nullptr && charted->limits;
        const bool beyond
            = hasLimits && (charted->value < charted->limits->low || charted->value > charted->limits->high);
        table.rows.push_back({cell(review.items[reading.item].id), cell(point.shift->date),
            cell(point.shift->code), cell(point.value.toDouble()), cell(point.beyond),
            charted != nullptr ? cell(charted->centre) : Cell(),
            hasLimits ? cell(charted->limits->low) : Cell(), hasLimits ? cell(charted->limits->high) : Cell(),
            cell(beyond)});
    }
}

Cells summaryOf(const MonthReview& review, const ReadingReview& reading)
{
    Cells row{cell(review.items[reading.item].id), cell(reading.unit), cell(reading.limitSet),
        cell(reading.low), cell(reading.high)};
    addShare(row, reading.outside);
    row.insert(row.end(),
        {cell(reading.below), cell(reading.above), cell(reading.median), cell(reading.step.toDouble()),
            cell(reading.why)});
    return row;
}

}

void addReadingTables(std::vector<DataTable>& tables, const MonthReview& review)
{
    DataTable points{.id = "readings",
        .columns = {codeColumn("item"), dayColumn("date"), codeColumn("shift"), numberColumn("value", 1),
            flagColumn("outside"), numberColumn("centre", 2), numberColumn("low", 2), numberColumn("high", 2),
            flagColumn("beyondChart")}};
    DataTable summary{.id = "reading-summary",
        .columns
        = {codeColumn("item"), textColumn("unit"), codeColumn("limitSet"), numberColumn("limitLow", 1),
            numberColumn("limitHigh", 1), countColumn("outside"), countColumn("n"), shareColumn("share"),
            shareColumn("low"), shareColumn("high"), countColumn("below"), countColumn("above"),
            numberColumn("median", 1), numberColumn("step", 1), codeColumn("cannotSay")}};
    DataTable bins{.id = "reading-histogram",
        .columns
        = {codeColumn("item"), numberColumn("from", 1), numberColumn("to", 1), countColumn("count")}};
    for (const ReadingReview& reading : review.readings) {
        addPoints(points, review, reading);
        summary.rows.push_back(summaryOf(review, reading));
        for (const ReadingBin& bin : reading.bins)
            bins.rows.push_back(
                {cell(review.items[reading.item].id), cell(bin.low), cell(bin.high), cell(bin.count)});
    }
    tables.insert(tables.end(), {points, summary, bins});
}

}
