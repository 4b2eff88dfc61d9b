// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/roundrecord.h"

namespace cradlepost {

/** The life of one gap: from the round that found it to the one that found it met again. */
struct Gap
{
    std::string unit;
    std::string item;
    int nth = 1; ///< the how-many-eth gap of this item in this unit: nth - 1 came before
    Severity severity = Severity::Minor;
    Reason reason; ///< as last found
    Slot openedSlot = 0;
    Instant openedAt;
    RecordId openedBy;
    int found = 1; ///< rounds and checks that found it, the first one included
    Instant lastFound;
    std::optional<Slot> closedSlot;
    std::optional<Instant> closedAt;
    std::optional<RecordId> closedBy;
    bool closedAsNotApplicable = false; ///< closed because the item no longer applies, not because it was mended
    std::string owner; ///< initials or role; empty: nobody yet
    Instant due;
    std::string remark; ///< the latest one; never about a patient
    bool operator==(const Gap&) const = default;

    [[nodiscard]] bool isOpen() const { return !closedAt; }
};

/** What one round says of one item. */
struct Finding
{
    std::string unit;
    std::string item;
    Outcome outcome = Outcome::NotChecked;
    Severity severity = Severity::Minor;
    Reason reason; ///< for a gap
    Slot slot = 0;
    Instant at; ///< finish of the round
    Instant shiftEnds;
    RecordId record;
};

/** How long a gap may last by severity, counted from when it was found. Common practice, no source. */
struct DueTimes
{
    // A critical gap is due at the end of the shift that found it.
    std::chrono::hours major {24};
    std::chrono::hours minor {24 * 7};
};

/** When a gap found like this is due. */
Instant dueFor(const Finding& finding, const DueTimes& times = {});

/**
 * Carries one finding into the life of an item's gaps. `open`: the open gap, if there is one; `before`: how many
 * the item has had so far, the open one included. Returns the gap to write: a new one, the open one gone on, or
 * the open one closed; nothing when the finding changes nothing (met without a gap, or not checked).
 */
std::optional<Gap> carry(const std::optional<Gap>& open, int before, const Finding& finding);

}
