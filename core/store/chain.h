// SPDX-License-Identifier: MIT
#pragma once

#include "core/ledger/record.h"
#include "core/round/roundrecord.h"

#include <optional>
#include <vector>

namespace cradlepost {

/** The chain of one station, as far as it is here. */
struct Chain
{
    std::string station;
    PublicKey key{};
    std::int64_t seq = 0; ///< of its last record
    Hash hash{}; ///< of its last record
};

/** What tells one record from every other that claims its place. */
struct RecordSeal
{
    Hash hash{};
    Signature signature{};
    auto operator<=>(const RecordSeal&) const = default;
};

/**
 * A person's word that a station is what it says it is. Kept on this station only: no projection, and it does
 * not travel.
 */
struct TrustedStation
{
    std::string station;
    std::optional<PublicKey> key; ///< once it was seen
    std::string name; ///< as the person calls it
    Instant at;
    std::string by; ///< who compared the fingerprint
    std::vector<std::string> units; ///< that it may write though another station has written them
};

/** A record on its way in, with what of it is costly to make. */
struct Arrival
{
    Record record;
    Json body; ///< the record's body, read
    std::optional<RoundRecord> round; ///< what the body says, when it is one of a round and can be read
    std::vector<unsigned char> packedBody; ///< the record's body, packed (core/store/packing.h)
};

}
