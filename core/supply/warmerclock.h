// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/birthboard.h"

namespace cradlepost {

/** On at least so long before a birth. Common practice, no source; 20 to 30 minutes are taught as well. */
inline constexpr std::chrono::minutes usualWarmUp{30};

/** A warmer switched on or off. The body of a `warmer` record. */
struct WarmerSwitch
{
    std::string device; ///< equipment id
    Instant at;
    bool on = false;
    bool operator==(const WarmerSwitch&) const = default;
};

Result<void> checkSwitch(const WarmerSwitch& event);
Json toBody(const WarmerSwitch& event);
Result<WarmerSwitch> warmerSwitchFromBody(const Json& body);

/** One stretch of a warmer being on. */
struct WarmerRun
{
    std::string device;
    Instant on;
    std::optional<Instant> off; ///< none: still on
    bool operator==(const WarmerRun&) const = default;
};

/** Runs by device and time. Switching on what is on changes nothing: its time counts from the first. */
std::vector<WarmerRun> foldWarmers(std::vector<Recorded<WarmerSwitch>> events);

enum class WarmerState { Off, Warming, Ready };

struct WarmerStanding
{
    std::string device;
    WarmerState state = WarmerState::Off;
    std::optional<Instant> onSince; ///< while on
    std::optional<Instant> readyAt; ///< while on: when it is or was ready
    std::chrono::minutes onFor{0}; ///< whole minutes
    bool operator==(const WarmerStanding&) const = default;
};

/** `device` at `now`; a warmer that nobody ever switched on is off. `warmUp` is the site's limit. */
WarmerStanding warmerAt(const std::vector<WarmerRun>& runs, const std::string& device, Instant now,
    std::chrono::minutes warmUp = usualWarmUp);

/** A warmer that went off although a birth was near, is off still, and the birth is still to come. */
struct OffTooSoon
{
    std::string device;
    Instant off;
    std::string birth; ///< the next one that was expected then
    Instant expected;
    bool operator==(const OffTooSoon&) const = default;
};

/** `before`: how far ahead a birth keeps a warmer on, 4 hours (common practice, no source). */
std::vector<OffTooSoon> offTooSoon(const std::vector<WarmerRun>& runs, const std::vector<BirthSpan>& board,
    Instant now, std::chrono::minutes before = std::chrono::hours(4));

const char* codeName(WarmerState state);

}
