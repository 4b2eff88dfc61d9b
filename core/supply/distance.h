// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/clock.h"
#include "core/base/json.h"

#include <map>

namespace cradlepost {

/** Farthest that a table of distances takes. */
inline constexpr std::int64_t mostMetres = 1'000'000;

/** The way from one unit to another, the same in both directions. The body of a `distance` record of `from`.
 */
struct Distance
{
    std::string from; ///< unit
    std::string to; ///< unit
    std::int64_t metres = 0; ///< 1..mostMetres; 0: there is no way any more
    Instant at; ///< when it was entered: the last one counts
    bool operator==(const Distance&) const = default;
};

/** {"at", "metres", "to"}; the unit of the record is `from`. */
Json toBody(const Distance& distance);
Result<Distance> distanceFromBody(const std::string& from, const Json& body);
Result<void> checkDistance(const Distance& distance);

/** Metres between two units, whichever way it was entered. */
class DistanceTable
{
public:
    /** The later of two entries of one way counts; of the same moment the one given last. */
    void set(const Distance& distance);
    [[nodiscard]] std::optional<std::int64_t> between(const std::string& a, const std::string& b) const;
    /** Ways that are known, each once, by unit. */
    [[nodiscard]] std::vector<Distance> all() const;
    [[nodiscard]] bool empty() const { return all().empty(); }

private:
    std::map<std::pair<std::string, std::string>, Distance> m_ways;
};

/**
 * Reads a table `from,to,km` (RFC 4180, ids of units, kilometres with up to three decimals; an empty km: no
 * way). `at` goes into each. The error names the line: an unknown unit, a way from a unit to itself, no sound
 * number.
 */
Result<std::vector<Distance>> readDistances(
    std::string_view text, const std::vector<std::string>& units, Instant at);

}
