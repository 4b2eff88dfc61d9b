// SPDX-License-Identifier: MIT
#include "app/demo/lists.h"
#include "app/demo/roundmaker.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::demo;

namespace {

const Checklist& shiftRound()
{
    static const Checklist checklist = Lists::builtIn().value().shift.checklist;
    return checklist;
}

Draft freshDraft(Instant now)
{
    const auto calendar = ShiftCalendar(ShiftPattern::threeByEight(), TimeZone::utc());
    return Walk::begin(shiftRound(), RoundKind::Shift, "u", "AB", calendar.shiftAt(now), {}, now);
}

const Instant begin = std::chrono::sys_days(std::chrono::year(2026) / 3 / 2) + std::chrono::hours(8);

}

TEST_CASE("a walk takes 3 to 20 seconds an item and 6 to 14 minutes in all")
{
    Random random = Random::named("walk");
    for (int i = 0; i < 50; ++i) {
        const auto times = walkingTimes(shiftRound(), freshDraft(begin).asked, 1, random);
        REQUIRE(times.size() == shiftRound().itemCount());
        for (std::size_t at = 1; at < times.size(); ++at) {
            CHECK(times[at] - times[at - 1] >= 3);
            CHECK(times[at] - times[at - 1] <= 20);
        }
        CHECK(times.back() >= 6 * 60);
        CHECK(times.back() <= 14 * 60);
    }
}

TEST_CASE("who types instead of walking is through in about 70 seconds")
{
    Random random = Random::named("type");
    const auto times = typingTimes(60, random);
    CHECK(times.front() >= 1);
    CHECK(times.back() >= 68);
    CHECK(times.back() <= 72);
}

TEST_CASE("a round is answered in order and finished after its last answer")
{
    Random random = Random::named("order");
    Draft draft = freshDraft(begin);
    const auto times = walkingTimes(shiftRound(), draft.asked, 1, random);
    const auto round = walked(shiftRound(), TimeZone::utc(), std::move(draft), times,
        [](std::size_t at, Instant) { return at == 3 ? Answer(NotChecked{}) : Answer(GapFound{}); });
    REQUIRE(round);
    CHECK(round->finished == finishOf(begin, times));
    CHECK(round->seconds.front() == times.front());
    CHECK(round->outcomes.substr(0, 5) == "gggug");
    CHECK_FALSE(round->seconds[3]);
}

TEST_CASE("an answer that the window would refuse is refused here too")
{
    const auto round = walked(shiftRound(), TimeZone::utc(), freshDraft(begin),
        std::vector<int>(shiftRound().itemCount(), 5),
        [](std::size_t, Instant) { return Answer(DoesNotApply{}); });
    REQUIRE_FALSE(round);
    CHECK(round.error().code == ErrorCode::InvalidArgument);
}
