// SPDX-License-Identifier: MIT
// Puts a backup in the place of a database, to be killed in the middle; says a line before and one after.
#include "tests/support/builders.h"

#include <cstdio>

using namespace cradlepost;
using namespace cradlepost::test;

int main(int argc, char** argv)
{
    if (argc != 3)
        return 2;
    const SystemClock clock;
    std::puts("begins");
    std::fflush(stdout);
    must(Store::restore(argv[1], argv[2], clock));
    std::puts("done");
    return 0;
}
