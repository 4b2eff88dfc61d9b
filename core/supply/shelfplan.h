// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"
#include "core/supply/stockitem.h"

namespace cradlepost {

/**
 * The shelves that a checklist counts, to begin a stock book with: an item for each count and for each part
 * of a kit, under their ids, with the name of `language`. The checklist's par is the minimum; the shelf is
 * filled up to twice of it and never goes under half (our own rule, no source: to be set to the ward's own
 * levels).
 */
std::vector<StockItem> shelvesOf(const Checklist& checklist, const std::string& language, Instant at);

/**
 * The id of a shelf that no checklist names, from its name: the same in every unit that calls it the same, so
 * that stock can move between them. Letters and digits of a name in plain Latin, else a digest of it.
 */
std::string shelfIdFor(const std::string& name);

/**
 * What the shelf of that name is called in `language`, when a count or a part of a kit of the checklist is
 * worded so in any language; nothing for a name that the ward gave itself.
 */
std::optional<std::string> shelfName(
    const std::string& name, const Checklist& checklist, const std::string& language);

}
