// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
constexpr Date day = std::chrono::year(2026) / 11 / 24;
}

TEST_CASE("a saved round comes back whole")
{
    const TempDir dir;
    FixedClock clock(fromMs(1'795'000'000'000));
    auto store = aStore(dir.file("ward.db"), clock);
    const Checklist checklist = must(store->checklist("shift-readiness", 1));
    const RoundRecord round
        = aRound(checklist).on(day).withGap("draught").measuring("room-temperature", "24.5");
    const RecordId id = must(store->saveRound("sorrel-hill", round, "AB"));
    CHECK(must(store->round(id)).round == round);
    const auto verified = must(store->verify());
    CHECK_MESSAGE(!verified.fault, verified.fault->where, ": ", verified.fault->what);
    CHECK(verified.records == 5);
}
