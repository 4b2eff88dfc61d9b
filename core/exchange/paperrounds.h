// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/papersheet.h"
#include "core/store/store.h"

namespace cradlepost {

/** How long after the end of its shift a round on paper may have been finished. Common practice, no source.
 */
inline constexpr std::chrono::hours paperGrace{3};

/** One row of a sheet, as the round that it becomes. */
struct PaperRound
{
    int line = 0;
    WalkedRound walked;
};

/** A sheet read, before anything is written. */
struct PaperPreview
{
    std::vector<PaperRound> rounds; ///< by shift; those whose row has no fault
    std::vector<PaperFault> faults; ///< all of them, by line and column, at most maxPaperFaults
    std::vector<PaperFault> warnings; ///< nothing that keeps it from being taken in
    [[nodiscard]] bool isSound() const { return faults.empty() && !rounds.empty(); }
};

/**
 * Reads a sheet as paperTemplate makes it, each row by the shifts and the checklist that were in force on its
 * day, judged like a round that is walked here. Fails only when the unit is not known or the store cannot be
 * read.
 */
Result<PaperPreview> readPaperRounds(
    const Store& store, const std::string& unit, std::string_view sheet, Instant now);

/** Writes the rounds of a sound preview, all or none. The times of their answers are not known. */
Result<std::vector<RecordId>> importPaperRounds(
    Store& store, const std::string& unit, const PaperPreview& preview);

}
