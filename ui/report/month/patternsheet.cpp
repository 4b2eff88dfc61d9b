// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct PatternSheet
{
    Q_DECLARE_TR_FUNCTIONS(PatternSheet)
public:
    explicit PatternSheet(const MonthScene& theScene)
        : scene(theScene)
    {
    }

    const MonthScene& scene;

    static QString nameOf(const PatternGroup& group)
    {
        return group.weekday == 0 ? MonthText::shifts(group.shift) : MonthText::weekdays(group.weekday);
    }

    static bool standsOut(const ShiftPatternReview& review, std::size_t group)
    {
        return review.test && review.test->differs && review.test->worst == group;
    }

    void addRows(ShareRowsFigure& figure, const ShiftPatternReview& review, const QString& title) const
    {
        for (std::size_t i = 0; i < review.groups.size(); ++i) {
            const PatternGroup& group = review.groups[i];
            ShareRow row{.group = title, .name = nameOf(group), .value = group.noCriticalGap.value()};
            if (group.noCriticalGap.interval) {
                row.low = group.noCriticalGap.interval->low;
                row.high = group.noCriticalGap.interval->high;
            }
            row.text = scene.figures().of(group.noCriticalGap.tally);
            row.finding = standsOut(review, i);
            row.spoken = tr("%1: %2 shifts without a critical gap")
                             .arg(row.name, scene.figures().share(group.noCriticalGap));
            figure.rows.push_back(std::move(row));
        }
    }

    [[nodiscard]] QString title() const
    {
        for (const ShiftPatternReview* review : {&scene.review().byShift, &scene.review().byWeekday}) {
            if (review->test && review->test->differs)
                return tr("%1 stand out, more than chance explains")
                    .arg(nameOf(review->groups[review->test->worst]));
        }
        if (scene.review().byShift.why && scene.review().byWeekday.why)
            return tr("Shifts and weekdays: too few rounds to compare");
        return tr("No shift and no weekday stands out");
    }

    [[nodiscard]] QString smallPrint() const
    {
        QStringList parts{tr("Shifts without a critical gap, of rounds done, with 95% limits (Wilson).")};
        const auto& test = scene.review().byShift.test;
        if (test)
            //: %1 and %2 numbers
            parts.append(tr("Items met compared between shifts: chi-square widened for how rounds spread, p %1; "
                            "spoken of at %2 or below.")
                             .arg(scene.figures().chance(test->p),
                                 scene.figures().number(scene.review().options.strictLevel, 3)));
        return parts.join(QLatin1Char(' '));
    }
    static QString byShiftTitle() { return tr("By shift"); }
    static QString byWeekdayTitle() { return tr("By weekday"); }
};

}

ChartContent patternSheet(const MonthScene& scene)
{
    const PatternSheet sheet(scene);
    ShareRowsFigure figure;
    sheet.addRows(figure, scene.review().byShift, PatternSheet::byShiftTitle());
    sheet.addRows(figure, scene.review().byWeekday, PatternSheet::byWeekdayTitle());
    double least = 1.0;
    for (const ShareRow& row : figure.rows)
        least = std::min({least, row.low.value_or(1.0), row.value.value_or(1.0)});
    figure.shares = evenAxis(
        {}, std::min(least, 0.8), 1.0, 5, [&](double value) { return scene.figures().percent(value); });
    figure.whole = scene.review().readiness.noCriticalGap.value();
    if (figure.whole)
        figure.wholeLabel = scene.figures().percent(*figure.whole);
    ChartTable table = scene.table("by-shift");
    const ChartTable weekdays = scene.table("by-weekday");
    table.rows.insert(table.rows.end(), weekdays.rows.begin(), weekdays.rows.end());
    return {.title = sheet.title(),
        .finding = scene.said(MonthPart::ByShift),
        .smallPrint = sheet.smallPrint(),
        .fileName = QStringLiteral("shifts-and-weekdays"),
        .figure = std::move(figure),
        .table = std::move(table)};
}

}
