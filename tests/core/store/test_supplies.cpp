// SPDX-License-Identifier: MIT
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

ErrorCode codeOf(const Result<void>& done)
{
    REQUIRE_FALSE(done.has_value());
    return done.error().code;
}

Result<void> issue(Ward& ward, std::int64_t pieces)
{
    return ward.store->moveStock(ward.unit,
        {{.item = "oxytocin", .kind = MovementKind::Issue, .at = ward.clock.now(), .quantity = pieces}},
        "AB");
}

}

TEST_CASE("what was entered of supplies and devices is read back, also after a rebuild")
{
    Ward ward;
    ward.stockUp();
    for (int i = 0; i < 2; ++i) {
        CAPTURE(i);
        const ItemBook book = must(ward.store->stockBook(ward.unit)).at("oxytocin");
        REQUIRE(book.lots.size() == 2);
        CHECK(book.lots[0].key.number == "A1");
        CHECK(book.lots[0].pieces == 34);
        CHECK(book.lots[1].pieces == 20);
        CHECK(must(ward.store->stockItems(ward.unit)) == std::vector{Ward::anItem(ward.clock.now())});
        CHECK(must(ward.store->equipmentRegister(ward.unit)).devices.size() == 2);
        CHECK_FALSE(must(ward.store->warmerRuns(ward.unit)).at(0).off.has_value());
        CHECK(must(ward.store->fridgeReadings(ward.unit, fromMs(0))).at(0).celsius == Decimal{4500});
        CHECK(must(ward.store->fridgeReadings(ward.unit, ward.clock.now() + milliseconds(1))).empty());
        CHECK(must(ward.store->birthBoard(ward.unit)).at(0).what.babies == 2);
        CHECK(must(ward.store->lastHandover(ward.unit))->given.by == "AB");
        CHECK(ward.fault() == "");
        must(ward.store->rebuild());
    }
}

TEST_CASE("who hears of a gap that lasts is as the unit set it last, also after a rebuild")
{
    Ward ward;
    const std::vector<EscalationLevel> usual(usualEscalation.begin(), usualEscalation.end());
    CHECK(must(ward.store->escalation(ward.unit)) == usual);
    const std::vector own{EscalationLevel{EscalationTo::InCharge, 50}, EscalationLevel{EscalationTo::District, 300}};
    must(ward.store->setEscalation(ward.unit, {}, "AB"));
    ward.clock.advance(minutes(1));
    must(ward.store->setEscalation(ward.unit, own, "AB"));
    CHECK(codeOf(ward.store->setEscalation(ward.unit, {own[1], own[0]}, "AB")) == ErrorCode::InvalidArgument);
    CHECK(codeOf(ward.store->setEscalation("nowhere", own, "AB")) == ErrorCode::NotFound);
    CHECK(must(ward.store->escalation(ward.unit)) == own);
    CHECK(ward.fault() == "");
    must(ward.store->rebuild());
    CHECK(must(ward.store->escalation(ward.unit)) == own);
}

TEST_CASE("an item is as it was last described, whatever was described first")
{
    Ward ward;
    StockItem item = Ward::anItem(ward.clock.now());
    item.levels.par = 50;
    must(ward.store->describeStockItem(ward.unit, item, "AB"));
    item.at -= hours(3);
    item.levels.par = 60;
    must(ward.store->describeStockItem(ward.unit, item, "AB"));
    REQUIRE(must(ward.store->stockItems(ward.unit)).size() == 1);
    CHECK(must(ward.store->stockItems(ward.unit))[0].levels.par == 50);
}

TEST_CASE("more than the book holds is refused, and then none of the movements is kept")
{
    Ward ward;
    ward.stockUp();
    CHECK(codeOf(issue(ward, 55)) == ErrorCode::InvalidArgument);
    const auto both = ward.store->moveStock(ward.unit,
        {{.item = "oxytocin", .kind = MovementKind::Issue, .at = ward.clock.now(), .quantity = 54},
            {.item = "oxytocin", .kind = MovementKind::Issue, .at = ward.clock.now(), .quantity = 1}},
        "AB");
    CHECK(codeOf(both) == ErrorCode::InvalidArgument);
    CHECK(must(ward.store->stockBook(ward.unit)).at("oxytocin").pieces() == 54);
    must(issue(ward, 54));
    CHECK(must(ward.store->stockBook(ward.unit)).at("oxytocin").pieces() == 0);
    CHECK(ward.fault() == "");
}

TEST_CASE("what names something that nobody set up is not found")
{
    Ward ward;
    const Instant now = ward.clock.now();
    CHECK(codeOf(issue(ward, 1)) == ErrorCode::NotFound);
    CHECK(
        codeOf(ward.store->noteFridge(ward.unit, {.fridge = "f", .at = now, .celsius = Decimal{4000}}, "AB"))
        == ErrorCode::NotFound);
    CHECK(codeOf(ward.store->switchWarmer(ward.unit, {.device = "w", .at = now, .on = true}, "AB"))
        == ErrorCode::NotFound);
    CHECK(codeOf(ward.store->noteEquipment(ward.unit, {{.device = "w", .at = now, .deed = Serviced{}}}, "AB"))
        == ErrorCode::NotFound);
    CHECK(codeOf(ward.store->noteBirth(
              ward.unit, {.birth = "b", .at = now, .change = BirthChange::Done, .expected = now}, "AB"))
        == ErrorCode::NotFound);
    CHECK(codeOf(ward.store->describeStockItem("nowhere", Ward::anItem(now), "AB")) == ErrorCode::NotFound);
    ward.stockUp();
    CHECK(codeOf(ward.store->switchWarmer(ward.unit, {.device = "fridge-1", .at = now, .on = true}, "AB"))
        == ErrorCode::NotFound);
}

TEST_CASE("what lies well ahead of now is refused as a slip of the keyboard")
{
    Ward ward;
    ward.stockUp();
    const Instant soon = ward.clock.now() + minutes(5);
    const Instant late = soon + minutes(1);
    const auto receipt = [&](Instant at) {
        return ward.store->moveStock(ward.unit,
            {{.item = "oxytocin", .at = at, .quantity = 5, .expiry = addDays(firstDay, 400)}}, "AB");
    };
    must(receipt(soon));
    CHECK(codeOf(receipt(late)) == ErrorCode::InvalidArgument);
    CHECK(codeOf(ward.store->noteFridge(
              ward.unit, {.fridge = "fridge-1", .at = late, .celsius = Decimal{4000}}, "AB"))
        == ErrorCode::InvalidArgument);
    CHECK(codeOf(ward.store->describeStockItem(ward.unit, Ward::anItem(late), "AB"))
        == ErrorCode::InvalidArgument);
}

TEST_CASE("a device is added once, and a birth that is over does not come back")
{
    Ward ward;
    ward.stockUp();
    const Instant now = ward.clock.now();
    const EquipmentEvent again{.device = "warmer-1",
        .at = now,
        .deed = Added{.device = {.id = "warmer-1", .kind = EquipmentKind::Warmer, .label = "Again"}}};
    CHECK(codeOf(ward.store->noteEquipment(ward.unit, {again}, "AB")) == ErrorCode::AlreadyExists);
    must(ward.store->noteBirth(ward.unit, {.birth = "b1", .at = now, .change = BirthChange::Done}, "AB"));
    CHECK(expectedAt(must(ward.store->birthBoard(ward.unit)), now).empty());
    CHECK(codeOf(ward.store->noteBirth(ward.unit, {.birth = "b1", .at = now, .expected = now}, "AB"))
        == ErrorCode::InvalidArgument);
}

TEST_CASE("a handover is taken once, and only one that was given")
{
    Ward ward;
    ward.stockUp();
    const LastHandover last = must(ward.store->lastHandover(ward.unit)).value();
    CHECK_FALSE(last.taken.has_value());
    HandoverTaken taken{.given = last.id, .by = "CD", .at = ward.clock.now()};
    must(ward.store->takeHandover(ward.unit, taken, "CD"));
    CHECK(must(ward.store->lastHandover(ward.unit))->taken == taken);
    CHECK(codeOf(ward.store->takeHandover(ward.unit, taken, "EF")) == ErrorCode::AlreadyExists);
    taken.given.seq = 1;
    CHECK(codeOf(ward.store->takeHandover(ward.unit, taken, "CD")) == ErrorCode::NotFound);
    CHECK(ward.fault() == "");
}
