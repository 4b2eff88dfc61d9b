// SPDX-License-Identifier: MIT
#include "core/review/instrumentstep.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace cradlepost {

const MeasureRule* measureRuleOf(const UnitHistory& history, std::string_view item)
{
    for (auto list = history.lists.rbegin(); list != history.lists.rend(); ++list) {
        const auto position = list->checklist->position(item);
        if (position)
            return std::get_if<MeasureRule>(&list->checklist->item(*position).rule);
    }
    return nullptr;
}

std::vector<RoundReading> readingsOf(
    const UnitHistory& history, std::span<const ChosenRound> rounds, std::string_view item)
{
    std::vector<std::optional<std::size_t>> positions;
    for (const ChecklistInForce& list : history.lists)
        positions.push_back(list.checklist->position(item));
    std::vector<RoundReading> readings;
    for (const ChosenRound& round : rounds) {
        for (const ReadingFact& reading : round.fact->readings) {
            if (positions[round.fact->list] == reading.position)
                readings.push_back({.round = &round, .value = reading.value});
        }
    }
    return readings;
}

Decimal stepOf(std::span<const RoundReading> readings, int decimals)
{
    std::int64_t unit = 1000;
    for (int i = 0; i < std::clamp(decimals, 0, 3); ++i)
        unit /= 10;
    std::int64_t common = 0;
    for (const RoundReading& reading : readings)
        common = std::gcd(common, std::abs(reading.value.thousandths));
    for (const std::int64_t times : {10, 5, 2}) {
        if (common != 0 && common % (times * unit) == 0)
            return {.thousandths = times * unit};
    }
    return {.thousandths = unit};
}

}
