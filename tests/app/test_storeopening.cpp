// SPDX-License-Identifier: MIT
#include "app/storeopening.h"

#include "core/store/shiftview.h"
#include "tests/support/builders.h"

#include <doctest/doctest.h>
#include <fstream>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono_literals;

namespace {

const FixedClock stopped{aCalendar().shift(2026y / 3 / 14, 0).begins + 1h};

}

TEST_CASE("a store opened beside the start of the window is the same as one opened in it")
{
    const TempDir folder;
    const std::string path = folder.file("ward");
    {
        const auto store = aStore(path, stopped);
        const Checklist checklist = must(store->checklistFor("sorrel-hill", RoundKind::Shift, 2026y / 3 / 14)).checklist;
        must(store->saveRound("sorrel-hill", aRound(checklist).on(2026y / 3 / 14).withGap("towels"), "AB"));
    }
    for (const char* unit : {"sorrel-hill", "", "no-such-unit"}) {
        CAPTURE(unit);
        StoreOpening opening(path, stopped, unit);
        const auto store = must(opening.take());
        const ShiftView view = must(shiftView(*store, "sorrel-hill", stopped.now()));
        CHECK(view.gaps.size() == 1);
        CHECK(view.saved.size() == 1);
        // It writes in the thread that took it.
        Unit other = aUnit("cold-ford");
        must(store->describeUnit(other, "AB"));
        CHECK(!must(store->verify()).fault);
    }
}

TEST_CASE("a store that cannot be opened says why when it is taken")
{
    const TempDir folder;
    const std::string path = folder.file("letter");
    std::ofstream(path) << std::string(4096, 'x');
    StoreOpening opening(path, stopped, "");
    const auto store = opening.take();
    REQUIRE(!store);
    CHECK(store.error().code == ErrorCode::NotADatabase);
}

TEST_CASE("one that nobody takes is closed when it is dropped")
{
    const TempDir folder;
    const std::string path = folder.file("ward");
    aStore(path, stopped);
    { StoreOpening opening(path, stopped, "sorrel-hill"); }
    CHECK(Store::open(path, stopped));
}
