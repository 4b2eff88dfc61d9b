// SPDX-License-Identifier: MIT
#include "core/gap/escalation.h"

#include <algorithm>

namespace cradlepost {

Escalation escalationOf(const Gap& gap, Instant now, std::span<const EscalationLevel> levels)
{
    Escalation out;
    if (!gap.isOpen() || !gap.mendedBy.empty())
        return out;
    const std::chrono::milliseconds whole
        = std::max<std::chrono::milliseconds>(gap.due - gap.openedAt, std::chrono::hours(1));
    for (const EscalationLevel& level : levels) {
        const Instant at = gap.openedAt + whole * level.percent / 100;
        if (at <= now) {
            out.now = level.to;
            continue;
        }
        out.next = level.to;
        out.nextAt = at;
        break;
    }
    return out;
}

const char* codeName(EscalationTo to)
{
    switch (to) {
    case EscalationTo::Owner:
        return "owner";
    case EscalationTo::InCharge:
        return "in-charge";
    case EscalationTo::QualityOfficer:
        return "quality-officer";
    case EscalationTo::District:
        break;
    }
    return "district";
}

std::optional<EscalationTo> escalationToFromCode(std::string_view code)
{
    for (const EscalationTo to :
        {EscalationTo::Owner, EscalationTo::InCharge, EscalationTo::QualityOfficer, EscalationTo::District}) {
        if (code == codeName(to))
            return to;
    }
    return std::nullopt;
}

}
