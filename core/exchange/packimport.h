// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packcheck.h"

namespace cradlepost {

struct ImportWish
{
    bool dryRun = false; ///< checks and reports, changes nothing
    /** Stations that a person trusts from now on, for whatever the pack brings of them. */
    std::vector<std::string> trust;
    std::string by; ///< that person
    PackLimits limits;
};

/** What a pack brought. */
struct Imported
{
    PackChecked pack;
    std::int64_t fresh = 0; ///< records that were new
    std::vector<std::string> trusted; ///< stations that are trusted since
};

/**
 * The second reading: writes what is new and what is to be trusted, in one transaction, and gives the number
 * of records. Refused, with nothing written, when the lines are not those that `checked` was made of.
 */
Result<std::int64_t> takePack(Store& store, const std::string& path, const PackChecked& checked,
    const std::vector<TrustedStation>& trusted, const PackLimits& limits);

/**
 * Takes in what of a pack is new, all of it or nothing, in one transaction. First the whole file is checked,
 * then it is read again and written; a file that changed in between is refused. Errors: BadDocument (no pack,
 * torn, beyond the limits), NewerSchema, NotFound (records are missing before it), Forged (a record, a link,
 * a fork, the end), InvalidArgument (sealed for another station; a station that is not trusted).
 */
Result<Imported> importPack(Store& store, const std::string& path, const ImportWish& wish, Instant now);

}
