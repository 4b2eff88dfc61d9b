// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace cradlepost {

/** What every command understands. */
struct CommonOptions
{
    std::string database; ///< file; empty: the one in the user's data folder
    std::string language; ///< code; empty: as set, else as the system
    std::string unit; ///< id; empty: the one last looked at, or all of them for a command
    std::string logLevel = "info";
};

}
