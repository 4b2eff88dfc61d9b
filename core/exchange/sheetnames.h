// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace cradlepost {

/**
 * Names that a work book takes: at most 31 characters, none of []:*?/\, no apostrophe at either end, not
 * "History", none twice in any case of letters. In the order given, as close to the wishes as it goes.
 */
std::vector<std::string> sheetNames(const std::vector<std::string>& wishes);

}
