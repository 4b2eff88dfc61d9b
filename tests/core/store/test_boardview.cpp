// SPDX-License-Identifier: MIT
#include "core/store/boardview.h"
#include "tests/core/store/ward.h"

#include <algorithm>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

void addWarmer(Ward& ward, const std::string& id, EquipmentState state = EquipmentState::InUse)
{
    must(ward.store->noteEquipment(ward.unit,
        {{.device = id,
            .at = ward.clock.now(),
            .deed = Added{.device = {.id = id, .kind = EquipmentKind::Warmer, .label = id}, .state = state}}},
        "AB"));
}

BoardView boardOf(Ward& ward)
{
    const auto shift = must(shiftView(*ward.store, ward.unit, ward.clock.now()));
    return must(boardView(*ward.store, shift, ward.clock.now()));
}

std::vector<std::string> noticed(Ward& ward)
{
    const auto shift = must(shiftView(*ward.store, ward.unit, ward.clock.now()));
    std::vector<std::string> codes;
    for (const Notice& notice : must(noticesOf(*ward.store, shift, boardOf(ward), ward.clock.now())))
        codes.emplace_back(codeName(notice.code));
    return codes;
}

bool has(const std::vector<std::string>& codes, const char* code)
{
    return std::find(codes.begin(), codes.end(), code) != codes.end();
}

}

TEST_CASE(
    "twins find a warm place each: the one that is on, and the spare that must go on half an hour before")
{
    Ward ward(anAdoption());
    addWarmer(ward, "warmer-1");
    addWarmer(ward, "warmer-2", EquipmentState::Spare);
    addWarmer(ward, "warmer-3", EquipmentState::OutForRepair);
    const Instant now = ward.clock.now();
    must(ward.store->switchWarmer(
        ward.unit, {.device = "warmer-1", .at = now - minutes(40), .on = true}, "AB"));
    must(ward.store->noteBirth(ward.unit,
        {.birth = "b1", .at = now, .expected = now + hours(2), .babies = 2, .preterm = true}, "AB"));
    const BoardView board = boardOf(ward);
    REQUIRE(board.warmers.size() == 2); // the one that is away is no place
    CHECK(board.warmers[0].standing.state == WarmerState::Ready);
    CHECK(board.warmers[0].standing.onFor == minutes(40));
    CHECK(board.warmers[1].standing.state == WarmerState::Off);
    REQUIRE(board.births.size() == 1);
    REQUIRE(board.births[0].places.size() == 2);
    CHECK(board.births[0].places[0].place == WarmPlace::Ready);
    CHECK(board.births[0].places[1].place == WarmPlace::SwitchOn);
    CHECK(board.births[0].places[1].switchOnBy == now + minutes(90));
    CHECK_FALSE(board.kits.has_value());
    CHECK(board.births[0].kit); // nobody counted: none is said to be missing
}

TEST_CASE("kits are what the round counted, less one for each birth since; one that moved away took none")
{
    Ward ward(anAdoption());
    const std::string item = "delivery-kits";
    const auto& rule = std::get<KitRule>(ward.checklist.item(*ward.checklist.position(item)).rule);
    ward.save(ward.round(0));
    const auto counted = boardOf(ward).kits;
    REQUIRE(counted.has_value());
    CHECK(*counted == rule.par); // the sample answer meets par
    for (const auto& [birth, end] : {std::pair("b1", BirthChange::Done), std::pair("b2", BirthChange::Moved),
             std::pair("b3", BirthChange::Cancelled)}) {
        const Instant now = ward.clock.now();
        must(ward.store->noteBirth(ward.unit, {.birth = birth, .at = now, .expected = now + hours(1)}, "AB"));
        ward.clock.advance(minutes(20));
        must(ward.store->noteBirth(ward.unit, {.birth = birth, .at = ward.clock.now(), .change = end}, "AB"));
    }
    CHECK(boardOf(ward).births.empty());
    CHECK(*boardOf(ward).kits == rule.par - 1);
}

TEST_CASE("notices follow the ward: a round is due, a warmer has to go on, is ready, goes off too soon")
{
    Ward ward(anAdoption());
    addWarmer(ward, "warmer-1");
    ward.clock.set(must(shiftView(*ward.store, ward.unit, ward.clock.now())).shift.begins + minutes(5));
    CHECK(has(noticed(ward), "round-due"));
    const Instant now = ward.clock.now();
    must(ward.store->noteBirth(ward.unit, {.birth = "b1", .at = now, .expected = now + minutes(100)}, "AB"));
    CHECK_FALSE(has(noticed(ward), "switch-on-warmer"));
    ward.clock.advance(minutes(56)); // 14 minutes before it must go on
    CHECK(has(noticed(ward), "switch-on-warmer"));
    CHECK(has(noticed(ward), "round-overdue"));
    must(ward.store->switchWarmer(
        ward.unit, {.device = "warmer-1", .at = ward.clock.now(), .on = true}, "AB"));
    CHECK_FALSE(has(noticed(ward), "switch-on-warmer"));
    CHECK_FALSE(has(noticed(ward), "warmer-ready"));
    ward.clock.advance(minutes(30));
    CHECK(has(noticed(ward), "warmer-ready"));
    must(ward.store->switchWarmer(
        ward.unit, {.device = "warmer-1", .at = ward.clock.now(), .on = false}, "AB"));
    CHECK(has(noticed(ward), "warmer-off-too-soon"));
}
