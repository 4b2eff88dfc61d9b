// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"

#include <map>
#include <set>

namespace cradlepost {

/**
 * Eight groups of five digits from SHA-256 of the key, to be read out over the telephone: each group is four
 * bytes of the sum, the high one first, modulo 100 000.
 */
std::string fingerprint(const PublicKey& key);

/** Which units each station writes in records that are not here yet. */
using NewWriters = std::map<std::string, std::set<std::string>>;

/** A station whose new records want a person's word first. */
struct TrustQuestion
{
    std::string station;
    std::string fingerprint;
    bool known = false; ///< it is trusted, only not for the units of `others`
    std::set<std::string> units; ///< that it writes in what is new
    /** Units among them that other stations have written so far, and which. */
    std::map<std::string, std::vector<std::string>> others;
};

/**
 * Asks about each station that nobody has trusted, and about each that begins to write a unit that others
 * have written: a restored database makes a new key, but so does a forger. The own station is always trusted.
 * `keys`: of the stations in `writers`.
 */
Result<std::vector<TrustQuestion>> trustQuestions(
    const Store& store, const NewWriters& writers, const std::map<std::string, PublicKey>& keys);

/** What a refusal says of them. */
Error untrusted(const std::vector<TrustQuestion>& questions);

}
