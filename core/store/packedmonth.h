// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/roundtable.h"

#include <limits>

namespace cradlepost {

/** A shift round as reviews read it. Its texts lie in PackedMonth::names, by position. */
struct PackedRound
{
    Slot slot = 0;
    std::size_t station = 0;
    std::int64_t seq = 0;
    std::size_t checklist = 0;
    int version = 1;
    std::string outcomes;
    Readiness state = Readiness::NotReady;
    int met = 0;
    int applicable = 0;
    int index = 0;
    Instant started;
    Instant finished;
    Instant recorded;
    bool fromPaper = false;
    int amended = 0;
    std::optional<Instant> amendedAt; ///< when amended
    std::size_t actor = 0;
    std::vector<ReadingFact> readings;
    bool operator==(const PackedRound&) const = default;
};

/** The shift rounds of one unit and month, by slot. */
struct PackedMonth
{
    std::vector<std::string> names;
    std::vector<PackedRound> rounds;
    bool operator==(const PackedMonth&) const = default;

    /** Position of a name; added when it is new. */
    std::size_t nameOf(std::string_view text);
};

/**
 * Some 40 bytes a round: whole numbers in groups of seven bits, signed ones folded, times as differences, of the
 * outcomes those that are not met. Depends on the rounds only, not on the order of `names`.
 */
std::vector<unsigned char> packMonth(const PackedMonth& month);
/** Outcomes and readings of the rounds before `wholeFrom` are left out: they are most of the work. Throws Damaged. */
PackedMonth unpackMonth(
    std::span<const unsigned char> bytes, Slot wholeFrom = std::numeric_limits<Slot>::min());

}
