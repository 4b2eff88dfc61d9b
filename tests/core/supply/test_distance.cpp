// SPDX-License-Identifier: MIT
#include "core/supply/distance.h"

#include "core/ledger/canonical.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

const std::vector<std::string> units{"ash-lock", "ostrey", "quillmere"};

std::string refusal(const std::string& text)
{
    const auto read = readDistances(text, units, fromMs(7));
    return read ? std::string() : read.error().message;
}

}

TEST_CASE("a way is as long in both directions, and the entry made last counts")
{
    DistanceTable table;
    CHECK(table.empty());
    table.set({.from = "ostrey", .to = "ash-lock", .metres = 12'000, .at = fromMs(5)});
    table.set({.from = "ash-lock", .to = "ostrey", .metres = 12'500, .at = fromMs(9)});
    table.set({.from = "ostrey", .to = "ash-lock", .metres = 11'000, .at = fromMs(7)});
    CHECK(table.between("ash-lock", "ostrey") == 12'500);
    CHECK(table.between("ostrey", "ash-lock") == 12'500);
    CHECK_FALSE(table.between("ostrey", "quillmere"));
    CHECK(table.all().size() == 1);
}

TEST_CASE("a way of no length is no way any more")
{
    DistanceTable table;
    table.set({.from = "ostrey", .to = "ash-lock", .metres = 12'000, .at = fromMs(5)});
    table.set({.from = "ostrey", .to = "ash-lock", .metres = 0, .at = fromMs(6)});
    CHECK_FALSE(table.between("ostrey", "ash-lock"));
    CHECK(table.empty());
}

TEST_CASE("a table of kilometres is read to the metre, with a decimal comma too")
{
    const auto ways = readDistances(
        "km,from,to\r\n12.345,ash-lock,ostrey\r\n\"3,5\",ostrey,quillmere\r\n", units, fromMs(7));
    REQUIRE(ways.has_value());
    REQUIRE(ways->size() == 2);
    CHECK(ways->at(0) == Distance{.from = "ash-lock", .to = "ostrey", .metres = 12'345, .at = fromMs(7)});
    CHECK(ways->at(1).metres == 3'500);
}

TEST_CASE("a fault of the table is named with its line")
{
    CHECK(refusal("from,to\nash-lock,ostrey\n").find("km") != std::string::npos);
    CHECK(refusal("from,to,km\nash-lock,nowhere,3\n") == "distances, line 2: 'nowhere' is no unit here");
    CHECK(refusal("from,to,km\n\nash-lock,ash-lock,3\n").find("line 3") != std::string::npos);
    CHECK(refusal("from,to,km\nash-lock,ostrey,far\n").find("'far'") != std::string::npos);
    CHECK(refusal("from,to,km\nash-lock,ostrey,-3\n") != "");
    CHECK(refusal("from,to,km\nash-lock,ostrey,1001\n") != "");
    CHECK(refusal("from,to,km\nash-lock,ostrey,1000\n") == "");
}

TEST_CASE("a body reads back as it was, and a broken one is refused")
{
    const Distance distance{.from = "ostrey", .to = "ash-lock", .metres = 12'000, .at = fromMs(5)};
    CHECK(distanceFromBody("ostrey", toBody(distance)).value() == distance);
    CHECK(canonicalText(toBody(distance)) == R"({"at":5,"metres":12000,"to":"ash-lock"})");
    CHECK_FALSE(distanceFromBody("ash-lock", toBody(distance)).has_value());
    for (const char* body : {R"({"at":5,"metres":-1,"to":"ash-lock"})", R"({"at":5,"to":"ash-lock"})",
             R"({"at":5,"metres":1000001,"to":"ash-lock"})", R"({"at":5,"metres":1,"to":"ash-lock","x":1})"})
        CHECK_FALSE(distanceFromBody("ostrey", *parseJson(body)).has_value());
}

TEST_CASE("a distance to itself or too far is refused before it is written")
{
    CHECK(checkDistance({.from = "a", .to = "b", .metres = 5}).has_value());
    CHECK_FALSE(checkDistance({.from = "a", .to = "a", .metres = 5}).has_value());
    CHECK_FALSE(checkDistance({.from = "a", .to = "b", .metres = mostMetres + 1}).has_value());
}
