// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"
#include "core/supply/stockbook.h"

namespace cradlepost {

struct KitPlanPart
{
    std::string part; ///< id of the part in the checklist
    std::string item; ///< the stock item that it is taken from
    int perKit = 1;
    bool operator==(const KitPlanPart&) const = default;
};

/** A kit and what it is made of. */
struct KitPlan
{
    std::string kit; ///< stock item of the made-up kit, and the checklist's item
    std::int64_t par = 0;
    std::vector<KitPlanPart> parts;
    bool operator==(const KitPlan&) const = default;
};

/** From the checklist's kit item; `stockOf` maps part ids to stock items. Fails on another kind or a part
 * without. */
Result<KitPlan> kitPlan(const Item& item, const std::map<std::string, std::string>& stockOf);

struct KitsPossible
{
    std::int64_t kits = 0; ///< whole ones
    std::vector<std::string> limiting; ///< every part that allows no more; one of them alone would not help
    bool operator==(const KitsPossible&) const = default;
};

/** `pieces` of each part in the order of the plan; a missing one counts as 0. */
KitsPossible kitsFromPieces(const KitPlan& plan, std::span<const std::int64_t> pieces);
/** From what is usable on `day`. Parts that share a stock item share its pieces. */
KitsPossible kitsFromBook(const KitPlan& plan, const StockBook& book, Date day);

struct PartMissing
{
    std::string part;
    std::int64_t pieces = 0;
    bool operator==(const PartMissing&) const = default;
};

struct Assembly
{
    std::int64_t ready = 0; ///< made up and in date
    std::int64_t assemble = 0; ///< to make up now, towards par
    std::int64_t stillShort = 0; ///< below par even then
    std::vector<PartMissing> missing; ///< pieces that would close stillShort
    bool operator==(const Assembly&) const = default;
};
Assembly assemblyToPar(const KitPlan& plan, const StockBook& book, Date day);

/**
 * The movements that make up `kits` kits: each part leaves first to expire first, the kits come in with the
 * first last day of what went into any of them. Fails when the book does not hold the parts.
 */
Result<std::vector<StockMovement>> assembleKits(
    const KitPlan& plan, const StockBook& book, std::int64_t kits, Instant at, Date day);

}
