// SPDX-License-Identifier: MIT
#include "core/store/changefeed.h"
#include "tests/support/postgresserver.h"
#include "tests/ui/window/wardwindow.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

TEST_CASE("a window on a server shows by itself what another station has written")
{
    const std::string place = sharedServer().freshPlace();
    WardWindow ward(afternoon, twoWarmers(), place);
    const RecordId round = ward.walk({"mask-size-0"});
    ward.open();
    const ChangeFeed feed(place, [&ward] { ward.window->ward().refresh(); });
    const auto toMend = [&ward] { return ward.find<ActionTable>("mendTable").itemCount(); };
    REQUIRE(toMend() == 1);
    const auto other = must(Store::open(place, ward.clock));
    other->signWith(aKey(9));
    const Checklist checklist = must(other->checklist("shift-readiness", 1));
    must(other->saveRound("sorrel-hill",
        aRound(checklist)
            .on(2026y / 11 / 24)
            .rechecking(round, {"mask-size-0"})
            .finishedAt(ward.clock.now()),
        "C. D."));
    CHECK(toMend() == 1); // nobody has told the window yet
    CHECK(QTest::qWaitFor([&] { return toMend() == 0; }, 20'000));
}
