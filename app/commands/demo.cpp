// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "app/demo/demo.h"

#include <cstdio>

namespace cradlepost {

int runDemo(const CommandContext& context, const std::string& into)
{
    const auto written = writeDemo(into, context.clock.now());
    if (!written)
        return complain(written.error());
    std::printf("%d rounds of %d invented units written to %s\n", written->rounds, written->units, into.c_str());
    return Done;
}

}
