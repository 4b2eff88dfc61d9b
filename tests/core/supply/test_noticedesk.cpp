// SPDX-License-Identifier: MIT
#include "core/supply/noticedesk.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using std::chrono::minutes;

namespace {

const Instant noon = std::chrono::sys_days(std::chrono::year(2026) / 11 / 24) + std::chrono::hours(12);

Notice notice(NoticeCode code, const std::string& key, Instant at = noon)
{
    return {.code = code, .key = key, .at = at, .subject = key, .value = {}};
}

}

TEST_CASE("what a birth hangs on stands before what is late, however long that is late")
{
    const NoticeDesk desk;
    const auto shown = desk.toShow({notice(NoticeCode::GapOverdue, "gap", noon - std::chrono::hours(90)),
                                       notice(NoticeCode::WarmerReady, "ready"),
                                       notice(NoticeCode::SwitchOnWarmer, "warmer", noon + minutes(10))},
        noon);
    REQUIRE(shown.size() == 3);
    CHECK(shown[0].key == "warmer");
    CHECK(shown[1].key == "gap");
    CHECK(shown[2].key == "ready");
}

TEST_CASE("a notice put away comes back by its rule while it still holds")
{
    NoticeDesk desk;
    const auto late = notice(NoticeCode::GapOverdue, "gap");
    const auto warmer = notice(NoticeCode::SwitchOnWarmer, "warmer");
    const auto ready = notice(NoticeCode::WarmerReady, "ready");
    for (const Notice& one : {late, warmer, ready})
        desk.putAway(one, noon);
    const std::vector all{late, warmer, ready};
    CHECK(desk.toShow(all, noon + minutes(9)).empty());
    REQUIRE(desk.toShow(all, noon + minutes(10)).size() == 1);
    CHECK(desk.toShow(all, noon + minutes(10))[0].key == "warmer");
    CHECK(desk.toShow(all, noon + minutes(59)).size() == 1);
    CHECK(desk.toShow(all, noon + minutes(60)).size() == 2);
    CHECK(desk.toShow(all, noon + std::chrono::hours(1000)).size() == 2); // ready is no news twice
    desk.putAway(warmer, noon + minutes(60));
    CHECK(desk.toShow({warmer}, noon + minutes(69)).empty());
}

TEST_CASE("a notice under another key is another notice")
{
    NoticeDesk desk;
    desk.putAway(notice(NoticeCode::WarmerReady, "ready/1"), noon);
    CHECK(desk.toShow({notice(NoticeCode::WarmerReady, "ready/2")}, noon).size() == 1);
}
