// SPDX-License-Identifier: MIT
#include "core/supply/stockmovement.h"

#include "core/base/refusal.h"
#include "core/checklist/objectreader.h"
#include "core/supply/bodyreader.h"
#include "core/supply/codes.h"

namespace cradlepost {

namespace {
constexpr CodeTable<MovementKind, 7> kindNames{{
    {MovementKind::Receipt, "receipt"},
    {MovementKind::Issue, "issue"},
    {MovementKind::Wastage, "wastage"},
    {MovementKind::ExpiredRemoved, "expired-removed"},
    {MovementKind::CountCorrection, "count-correction"},
    {MovementKind::TransferOut, "transfer-out"},
    {MovementKind::TransferIn, "transfer-in"},
}};

constexpr CodeTable<MovementReason, 8> reasonNames{{
    {MovementReason::None, "none"},
    {MovementReason::Damaged, "damaged"},
    {MovementReason::Opened, "opened"},
    {MovementReason::ColdChain, "cold-chain"},
    {MovementReason::Lost, "lost"},
    {MovementReason::NotWrittenDown, "not-written-down"},
    {MovementReason::CountedWrong, "counted-wrong"},
    {MovementReason::NotKnown, "not-known"},
}};

constexpr CodeTable<CountScope, 3> scopeNames{{
    {CountScope::Everything, "item"},
    {CountScope::OneDate, "date"},
    {CountScope::OneLot, "lot"},
}};

constexpr std::size_t maxCounterpart = 40;

tl::unexpected<Error> wrong(const std::string& what)
{
    return fail(ErrorCode::InvalidArgument, "stock movement: " + what);
}

bool needsReason(MovementKind kind)
{
    return kind == MovementKind::Wastage || kind == MovementKind::CountCorrection;
}

bool isCount(const StockMovement& movement) { return movement.kind == MovementKind::CountCorrection; }

/** What is named must be what the count was of. */
bool fitsScope(const StockMovement& movement)
{
    if (!isCount(movement) || movement.scope == CountScope::OneLot)
        return isCount(movement) || movement.scope == CountScope::Everything;
    return movement.lot.empty() && (movement.scope == CountScope::OneDate || !movement.expiry);
}

bool isTransfer(MovementKind kind)
{
    return kind == MovementKind::TransferIn || kind == MovementKind::TransferOut;
}
}

bool goesIn(MovementKind kind) { return kind == MovementKind::Receipt || kind == MovementKind::TransferIn; }
bool goesOut(MovementKind kind) { return !goesIn(kind) && kind != MovementKind::CountCorrection; }

const char* codeName(MovementKind kind) { return codeIn(kindNames, kind); }
const char* codeName(CountScope scope) { return codeIn(scopeNames, scope); }
std::optional<CountScope> countScopeFromCode(std::string_view code) { return fromCodeIn(scopeNames, code); }
const char* codeName(MovementReason reason) { return codeIn(reasonNames, reason); }
std::optional<MovementKind> movementKindFromCode(std::string_view code)
{
    return fromCodeIn(kindNames, code);
}
std::optional<MovementReason> movementReasonFromCode(std::string_view code)
{
    return fromCodeIn(reasonNames, code);
}

Result<void> checkMovement(const StockMovement& movement)
{
    if (!isId(movement.item))
        return wrong("no item is named");
    const std::int64_t least = isCount(movement) ? 0 : 1;
    if (movement.quantity < least || movement.quantity > mostPieces)
        return tl::unexpected(refused(refusal::pieces, {std::to_string(least), std::to_string(mostPieces)},
            "stock movement: the quantity is not " + std::to_string(least) + " to 1 000 000",
            "count in pieces"));
    if (!movement.lot.empty() && !isPlainText(movement.lot, maxLotLength))
        return tl::unexpected(refused(refusal::lotNumber, {std::to_string(maxLotLength)},
            "stock movement: the lot number is blank or longer than 40 characters"));
    if (movement.expiry && !movement.expiry->ok())
        return wrong("the last day of use does not exist");
    if (needsReason(movement.kind) != (movement.reason != MovementReason::None))
        return wrong(needsReason(movement.kind) ? "a reason is missing" : "it takes no reason");
    if (!fitsScope(movement))
        return wrong("it names a lot or a date that it does not count");
    if (!movement.counterpart.empty()
        && (!isTransfer(movement.kind) || !isPlainText(movement.counterpart, maxCounterpart)))
        return wrong("only a transfer names where it goes, in at most 40 characters");
    return {};
}

Json toBody(const StockMovement& movement)
{
    Json::Object body{{"at", toMs(movement.at)}, {"item", movement.item}, {"kind", codeName(movement.kind)},
        {"quantity", movement.quantity}};
    if (!movement.counterpart.empty())
        body.push_back({"counterpart", movement.counterpart});
    if (movement.expiry)
        body.push_back({"expiry", toIso(*movement.expiry)});
    if (!movement.lot.empty())
        body.push_back({"lot", movement.lot});
    if (movement.reason != MovementReason::None)
        body.push_back({"reason", codeName(movement.reason)});
    if (isCount(movement))
        body.push_back({"scope", codeName(movement.scope)});
    return body;
}

Result<StockMovement> stockMovementFromBody(const Json& body)
{
    BodyReader read(body, "stock record");
    const StockMovement movement{.item = read.id("item"),
        .kind = read.code("kind", movementKindFromCode),
        .at = read.moment("at"),
        .quantity = read.integer("quantity", 0, mostPieces),
        .lot = read.has("lot") ? read.text("lot", maxLotLength) : std::string(),
        .expiry = read.has("expiry") ? std::optional(read.day("expiry")) : std::nullopt,
        .reason = read.has("reason") ? read.code("reason", movementReasonFromCode) : MovementReason::None,
        .scope = read.has("scope") ? read.code("scope", countScopeFromCode) : CountScope::Everything,
        .counterpart = read.has("counterpart") ? read.text("counterpart", maxCounterpart) : std::string()};
    if (read.has("reason") && movement.reason == MovementReason::None)
        read.fault("reason", "is left out when there is none");
    if (read.has("scope") != isCount(movement))
        read.fault("scope", "is there for a count correction and for nothing else");
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    if (auto sound = checkMovement(movement); !sound)
        return fail(ErrorCode::BadDocument, sound.error().message);
    return movement;
}

}
