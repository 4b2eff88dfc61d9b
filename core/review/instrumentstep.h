// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/selection.h"

namespace cradlepost {

/** The rule of a measure item in a checklist of the history, the latest that has it; nullptr: none. */
const MeasureRule* measureRuleOf(const UnitHistory& history, std::string_view item);

/** A reading of one item with its round. */
struct RoundReading
{
    const ChosenRound* round = nullptr;
    Decimal value;
};

/** All readings of an item in these rounds, in order of time. */
std::vector<RoundReading> readingsOf(
    const UnitHistory& history, std::span<const ChosenRound> rounds, std::string_view item);

/**
 * As fine as the instrument shows: the largest of 1, 2, 5 and 10 units of the last decimal that all readings
 * are multiples of. An instrument that reads in halves cannot be told from readings that are all rounded.
 */
Decimal stepOf(std::span<const RoundReading> readings, int decimals);

}
