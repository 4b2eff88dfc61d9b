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
    std::string measure = {}; ///< what helps until it is mended; never about a patient
    std::string mendedBy = {}; ///< who says that it is mended; a look at the item closes it
    std::optional<Instant> mendedAt = {};
    std::string verifiedBy = {}; ///< who looked at the mended thing: never the one who mended it
    std::optional<Instant> verifiedAt = {};
    int reopened = 0; ///< how often it was said to be mended and was not
    bool operator==(const Gap&) const = default;

    [[nodiscard]] bool isOpen() const { return !closedAt; }
    /** Critical and mended: a second person has to look. */
    [[nodiscard]] bool wantsVerifying() const
    {
        return severity == Severity::Critical && !mendedBy.empty() && verifiedBy.empty();
    }
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

/** Not mended after all. */
Gap reopened(Gap gap);

/**
 * Carries one finding into the life of an item's gaps. `open`: the open gap, if there is one; `before`: how many
 * the item has had so far, the open one included. Returns the gap to write: a new one, the open one gone on, or
 * the open one closed; nothing when the finding changes nothing (met without a gap, or not checked). One that is
 * found graver than before is due no later than a new one of that severity; one that was said to be mended and is
 * found again is reopened.
 */
std::optional<Gap> carry(const std::optional<Gap>& open, int before, const Finding& finding);

}
