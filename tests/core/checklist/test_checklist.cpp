// SPDX-License-Identifier: MIT
#include "core/checklist/checklist.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

Item itemCalled(std::string id)
{
    Item item;
    item.id = std::move(id);
    return item;
}

Checklist threeItems()
{
    Checklist checklist;
    checklist.sections.push_back({.id = "a", .title = {}, .items = {itemCalled("one"), itemCalled("two")}});
    checklist.sections.push_back({.id = "b", .title = {}, .items = {itemCalled("three")}});
    return checklist;
}

}

TEST_CASE("a wording is given in the language asked for, else in its base, else in English")
{
    const Wording wording({{"en", "Room"}, {"hi", "कमरा"}, {"pt-BR", "Sala"}});
    CHECK(wording.in("hi") == "कमरा");
    CHECK(wording.in("hi-IN") == "कमरा");
    CHECK(wording.in("hi_IN") == "कमरा");
    CHECK(wording.in("pt-BR") == "Sala");
    CHECK(wording.in("pt") == "Room");
    CHECK(wording.in("fr") == "Room");
    CHECK(wording.in("") == "Room");
    CHECK(wording.has("hi"));
    CHECK_FALSE(wording.has("hi-IN"));
}

TEST_CASE("a wording that was never written is empty in every language")
{
    CHECK(Wording().in("en").empty());
    CHECK(Wording().in("hi").empty());
}

TEST_CASE("positions run over all sections")
{
    const Checklist checklist = threeItems();
    CHECK(checklist.itemCount() == 3);
    CHECK(checklist.item(0).id == "one");
    CHECK(checklist.item(1).id == "two");
    CHECK(checklist.item(2).id == "three");
    CHECK(checklist.sectionOf(1).id == "a");
    CHECK(checklist.sectionOf(2).id == "b");
    CHECK(checklist.position("one") == std::size_t{0});
    CHECK(checklist.position("three") == std::size_t{2});
    CHECK_FALSE(checklist.position("four").has_value());
    CHECK(Checklist().itemCount() == 0);
}

TEST_CASE("an item's kind is the kind of its rule")
{
    Item item;
    CHECK(item.kind() == ItemKind::Confirm);
    item.rule = MeasureRule{};
    CHECK(item.kind() == ItemKind::Measure);
    item.rule = SinceRule{};
    CHECK(item.kind() == ItemKind::Since);
    item.rule = StepsRule{};
    CHECK(item.kind() == ItemKind::Steps);
    item.rule = CountRule{};
    CHECK(item.kind() == ItemKind::Count);
    item.rule = KitRule{};
    CHECK(item.kind() == ItemKind::Kit);
    item.rule = CylinderRule{};
    CHECK(item.kind() == ItemKind::Cylinder);
}

TEST_CASE("codes are stable and are read back")
{
    CHECK(std::string(codeName(Severity::Critical)) == "critical");
    CHECK(std::string(codeName(Severity::Major)) == "major");
    CHECK(std::string(codeName(Severity::Minor)) == "minor");
    CHECK(std::string(codeName(ItemKind::Confirm)) == "confirm");
    CHECK(std::string(codeName(ItemKind::Cylinder)) == "cylinder");
    CHECK(std::string(codeName(RoundKind::Shift)) == "shift");
    CHECK(std::string(codeName(RoundKind::Recheck)) == "recheck");
    CHECK(std::string(codeName(RoundKind::PreBirth)) == "pre-birth");
    CHECK(std::string(codeName(RoundKind::AfterUse)) == "after-use");
    for (const auto severity : {Severity::Critical, Severity::Major, Severity::Minor})
        CHECK(severityFromCode(codeName(severity)) == severity);
    for (const auto use : {RoundKind::Shift, RoundKind::Recheck, RoundKind::PreBirth, RoundKind::AfterUse})
        CHECK(roundKindFromCode(codeName(use)) == use);
    for (const auto kind : {ItemKind::Confirm, ItemKind::Measure, ItemKind::Since, ItemKind::Steps,
             ItemKind::Count, ItemKind::Kit, ItemKind::Cylinder})
        CHECK(itemKindFromCode(codeName(kind)) == kind);
}

TEST_CASE("a code that is not known is not guessed")
{
    CHECK_FALSE(severityFromCode("Critical").has_value());
    CHECK_FALSE(severityFromCode("").has_value());
    CHECK_FALSE(roundKindFromCode("prebirth").has_value());
    CHECK_FALSE(itemKindFromCode("counts").has_value());
}
