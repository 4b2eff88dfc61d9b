// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/database.h"
#include "core/store/store.h"

namespace cradlepost {

/**
 * Store::verify: the file itself, the chain and seals of every station, every row of every projection against
 * a replay in memory, the drafts, and the schema with its triggers. What is wrong in the data comes back as
 * the fault; thrown is only what kept it from looking.
 */
Verified verifyDatabase(Database& database);

/** The first row in which a projection differs between `database` and `replayed`. */
std::optional<Fault> compareProjections(Database& database, Database& replayed);

}
