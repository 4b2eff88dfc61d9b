// SPDX-License-Identifier: MIT
#include "core/supply/birthboard.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

BirthEvent expected(std::string birth, std::string_view said, std::string_view when, int babies = 1)
{
    return {.birth = std::move(birth),
        .at = at(said),
        .change = BirthChange::Expected,
        .expected = at(when),
        .babies = babies};
}

BirthEvent over(std::string birth, std::string_view said, BirthChange change)
{
    return {.birth = std::move(birth), .at = at(said), .change = change};
}

std::vector<std::string> namesAt(const std::vector<BirthSpan>& board, std::string_view when)
{
    std::vector<std::string> out;
    for (const ExpectedBirth& birth : expectedAt(board, at(when)))
        out.push_back(birth.birth);
    return out;
}

}

TEST_CASE("the board shows the first expected first, and a birth stays until it is done")
{
    const auto board
        = foldBirths(recordedAll<BirthEvent>({expected("late", "2026-11-24 08:00", "2026-11-24 20:00"),
            expected("soon", "2026-11-24 09:00", "2026-11-24 10:00"),
            over("soon", "2026-11-24 12:00", BirthChange::Done)}));
    CHECK(namesAt(board, "2026-11-24 07:59").empty());
    CHECK(namesAt(board, "2026-11-24 08:00") == std::vector<std::string>{"late"});
    CHECK(namesAt(board, "2026-11-24 11:00") == std::vector<std::string>{"soon", "late"});
    CHECK(namesAt(board, "2026-11-24 12:00") == std::vector<std::string>{"late"});
}

TEST_CASE("a birth that is changed keeps what was known before")
{
    const auto board
        = foldBirths(recordedAll<BirthEvent>({expected("b", "2026-11-24 08:00", "2026-11-24 20:00"),
            expected("b", "2026-11-24 09:00", "2026-11-24 12:00", 2)}));
    CHECK(expectedAt(board, at("2026-11-24 08:30")).at(0).babies == 1);
    REQUIRE(expectedAt(board, at("2026-11-24 09:00")).size() == 1);
    CHECK(expectedAt(board, at("2026-11-24 09:00")).at(0).babies == 2);
}

TEST_CASE("what is done or cancelled does not come back, in whatever order the records arrive")
{
    const auto facts = recordedAll<BirthEvent>({expected("b", "2026-11-24 08:00", "2026-11-24 20:00"),
        over("b", "2026-11-24 09:00", BirthChange::Cancelled),
        expected("b", "2026-11-24 10:00", "2026-11-24 21:00")});
    CHECK(namesAt(foldBirths(facts), "2026-11-24 11:00").empty());
    CHECK(foldBirths({facts[2], facts[1], facts[0]}) == foldBirths(facts));
    const auto doneFirst = recordedAll<BirthEvent>({over("b", "2026-11-24 07:00", BirthChange::Done),
        expected("b", "2026-11-24 08:00", "2026-11-24 20:00")});
    CHECK(namesAt(foldBirths(doneFirst), "2026-11-24 08:30").empty());
}

TEST_CASE("an event of the board is written and read again as it was")
{
    BirthEvent twins = expected("b-1", "2026-11-24 08:00", "2026-11-24 20:00", 2);
    twins.preterm = true;
    for (const BirthEvent& event : {twins, expected("b-2", "2026-11-24 08:00", "2026-11-24 20:00"),
             over("b-1", "2026-11-24 09:00", BirthChange::Done),
             over("b-1", "2026-11-24 09:00", BirthChange::Cancelled)}) {
        CHECK(checkBirth(event).has_value());
        CHECK(isRecordBody(toBody(event)));
        const auto again = birthEventFromBody(toBody(event));
        REQUIRE_MESSAGE(again.has_value(), (again ? "" : again.error().message));
        CHECK(*again == event);
    }
    CHECK(canonicalText(toBody(twins))
        == R"({"at":1795507200000,"babies":2,"birth":"b-1","change":"expected","expected":1795550400000,"preterm":true})");
}

TEST_CASE("the board has no place for a name, a note or a fifth baby")
{
    CHECK_FALSE(checkBirth(expected("Bed 4", "2026-11-24 08:00", "2026-11-24 20:00")).has_value());
    CHECK_FALSE(checkBirth(expected("b", "2026-11-24 08:00", "2026-11-24 20:00", 5)).has_value());
    CHECK_FALSE(checkBirth(expected("b", "2026-11-24 08:00", "2026-11-24 20:00", 0)).has_value());
    Json::Object body = *toBody(expected("b", "2026-11-24 08:00", "2026-11-24 20:00")).asObject();
    body.push_back({"note", "x"});
    CHECK_FALSE(birthEventFromBody(body).has_value());
    CHECK_FALSE(
        birthEventFromBody(toBody(expected("b", "2026-11-24 08:00", "2026-11-24 20:00", 5))).has_value());
    Json::Object done = *toBody(over("b", "2026-11-24 08:00", BirthChange::Done)).asObject();
    done.push_back({"babies", 1});
    CHECK_FALSE(birthEventFromBody(done).has_value());
}
