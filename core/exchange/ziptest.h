// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace cradlepost {

/**
 * Whether every XML part of a ZIP container unpacks and ends with the tag that it began with. The library
 * that writes work books does not notice when its temporary files could not be written.
 */
bool hasWholeParts(const std::string& path);

}
