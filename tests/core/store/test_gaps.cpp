// SPDX-License-Identifier: MIT
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono_literals;

TEST_CASE("a gap opens with the round that finds it and closes with the one that finds it met")
{
    Ward ward;
    const RecordId found = ward.save(ward.round(0).withGap("item-2", GapReason::NotWorking));
    auto open = must(ward.store->openGaps(ward.unit));
    REQUIRE(open.size() == 1);
    CHECK(open[0].item == "item-2");
    CHECK(open[0].nth == 1);
    CHECK(open[0].reason.code == ReasonCode::NotWorking);
    CHECK(open[0].reason.item == "item-2");
    CHECK(open[0].reason.severity == open[0].severity);
    CHECK(open[0].openedBy == found);
    CHECK(open[0].openedSlot == ward.slot(0));
    ward.save(ward.round(0, 1).withGap("item-2", GapReason::Absent));
    open = must(ward.store->openGaps(ward.unit));
    REQUIRE(open.size() == 1);
    CHECK(open[0].found == 2);
    CHECK(open[0].reason.code == ReasonCode::Absent);
    const RecordId mended = ward.save(ward.round(1));
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    const auto closed = must(ward.store->closedGaps(ward.unit, fromMs(0)));
    REQUIRE(closed.size() == 1);
    CHECK(closed[0].closedBy == mended);
    CHECK(closed[0].closedSlot == ward.slot(1));
    CHECK_FALSE(closed[0].closedAsNotApplicable);
    CHECK(ward.fault() == "");
}

TEST_CASE("each gap of an item is counted on")
{
    Ward ward;
    for (const int day : {0, 2, 4})
        ward.save(ward.round(day).withGap("item-1")), ward.save(ward.round(day + 1).notApplicable("item-1"));
    const auto gaps = must(ward.store->gapsOf(ward.unit, "item-1"));
    REQUIRE(gaps.size() == 3);
    for (int i = 0; i < 3; ++i) {
        CHECK(gaps[static_cast<std::size_t>(i)].nth == i + 1);
        CHECK(gaps[static_cast<std::size_t>(i)].closedAsNotApplicable);
    }
    CHECK(must(ward.store->closedGaps(ward.unit, *gaps[1].closedAt)).size() == 2);
    CHECK(must(ward.store->closedGaps(ward.unit, *gaps[1].closedAt)).front().nth == 3);
    CHECK(must(ward.store->gapsOf(ward.unit, "item-2")).empty());
}

TEST_CASE("open gaps come critical first, then by due time")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-1").withGap("item-2").withGap("item-7"));
    must(ward.store->actOnGap(ward.unit,
        {.item = "item-1", .nth = 1, .owner = std::nullopt, .due = fromMs(5), .remark = std::nullopt}, "AB"));
    ward.save(ward.round(1).withGap("item-0").withGap("item-1").withGap("item-2").withGap("item-3").withGap(
        "item-7"));
    std::vector<std::string> order;
    for (const Gap& gap : must(ward.store->openGaps(ward.unit)))
        order.push_back(gap.item);
    CHECK(order == std::vector<std::string>{"item-7", "item-0", "item-2", "item-1", "item-3"});
}

TEST_CASE("an action gives a gap its owner, due time and remark, and later rounds keep them")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    const Instant due = fromMs(1'800'000'000'000);
    must(ward.store->actOnGap(
        ward.unit, {.item = "item-2", .nth = 1, .owner = "CD", .due = due, .remark = "ordered"}, "AB"));
    ward.save(ward.round(1).withGap("item-2"));
    const auto gap = must(ward.store->openGaps(ward.unit)).at(0);
    CHECK(gap.owner == "CD");
    CHECK(gap.due == due);
    CHECK(gap.remark == "ordered");
    CHECK(gap.found == 2);
    must(ward.store->actOnGap(ward.unit,
        {.item = "item-2", .nth = 1, .owner = "", .due = std::nullopt, .remark = std::nullopt}, "AB"));
    CHECK(must(ward.store->openGaps(ward.unit)).at(0).owner == "");
    CHECK(must(ward.store->openGaps(ward.unit)).at(0).remark == "ordered");
    CHECK(ward.fault() == "");
}

TEST_CASE("an action on a gap that is not there, or closed, or that decides nothing is refused")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    const auto act = [&](const std::string& item, int nth) {
        return ward.store->actOnGap(ward.unit,
            {.item = item, .nth = nth, .owner = "CD", .due = std::nullopt, .remark = std::nullopt}, "AB");
    };
    CHECK(act("item-2", 2).error().code == ErrorCode::NotFound);
    CHECK(act("item-0", 1).error().code == ErrorCode::NotFound);
    CHECK(ward.store
              ->actOnGap(ward.unit,
                  {.item = "item-2",
                      .nth = 1,
                      .owner = std::nullopt,
                      .due = std::nullopt,
                      .remark = std::nullopt},
                  "AB")
              .error()
              .code
        == ErrorCode::InvalidArgument);
    ward.save(ward.round(1));
    CHECK(act("item-2", 1).error().code == ErrorCode::InvalidArgument);
    CHECK(must(ward.store->verify()).records == 6);
}

TEST_CASE("the later of two actions holds also when the clock was set back in between")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    const auto assign = [&](const std::string& owner) {
        must(ward.store->actOnGap(ward.unit,
            {.item = "item-2", .nth = 1, .owner = owner, .due = std::nullopt, .remark = std::nullopt}, "AB"));
    };
    assign("CD");
    ward.clock.advance(-std::chrono::hours(500));
    assign("EF");
    CHECK(must(ward.store->openGaps(ward.unit)).at(0).owner == "EF");
    must(ward.store->rebuild());
    CHECK(must(ward.store->openGaps(ward.unit)).at(0).owner == "EF");
    CHECK(ward.fault() == "");
}

TEST_CASE("a round entered late takes its place in the life of the gaps")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    ward.save(ward.round(4).withGap("item-2"));
    CHECK(must(ward.store->openGaps(ward.unit)).at(0).found == 2);
    // The paper round of day 2 says that it was met in between.
    must(ward.store->saveRound(ward.unit, ward.round(2), "AB"));
    const auto gaps = must(ward.store->gapsOf(ward.unit, "item-2"));
    REQUIRE(gaps.size() == 2);
    CHECK(gaps[0].closedSlot == ward.slot(2));
    CHECK(gaps[1].openedSlot == ward.slot(4));
    CHECK(gaps[1].isOpen());
    CHECK(ward.fault() == "");
}

TEST_CASE("a late round may take the gap from under an action, which is held until the gap is there again")
{
    Ward ward;
    ward.save(ward.round(0).withGap("item-2"));
    ward.save(ward.round(2).withGap("item-2"));
    ward.save(ward.round(3));
    ward.save(ward.round(4).withGap("item-2"));
    must(ward.store->actOnGap(ward.unit,
        {.item = "item-2", .nth = 2, .owner = "CD", .due = std::nullopt, .remark = std::nullopt}, "AB"));
    // Day 1 splits the first gap in two: the second one is another now.
    must(ward.store->saveRound(ward.unit, ward.round(1), "AB"));
    const auto gaps = must(ward.store->gapsOf(ward.unit, "item-2"));
    REQUIRE(gaps.size() == 3);
    CHECK(gaps[1].owner == "CD");
    CHECK(ward.fault() == "");
}

TEST_CASE("what a check before a birth finds is a gap of the unit too, followed by item id")
{
    Ward ward(anAdoption());
    must(ward.store->adopt(ward.unit, anAdoption(RoundKind::PreBirth), "AB"));
    const auto preBirth = must(ward.store->checklistFor(ward.unit, RoundKind::PreBirth, firstDay)).checklist;
    ward.save(ward.round(0));
    ward.save(aRound(preBirth).on(firstDay).withGap("towels").finishedAfter(2h));
    const auto open = must(ward.store->openGaps(ward.unit));
    REQUIRE(open.size() == 1);
    CHECK(open[0].item == "towels");
    ward.save(ward.round(0, 1));
    CHECK(must(ward.store->openGaps(ward.unit)).empty());
    CHECK(ward.fault() == "");
}
