// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/warmerclock.h"

#include <span>

namespace cradlepost {

/** Whether a baby will find a warm place. */
enum class WarmPlace {
    Ready, ///< warm now
    Warming, ///< on, and warm by then
    SwitchOn, ///< off: switch on by switchOnBy at the latest
    Late, ///< cannot be warm by then: warm at readyAt if switched on now
    None, ///< no warmer is free
};

struct BabyPlace
{
    WarmPlace place = WarmPlace::None;
    std::string device; ///< empty for None
    std::optional<Instant> readyAt; ///< Warming and Late
    std::optional<Instant> switchOnBy; ///< SwitchOn and, when off, Late
    bool operator==(const BabyPlace&) const = default;
};

struct BirthCover
{
    ExpectedBirth birth;
    std::vector<BabyPlace> places; ///< one a baby
    bool kit = false; ///< a made-up kit is left for it
    bool operator==(const BirthCover&) const = default;
};

struct CoverRules
{
    std::chrono::minutes warmUp = usualWarmUp;
    std::chrono::minutes occupied{60}; ///< a baby keeps its place so long; common practice, no source
};

/**
 * Gives the warmers and kits out to the births in the order in which they are expected, one place a baby, one
 * kit a birth. A birth that is overdue is taken as due now. Of the warmers free by then the first that will
 * be warm is taken, and one that is on before one that is off.
 */
std::vector<BirthCover> coverBirths(const std::vector<ExpectedBirth>& births,
    std::span<const WarmerStanding> warmers, std::int64_t kits, Instant now, const CoverRules& rules = {});

const char* codeName(WarmPlace place);

}
