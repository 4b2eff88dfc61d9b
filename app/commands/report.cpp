// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "app/commands/month.h"
#include "core/store/districthistory.h"
#include "core/store/unithistory.h"
#include "ui/report/district/districtdocument.h"
#include "ui/report/month/monthdocument.h"
#include "ui/report/month/monthscene.h"

#include <cstdio>

namespace cradlepost {

int runReportMonth(const CommandContext& context, const ReportRequest& request)
{
    const auto month = monthFrom(request.month);
    if (!month)
        return complain({ErrorCode::InvalidArgument, "--month '" + request.month + "' is no month",
            "Write it as 2026-10."});
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    if (context.options.unit.empty())
        return complain(
            {ErrorCode::InvalidArgument, "a month's report is of one unit", "Name it with --unit."});
    const ReviewSpan span = ReviewSpan::ofMonth(*month);
    const auto history = unitHistory(**store, context.options.unit, span, context.clock.now());
    if (!history)
        return complain(history.error());
    const auto review = reviewMonth(*history, span);
    if (!review)
        return complain(review.error());
    const TimeText times(context.language, history->zone);
    const MonthScene scene(*history, *review, context.language, times);
    const auto written = writeMonthReport(**store, scene, QString::fromStdString(request.out));
    if (!written)
        return complain(written.error());
    std::printf("%s\n", request.out.c_str());
    return Done;
}

int runReportUnits(const CommandContext& context, const UnitsReportRequest& request)
{
    const auto span = monthsFrom(request.from, request.to);
    if (!span)
        return complain(noSpan(request.from, request.to));
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto history = districtHistory(**store, *span, context.clock.now());
    if (!history)
        return complain(history.error());
    const DistrictReview review = reviewDistrict(*history);
    const DistrictScene scene(*history, review, context.language);
    const auto written = writeDistrictReport(**store, scene, QString::fromStdString(request.out));
    if (!written)
        return complain(written.error());
    std::printf("%s\n", request.out.c_str());
    return Done;
}

}
