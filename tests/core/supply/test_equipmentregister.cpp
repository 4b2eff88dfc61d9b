// SPDX-License-Identifier: MIT
#include "core/supply/equipmentregister.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

EquipmentEvent event(std::string device, std::string_view when, EquipmentDeed deed)
{
    return {.device = std::move(device), .at = at(when), .deed = std::move(deed)};
}

EquipmentEvent added(
    const std::string& id, EquipmentKind kind, EquipmentState state, std::string spareFor = {})
{
    return event(id, "2026-01-01 08:00",
        Added{.device = {.id = id, .kind = kind, .label = id, .spareFor = std::move(spareFor)},
            .state = state});
}

EquipmentEvent moved(const std::string& id, std::string_view when, EquipmentState to, MoveReason reason)
{
    return event(id, when, Moved{.to = to, .reason = reason});
}

EquipmentRegister folded(std::vector<EquipmentEvent> events)
{
    return foldEquipment(recordedAll(std::move(events)));
}

using State = EquipmentState;
using Kind = EquipmentKind;

}

TEST_CASE("a device stands as its last move left it, with all its states behind it")
{
    const auto out = folded({added("warmer-1", Kind::Warmer, State::InUse),
        moved("warmer-1", "2026-02-01 08:00", State::OutForRepair, MoveReason::Broken),
        moved("warmer-1", "2026-02-02 08:00", State::OutForRepair, MoveReason::Broken),
        moved("warmer-1", "2026-02-05 08:00", State::Spare, MoveReason::Repaired)});
    const EquipmentStanding& warmer = out.devices.at("warmer-1");
    CHECK(warmer.state() == State::Spare);
    REQUIRE(warmer.spans.size() == 3);
    CHECK(warmer.spans[1].from == at("2026-02-01 08:00"));
    CHECK(out.strays.empty());
}

TEST_CASE("the register is the same in whatever order the records arrive")
{
    const auto facts = recordedAll<EquipmentEvent>(
        {added("warmer-1", Kind::Warmer, State::InUse), event("warmer-1", "2026-02-01 08:00", Serviced{}),
            event("warmer-1", "2026-03-01 08:00",
                Changed{.device = {.id = "warmer-1", .kind = Kind::Warmer, .label = "W"}}),
            moved("warmer-1", "2026-04-01 08:00", State::Retired, MoveReason::WornOut)});
    const auto out = foldEquipment(facts);
    CHECK(foldEquipment({facts[3], facts[2], facts[1], facts[0], facts[2]}) == out);
    CHECK(out.devices.at("warmer-1").device.label == "W");
    CHECK(out.devices.at("warmer-1").serviced == at("2026-02-01 08:00"));
}

TEST_CASE("events of a device that nobody added, or that is added again, are kept as strays")
{
    const auto out = folded({added("warmer-1", Kind::Warmer, State::InUse),
        added("warmer-1", Kind::Scale, State::Spare), event("scale-9", "2026-02-01 08:00", Serviced{})});
    CHECK(out.devices.size() == 1);
    CHECK(out.devices.at("warmer-1").device.kind == Kind::Warmer);
    CHECK(out.strays == std::vector<FactId>{{.station = "a", .seq = 2}, {.station = "a", .seq = 3}});
}

TEST_CASE("the last checks are kept with their time")
{
    const auto out = folded({added("scale-1", Kind::Scale, State::InUse),
        event("scale-1", "2026-02-01 08:00", ScaleChecked{.known = 2000, .read = 2000}),
        event("scale-1", "2026-02-02 08:00", ScaleChecked{.known = 2000, .read = 2020}),
        event("scale-1", "2026-02-03 08:00", ThermometerChecked{.reference = num("25"), .read = num("26")})});
    const EquipmentStanding& scale = out.devices.at("scale-1");
    REQUIRE(scale.scaleCheck.has_value());
    CHECK(scale.scaleCheck->at == at("2026-02-02 08:00"));
    CHECK(scale.scaleCheck->what.read == 2020);
    CHECK(scale.thermometerCheck->what.read == num("26"));
}

TEST_CASE("upkeep is due so long after the last time, or after the device came")
{
    Equipment scale{
        .id = "scale-1", .kind = Kind::Scale, .label = "Scale", .serviceDays = 365, .calibrationDays = 30};
    const auto out = folded({event("scale-1", "2026-01-01 20:00", Added{.device = scale}),
        event("scale-1", "2026-02-01 08:00", Calibrated{})});
    // 20:00 UTC on 1 January is 2 January in India.
    const auto zone = TimeZone::named("Asia/Kolkata").value();
    const auto due = upkeepOf(out, zone, day("2026-03-03"));
    REQUIRE(due.size() == 2);
    CHECK(due[0]
        == UpkeepDue{.device = "scale-1",
            .kind = UpkeepKind::Calibration,
            .due = day("2026-03-03"),
            .overdue = false});
    CHECK(due[1].kind == UpkeepKind::Service);
    CHECK(due[1].due == day("2027-01-02"));
    CHECK(upkeepOf(out, zone, day("2026-03-04")).at(0).overdue);
}

TEST_CASE("a retired device needs no upkeep, and one without a plan has none")
{
    Equipment scale{.id = "scale-1", .kind = Kind::Scale, .label = "Scale", .serviceDays = 365};
    const auto out = folded({event("scale-1", "2026-01-01 20:00", Added{.device = scale}),
        moved("scale-1", "2026-02-01 08:00", State::Retired, MoveReason::WornOut),
        added("scale-2", Kind::Scale, State::InUse)});
    CHECK(upkeepOf(out, TimeZone::utc(), day("2028-01-01")).empty());
}

TEST_CASE("the spare kept for a device steps in before any of its kind")
{
    const auto all = folded(
        {added("warmer-1", Kind::Warmer, State::InUse), added("warmer-2", Kind::Warmer, State::Spare),
            added("warmer-3", Kind::Warmer, State::Spare, "warmer-1"),
            added("scale-1", Kind::Scale, State::Spare)});
    CHECK(spareFor(all, "warmer-1") == "warmer-3");
    CHECK_FALSE(spareFor(all, "scale-1").has_value());
    CHECK_FALSE(spareFor(all, "nobody").has_value());
    const auto kind = folded(
        {added("warmer-1", Kind::Warmer, State::InUse), added("warmer-2", Kind::Warmer, State::Spare),
            added("warmer-4", Kind::Warmer, State::Spare, "warmer-5")});
    CHECK(spareFor(kind, "warmer-1") == "warmer-2");
}

TEST_CASE("a device that fails goes out and its spare steps in")
{
    std::vector<EquipmentEvent> history{
        added("warmer-1", Kind::Warmer, State::InUse), added("warmer-2", Kind::Warmer, State::Spare)};
    const auto events = takeOut(folded(history), "warmer-1", MoveReason::Broken, at("2026-02-01 08:00"));
    REQUIRE(events.size() == 2);
    history.insert(history.end(), events.begin(), events.end());
    const auto after = folded(history);
    CHECK(after.devices.at("warmer-1").state() == State::OutForRepair);
    CHECK(after.devices.at("warmer-2").state() == State::InUse);
    CHECK(after.devices.at("warmer-2").spans.back().reason == MoveReason::StepsIn);
    // A spare that fails leaves nobody without.
    CHECK(takeOut(folded(history), "warmer-2", MoveReason::Broken, at("2026-02-01 08:00")).size() == 1);
}

TEST_CASE("a device that comes back sends the spare back that stepped in for it, and no other")
{
    auto events = std::vector{added("warmer-1", Kind::Warmer, State::InUse),
        added("warmer-2", Kind::Warmer, State::Spare), added("warmer-3", Kind::Warmer, State::InUse)};
    const auto out = takeOut(folded(events), "warmer-1", MoveReason::Broken, at("2026-03-01 08:00"));
    REQUIRE(out.size() == 2);
    events.insert(events.end(), out.begin(), out.end());
    const Instant later = at("2026-03-22 08:00");
    const auto back = bringBack(folded(events), "warmer-1", later);
    REQUIRE(back.size() == 2);
    CHECK(back[0].device == "warmer-1");
    CHECK(std::get<Moved>(back[0].deed) == Moved{.to = State::InUse, .reason = MoveReason::Repaired});
    CHECK(back[1].device == "warmer-2");
    CHECK(std::get<Moved>(back[1].deed) == Moved{.to = State::Spare, .reason = MoveReason::StepsBack});
    // The spare has been moved for another reason since: it stays where it is.
    events.push_back(moved("warmer-2", "2026-03-05 08:00", State::Spare, MoveReason::StepsBack));
    events.push_back(moved("warmer-2", "2026-03-06 08:00", State::InUse, MoveReason::StepsIn));
    CHECK(bringBack(folded(events), "warmer-1", later).size() == 1);
    CHECK(bringBack(folded({}), "warmer-9", later).size() == 1);
}
