// SPDX-License-Identifier: MIT
#pragma once

namespace cradlepost {

/** What the program ends with. */
enum ExitCode {
    Done = 0,
    Failed = 1, ///< failed, or found a fault
    WrongUse = 2,
    NotReadyNow = 3,
};

}
