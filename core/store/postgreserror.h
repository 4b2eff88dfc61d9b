// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/failure.h"

#include <string_view>

namespace cradlepost {

/**
 * What a server's SQLSTATE says, with what to do about it. An empty state: the connection could not be made
 * or was lost. `shown` is the address without a password, `text` the server's own words.
 */
Failure postgresFailure(std::string_view state, const std::string& shown, const std::string& text);

}
