// SPDX-License-Identifier: MIT
#include "core/review/readingreview.h"

#include "core/review/instrumentstep.h"
#include "core/round/judge.h"
#include "core/stats/orderstats.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr std::int64_t mostBins = 24; // as many bars as can be told apart

/** The limits that were in force for a round. */
const LimitSet* limitsIn(const UnitHistory& history, const ChosenRound& round, const std::string& id)
{
    const ChecklistInForce& list = history.lists[round.fact->list];
    const auto position = list.checklist->position(id);
    const Item* item = position ? &list.checklist->item(*position) : nullptr;
    const auto* rule = item != nullptr ? std::get_if<MeasureRule>(&item->rule) : nullptr;
    return rule != nullptr ? &limitsFor(*item, *rule, list.limits) : nullptr;
}

/** -1 below, +1 above, 0 within. */
int sideOf(const LimitSet& limits, Decimal value)
{
    if (limits.low && value < *limits.low)
        return -1;
    return limits.high && value > *limits.high ? 1 : 0;
}

std::vector<ReadingBin> binsOf(const std::vector<ReadingPoint>& points, std::int64_t step)
{
    const auto [least, most] = std::minmax_element(points.begin(), points.end(),
        [](const ReadingPoint& a, const ReadingPoint& b) { return a.value < b.value; });
    std::int64_t width = step;
    const std::int64_t range = most->value.thousandths - least->value.thousandths;
    for (std::size_t i = 0; range / width >= mostBins; ++i)
        width = i % 3 == 1 ? width / 2 * 5 : width * 2; // 2, 5, 10, 20 …
    const auto floorOf = [&](Decimal value) {
        const std::int64_t rest = value.thousandths % width;
        return value.thousandths - (rest < 0 ? rest + width : rest);
    };
    std::vector<ReadingBin> bins;
    for (std::int64_t low = floorOf(least->value); low <= most->value.thousandths; low += width)
        bins.push_back({.low = static_cast<double>(low) / 1000.0,
            .high = static_cast<double>(low + width) / 1000.0,
            .count = 0});
    for (const ReadingPoint& point : points)
        ++bins[static_cast<std::size_t>((floorOf(point.value) - floorOf(least->value)) / width)].count;
    return bins;
}

void chart(ReadingReview& review)
{
    std::vector<std::optional<double>> rows;
    std::vector<double> values;
    for (const ReadingPoint& point : review.points) {
        rows.emplace_back(point.value.toDouble());
        values.push_back(point.value.toDouble());
    }
    if (const auto median = stats::median(values))
        review.median = *median;
    stats::ChartOptions options;
    options.rules = {.twoOfThree = false, .fourOfFive = false, .runOnOneSide = false, .trend = false};
    auto xmr = stats::xmrChart(rows, options);
    if (!xmr) {
        review.why = CannotSay::NoData;
        return;
    }
    review.chart = std::move(*xmr);
    const stats::LimitsState state = review.chart->values.phases.front().state;
    if (state != stats::LimitsState::Set)
        review.why = state == stats::LimitsState::NoSpread ? CannotSay::NoSpread : CannotSay::TooFew;
}

void count(ReadingReview& review, const Selection& selection, const std::vector<RoundReading>& readings)
{
    const std::string& id = selection.items[review.item].id;
    for (const RoundReading& reading : readings) {
        const LimitSet* limits = limitsIn(*selection.history, *reading.round, id);
        const int side = limits != nullptr ? sideOf(*limits, reading.value) : 0;
        review.below += side < 0 ? 1 : 0;
        review.above += side > 0 ? 1 : 0;
        review.points.push_back({.shift = reading.round->shift, .value = reading.value, .beyond = side != 0});
        if (limits != nullptr) {
            review.low = limits->low;
            review.high = limits->high;
            review.limitSet = limits->id;
        }
    }
    review.outside
        = shareOf({.x = review.below + review.above, .n = static_cast<std::int64_t>(review.points.size())});
}

}

std::vector<ReadingReview> readingReviews(const Selection& selection)
{
    std::vector<ReadingReview> reviews;
    for (std::size_t item = 0; item < selection.items.size(); ++item) {
        const std::string& id = selection.items[item].id;
        const MeasureRule* rule = measureRuleOf(*selection.history, id);
        if (rule == nullptr)
            continue;
        const auto readings = readingsOf(*selection.history, selection.rounds(), id);
        if (readings.empty())
            continue;
        ReadingReview review{.item = item, .unit = rule->unit, .decimals = rule->decimals};
        review.step = stepOf(readingsOf(*selection.history, selection.all, id), rule->decimals);
        count(review, selection, readings);
        review.bins = binsOf(review.points, review.step.thousandths);
        chart(review);
        reviews.push_back(std::move(review));
    }
    return reviews;
}

}
