// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/shiftview.h"
#include "core/supply/availability.h"
#include "core/supply/bookagainstround.h"
#include "core/supply/coldchain.h"
#include "core/supply/instrumentcheck.h"
#include "core/supply/kits.h"
#include "core/supply/rundown.h"
#include "core/supply/stockcover.h"
#include "core/supply/stockdays.h"

namespace cradlepost {

/** Settings of the site. */
struct StoresRules
{
    double service = 0.95; ///< chance of no stock-out until the delivery that an order aims at
    int lookBack = 90; ///< days of use that the need is taken from
    int deliveryEvery = 30; ///< days between deliveries of an item that came in on fewer than three days
    int fridgeDays = 60; ///< days of excursions and kinetic temperature that are shown
    int testDays = 30; ///< days of function tests that are counted
    int upDays = 365; ///< days over which a device's availability is reckoned
};

/** One item of the shelf now. */
struct ShelfRow
{
    StockItem item;
    ItemBook book;
    std::int64_t usable = 0;
    StockStatus status = StockStatus::AtPar;
    Expiring expiring;
    Date nextDelivery; ///< after today, reckoned from the days on which it came in
    std::optional<double> perDay; ///< pieces, over the days that did not end empty; none without any day
    std::optional<Cover> cover; ///< none while nothing is used
    std::optional<double> lasts; ///< chance that it is enough until the next delivery
    double service = 0.95; ///< chance to have enough until the delivery that the order aims at
    std::int64_t reorderAt = 0; ///< pieces: order when it falls to this, at that service; 0: not known
    std::int64_t order = 0; ///< pieces to order now, whole packs; 0: nothing
    RunDown runDown; ///< at perDay
};

struct KitRow
{
    KitPlan plan;
    KitsPossible possible; ///< from the parts on the shelf
};

/** What the shift rounds found of the checklist items that a device serves. */
struct FunctionTests
{
    int passed = 0;
    int failed = 0;
    std::optional<Instant> lastFailed;
    bool operator==(const FunctionTests&) const = default;
};

/** A cylinder as a round read it last. */
struct CylinderStand
{
    Decimal gauge;
    std::string pressure; ///< unit of the gauge
    Decimal flow; ///< L/min
    std::int64_t minutes = 0; ///< at that flow down to the safe residual: an estimate
    std::chrono::minutes wanted{0};
    Decimal changeAt; ///< whole units of the gauge at which it still gives what is wanted
    Instant at; ///< when it was read
};

struct DeviceRow
{
    Equipment device;
    EquipmentState state = EquipmentState::InUse;
    Instant since; ///< in that state
    std::vector<UpkeepDue> upkeep; ///< first due first
    std::optional<Dated<InstrumentCheck>> check; ///< of a scale or thermometer, the last one
    FunctionTests tests; ///< over testDays
    DeviceAvailability up; ///< over upDays
    std::optional<CylinderStand> cylinder; ///< of a device that serves a cylinder's item
    std::optional<std::string> spare; ///< id of what can step in; asked for what is in use or out
};

struct FridgeRow
{
    Equipment device;
    std::optional<FridgeReading> last;
    std::vector<Excursion> excursions; ///< of the last fridgeDays, in order of time
    ColdChainVerdict verdict; ///< of the excursions that are open
    std::optional<ReadingSlot> due;
    int missed = 0; ///< readings left out over the last fridgeDays, from the first reading on
    std::optional<KineticTemperature> kinetic; ///< over the last fridgeDays
    std::vector<LotInside> inside; ///< of the last excursion
};

/** All that the shelves, devices and fridges of one unit say at one moment. */
struct StoresView
{
    Date today;
    int shiftsPerDay = 2;
    std::vector<ShelfRow> shelves; ///< what needs an order first, then by cover, then by name
    std::vector<KitRow> kits;
    std::vector<DeviceRow> devices; ///< out for repair first, then by what is due
    std::vector<FridgeRow> fridges;
    std::vector<BookDifference> differences; ///< the last round of the shift against the book at that time
};

/** `shift`: the same unit at `now`. */
Result<StoresView> storesView(
    const Store& store, const ShiftView& shift, Instant now, const StoresRules& rules = {});

}
