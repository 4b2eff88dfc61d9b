// SPDX-License-Identifier: MIT
// Writes rounds into a store until it is killed; says each one on a line of its own once it is saved.
#include "tests/support/builders.h"

#include <cstdio>

using namespace cradlepost;
using namespace cradlepost::test;

int main(int argc, char** argv)
{
    if (argc != 2)
        return 2;
    const SystemClock clock;
    const auto store = must(Store::open(argv[1], clock));
    const Checklist checklist = must(store->checklist("plain", 1));
    const Date start = std::chrono::year(2020) / 1 / 1;
    const auto done = must(store->rounds("sorrel-hill", 0, slotOf(addDays(start, 100'000), 0))).size();
    for (int n = static_cast<int>(done); n < 100'000; ++n) {
        auto round = aRound(checklist).on(addDays(start, n / 2), n % 2);
        round.withGap("item-" + std::to_string(n / 3 % 12));
        must(store->saveDraft(round.draft()));
        const RecordId id = must(store->saveRound("sorrel-hill", round, "AB"));
        std::printf("%s %lld\n", id.station.c_str(), static_cast<long long>(id.seq));
        std::fflush(stdout);
    }
    return 0;
}
