// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/equipmentregister.h"

namespace cradlepost {

/** How a device or a group of them did over a stretch of time. */
struct DeviceAvailability
{
    std::chrono::milliseconds up{0}; ///< in use or spare
    std::chrono::milliseconds down{0}; ///< out for repair
    int failures = 0; ///< went out broken or failed its test; planned service is none
    int repairs = 0; ///< came back within the stretch after a failure
    std::chrono::milliseconds repairTime{0}; ///< of those repairs, from when they went out
    bool operator==(const DeviceAvailability&) const = default;

    /** up / (up + down); none when the device was not there at all. */
    [[nodiscard]] std::optional<double> share() const;
    /** up / failures; none without a failure: then it is longer than `up`. */
    [[nodiscard]] std::optional<std::chrono::milliseconds> meanTimeBetweenFailures() const;
    /** repairTime / repairs; none without a repair. */
    [[nodiscard]] std::optional<std::chrono::milliseconds> meanTimeToRepair() const;
    DeviceAvailability& operator+=(const DeviceAvailability& other);
};

/**
 * From the record of states in [from, to). Time before a device was added and after it was retired counts on
 * neither side. Terms as IEC 60050-192 (from memory): operational availability is the mean up time over the
 * sum of mean up and mean down time.
 */
DeviceAvailability availabilityOf(const EquipmentStanding& standing, Instant from, Instant to);

}
