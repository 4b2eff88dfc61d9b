// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"
#include "core/store/database.h"

namespace cradlepost {

/** A sound copy of the database in one file, synced; throws AlreadyExists rather than overwrite. */
void copyInto(Database& database, const std::string& to);

/** Store::restore, once the backup is known to be sound. */
void putInPlace(const std::string& backup, const std::string& path, Instant now);

}
