// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/recorded.h"
#include "core/supply/stockitem.h"

#include "core/base/calendar.h"

namespace cradlepost {

enum class MovementKind {
    Receipt, ///< from the store
    Issue, ///< used for care
    Wastage, ///< lost before it was used
    ExpiredRemoved, ///< taken off the shelf past its last day
    CountCorrection, ///< the shelf was counted: `quantity` is what is there
    TransferOut, ///< to another unit, or into a kit
    TransferIn, ///< from another unit, or a kit made up
};

enum class MovementReason {
    None,
    Damaged,
    Opened, ///< opened and not used up
    ColdChain, ///< too warm or frozen
    Lost,
    NotWrittenDown, ///< a movement was forgotten
    CountedWrong, ///< an earlier count was wrong
    NotKnown,
};

/** What a count was of. */
enum class CountScope {
    Everything, ///< all of the item: neither lot nor date is named
    OneDate, ///< the lots of one date, or all without a date; no lot is named
    OneLot, ///< the lot of exactly this number and date, either of which may be none
};

/** One change of the shelf. The body of a `stock` record. */
struct StockMovement
{
    std::string item;
    MovementKind kind = MovementKind::Receipt;
    Instant at; ///< when it happened
    std::int64_t quantity = 0; ///< 1..mostPieces; for a count correction 0..mostPieces
    std::string lot; ///< number; empty when not known, and for going out when any will do
    std::optional<Date> expiry; ///< last day of use
    MovementReason reason = MovementReason::None; ///< wastage and count corrections have one
    CountScope scope = CountScope::Everything; ///< of a count correction
    std::string counterpart; ///< of a transfer: the other unit or kit; may be empty
    bool operator==(const StockMovement&) const = default;
};

inline constexpr std::size_t maxLotLength = 40;

bool goesIn(MovementKind kind);
bool goesOut(MovementKind kind);

Result<void> checkMovement(const StockMovement& movement);
Json toBody(const StockMovement& movement);
Result<StockMovement> stockMovementFromBody(const Json& body);

const char* codeName(MovementKind kind);
const char* codeName(MovementReason reason);
const char* codeName(CountScope scope);
std::optional<MovementKind> movementKindFromCode(std::string_view code);
std::optional<MovementReason> movementReasonFromCode(std::string_view code);
std::optional<CountScope> countScopeFromCode(std::string_view code);

}
