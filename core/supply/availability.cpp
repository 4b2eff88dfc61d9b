// SPDX-License-Identifier: MIT
#include "core/supply/availability.h"

namespace cradlepost {

namespace {
bool isUp(EquipmentState state) { return state == EquipmentState::InUse || state == EquipmentState::Spare; }

bool isFailure(const StateSpan& span)
{
    return span.state == EquipmentState::OutForRepair
        && (span.reason == MoveReason::Broken || span.reason == MoveReason::FailedTest);
}
}

std::optional<double> DeviceAvailability::share() const
{
    const auto there = up + down;
    if (there.count() <= 0)
        return std::nullopt;
    return static_cast<double>(up.count()) / static_cast<double>(there.count());
}

std::optional<std::chrono::milliseconds> DeviceAvailability::meanTimeBetweenFailures() const
{
    return failures > 0 ? std::optional(up / failures) : std::nullopt;
}

std::optional<std::chrono::milliseconds> DeviceAvailability::meanTimeToRepair() const
{
    return repairs > 0 ? std::optional(repairTime / repairs) : std::nullopt;
}

DeviceAvailability& DeviceAvailability::operator+=(const DeviceAvailability& other)
{
    up += other.up;
    down += other.down;
    failures += other.failures;
    repairs += other.repairs;
    repairTime += other.repairTime;
    return *this;
}

DeviceAvailability availabilityOf(const EquipmentStanding& standing, Instant from, Instant to)
{
    DeviceAvailability out;
    for (std::size_t i = 0; i < standing.spans.size(); ++i) {
        const StateSpan& span = standing.spans[i];
        const bool last = i + 1 == standing.spans.size();
        const Instant ends = last ? to : standing.spans[i + 1].from;
        const auto inside
            = std::max(std::min(ends, to) - std::max(span.from, from), Instant::duration::zero());
        if (isUp(span.state))
            out.up += inside;
        else if (span.state == EquipmentState::OutForRepair)
            out.down += inside;
        if (isFailure(span) && span.from >= from && span.from < to)
            ++out.failures;
        const bool mended = !last && isFailure(span) && isUp(standing.spans[i + 1].state);
        if (mended && ends >= from && ends < to) {
            ++out.repairs;
            out.repairTime += ends - span.from;
        }
    }
    return out;
}

}
