// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packformat.h"
#include "core/exchange/packhave.h"

namespace cradlepost {

/** Who alone can open a pack. */
struct PackReceiver
{
    std::string station;
    PublicKey key{};
};

/** What goes into a pack. Nothing said: everything. */
struct PackWish
{
    /** Each chain from its first record that was made since then. */
    std::optional<Instant> since;
    /** Each chain from behind what the receiver has. */
    std::optional<HaveList> have;
    std::optional<PackReceiver> receiver;
    /** Only chains of stations that have written these units; a chain goes whole, other units in it too. */
    std::vector<std::string> units;
    Overwrite overwrite = Overwrite::Refuse;
};

struct PackWritten
{
    std::int64_t records = 0;
    std::vector<PackChain> chains;
};

/**
 * Writes a pack, signed by this station. The file is whole or not there. Refuses with Forged when the
 * receiver has another record in the place of one here, and with Damaged rather than spread a record that
 * does not hold.
 */
Result<PackWritten> writePack(const Store& store, const PackWish& wish, const std::string& path, Instant now,
    const PackLimits& limits = {});

}
