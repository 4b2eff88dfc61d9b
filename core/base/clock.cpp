// SPDX-License-Identifier: MIT
#include "core/base/clock.h"

namespace cradlepost {

Instant SystemClock::now() const
{
    return std::chrono::time_point_cast<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

}
