// SPDX-License-Identifier: MIT
// Imports a pack, until a test kills it: DATABASE PACK TRUSTED-STATION. Says when the import begins.
#include "core/exchange/packimport.h"
#include "tests/support/builders.h"

#include <cstdio>

using namespace cradlepost;
using namespace cradlepost::test;

int main(int argc, char** argv)
{
    if (argc != 4)
        return 2;
    const SystemClock clock;
    const auto store = must(Store::open(argv[1], clock));
    std::printf("begins\n");
    std::fflush(stdout);
    ImportWish wish;
    wish.trust = {argv[3]};
    wish.by = "AB";
    return importPack(*store, argv[2], wish, clock.now()) ? 0 : 1;
}
