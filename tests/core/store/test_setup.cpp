// SPDX-License-Identifier: MIT
#include "ward.h"

#include <filesystem>

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("a fresh store has no units, and describing one makes it known")
{
    const TempDir dir;
    FixedClock clock(fromMs(0));
    const auto store = must(Store::open(dir.file("new.db"), clock));
    CHECK(must(store->units()).empty());
    must(store->describeUnit(aUnit(), "AB"));
    CHECK(must(store->units()) == std::vector{aUnit()});
    CHECK(store->path() == dir.file("new.db"));
}

TEST_CASE("the key file is made at the first write, not before")
{
    const TempDir dir;
    FixedClock clock(fromMs(0));
    const auto store = must(Store::open(dir.file("new.db"), clock));
    CHECK_FALSE(std::filesystem::exists(dir.file("new.db.key")));
    must(store->describeUnit(aUnit(), "AB"));
    CHECK(std::filesystem::exists(dir.file("new.db.key")));
}

TEST_CASE("units come by name, and the later description of one holds")
{
    Ward ward;
    must(
        ward.store->describeUnit({.id = "alder-fen", .name = "Alder Fen", .zone = "UTC", .level = ""}, "AB"));
    Unit moved = aUnit();
    moved.level = "district hospital";
    must(ward.store->describeUnit(moved, "AB"));
    const auto units = must(ward.store->units());
    REQUIRE(units.size() == 2);
    CHECK(units[0].id == "alder-fen");
    CHECK(units[1] == moved);
}

TEST_CASE("the later description holds even when the clock was set back in between")
{
    Ward ward;
    ward.clock.advance(-std::chrono::hours(24 * 400));
    Unit renamed = aUnit();
    renamed.name = "Sorrel Hill East";
    must(ward.store->describeUnit(renamed, "AB"));
    CHECK(must(ward.store->units()).front().name == "Sorrel Hill East");
    CHECK(ward.fault() == "");
}

TEST_CASE("a unit needs a plain id, a name and a zone that exists")
{
    Ward ward;
    const auto refused = [&](Unit unit) { return !ward.store->describeUnit(unit, "AB").has_value(); };
    Unit unit = aUnit();
    for (const std::string& id :
        {std::string(), std::string("Sorrel"), std::string("a b"), std::string(25, 'a')}) {
        unit.id = id;
        CHECK(refused(unit));
    }
    unit = aUnit();
    unit.name = "";
    CHECK(refused(unit));
    unit.name = "two\nlines";
    CHECK(refused(unit));
    unit = aUnit();
    unit.zone = "Middle/Nowhere";
    CHECK(refused(unit));
    CHECK(must(ward.store->verify()).records == 4);
}

TEST_CASE("a record needs to know who made it")
{
    Ward ward;
    CHECK(ward.store->describeUnit(aUnit(), "").error().code == ErrorCode::InvalidArgument);
    CHECK(ward.store->describeUnit(aUnit(), "\xFF").error().code == ErrorCode::InvalidArgument);
}

TEST_CASE("a unit keeps its pattern until the day on which the next one begins")
{
    Ward ward;
    must(ward.store->setPattern(
        ward.unit, {.from = addDays(firstDay, 10), .pattern = ShiftPattern::threeByEight()}, "AB"));
    CHECK(
        must(ward.store->calendar(ward.unit, addDays(firstDay, 9))).pattern() == ShiftPattern::twoByTwelve());
    const auto later = must(ward.store->calendar(ward.unit, addDays(firstDay, 10)));
    CHECK(later.pattern() == ShiftPattern::threeByEight());
    CHECK(later.zone().name() == "Asia/Kolkata");
}

TEST_CASE("a pattern set twice for one day is the later one, also by a clock set back")
{
    Ward ward;
    const Date from = std::chrono::year(2020) / 1 / 1;
    ward.clock.advance(-std::chrono::hours(48));
    must(ward.store->setPattern(ward.unit, {.from = from, .pattern = ShiftPattern::threeByEight()}, "AB"));
    CHECK(must(ward.store->calendar(ward.unit, firstDay)).pattern() == ShiftPattern::threeByEight());
}

TEST_CASE("there is no calendar before the first pattern nor for an unknown unit")
{
    Ward ward;
    CHECK(ward.store->calendar(ward.unit, std::chrono::year(2019) / 12 / 31).error().code
        == ErrorCode::NotFound);
    CHECK(ward.store->calendar("nowhere", firstDay).error().code == ErrorCode::NotFound);
    CHECK(ward.store->setPattern("nowhere", {.from = firstDay, .pattern = ShiftPattern::twoByTwelve()}, "AB")
              .error()
              .code
        == ErrorCode::NotFound);
}

TEST_CASE("the list of people is replaced as a whole and may be empty")
{
    Ward ward;
    CHECK(must(ward.store->people(ward.unit)).size() == 2);
    const std::vector<Person> one{{.initials = "मकर", .role = "midwife"}};
    must(ward.store->setPeople(ward.unit, one, "AB"));
    CHECK(must(ward.store->people(ward.unit)) == one);
    must(ward.store->setPeople(ward.unit, {}, "AB"));
    CHECK(must(ward.store->people(ward.unit)).empty());
    CHECK(must(ward.store->people("nowhere")).empty());
    CHECK(ward.fault() == "");
}

TEST_CASE("initials are 1 to 12 characters and stand once in the list")
{
    Ward ward;
    const auto refused = [&](std::vector<Person> people) {
        return ward.store->setPeople(ward.unit, people, "AB").error().code == ErrorCode::InvalidArgument;
    };
    CHECK(refused({{.initials = "", .role = ""}}));
    CHECK(refused({{.initials = "THIRTEENCHARS", .role = ""}}));
    CHECK(refused({{.initials = "AB", .role = ""}, {.initials = "AB", .role = "midwife"}}));
    CHECK(must(ward.store->people(ward.unit)).size() == 2);
}

TEST_CASE("a unit uses the checklist that it adopted last before the day")
{
    Ward ward;
    Adoption next = aPlainAdoption(15, 2);
    next.from = addDays(firstDay, 5);
    must(ward.store->adopt(ward.unit, next, "AB"));
    CHECK(must(ward.store->checklistFor(ward.unit, RoundKind::Shift, addDays(firstDay, 4))).checklist.version
        == 1);
    const auto adopted = must(ward.store->checklistFor(ward.unit, RoundKind::Shift, addDays(firstDay, 5)));
    CHECK(adopted.checklist.version == 2);
    CHECK(adopted.checklist.itemCount() == 15);
    CHECK(must(ward.store->checklistFor(ward.unit, RoundKind::Recheck, firstDay)).checklist.version == 1);
    CHECK(ward.store->checklistFor(ward.unit, RoundKind::PreBirth, firstDay).error().code
        == ErrorCode::NotFound);
    CHECK(must(ward.store->checklist("plain", 1)).itemCount() == 12);
}

TEST_CASE("the three checklists of the program can be adopted side by side, with limits picked")
{
    Ward ward(anAdoption(RoundKind::Shift));
    must(ward.store->adopt(ward.unit, anAdoption(RoundKind::PreBirth), "AB"));
    must(ward.store->adopt(ward.unit, anAdoption(RoundKind::AfterUse), "AB"));
    CHECK(must(ward.store->checklistFor(ward.unit, RoundKind::AfterUse, firstDay)).checklist.use
        == RoundKind::AfterUse);
    const Item& item = ward.checklist.item(*ward.checklist.position("room-temperature"));
    const auto& sets = std::get<MeasureRule>(item.rule).limits;
    REQUIRE(sets.size() > 1);
    Adoption picked = anAdoption(RoundKind::Shift);
    picked.limits = {{item.id, sets[1].id}};
    must(ward.store->adopt(ward.unit, picked, "AB"));
    CHECK(must(ward.store->checklistFor(ward.unit, RoundKind::Shift, firstDay)).limits == picked.limits);
    CHECK(ward.fault() == "");
}

TEST_CASE("a broken document, an unknown limit and a changed document under an old version are refused")
{
    Ward ward;
    Adoption broken = aPlainAdoption(12, 2);
    std::get<Json::Object>(broken.document.value)
        .erase(std::get<Json::Object>(broken.document.value).begin());
    CHECK(ward.store->adopt(ward.unit, broken, "AB").error().code == ErrorCode::BadDocument);
    Adoption limits = aPlainAdoption(12, 2);
    limits.limits = {{"item-3", "no-such-set"}};
    CHECK(ward.store->adopt(ward.unit, limits, "AB").error().code == ErrorCode::InvalidArgument);
    limits.limits = {{"item-0", "room"}};
    CHECK(ward.store->adopt(ward.unit, limits, "AB").error().code == ErrorCode::InvalidArgument);
    CHECK(ward.store->adopt(ward.unit, aPlainAdoption(13, 1), "AB").error().code == ErrorCode::AlreadyExists);
    CHECK(ward.store->adopt("nowhere", aPlainAdoption(12), "AB").error().code == ErrorCode::NotFound);
    CHECK(must(ward.store->verify()).records == 4);
    CHECK(ward.store->checklist("plain", 2).error().code == ErrorCode::NotFound);
}

TEST_CASE("the same document may be adopted again, by another unit too")
{
    Ward ward;
    addUnit(*ward.store, aUnit("alder-fen"), aPlainAdoption(12));
    must(ward.store->adopt(ward.unit, aPlainAdoption(12), "AB"));
    CHECK(
        must(ward.store->checklistFor("alder-fen", RoundKind::Shift, firstDay)).checklist.itemCount() == 12);
    CHECK(ward.fault() == "");
}
