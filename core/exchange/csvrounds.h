// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"
#include "core/store/store.h"

namespace cradlepost {

/** "station/7": how records name each other in the plain tables. */
std::string recordName(const RecordId& id);

// Cells of the tables of that name, in the order of the dictionary. `saved`: the round of `row`, whole.
std::vector<std::string> roundCells(const std::string& unit, const RoundRow& row, const SavedRound& saved);
/** One row an item; of a re-check or spot check only those that were looked at. */
std::vector<std::vector<std::string>> answerCells(const Checklist& checklist, const SavedRound& saved);
/** One row a reading. */
std::vector<std::vector<std::string>> readingCells(
    const std::string& unit, const Checklist& checklist, const SavedRound& saved);

}
