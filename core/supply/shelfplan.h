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

}
