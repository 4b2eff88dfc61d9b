// SPDX-License-Identifier: MIT
#pragma once

#include "app/options.h"

namespace cradlepost {

/** Opens the window and runs until it is closed. Returns an exit code. */
int runWindow(int argc, char** argv, const CommonOptions& options);

}
