// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "app/commands/month.h"
#include "core/store/districthistory.h"
#include "core/store/unithistory.h"
#include "ui/report/district/districtdocument.h"
#include "ui/report/district/visitdocument.h"
#include "ui/report/month/monthdocument.h"
#include "ui/report/month/monthscene.h"

#include <algorithm>
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

namespace {

/** A comparison of units as a report is made from; its parts point to each other. */
struct Comparison
{
    std::unique_ptr<Store> store;
    DistrictHistory history;
    std::unique_ptr<DistrictReview> review;
};

Result<Comparison> compareUnits(const CommandContext& context, const UnitsReportRequest& request)
{
    const auto span = monthsFrom(request.from, request.to);
    if (!span)
        return tl::unexpected(noSpan(request.from, request.to));
    auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return tl::unexpected(store.error());
    auto history = districtHistory(**store, *span, context.clock.now());
    if (!history)
        return tl::unexpected(history.error());
    keepLevel(*history, request.level);
    if (history->units.empty())
        return fail(ErrorCode::NotFound, "there is no unit of the level '" + request.level + "'");
    Comparison made{.store = std::move(*store), .history = std::move(*history), .review = {}};
    made.review = std::make_unique<DistrictReview>(reviewDistrict(made.history, context.district));
    return made;
}

int written(const Result<void>& done, const std::string& out)
{
    if (!done)
        return complain(done.error());
    std::printf("%s\n", out.c_str());
    return Done;
}

}

int runReportUnits(const CommandContext& context, const UnitsReportRequest& request)
{
    const auto made = compareUnits(context, request);
    if (!made)
        return complain(made.error());
    const DistrictScene scene(made->history, *made->review, context.language);
    return written(
        writeDistrictReport(*made->store, scene, QString::fromStdString(request.out)), request.out);
}

int runReportVisit(const CommandContext& context, const UnitsReportRequest& request)
{
    const auto made = compareUnits(context, request);
    if (!made)
        return complain(made.error());
    const auto& units = made->review->units;
    const auto unit = std::find_if(
        units.begin(), units.end(), [&](const DistrictUnit& one) { return one.id == context.options.unit; });
    if (unit == units.end())
        return complain({ErrorCode::NotFound, "there is no unit '" + context.options.unit + "'",
            "Name the unit to visit with --unit."});
    const DistrictScene scene(made->history, *made->review, context.language);
    const PlannedVisit visit{.scene = scene,
        .history = made->history,
        .unit = static_cast<std::size_t>(unit - units.begin()),
        .day = scene.times().zone().toLocal(context.clock.now()).date};
    return written(writeVisitSheet(*made->store, visit, QString::fromStdString(request.out)), request.out);
}

}
