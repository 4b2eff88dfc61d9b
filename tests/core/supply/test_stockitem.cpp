// SPDX-License-Identifier: MIT
#include "core/supply/stockitem.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

StockItem oxytocin()
{
    return {.id = "oxytocin",
        .name = "Oxytocin 10 IU",
        .at = at("2026-11-24 08:00"),
        .levels = {.par = 40, .minimum = 20, .emergency = 10},
        .expires = true,
        .fridge = "fridge-1",
        .harmedByFrost = true,
        .packSize = 10,
        .perBirth = num("1.2"),
        .deliveryDays = 14,
        .service = num("0.98"),
        .serves = {"oxytocin", "uterotonic"},
        .retired = true};
}

bool isRefused(void (*spoil)(StockItem&))
{
    StockItem item = oxytocin();
    spoil(item);
    const auto sound = checkItem(item);
    return !sound && sound.error().code == ErrorCode::InvalidArgument;
}

}

TEST_CASE("the status of a shelf names the lowest level that it has fallen to")
{
    const StockLevels levels{.par = 40, .minimum = 20, .emergency = 10};
    CHECK(statusOf(levels, 0) == StockStatus::Out);
    CHECK(statusOf(levels, 1) == StockStatus::BelowEmergency);
    CHECK(statusOf(levels, 9) == StockStatus::BelowEmergency);
    CHECK(statusOf(levels, 10) == StockStatus::BelowMinimum);
    CHECK(statusOf(levels, 20) == StockStatus::BelowMinimum);
    CHECK(statusOf(levels, 21) == StockStatus::BelowPar);
    CHECK(statusOf(levels, 39) == StockStatus::BelowPar);
    CHECK(statusOf(levels, 40) == StockStatus::AtPar);
    CHECK(statusOf(levels, 400) == StockStatus::AtPar);
}

TEST_CASE("an item without a par is never short")
{
    CHECK(statusOf({}, 0) == StockStatus::AtPar);
    CHECK(statusOf({.par = 5, .minimum = 5, .emergency = 0}, 5) == StockStatus::AtPar);
    CHECK(statusOf({.par = 5, .minimum = 5, .emergency = 0}, 4) == StockStatus::BelowMinimum);
}

TEST_CASE("an item is written and read again as it was")
{
    StockItem bare{.id = "gauze", .name = "Gauze"};
    for (const StockItem& item : {oxytocin(), bare}) {
        CHECK(checkItem(item).has_value());
        const Json body = toBody(item);
        CHECK(isRecordBody(body));
        CHECK(isItemBody(body));
        const auto again = stockItemFromBody(body);
        REQUIRE_MESSAGE(again.has_value(), (again ? "" : again.error().message));
        CHECK(*again == item);
    }
}

TEST_CASE("an item that nobody can mean is refused")
{
    CHECK(isRefused([](StockItem& i) { i.id = "Oxytocin"; }));
    CHECK(isRefused([](StockItem& i) { i.name = "  "; }));
    CHECK(isRefused([](StockItem& i) { i.name = std::string(61, 'x'); }));
    CHECK(isRefused([](StockItem& i) { i.levels.minimum = 41; }));
    CHECK(isRefused([](StockItem& i) { i.levels.emergency = 21; }));
    CHECK(isRefused([](StockItem& i) { i.levels.emergency = -1; }));
    CHECK(isRefused([](StockItem& i) { i.levels.par = mostPieces + 1; }));
    CHECK(isRefused([](StockItem& i) { i.packSize = 0; }));
    CHECK(isRefused([](StockItem& i) { i.perBirth = num("-1"); }));
    CHECK(isRefused([](StockItem& i) { i.perBirth = num("1001"); }));
    CHECK(isRefused([](StockItem& i) { i.deliveryDays = -1; }));
    CHECK(isRefused([](StockItem& i) { i.deliveryDays = 367; }));
    CHECK(isRefused([](StockItem& i) { i.service = num("0.499"); }));
    CHECK(isRefused([](StockItem& i) { i.service = num("1"); }));
    CHECK(isRefused([](StockItem& i) { i.fridge = "the fridge"; }));
    CHECK(isRefused([](StockItem& i) { i.serves = {"b", "a"}; }));
    CHECK(isRefused([](StockItem& i) { i.serves = {"a", "a"}; }));
}

TEST_CASE("an item body with levels that do not rise is a bad document")
{
    StockItem item = oxytocin();
    item.levels.minimum = 50;
    const auto read = stockItemFromBody(toBody(item));
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().code == ErrorCode::BadDocument);
}

TEST_CASE("codes of the status read back")
{
    for (const auto status : {StockStatus::Out, StockStatus::BelowEmergency, StockStatus::BelowMinimum,
             StockStatus::BelowPar, StockStatus::AtPar})
        CHECK(stockStatusFromCode(codeName(status)) == status);
    CHECK_FALSE(stockStatusFromCode("none").has_value());
}
