// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/base/json.h"
#include "core/ledger/sha256.h"
#include "core/ledger/stationkey.h"

#include <array>

namespace cradlepost {

using Signature = std::array<unsigned char, 64>; ///< Ed25519

/** One fact of the ledger. Nothing in it ever changes. */
struct Record
{
    std::string station;
    std::int64_t seq = 0; ///< 1, 2, 3, ... on its station
    std::string unit;
    std::string kind; ///< "round", "gap-action", "checklist-adopted", ...
    Instant madeAt;
    std::string actor;
    std::string body; ///< canonical JSON
    Hash prev{}; ///< hash of seq - 1, all zero for the first
    Hash hash{};
    Signature signature{};
};

/** SHA-256 over the canonical JSON of all fields but hash and signature (prev in lower-case hex). */
Hash hashOf(const Record& record);
/** Fills hash and signature. */
void seal(Record& record, const StationKey& key);
/** Hash and signature hold, and the station's id is that of the key. The error says which of them does not.
 */
Result<void> checkSeal(const Record& record, const PublicKey& key);

}
