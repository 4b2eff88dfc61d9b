// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace cradlepost {

/**
 * Starts the rotating log in the user's data folder. Logs name files, codes and times; never people or readings.
 * Without a folder that can be written the program runs without a log.
 */
void startLog(const std::string& level);

}
