// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/database.h"

namespace cradlepost {

/**
 * What names of files begin with that belong to this station and this database: the file's own path; for a server,
 * which many stations share, one in the user's data folder, made from the address without user and password
 * and from the schema.
 */
std::string besideOf(const Database& database);

}
