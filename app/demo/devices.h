// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/random.h"
#include "app/demo/story.h"
#include "core/store/store.h"

namespace cradlepost::demo {

/** The register of devices of one unit and the sheet on the door of its fridge, the last two months of it. */
class Devices
{
public:
    /** All must outlive it. */
    Devices(
        Store& store, FixedClock& clock, const UnitPlan& plan, const Stories& stories, const TimeZone& zone);

    /** A shift begins. */
    Result<void> pass(const Shift& shift);
    /** Writes up the readings that are left; done before `until`. */
    Result<void> close(Instant until);

private:
    Result<void> addAll(Instant at);
    Result<void> breakAndMend(const Shift& shift);
    Result<void> takeOutNow(const std::string& device, Instant at);
    Result<void> note(const std::vector<EquipmentEvent>& events, Instant at);
    void readFridge(const Shift& shift);

    Store& m_store;
    FixedClock& m_clock;
    const UnitPlan& m_plan;
    const Stories& m_stories;
    const TimeZone& m_zone;
    Random m_random;
    std::string m_actor;
    bool m_added = false;
    Date m_written;
    std::vector<FridgeReading> m_waiting;
};

}
