// SPDX-License-Identifier: MIT
#include "tests/reference/sheet.h"

#include <cstdio>

/** reference_engine FOLDER: writes random cases and what the engine makes of them. */
int main(int argc, char** argv)
{
    if (argc != 2) {
        std::fputs("usage: reference_engine FOLDER\n", stderr);
        return 2;
    }
    using namespace cradlepost::reference;
    const std::filesystem::path folder(argv[1]);
    writeCounts(folder);
    writeCharts(folder);
    writeUnits(folder);
    writeDurations(folder);
    writeStock(folder);
    writeTrends(folder);
    return 0;
}
