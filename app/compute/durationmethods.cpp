// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/logrank.h"
#include "core/stats/survival.h"

#include <algorithm>

namespace cradlepost::compute {

namespace {

using namespace stats;

std::vector<Duration> durationsOf(const Table& table)
{
    const auto times = table.numbers("time");
    const auto ended = table.flags("ended");
    std::vector<Duration> list;
    for (std::size_t i = 0; i < times.size(); ++i)
        list.push_back({times[i], ended[i]});
    return list;
}

Result<Report> runCurve(const Table& table, const Options& options)
{
    const double level = options.number("level");
    const auto curve = kaplanMeier(durationsOf(table), level);
    if (!curve)
        return tl::unexpected(curve.error());
    Json::Array steps;
    for (const auto& s : curve->steps)
        steps.emplace_back(Json::Object{{"time", s.time}, {"at_risk", s.atRisk}, {"events", s.events},
            {"survival", s.survival}, {"se", maybe(s.se)},
            {"low", s.interval ? Json(s.interval->low) : Json()},
            {"high", s.interval ? Json(s.interval->high) : Json()}});
    Json mean;
    Json se;
    const auto horizon = options.maybe("horizon");
    if (horizon) {
        const auto restricted = restrictedMean(*curve, *horizon);
        if (!restricted)
            return tl::unexpected(restricted.error());
        mean = restricted->mean;
        se = restricted->se;
    }
    return Report{{{"level", level}, {"n", curve->n}, {"events", curve->events},
        {"median", maybe(curve->median)}, {"median_low", maybe(curve->medianLow)},
        {"median_high", maybe(curve->medianHigh)}, {"last_time", curve->lastTime}, {"restricted_mean", mean},
        {"restricted_mean_se", se}, {"steps", std::move(steps)}}};
}

Result<Report> runLogRank(const Table& table, const Options&)
{
    const auto list = durationsOf(table);
    const auto names = table.texts("group");
    std::vector<std::string> order;
    std::vector<std::vector<Duration>> groups;
    for (std::size_t i = 0; i < list.size(); ++i) {
        auto at = static_cast<std::size_t>(std::find(order.begin(), order.end(), names[i]) - order.begin());
        if (at == order.size()) {
            if (order.size() == 50)
                return table.fault(i, "group", "a comparison takes at most 50 groups");
            order.push_back(names[i]);
            groups.emplace_back();
        }
        groups[at].push_back(list[i]);
    }
    const auto r = logRank(groups);
    if (!r)
        return tl::unexpected(r.error());
    Json::Array rows;
    for (std::size_t g = 0; g < order.size(); ++g)
        rows.emplace_back(Json::Object{{"group", order[g]}, {"n", r->groups[g].n},
            {"observed", static_cast<std::int64_t>(r->groups[g].observed)},
            {"expected", r->groups[g].expected}});
    return Report{{{"groups", std::move(rows)}, {"chi_square", r->chiSquare}, {"df", r->df}, {"p", r->p}}};
}

}

std::vector<Method> durationMethods()
{
    const std::vector<ColumnSpec> columns{
        {"time", ColumnKind::NotNegative, "how long it lasted, or has lasted so far"},
        {"ended", ColumnKind::Flag, "1 or yes: it ended; 0 or no: still open (censored)"}};
    auto grouped = columns;
    grouped.insert(grouped.begin(), {"group", ColumnKind::Text, "name of the group"});
    return {
        {.name = "kaplan-meier",
            .summary = "Time until something ended, with open cases censored",
            .columns = columns,
            .options
            = {levelOption(), numberOption("horizon", "mean time within this horizon", "", 0, 1e150, true)},
            .fields = {{"level", "level of the intervals"}, {"n, events", "durations, and how many ended"},
                {"median", "smallest time by which half have ended; null: not reached"},
                {"median_low, median_high", "ends of its interval; null: not reached"},
                {"last_time", "of end or censoring"},
                {"restricted_mean, restricted_mean_se",
                    "mean within --horizon and its standard error; null without it"},
                {"steps[].time, .at_risk, .events", "a time at which something ended"},
                {"steps[].survival, .se", "share that lasts longer, and its standard error (Greenwood)"},
                {"steps[].low, .high", "log-log interval; null once survival is 0"}},
            .example = "time,ended\n6,1\n6,1\n6,0\n7,1\n9,0\n10,1\n13,1\n16,1\n35,0\n",
            .run = runCurve},
        {.name = "log-rank",
            .summary = "Times of two or more groups compared",
            .columns = std::move(grouped),
            .options = {},
            .fields = {{"groups[].group, .n", "name and number of durations, in order of appearance"},
                {"groups[].observed, .expected", "ends, and ends if all groups had one curve"},
                {"chi_square, df, p", "log-rank test"}},
            .example = "group,time,ended\nday,6,1\nday,7,1\nday,10,0\nnight,1,1\nnight,4,1\nnight,8,1\n",
            .run = runLogRank},
    };
}

}
