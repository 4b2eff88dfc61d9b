// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/gap.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

namespace cradlepost {

/** Who hears of a gap that lasts. */
enum class EscalationTo { Owner, InCharge, QualityOfficer, District };

struct EscalationLevel
{
    EscalationTo to = EscalationTo::Owner;
    int percent = 100; ///< of the time from when it was found to when it is due
    bool operator==(const EscalationLevel&) const = default;
};

/** The owner at half of the time, the in-charge when it is due, the quality officer at half as long again,
 * the district at twice the time. Common practice, no source (from memory); a unit sets its own. */
inline constexpr std::array usualEscalation{EscalationLevel{EscalationTo::Owner, 50},
    EscalationLevel{EscalationTo::InCharge, 100}, EscalationLevel{EscalationTo::QualityOfficer, 150},
    EscalationLevel{EscalationTo::District, 200}};

struct Escalation
{
    std::optional<EscalationTo> now; ///< the highest level that is reached
    std::optional<EscalationTo> next;
    std::optional<Instant> nextAt;
    bool operator==(const Escalation&) const = default;
};

/** How far an open gap has gone up. A gap whose time is shorter than an hour is counted as one of an hour; a
 * closed one, and one that is said to be mended, stands nowhere. `levels` rise. */
Escalation escalationOf(
    const Gap& gap, Instant now, std::span<const EscalationLevel> levels = usualEscalation);

const char* codeName(EscalationTo to);
std::optional<EscalationTo> escalationToFromCode(std::string_view code);

}
