// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packreader.h"
#include "core/store/chain.h"

namespace cradlepost {

/** A record line of a pack on its way through. */
struct PackEntry
{
    const PackChain* chain = nullptr;
    std::int64_t seq = 0; ///< that it must have
    std::string line;
    std::optional<RecordSeal> known; ///< how the record of this place is sealed here
    std::optional<Error> fault; ///< what the work found
    Arrival arrival; ///< what the work made of it
};

/** What is done with each record line. */
struct PackSteps
{
    /** First, one after the other; false: the line is passed over. */
    std::function<bool(PackEntry&)> prepare;
    /** In several threads at once. Tells what is wrong by `fault`. */
    std::function<void(PackEntry&)> work;
    /** Last, one after the other in the order of the pack. Not called when there was a fault. */
    std::function<void(PackEntry&)> use;
};

/**
 * Reads all record lines of the pack and does the steps, with a bounded number of them in memory. Throws the
 * first fault in the order of the pack, its record named.
 */
void feed(PackReader& reader, const PackSteps& steps);

/** The error with its record named. */
Error atRecord(const PackChain& chain, std::int64_t seq, const Error& error);

}
