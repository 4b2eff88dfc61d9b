// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"
#include "core/supply/transfer.h"

namespace cradlepost {

/** The shelves of these units at `now`, one entry a unit: what runs out first stands first. */
Result<std::vector<UnitShelves>> districtShelves(
    const Store& store, const std::vector<std::string>& units, Instant now);

}
