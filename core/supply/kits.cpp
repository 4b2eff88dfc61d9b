// SPDX-License-Identifier: MIT
#include "core/supply/kits.h"

#include <limits>

namespace cradlepost {

namespace {

/** Pieces that one kit takes of one stock item. */
std::int64_t perKitOf(const KitPlan& plan, const std::string& item)
{
    std::int64_t pieces = 0;
    for (const KitPlanPart& part : plan.parts)
        pieces += part.item == item ? part.perKit : 0;
    return pieces;
}

std::int64_t usableIn(const StockBook& book, const std::string& item, Date day)
{
    const auto found = book.find(item);
    return found == book.end() ? 0 : found->second.usableOn(day);
}

KitsPossible fewest(const KitPlan& plan, std::span<const std::int64_t> kitsOfPart)
{
    KitsPossible out{
        .kits = plan.parts.empty() ? 0 : std::numeric_limits<std::int64_t>::max(), .limiting = {}};
    for (const std::int64_t kits : kitsOfPart)
        out.kits = std::min(out.kits, kits);
    for (std::size_t i = 0; i < plan.parts.size(); ++i) {
        if (kitsOfPart[i] == out.kits)
            out.limiting.push_back(plan.parts[i].part);
    }
    return out;
}

/** The first last day among the pieces that `kits` kits take of one item. */
void meetDay(std::optional<Date>& first, const ItemBook& book, std::int64_t pieces, Date day)
{
    for (const BookLot& lot : book.lots) {
        if (pieces <= 0)
            return;
        if (!lot.key.usableOn(day))
            continue;
        if (lot.key.expiry && (!first || *lot.key.expiry < *first))
            first = lot.key.expiry;
        pieces -= lot.pieces;
    }
}

}

Result<KitPlan> kitPlan(const Item& item, const std::map<std::string, std::string>& stockOf)
{
    const auto* rule = std::get_if<KitRule>(&item.rule);
    if (rule == nullptr)
        return fail(ErrorCode::InvalidArgument, "kit: '" + item.id + "' is no kit of the checklist");
    KitPlan plan{.kit = item.id, .par = rule->par, .parts = {}};
    for (const KitPart& part : rule->parts) {
        const auto stock = stockOf.find(part.id);
        if (stock == stockOf.end())
            return fail(ErrorCode::NotFound, "kit: part '" + part.id + "' has no stock item",
                "name the stock item that it is taken from");
        plan.parts.push_back({.part = part.id, .item = stock->second, .perKit = part.perKit});
    }
    return plan;
}

KitsPossible kitsFromPieces(const KitPlan& plan, std::span<const std::int64_t> pieces)
{
    std::vector<std::int64_t> kits;
    for (std::size_t i = 0; i < plan.parts.size(); ++i)
        kits.push_back(i < pieces.size() ? std::max<std::int64_t>(pieces[i], 0) / plan.parts[i].perKit : 0);
    return fewest(plan, kits);
}

KitsPossible kitsFromBook(const KitPlan& plan, const StockBook& book, Date day)
{
    std::vector<std::int64_t> kits;
    for (const KitPlanPart& part : plan.parts)
        kits.push_back(usableIn(book, part.item, day) / perKitOf(plan, part.item));
    return fewest(plan, kits);
}

Assembly assemblyToPar(const KitPlan& plan, const StockBook& book, Date day)
{
    Assembly out{.ready = usableIn(book, plan.kit, day)};
    const std::int64_t wanted = std::max<std::int64_t>(plan.par - out.ready, 0);
    out.assemble = std::min(wanted, kitsFromBook(plan, book, day).kits);
    out.stillShort = wanted - out.assemble;
    std::map<std::string, std::int64_t> left; // parts that share an item take from the same pieces
    for (const KitPlanPart& part : plan.parts)
        left.try_emplace(part.item, usableIn(book, part.item, day));
    for (const KitPlanPart& part : plan.parts) {
        const std::int64_t needed = (out.assemble + out.stillShort) * part.perKit;
        const std::int64_t there = std::min(needed, left[part.item]);
        left[part.item] -= there;
        if (out.stillShort > 0 && needed > there)
            out.missing.push_back({.part = part.part, .pieces = needed - there});
    }
    return out;
}

Result<std::vector<StockMovement>> assembleKits(
    const KitPlan& plan, const StockBook& book, std::int64_t kits, Instant at, Date day)
{
    if (kits < 1 || kits > kitsFromBook(plan, book, day).kits)
        return fail(ErrorCode::InvalidArgument, "kit: the book does not hold the parts for so many kits",
            "make up fewer, or count the parts");
    std::vector<StockMovement> movements;
    std::optional<Date> first;
    for (const KitPlanPart& part : plan.parts) {
        movements.push_back({.item = part.item,
            .kind = MovementKind::TransferOut,
            .at = at,
            .quantity = kits * part.perKit,
            .counterpart = plan.kit});
        meetDay(first, book.at(part.item), kits * perKitOf(plan, part.item), day);
    }
    movements.push_back(
        {.item = plan.kit, .kind = MovementKind::TransferIn, .at = at, .quantity = kits, .expiry = first});
    return movements;
}

}
