// SPDX-License-Identifier: MIT
#include "core/supply/handover.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

HandoverGiven full()
{
    const Instant later = at("2026-11-24 20:00");
    return {.what = {.shift = "day",
                .date = day("2026-11-24"),
                .state = "not-ready",
                .met = 70,
                .applicable = 78,
                .roundFinished = at("2026-11-24 07:40"),
                .births = {{.birth = "b-1", .expected = later, .babies = 2, .preterm = true}},
                .warming = {{.device = "warmer-1", .readyAt = later}},
                .gaps = {{.item = "suction-pressure",
                    .nth = 3,
                    .severity = Severity::Critical,
                    .reason = "too-low",
                    .owner = "AB",
                    .due = later}},
                .stock = {{.item = "gloves",
                    .status = StockStatus::BelowEmergency,
                    .usable = 4,
                    .runsOut = day("2026-11-26")}},
                .devices = {{.device = "suction-1", .state = EquipmentState::OutForRepair}},
                .requests = {{.ask = HandoverAsk::SwitchOnWarmer, .subject = "warmer-1", .by = later},
                    {.ask = HandoverAsk::Restock, .subject = "gloves", .by = std::nullopt}}},
        .by = "CD",
        .at = at("2026-11-24 19:00")};
}

HandoverTaken taken()
{
    return {.given = {.station = "st-7", .seq = 812}, .by = "EF", .at = at("2026-11-24 19:05")};
}

bool isRefused(void (*spoil)(HandoverGiven&))
{
    HandoverGiven given = full();
    spoil(given);
    return !checkGiven(given).has_value() && !handoverGivenFromBody(toBody(given)).has_value();
}

}

TEST_CASE("a handover is written and read again as it was")
{
    HandoverGiven quiet{
        .what = {.shift = "night", .date = day("2026-11-24")}, .by = "AB", .at = at("2026-11-25 07:00")};
    for (const HandoverGiven& given : {full(), quiet}) {
        CHECK(checkGiven(given).has_value());
        CHECK(isRecordBody(toBody(given)));
        CHECK_FALSE(isTakenBody(toBody(given)));
        const auto again = handoverGivenFromBody(toBody(given));
        REQUIRE_MESSAGE(again.has_value(), (again ? "" : again.error().message));
        CHECK(*again == given);
    }
    CHECK(canonicalText(toBody(quiet))
        == R"({"applicable":0,"at":1795590000000,"by":"AB","date":"2026-11-24","met":0,"shift":"night"})");
}

TEST_CASE("who takes over names the handover that is taken")
{
    CHECK(checkTaken(taken()).has_value());
    CHECK(isRecordBody(toBody(taken())));
    CHECK(isTakenBody(toBody(taken())));
    CHECK(handoverTakenFromBody(toBody(taken())).value() == taken());
    CHECK(canonicalText(toBody(taken()))
        == R"({"at":1795547100000,"by":"EF","given":{"seq":812,"station":"st-7"}})");
}

TEST_CASE("a handover without a name under it is refused")
{
    CHECK(isRefused([](HandoverGiven& g) { g.by.clear(); }));
    CHECK(isRefused([](HandoverGiven& g) { g.by = std::string(25, 'A'); }));
    HandoverTaken nobody = taken();
    nobody.by = " ";
    CHECK_FALSE(checkTaken(nobody).has_value());
    nobody = taken();
    nobody.given.seq = 0;
    CHECK_FALSE(checkTaken(nobody).has_value());
}

TEST_CASE("a handover whose parts cannot be is refused")
{
    CHECK(isRefused([](HandoverGiven& g) { g.what.shift.clear(); }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.met = 79; }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.state = "Not ready"; }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.births[0].babies = 0; }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.births[0].birth = "Mrs. X"; }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.gaps[0].nth = 0; }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.gaps[0].reason.clear(); }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.stock[0].usable = -1; }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.devices[0].device.clear(); }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.requests[0].subject.clear(); }));
    CHECK(isRefused([](HandoverGiven& g) { g.what.warming.resize(501, g.what.warming[0]); }));
}

TEST_CASE("a part with a member that is not known says that a later version wrote it")
{
    Json::Object body = *toBody(full()).asObject();
    for (JsonMember& member : body) {
        if (member.name == "gaps")
            member.value = Json::Array{[&] {
                Json::Object gap = *(*member.value.asArray())[0].asObject();
                gap.push_back({"colour", "red"});
                return Json(gap);
            }()};
    }
    const auto read = handoverGivenFromBody(body);
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().code == ErrorCode::NewerSchema);
}

TEST_CASE("codes of requests read back")
{
    for (int i = 0; i < 7; ++i)
        CHECK(handoverAskFromCode(codeName(static_cast<HandoverAsk>(i))) == static_cast<HandoverAsk>(i));
    CHECK_FALSE(handoverAskFromCode("rest").has_value());
}
