// SPDX-License-Identifier: MIT
#include "core/gap/gap.h"

#include <algorithm>

namespace cradlepost {

Instant dueFor(const Finding& finding, const DueTimes& times)
{
    switch (finding.severity) {
    case Severity::Critical:
        break;
    case Severity::Major:
        return finding.at + times.major;
    case Severity::Minor:
        return finding.at + times.minor;
    }
    return std::max(finding.shiftEnds, finding.at);
}

namespace {

Gap foundAgain(Gap gap, const Finding& finding)
{
    if (finding.severity < gap.severity) // the gravest comes first
        gap.due = std::min(gap.due, dueFor(finding));
    if (gap.mendedAt && finding.at > *gap.mendedAt)
        gap = reopened(std::move(gap));
    gap.reason = finding.reason;
    gap.severity = finding.severity;
    gap.found += 1;
    gap.lastFound = finding.at;
    return gap;
}

}

Gap reopened(Gap gap)
{
    gap.mendedBy.clear();
    gap.mendedAt.reset();
    gap.verifiedBy.clear();
    gap.verifiedAt.reset();
    gap.reopened += 1;
    return gap;
}

std::optional<Gap> carry(const std::optional<Gap>& open, int before, const Finding& finding)
{
    if (finding.outcome == Outcome::NotChecked)
        return std::nullopt;
    if (finding.outcome == Outcome::Gap) {
        if (!open)
            return Gap {.unit = finding.unit,
                .item = finding.item,
                .nth = before + 1,
                .severity = finding.severity,
                .reason = finding.reason,
                .openedSlot = finding.slot,
                .openedAt = finding.at,
                .openedBy = finding.record,
                .found = 1,
                .lastFound = finding.at,
                .closedSlot = std::nullopt,
                .closedAt = std::nullopt,
                .closedBy = std::nullopt,
                .closedAsNotApplicable = false,
                .owner = {},
                .due = dueFor(finding),
                .remark = {}};
        return foundAgain(*open, finding);
    }
    if (!open)
        return std::nullopt;
    Gap gap = *open;
    gap.closedSlot = finding.slot;
    gap.closedAt = finding.at;
    gap.closedBy = finding.record;
    gap.closedAsNotApplicable = finding.outcome == Outcome::DoesNotApply;
    return gap;
}

}
