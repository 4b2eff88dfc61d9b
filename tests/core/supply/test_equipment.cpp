// SPDX-License-Identifier: MIT
#include "core/supply/equipment.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

const Instant now = at("2026-11-24 08:00");

Equipment warmer()
{
    return {.id = "warmer-1",
        .kind = EquipmentKind::Warmer,
        .label = "Warmer at the window",
        .number = "SN 0042",
        .serves = {"warmer-function-test", "warmer-on-since"},
        .spareFor = "warmer-2",
        .serviceDays = 365,
        .calibrationDays = 180};
}

EquipmentEvent event(EquipmentDeed deed)
{
    return {.device = "warmer-1", .at = now, .deed = std::move(deed)};
}

std::vector<EquipmentEvent> oneOfEach()
{
    return {event(Added{.device = warmer(), .state = EquipmentState::Spare}),
        event(Changed{.device = {.id = "warmer-1", .kind = EquipmentKind::Other, .label = "Old warmer"}}),
        event(Moved{.to = EquipmentState::OutForRepair, .reason = MoveReason::FailedTest}), event(Serviced{}),
        event(Calibrated{}), event(ScaleChecked{.known = 2000, .read = 2010}),
        event(ThermometerChecked{.reference = num("-0.5"), .read = num("0.25")})};
}

}

TEST_CASE("every event is written and read again as it was")
{
    for (const EquipmentEvent& one : oneOfEach()) {
        CHECK(checkEvent(one).has_value());
        const Json body = toBody(one);
        CAPTURE(canonicalText(body));
        CHECK(isRecordBody(body));
        const auto again = equipmentEventFromBody(body);
        REQUIRE_MESSAGE(again.has_value(), (again ? "" : again.error().message));
        CHECK(*again == one);
    }
}

TEST_CASE("the body of an event is the agreed text")
{
    CHECK(canonicalText(toBody(oneOfEach()[2]))
        == R"({"at":1795507200000,"device":"warmer-1","did":"moved","reason":"failed-test","state":"out-for-repair"})");
    CHECK(canonicalText(toBody(oneOfEach()[1]))
        == R"({"at":1795507200000,"device":"warmer-1","did":"changed","what":{"kind":"other","label":"Old warmer"}})");
}

TEST_CASE("an event without one of its members, or with one too many, is refused")
{
    for (const EquipmentEvent& one : oneOfEach()) {
        const Json::Object whole = *toBody(one).asObject();
        for (std::size_t i = 0; i < whole.size(); ++i) {
            Json::Object less = whole;
            less.erase(less.begin() + static_cast<std::ptrdiff_t>(i));
            CAPTURE(whole[i].name);
            CHECK_FALSE(equipmentEventFromBody(less).has_value());
        }
        Json::Object more = whole;
        more.push_back({"colour", "red"});
        const auto read = equipmentEventFromBody(more);
        REQUIRE_FALSE(read.has_value());
        CHECK(read.error().code == ErrorCode::NewerSchema);
    }
}

TEST_CASE("a deed that is not known is refused")
{
    const Json body = parseJson(R"({"at":1,"device":"warmer-1","did":"painted"})").value();
    CHECK_FALSE(equipmentEventFromBody(body).has_value());
}

TEST_CASE("a device that cannot be is refused")
{
    const auto isRefused = [](void (*spoil)(Equipment&)) {
        Equipment device = warmer();
        spoil(device);
        return !checkEvent(event(Added{.device = device})).has_value();
    };
    CHECK(isRefused([](Equipment& d) { d.id = "warmer-9"; }));
    CHECK(isRefused([](Equipment& d) { d.label.clear(); }));
    CHECK(isRefused([](Equipment& d) { d.number = std::string(41, '1'); }));
    CHECK(isRefused([](Equipment& d) { d.serves = {"b", "a"}; }));
    CHECK(isRefused([](Equipment& d) { d.spareFor = "warmer-1"; }));
    CHECK(isRefused([](Equipment& d) { d.serviceDays = -1; }));
    CHECK(isRefused([](Equipment& d) { d.calibrationDays = 4000; }));
    CHECK_FALSE(checkEvent(event(ScaleChecked{.known = 0, .read = 0})).has_value());
    CHECK_FALSE(
        checkEvent(event(ThermometerChecked{.reference = num("201"), .read = num("20")})).has_value());
}

TEST_CASE("codes of equipment read back")
{
    for (int i = 0; i < 10; ++i)
        CHECK(
            equipmentKindFromCode(codeName(static_cast<EquipmentKind>(i))) == static_cast<EquipmentKind>(i));
    for (int i = 0; i < 4; ++i)
        CHECK(equipmentStateFromCode(codeName(static_cast<EquipmentState>(i)))
            == static_cast<EquipmentState>(i));
    for (int i = 0; i < 9; ++i)
        CHECK(moveReasonFromCode(codeName(static_cast<MoveReason>(i))) == static_cast<MoveReason>(i));
    CHECK_FALSE(equipmentKindFromCode("bed").has_value());
}
