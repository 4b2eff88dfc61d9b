// SPDX-License-Identifier: MIT
#include "core/store/handoverview.h"
#include "tests/core/store/ward.h"

#include <algorithm>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

HandoverView viewOf(Ward& ward)
{
    const Instant now = ward.clock.now();
    const auto shift = must(shiftView(*ward.store, ward.unit, now));
    return must(handoverView(*ward.store, shift, must(boardView(*ward.store, shift, now)), now));
}

std::vector<std::string> asks(const HandoverView& view)
{
    std::vector<std::string> all;
    for (const HandoverRequest& request : view.what.requests)
        all.push_back(std::string(codeName(request.ask)) + " " + request.subject);
    return all;
}

bool has(const std::vector<std::string>& all, const std::string& one)
{
    return std::find(all.begin(), all.end(), one) != all.end();
}

}

TEST_CASE("a shift without a round hands over that it has none, and asks the next one for its round")
{
    Ward ward;
    const HandoverView view = viewOf(ward);
    CHECK(view.what.state.empty());
    CHECK_FALSE(view.what.roundFinished.has_value());
    CHECK_FALSE(view.last.has_value());
    CHECK(view.changes.empty());
    REQUIRE(view.what.requests.size() == 1);
    CHECK(view.what.requests[0].ask == HandoverAsk::DoRound);
}

TEST_CASE("a shift hands over its verdict, gaps, warmers, births, low shelves and what they ask for")
{
    Ward ward;
    std::string critical;
    for (std::size_t at = 0; at < ward.checklist.itemCount() && critical.empty(); ++at) {
        if (ward.checklist.item(at).severity == Severity::Critical)
            critical = ward.checklist.item(at).id;
    }
    ward.save(ward.round(0).withGap(critical));
    ward.stockUp(); // 54 of 80 ampoules, a warmer that is on, a fridge, twins in two hours, a handover
    must(ward.store->moveStock(ward.unit,
        {{.item = "oxytocin", .kind = MovementKind::Issue, .at = ward.clock.now(), .quantity = 50}}, "AB"));
    const HandoverView view = viewOf(ward);
    CHECK(view.what.state == "not-ready");
    CHECK(view.what.met + 1 == view.what.applicable);
    REQUIRE(view.what.gaps.size() == 1);
    CHECK(view.what.gaps[0].item == critical);
    REQUIRE(view.what.births.size() == 1);
    CHECK(view.what.births[0].babies == 2);
    REQUIRE(view.what.warming.size() == 1);
    CHECK(view.what.warming[0].readyAt == ward.clock.now() + minutes(30));
    REQUIRE(view.what.stock.size() == 1);
    CHECK(view.what.stock[0].usable == 4);
    CHECK(view.what.stock[0].status == StockStatus::BelowEmergency);
    const auto asked = asks(view);
    CHECK(has(asked, "mend-before-birth " + critical));
    CHECK(has(asked, "restock oxytocin"));
    CHECK(view.stockNames.at("oxytocin") == "Oxytocin ampoules");
}

TEST_CASE("what changed since the handover before comes first in the trade's order; signed by two people")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    const auto first = viewOf(ward);
    const RecordId id = must(ward.store->giveHandover(
        ward.unit, {.what = first.what, .by = "A. B.", .at = ward.clock.now()}, "A. B."));
    const FactId given{.station = id.station, .seq = id.seq};
    const auto self = ward.store->takeHandover(
        ward.unit, {.given = given, .by = "a.b.", .at = ward.clock.now()}, "A. B.");
    REQUIRE_FALSE(self.has_value());
    CHECK(self.error().code == ErrorCode::InvalidArgument);
    must(ward.store->takeHandover(
        ward.unit, {.given = given, .by = "C. D.", .at = ward.clock.now()}, "C. D."));
    CHECK(viewOf(ward).changes.empty());
    ward.save(ward.round(0, 1).withGap("item-3"));
    const auto second = viewOf(ward);
    REQUIRE(second.last.has_value());
    REQUIRE(second.last->taken.has_value());
    CHECK(second.last->taken->by == "C. D.");
    REQUIRE(second.changes.size() >= 2);
    CHECK(std::is_sorted(second.changes.begin(), second.changes.end(),
        [](const HandoverChange& a, const HandoverChange& b) { return a.code < b.code; }));
    CHECK(std::any_of(second.changes.begin(), second.changes.end(), [](const HandoverChange& change) {
        return change.code == HandoverChangeCode::GapMended && change.subject == "item-2";
    }));
    CHECK(std::any_of(second.changes.begin(), second.changes.end(), [](const HandoverChange& change) {
        return change.code == HandoverChangeCode::GapOpened && change.subject == "item-3";
    }));
    CHECK(ward.fault().empty());
}
