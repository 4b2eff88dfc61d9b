// SPDX-License-Identifier: MIT
#include "core/review/shiftpattern.h"

#include "core/review/spread.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace cradlepost {

namespace {

constexpr int fewestInGroup = 5; // rounds, our own

using GroupOf = std::function<std::size_t(const Shift&)>;

double real(std::int64_t n) { return static_cast<double>(n); }

void fill(std::vector<PatternGroup>& groups, const Selection& selection, const GroupOf& groupOf)
{
    for (const Shift* shift : selection.due) {
        if (selection.span.contains(shift->date))
            ++groups[groupOf(*shift)].due;
    }
    for (const ChosenRound& round : selection.rounds()) {
        PatternGroup& group = groups[groupOf(*round.shift)];
        ++group.done;
        group.items += round.items;
        group.noCriticalGap.tally.x += round.state != Readiness::NotReady ? 1 : 0;
        group.ready.tally.x += round.state == Readiness::Ready ? 1 : 0;
        if (round.hasIndex)
            group.meanIndex = group.meanIndex.value_or(0) + round.index;
    }
    for (PatternGroup& group : groups) {
        group.noCriticalGap = shareOf({.x = group.noCriticalGap.tally.x, .n = group.done});
        group.ready = shareOf({.x = group.ready.tally.x, .n = group.done});
        if (group.meanIndex)
            *group.meanIndex /= real(group.done);
    }
}

/** Pearson's chi-square of tallies by met and not met. */
double pearson(std::span<const stats::Tally> tallies)
{
    stats::Tally whole;
    for (const stats::Tally& one : tallies)
        whole += one;
    const double p = real(whole.x) / real(whole.n);
    double sum = 0;
    for (const stats::Tally& one : tallies) {
        if (one.n > 0)
            sum += std::pow(real(one.x) - real(one.n) * p, 2) / (real(one.n) * p * (1 - p));
    }
    return sum;
}

std::size_t worstOf(const std::vector<PatternGroup>& groups, const std::vector<std::size_t>& usable)
{
    return *std::min_element(usable.begin(), usable.end(), [&](std::size_t a, std::size_t b) {
        return real(groups[a].items.x) / real(groups[a].items.n)
            < real(groups[b].items.x) / real(groups[b].items.n);
    });
}

void test(ShiftPatternReview& review, const Selection& selection, const GroupOf& groupOf, bool carriesOver)
{
    std::vector<std::size_t> usable;
    std::vector<stats::Tally> tallies;
    stats::Tally whole;
    for (std::size_t i = 0; i < review.groups.size(); ++i) {
        if (review.groups[i].done < fewestInGroup || review.groups[i].items.n == 0)
            continue;
        usable.push_back(i);
        tallies.push_back(review.groups[i].items);
        whole += review.groups[i].items;
    }
    if (usable.size() < 2 || whole.x == 0 || whole.x == whole.n) {
        review.why = usable.size() < 2 ? CannotSay::TooFew : CannotSay::NoSpread;
        return;
    }
    std::vector<GroupedTally> rounds;
    for (const ChosenRound& round : selection.rounds())
        rounds.push_back({.group = groupOf(*round.shift), .tally = round.items});
    const Spread spread = spreadOf(rounds);
    PatternTest result{.chiSquare = pearson(tallies), .df = static_cast<int>(usable.size()) - 1};
    result.dispersion = spread.dispersion * (carriesOver ? spread.carryOver : 1);
    result.p = stats::chiSquareUpper(result.chiSquare / result.dispersion, result.df);
    result.worst = worstOf(review.groups, usable);
    const stats::Tally worst = review.groups[result.worst].items;
    result.others = {.x = whole.x - worst.x, .n = whole.n - worst.n};
    const std::vector<stats::Tally> pair{worst, result.others};
    const double p = stats::chiSquareUpper(pearson(pair) / result.dispersion, 1);
    result.worstP = std::min(1.0, p * static_cast<double>(usable.size()));
    const double level = selection.options.strictLevel;
    result.differs = result.p <= level && result.worstP <= level;
    review.test = result;
}

}

ShiftPatternReview byShift(const Selection& selection)
{
    ShiftPatternReview review;
    for (const std::string& shift : selection.shifts)
        review.groups.push_back({.shift = shift});
    const GroupOf groupOf = [&](const Shift& shift) {
        const auto at = std::find(selection.shifts.begin(), selection.shifts.end(), shift.code);
        return static_cast<std::size_t>(at - selection.shifts.begin());
    };
    fill(review.groups, selection, groupOf);
    test(review, selection, groupOf, false);
    return review;
}

ShiftPatternReview byWeekday(const Selection& selection)
{
    ShiftPatternReview review;
    for (int day = 1; day <= 7; ++day)
        review.groups.push_back({.shift = {}, .weekday = day});
    const GroupOf groupOf = [](const Shift& shift) {
        return static_cast<std::size_t>(
            std::chrono::weekday(std::chrono::sys_days(shift.date)).iso_encoding() - 1);
    };
    fill(review.groups, selection, groupOf);
    test(review, selection, groupOf, true);
    return review;
}

}
