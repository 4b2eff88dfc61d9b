// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/fridgereading.h"
#include "core/supply/stockbook.h"

namespace cradlepost {

/** Limits of a fridge and its alarms; all of them settings of the site. */
struct ColdChainRules
{
    Decimal low{2000}; ///< 2 to 8 degrees C: WHO, Immunization in Practice, module 2
    Decimal high{8000};
    Decimal frost{-500}; ///< at or below for frostFor: WHO PQS E006, low alarm
    std::chrono::minutes frostFor{60};
    std::chrono::minutes heatFor{std::chrono::hours(10)}; ///< above `high`: WHO PQS E006/TR06 (from memory)
};

enum class ExcursionKind {
    TooWarm, ///< above high
    TooCold, ///< below low
    Frost, ///< at or below frost; it is TooCold as well
};

enum class AlarmState {
    None, ///< too short for an alarm, whatever happened between the readings; or this kind has no alarm
    Possible, ///< between the readings it may have lasted long enough
    Reached, ///< it lasted so long between readings that all lie outside
};

/** A stretch outside the limits, as far as readings can tell. */
struct Excursion
{
    ExcursionKind kind = ExcursionKind::TooWarm;
    Instant first; ///< first reading that shows it
    Instant last; ///< last reading that shows it
    std::optional<Instant> notBefore; ///< last good reading before; none: nobody had read it before
    Instant notAfter; ///< first good reading after; while none is there, the end of the stretch looked at
    Decimal worst; ///< furthest reading, kept extremes included
    AlarmState alarm = AlarmState::None;
    bool open = true; ///< no good reading yet
    bool operator==(const Excursion&) const = default;

    /** At least: from the first reading outside to the last. */
    [[nodiscard]] std::chrono::minutes atLeast() const;
    /** At most: from the good reading before to the good one after; none when there is no bound. */
    [[nodiscard]] std::optional<std::chrono::minutes> atMost() const;
};

/**
 * Excursions of one fridge until `now`, in order of time. A kept extreme outside the limits with a current
 * reading inside shows an excursion since the reading before, of which nothing but its longest length is
 * known.
 */
std::vector<Excursion> excursionsOf(std::vector<FridgeReading> readings, const std::string& fridge,
    Instant now, const ColdChainRules& rules = {});

/** Minutes above and below over all excursions; what has no bound has no longest time. Frost counts as cold
 * once. */
struct OutsideTime
{
    std::chrono::minutes warmAtLeast{0};
    std::optional<std::chrono::minutes> warmAtMost{std::chrono::minutes(0)};
    std::chrono::minutes coldAtLeast{0};
    std::optional<std::chrono::minutes> coldAtMost{std::chrono::minutes(0)};
    bool operator==(const OutsideTime&) const = default;
};
OutsideTime outsideTime(const std::vector<Excursion>& excursions);

struct KineticTemperature
{
    double celsius = 0;
    double covered = 0; ///< share of the stretch that a reading stands for
};

/**
 * Mean kinetic temperature of one fridge over [from, to): each reading stands until the next one, but for
 * `longest` at most. An information: it excuses no excursion. Undefined without a reading in the stretch.
 * Formula and source: stats::meanKineticTemperature.
 */
Result<KineticTemperature> kineticTemperature(std::vector<FridgeReading> readings, const std::string& fridge,
    Instant from, Instant to, std::chrono::minutes longest = std::chrono::hours(24));

/** What to do with what was inside; the local protocol decides, the program releases nothing. */
enum class ColdChainAdvice {
    None,
    CheckAgain, ///< outside, no alarm yet: read again soon
    HoldAndAsk, ///< set apart, label "do not use", ask who is responsible
};

struct ColdChainVerdict
{
    ColdChainAdvice advice = ColdChainAdvice::None;
    bool frost = false; ///< what frost harms is in question
    bool operator==(const ColdChainVerdict&) const = default;
};

/** Any alarm reached or possible asks to hold; other excursions ask to check again. */
ColdChainVerdict verdictOf(const std::vector<Excursion>& excursions);

struct LotInside
{
    std::string item;
    LotKey lot;
    std::int64_t pieces = 0; ///< there at the start and come in since
    bool harmedByFrost = false;
    bool operator==(const LotInside&) const = default;
};

/** Lots of the items kept in that fridge which were inside for any part of the excursion at its longest. */
std::vector<LotInside> lotsInside(const std::vector<Recorded<StockMovement>>& movements,
    const std::vector<StockItem>& items, const std::string& fridge, const Excursion& excursion,
    const TimeZone& zone);

const char* codeName(ExcursionKind kind);
const char* codeName(AlarmState state);
const char* codeName(ColdChainAdvice advice);

}
