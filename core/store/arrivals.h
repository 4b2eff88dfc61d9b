// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/chain.h"

namespace cradlepost {

/** The way into the ledger for records of other stations; all inside the one transaction of Store::takeIn. */
class Arrivals
{
public:
    virtual ~Arrivals() = default;
    virtual Result<void> addStation(const std::string& station, const PublicKey& key) = 0;
    /** The seq of its last record here; 0: none. */
    virtual Result<std::int64_t> endOf(const std::string& station) = 0;
    /** How the record with this place is sealed here; nothing when it is not here. */
    virtual Result<std::optional<RecordSeal>> sealOf(const std::string& station, std::int64_t seq) = 0;
    /**
     * Appends to its chain, which must have come as far as the record before, and projects it. What the
     * record says is not checked here, nor its seal. One whose body cannot be read stays in the chain and
     * projects nothing, as in a rebuild.
     */
    virtual Result<void> add(const Arrival& arrival) = 0;
    virtual Result<void> trust(const TrustedStation& trusted) = 0;

protected:
    Arrivals() = default;
    Arrivals(const Arrivals&) = default;
    Arrivals& operator=(const Arrivals&) = default;
};

}
