// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packreader.h"
#include "core/exchange/trust.h"

namespace cradlepost {

/** What a pack holds, once all of it was found sound. */
struct PackChecked
{
    bool sealed = false;
    PackManifest manifest;
    Hash digest{}; ///< of all its lines: the second reading must come to the same
    std::int64_t known = 0; ///< records that are here already
    /** New records by unit and kind. */
    std::map<std::pair<std::string, std::string>, std::int64_t> arriving;
    /** How many new ones there are of each station; only stations with some. */
    std::map<std::string, std::int64_t> byStation;
    NewWriters writers;
};

/**
 * The first reading: every line, seal, signature and link, against itself and against what is here. Changes
 * nothing. Throws Failure, with the record at which the pack breaks; what trust says is not asked here.
 */
PackChecked checkPack(const Store& store, const std::string& path, const PackLimits& limits);

}
