// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"

namespace cradlepost {

struct DemoWritten
{
    int units = 0;
    int rounds = 0;
};

/**
 * Writes an invented district into a new file: units, 18 months of rounds up to `until`, gaps and who mended
 * them, through the same ledger as real work, each unit a station of its own. The same `until` gives the same
 * rounds. No place in it exists and nobody in it lives. Refuses a file that is there; after a failure there
 * is none. What happens in the district: story.h. `months`: fewer for a quick look, at least 1.
 */
Result<DemoWritten> writeDemo(const std::string& file, Instant until, int months = 18);

}
