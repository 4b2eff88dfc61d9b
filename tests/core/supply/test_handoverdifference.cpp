// SPDX-License-Identifier: MIT
#include "core/supply/handoverdifference.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using Code = HandoverChangeCode;

namespace {

const Instant due = at("2026-11-24 20:00");

HandoverGap gap(std::string item, int nth = 1, std::string owner = {})
{
    return {.item = std::move(item), .nth = nth, .reason = "absent", .owner = std::move(owner), .due = due};
}

HandoverStock stock(std::string item, StockStatus status)
{
    return {.item = std::move(item), .status = status};
}

}

TEST_CASE("nothing changed says nothing, whatever stands in the handover")
{
    Handover one{
        .shift = "day", .state = "ready", .gaps = {gap("a")}, .stock = {stock("s", StockStatus::Out)}};
    Handover other = one;
    other.shift = "night";
    other.met = 4;
    CHECK(differenceOf(one, other).empty());
    CHECK(differenceOf({}, {}).empty());
}

TEST_CASE("gaps that opened, were mended or changed hands are told")
{
    const Handover before{.gaps = {gap("mended", 2), gap("handed", 1, "AB"), gap("same"), gap("again", 1)}};
    const Handover after{.gaps = {gap("opened"), gap("handed", 1, "CD"), gap("same"), gap("again", 2)}};
    const std::vector<HandoverChange> wanted{{.code = Code::GapOpened, .subject = "again", .nth = 2},
        {.code = Code::GapOpened, .subject = "opened", .nth = 1},
        {.code = Code::GapChanged, .subject = "handed", .nth = 1, .before = "AB", .after = "CD"},
        {.code = Code::GapMended, .subject = "again", .nth = 1},
        {.code = Code::GapMended, .subject = "mended", .nth = 2}};
    CHECK(differenceOf(before, after) == wanted);
}

TEST_CASE("a new due time is a change of the gap")
{
    Handover after{.gaps = {gap("a")}};
    after.gaps[0].due += std::chrono::hours(1);
    CHECK(differenceOf({.gaps = {gap("a")}}, after).at(0).code == Code::GapChanged);
}

TEST_CASE("a shelf is worse or better by its status, also when it enters or leaves the list")
{
    const Handover before{.stock = {stock("down", StockStatus::BelowPar),
                              stock("full", StockStatus::BelowPar), stock("up", StockStatus::Out)}};
    const Handover after{.stock = {stock("down", StockStatus::Out), stock("new", StockStatus::BelowMinimum),
                             stock("up", StockStatus::BelowEmergency)}};
    const std::vector<HandoverChange> wanted{
        {.code = Code::StockWorse, .subject = "down", .before = "below-par", .after = "out"},
        {.code = Code::StockWorse, .subject = "new", .before = "", .after = "below-minimum"},
        {.code = Code::StockBetter, .subject = "full", .before = "below-par", .after = ""},
        {.code = Code::StockBetter, .subject = "up", .before = "out", .after = "below-emergency"}};
    auto told = differenceOf(before, after);
    std::sort(told.begin(), told.end(), [](const HandoverChange& a, const HandoverChange& b) {
        return a.code != b.code ? a.code < b.code : a.subject < b.subject;
    });
    CHECK(told == wanted);
}

TEST_CASE("devices, warmers and births that came or went are told, the verdict first")
{
    const Handover before{.state = "ready",
        .births = {{.birth = "gone", .expected = due}, {.birth = "moved", .expected = due}},
        .warming = {{.device = "w-1", .readyAt = due}},
        .devices = {{.device = "d-1"}, {.device = "d-3"}}};
    const Handover after{.state = "not-ready",
        .births = {{.birth = "moved", .expected = due, .babies = 2}, {.birth = "new", .expected = due}},
        .warming = {{.device = "w-2", .readyAt = due}},
        .devices = {{.device = "d-2"}, {.device = "d-3", .state = EquipmentState::Retired}}};
    const std::vector<HandoverChange> wanted{
        {.code = Code::StateChanged, .before = "ready", .after = "not-ready"},
        {.code = Code::DeviceOut, .subject = "d-2", .after = "out-for-repair"},
        {.code = Code::DeviceOut, .subject = "d-3", .before = "out-for-repair", .after = "retired"},
        {.code = Code::DeviceBack, .subject = "d-1", .before = "out-for-repair"},
        {.code = Code::WarmerOn, .subject = "w-2"}, {.code = Code::WarmerOff, .subject = "w-1"},
        {.code = Code::BirthExpected, .subject = "new"}, {.code = Code::BirthChanged, .subject = "moved"},
        {.code = Code::BirthGone, .subject = "gone"}};
    CHECK(differenceOf(before, after) == wanted);
}

TEST_CASE("told the other way round, what opened is mended and what came is gone")
{
    const Handover one{.births = {{.birth = "b", .expected = due}}, .gaps = {gap("a")}};
    const auto there = differenceOf({}, one);
    const auto back = differenceOf(one, {});
    REQUIRE(there.size() == 2);
    REQUIRE(back.size() == 2);
    CHECK(there[0].code == Code::GapOpened);
    CHECK(back[0].code == Code::GapMended);
    CHECK(there[1].code == Code::BirthExpected);
    CHECK(back[1].code == Code::BirthGone);
}
