// SPDX-License-Identifier: MIT
#include "core/supply/stockmovement.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;
using Kind = MovementKind;

namespace {

StockMovement full()
{
    StockMovement out = moved(Kind::TransferOut, 6, "2026-11-24 08:00", "2027-03-31", "LOT 7/B");
    out.counterpart = "Postnatal";
    return out;
}

StockMovement lotCount()
{
    StockMovement out = countedAll(0, "2026-11-24 08:00");
    out.lot = "A";
    out.expiry = day("2027-03-31");
    out.scope = CountScope::OneLot;
    return out;
}

bool isRefused(StockMovement movement, void (*spoil)(StockMovement&))
{
    REQUIRE(checkMovement(movement).has_value());
    spoil(movement);
    const bool typed = !checkMovement(movement).has_value();
    const auto read = stockMovementFromBody(toBody(movement));
    return typed && !read && read.error().code == ErrorCode::BadDocument;
}

}

TEST_CASE("a movement is written and read again as it was")
{
    for (const StockMovement& movement : {full(), lotCount(), countedAll(5, "2026-11-24 08:00"),
             moved(Kind::Wastage, 1, "2026-11-24 08:00")}) {
        CHECK(checkMovement(movement).has_value());
        const Json body = toBody(movement);
        CHECK(isRecordBody(body));
        CHECK_FALSE(isItemBody(body));
        const auto again = stockMovementFromBody(body);
        REQUIRE_MESSAGE(again.has_value(), (again ? "" : again.error().message));
        CHECK(*again == movement);
    }
}

TEST_CASE("the body of a movement is the agreed text")
{
    CHECK(canonicalText(toBody(full()))
        == R"({"at":1795507200000,"counterpart":"Postnatal","expiry":"2027-03-31","item":"oxytocin",)"
           R"("kind":"transfer-out","lot":"LOT 7/B","quantity":6})");
    CHECK(canonicalText(toBody(lotCount()))
        == R"({"at":1795507200000,"expiry":"2027-03-31","item":"oxytocin","kind":"count-correction","lot":"A",)"
           R"("quantity":0,"reason":"not-known","scope":"lot"})");
}

TEST_CASE("a movement that says nothing or too much is refused, typed or read")
{
    CHECK(isRefused(full(), [](StockMovement& m) { m.item = ""; }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.quantity = 0; }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.quantity = -1; }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.quantity = mostPieces + 1; }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.lot = std::string(41, 'x'); }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.lot = " "; }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.counterpart = std::string(41, 'x'); }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.kind = Kind::Issue; })); // an issue goes nowhere
    CHECK(isRefused(full(), [](StockMovement& m) { m.reason = MovementReason::Lost; }));
    CHECK(isRefused(full(), [](StockMovement& m) { m.expiry = Date(std::chrono::year(2027) / 2 / 30); }));
}

TEST_CASE("a count names just what it counted, and why the book was wrong")
{
    CHECK(isRefused(lotCount(), [](StockMovement& m) { m.reason = MovementReason::None; }));
    CHECK(isRefused(lotCount(), [](StockMovement& m) { m.scope = CountScope::OneDate; }));
    CHECK(isRefused(lotCount(), [](StockMovement& m) { m.scope = CountScope::Everything; }));
    CHECK(isRefused(lotCount(), [](StockMovement& m) { m.quantity = -1; }));
    StockMovement issue = moved(Kind::Issue, 1, "2026-11-24 08:00");
    issue.scope = CountScope::OneLot;
    CHECK_FALSE(checkMovement(issue).has_value());
}

TEST_CASE("codes of movements read back")
{
    for (int i = 0; i < 7; ++i)
        CHECK(movementKindFromCode(codeName(static_cast<Kind>(i))) == static_cast<Kind>(i));
    for (int i = 0; i < 8; ++i)
        CHECK(movementReasonFromCode(codeName(static_cast<MovementReason>(i)))
            == static_cast<MovementReason>(i));
    for (int i = 0; i < 3; ++i)
        CHECK(countScopeFromCode(codeName(static_cast<CountScope>(i))) == static_cast<CountScope>(i));
    CHECK_FALSE(movementKindFromCode("item").has_value());
}

TEST_CASE("a movement either comes in, goes out or counts")
{
    int in = 0;
    int out = 0;
    for (int i = 0; i < 7; ++i) {
        in += goesIn(static_cast<Kind>(i)) ? 1 : 0;
        out += goesOut(static_cast<Kind>(i)) ? 1 : 0;
    }
    CHECK(in == 2);
    CHECK(out == 4);
    CHECK_FALSE(goesOut(Kind::CountCorrection));
    CHECK_FALSE(goesIn(Kind::CountCorrection));
}
