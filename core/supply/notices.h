// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/birthcover.h"
#include "core/supply/equipmentregister.h"
#include "core/supply/fridgereading.h"

namespace cradlepost {

/** In order of weight: of two that fell due together the first here stands first. */
enum class NoticeCode {
    BirthWithoutWarmer, ///< subject: birth; value: code of WarmPlace
    BirthWithoutKit, ///< subject: birth
    SwitchOnWarmer, ///< subject: equipment; at: the latest moment
    WarmerOffTooSoon, ///< subject: equipment; value: birth
    GapOverdue, ///< subject: checklist item; value: nth
    RoundDue, ///< subject: shift code; value: slot
    RoundOverdue,
    FridgeReadingDue, ///< subject: equipment
    UpkeepOverdue, ///< subject: equipment; value: code of UpkeepKind
    WarmerReady, ///< subject: equipment
};

/** Something that is due at `now`. */
struct Notice
{
    NoticeCode code = NoticeCode::RoundDue;
    std::string key; ///< the same while it is the same thing, so that it is shown once
    Instant at; ///< when it fell due
    std::string subject;
    std::string value;
    bool operator==(const Notice&) const = default;
};

struct OpenGapDue
{
    std::string item;
    int nth = 1;
    Instant due;
};

/** A shift whose round is not finished yet. */
struct RoundWanted
{
    std::string shift; ///< code
    std::int64_t slot = 0;
    Instant from; ///< due from
    Instant until; ///< on time until
};

/** What is known at `now`. */
struct NoticeInput
{
    Instant now;
    std::vector<BirthCover> births;
    std::vector<WarmerStanding> warmers;
    std::vector<OffTooSoon> offTooSoon;
    std::vector<OpenGapDue> gaps;
    std::optional<RoundWanted> round;
    std::map<std::string, ReadingSlot> fridges; ///< by fridge: the reading that is due
    std::vector<UpkeepDue> upkeep;
    std::chrono::minutes birthNear{120}; ///< a birth is near from so long before it
    std::chrono::minutes switchOnAhead{15}; ///< "switch on" is said so long before the latest moment
    std::chrono::minutes readyFor{15}; ///< how long "ready" is news
};

/** What is due now, first due first. Pure: the same input gives the same notices and keys. */
std::vector<Notice> noticesAt(const NoticeInput& input, const TimeZone& zone);

const char* codeName(NoticeCode code);

}
