// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/base/decimal.h"
#include "core/base/json.h"

namespace cradlepost {

/** Largest number of pieces in one entry. */
inline constexpr std::int64_t mostPieces = 1'000'000;

/** Pieces that a shelf should hold. 0 <= emergency <= minimum <= par. */
struct StockLevels
{
    std::int64_t par = 0; ///< fill up to this
    std::int64_t minimum = 0; ///< order when it falls to this
    std::int64_t emergency = 0; ///< the balance should never go under it
    bool operator==(const StockLevels&) const = default;
};

/** A thing on the ward's shelf. The body of a `stock` record of kind "item"; the latest one holds. */
struct StockItem
{
    std::string id; ///< [a-z0-9-]{1,40}
    std::string name; ///< as the ward calls it, at most 60 characters
    Instant at; ///< when it was set up or changed
    StockLevels levels;
    bool expires = false; ///< lots carry a last day of use
    std::string fridge; ///< id of the fridge that it is kept in; empty: not in a fridge
    bool harmedByFrost = false; ///< freeze-sensitive, as liquid vaccines with an adjuvant are
    std::int64_t packSize = 1; ///< pieces in what the store hands out
    Decimal perBirth; ///< pieces used for one birth; 0 when births do not drive it
    int deliveryDays = 0; ///< between deliveries, 1..366; 0: as the record of what came in tells
    Decimal service; ///< the chance to have enough until the delivery, 0.5..0.999; 0: the site's
    std::vector<std::string> serves; ///< checklist items that it keeps met, sorted
    bool retired = false;
    bool operator==(const StockItem&) const = default;
};

/** How what is there stands to the levels. */
enum class StockStatus { Out, BelowEmergency, BelowMinimum, BelowPar, AtPar };

/** `usable` counts what is in date only. At the minimum itself it is time to order: BelowMinimum. */
StockStatus statusOf(const StockLevels& levels, std::int64_t usable);
const char* codeName(StockStatus status);
std::optional<StockStatus> stockStatusFromCode(std::string_view code);

Result<void> checkItem(const StockItem& item);
Json toBody(const StockItem& item);
Result<StockItem> stockItemFromBody(const Json& body);
/** Whether a `stock` body sets up an item; else it is a movement. */
bool isItemBody(const Json& body);

}
