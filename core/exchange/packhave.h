// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packfile.h"
#include "core/store/store.h"

namespace cradlepost {

/** What a station has, so that another one can pack what it lacks. */
struct HaveList
{
    struct Tip
    {
        std::string station;
        std::int64_t seq = 0;
        Hash hash{};
    };
    std::string station; ///< that has them
    PublicKey key{}; ///< of it: what a pack for it is sealed with
    Instant madeAt;
    std::vector<Tip> tips; ///< by station
};

/** Of everything in the ledger. */
Result<HaveList> whatIsHere(const Store& store, Instant now);
/** One line of canonical JSON, see DEVELOPERS.md. Whole or not at all. */
Result<void> writeHaveList(const HaveList& have, const std::string& path, Overwrite overwrite);
Result<HaveList> readHaveList(const std::string& path);

}
