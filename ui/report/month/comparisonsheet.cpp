// SPDX-License-Identifier: MIT
#include "ui/report/month/comparisonsheet.h"

#include "core/store/unithistory.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct ComparisonSheet
{
    Q_DECLARE_TR_FUNCTIONS(ComparisonSheet)
public:
    static QString title(const MonthScene& scene, const SpanComparison& comparison)
    {
        if (comparison.why || !comparison.noCriticalGap)
            return tr("Two spans: too few rounds to compare");
        const stats::Interval& interval = comparison.noCriticalGap->interval;
        const QString by = scene.figures().number(100.0 * comparison.noCriticalGap->estimate);
        //: an interval, %1 and %2 numbers
        const QString limits = tr("%1 to %2")
                                   .arg(scene.figures().number(100.0 * interval.low),
                                       scene.figures().number(100.0 * interval.high));
        if (interval.low > 0.0)
            return tr("More shifts ready than in %1: %2 points more (%3)")
                .arg(scene.span(comparison.first.span), by, limits);
        if (interval.high < 0.0)
            return tr("Fewer shifts ready than in %1: %2 points (%3)")
                .arg(scene.span(comparison.first.span), by, limits);
        return tr("No difference that chance would not make against %1 (%2 points, %3)")
            .arg(scene.span(comparison.first.span), by, limits);
    }

    static void addRows(ShareRowsFigure& figure, const MonthScene& scene, const ComparedSpan& compared)
    {
        const auto add = [&](const QString& group, const Share& share) {
            ShareRow row{.group = group,
                .name = scene.span(compared.span),
                .value = share.value(),
                .text = scene.figures().of(share.tally)};
            if (share.interval) {
                row.low = share.interval->low;
                row.high = share.interval->high;
            }
            row.spoken = QStringLiteral("%1, %2: %3").arg(group, row.name, scene.figures().share(share));
            figure.rows.push_back(std::move(row));
        };
        add(tr("Shifts without a critical gap"), compared.readiness.noCriticalGap);
        add(tr("Shifts with nothing missing"), compared.readiness.ready);
        add(tr("Rounds done"), compared.done);
    }

    static QString smallPrint()
    {
        return tr("Difference with 95% limits (Newcombe's hybrid score method). Items in the table: Fisher's "
                  "exact test, "
                  "adjusted for their number (Benjamini-Hochberg).");
    }
};

ChartTable itemsOf(const MonthScene& scene, const SpanComparison& comparison)
{
    ChartTable out;
    for (const DataTable& table : comparisonTables(comparison)) {
        if (table.id != "compared-items")
            continue;
        out.headers = scene.tableText().headings(table);
        for (std::size_t row = 0; row < table.rows.size(); ++row)
            out.rows.push_back(scene.tableText().row(table, row));
    }
    return out;
}

}

Result<ChartContent> comparisonSheet(const Store& store, const MonthScene& scene, const ReviewSpan& against)
{
    const MonthReview& review = scene.review();
    auto history = unitHistory(store, review.unit, against, review.now);
    if (!history)
        return tl::unexpected(history.error());
    const auto before = select(*history, against, review.filter, review.options);
    const auto now = select(scene.history(), review.span, review.filter, review.options);
    if (!before || !now)
        return tl::unexpected(before ? now.error() : before.error());
    const SpanComparison comparison = compareSpans(*before, *now);
    ShareRowsFigure figure;
    ComparisonSheet::addRows(figure, scene, comparison.first);
    ComparisonSheet::addRows(figure, scene, comparison.second);
    std::stable_sort(figure.rows.begin(), figure.rows.end(),
        [](const ShareRow& a, const ShareRow& b) { return a.group < b.group; });
    figure.shares = evenAxis({}, 0.0, 1.0, 5, [&](double value) { return scene.figures().percent(value); });
    return ChartContent{.title = ComparisonSheet::title(scene, comparison),
        .finding = {},
        .smallPrint = ComparisonSheet::smallPrint(),
        .emptyText = {},
        .fileName = QStringLiteral("two-spans"),
        .figure = std::move(figure),
        .table = itemsOf(scene, comparison)};
}

}
