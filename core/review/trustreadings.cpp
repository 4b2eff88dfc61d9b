// SPDX-License-Identifier: MIT
#include "core/review/trustreadings.h"

#include "core/review/instrumentstep.h"
#include "core/stats/orderstats.h"
#include "core/stats/proportion.h"
#include "core/stats/repeats.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>

namespace cradlepost {

namespace {

constexpr int fives = 5; // steps
constexpr double leastWidth = 8; // steps: within fewer, honest readings may well heap on one multiple of five
constexpr std::int64_t fewestForFives = 25; // five expected on fives
constexpr double roundedAbove = 0.3; // one in five by chance, half as much again: our own
constexpr std::int64_t fewestForSame = 20; // our own

/** Width of the middle nine tenths of the readings, in steps. */
double stepsWide(const std::vector<RoundReading>& readings, Decimal step)
{
    std::vector<double> steps;
    for (const RoundReading& reading : readings)
        steps.push_back(
            static_cast<double>(reading.value.thousandths) / static_cast<double>(step.thousandths));
    return *stats::quantile(steps, 0.95) - *stats::quantile(steps, 0.05);
}

void countDigits(TrustReading& trust, const std::vector<RoundReading>& readings)
{
    std::array<std::int64_t, 10> digits{};
    for (const RoundReading& reading : readings)
        ++digits[static_cast<std::size_t>(std::abs(reading.value.thousandths) / trust.step.thousandths % 10)];
    if (const auto preference = stats::digitPreference(digits))
        trust.digits = *preference;
}

using ByValue = std::map<Decimal, std::int64_t>;

bool isOnFive(Decimal value, Decimal step) { return value.thousandths % (fives * step.thousandths) == 0; }

/**
 * Readings on fives without those of the commonest value: honest readings of a steady thing heap on one
 * value, and that may be a multiple of five (a scale that shows 0).
 */
stats::Tally besideTheHeap(const ByValue& values, Decimal step)
{
    const auto heap = std::max_element(
        values.begin(), values.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    stats::Tally tally;
    for (auto one = values.begin(); one != values.end(); ++one) {
        if (one != heap)
            tally += {.x = isOnFive(one->first, step) ? one->second : 0, .n = one->second};
    }
    return tally;
}

bool isFarAbove(stats::Tally onFives)
{
    const auto strict = stats::wilson(onFives, 0.999);
    return strict && strict->low > roundedAbove;
}

void look(TrustReading& trust, const std::vector<RoundReading>& readings)
{
    std::int64_t onFives = 0;
    ByValue values;
    std::vector<std::string> texts;
    for (const RoundReading& reading : readings) {
        onFives += isOnFive(reading.value, trust.step) ? 1 : 0;
        ++values[reading.value];
        texts.push_back(reading.value.toString());
    }
    trust.onFives = shareOf({.x = onFives, .n = trust.n});
    trust.different = static_cast<std::int64_t>(values.size());
    trust.longestRun = stats::longestIdenticalRun(texts);
    const double wide = stepsWide(readings, trust.step);
    if (trust.n < fewestForFives)
        trust.whyFives = CannotSay::TooFew;
    else if (wide < leastWidth)
        trust.whyFives = CannotSay::NoSpread;
    else
        trust.rounded = isFarAbove(trust.onFives.tally) && isFarAbove(besideTheHeap(values, trust.step));
    if (wide >= 2 * fives)
        countDigits(trust, readings);
}

}

std::vector<TrustReading> trustReadings(const Selection& selection)
{
    std::vector<TrustReading> all;
    for (std::size_t item = 0; item < selection.items.size(); ++item) {
        const std::string& id = selection.items[item].id;
        const MeasureRule* rule = measureRuleOf(*selection.history, id);
        if (rule == nullptr)
            continue;
        const auto readings = readingsOf(*selection.history, selection.rounds(), id);
        if (readings.empty())
            continue;
        const auto longer = readingsOf(*selection.history, selection.all, id);
        TrustReading trust{.item = item, .n = static_cast<std::int64_t>(readings.size())};
        trust.step = stepOf(longer, rule->decimals);
        look(trust, readings);
        const bool variedBefore = std::any_of(longer.begin(), longer.end(),
            [&](const RoundReading& reading) { return reading.value != longer.front().value; });
        trust.neverVaries = trust.different == 1 && trust.n >= fewestForSame && variedBefore;
        all.push_back(std::move(trust));
    }
    return all;
}

}
