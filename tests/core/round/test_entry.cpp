// SPDX-License-Identifier: MIT
#include "core/round/entry.h"

#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a reading is taken with point or comma, and refused outside the plausible band")
{
    const Item item = sampleItem("temperature");
    for (const char* text : {"26.4", "26,4", " 26.4 ", "26.40"})
        CHECK(readMeasured(item, text) == Measured{num("26.4")});
    for (const char* text : {"", " ", "264", "0.4", "26.4.1", "26..4", "warm", "26 4", "1e1"}) {
        CAPTURE(text);
        const auto read = readMeasured(item, text);
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().hint.empty());
    }
    CHECK_FALSE(readMeasured(sampleItem("bag"), "26.4").has_value());
}

TEST_CASE("a clock time is the latest moment at which the wall showed it")
{
    struct Case
    {
        const char* text;
        Instant since;
    };
    const Instant now = at(24, 0, 10);
    for (const Case& c : std::vector<Case>{{"0:10", at(24, 0, 10)}, {"00:10", at(24, 0, 10)},
             {"010", at(24, 0, 10)}, {"0010", at(24, 0, 10)}, {"0:11", at(23, 0, 11)},
             {"23:50", at(23, 23, 50)}, {"2350", at(23, 23, 50)}, {"9:24", at(23, 9, 24)},
             {"924", at(23, 9, 24)}, {" 9:24 ", at(23, 9, 24)}}) {
        CAPTURE(c.text);
        CHECK(readSince(c.text, now, TimeZone::utc()) == RunningSince{c.since});
    }
    for (const char* text : {"", "9", "24", "24:00", "2400", "12:60", "1260", "12:5", "12:005", ":30",
             "12:", "-1:30", "1-30", "12:-5", "12345", "noon"}) {
        CAPTURE(text);
        const auto read = readSince(text, now, TimeZone::utc());
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().hint.empty());
    }
}

TEST_CASE("a clock time is read in the zone of the unit")
{
    const auto kolkata = TimeZone::named("Asia/Kolkata");
    REQUIRE(kolkata.has_value());
    CHECK(readSince("05:30", at(24, 0, 10), *kolkata) == RunningSince{at(24, 0)});
    CHECK(readSince("05:41", at(24, 0, 10), *kolkata) == RunningSince{at(23, 0, 11)});
}

TEST_CASE("where the clocks went back and the wall showed a time twice, the later one counts")
{
    // Berlin, 26 October 2025: 03:00 became 02:00 again at 01:00 UTC.
    const auto berlin = TimeZone::named("Europe/Berlin");
    REQUIRE(berlin.has_value());
    using namespace std::chrono;
    const Instant change = sys_days(2025y / October / 26) + hours(1);
    CHECK(readSince("02:30", change + minutes(40), *berlin) == RunningSince{change + minutes(30)});
    CHECK(readSince("02:30", change + minutes(20), *berlin) == RunningSince{change - minutes(30)});
    CHECK(readSince("01:30", change + minutes(40), *berlin) == RunningSince{change - minutes(90)});
}

TEST_CASE("lots are typed as quantity and expiry; a month means its last day")
{
    const Item item = sampleItem("oxytocin");
    const auto lot = [](int quantity, const char* expiry) {
        return Lot{.quantity = quantity, .expiry = date(expiry), .number = {}};
    };
    CHECK(readCounted(item, "6 2027-03-31") == Counted{{lot(6, "2027-03-31")}});
    CHECK(readCounted(item, "6 2027-02") == Counted{{lot(6, "2027-02-28")}});
    CHECK(readCounted(item, " 6  02/2028 , 4 2027-12 ")
        == Counted{{lot(6, "2028-02-29"), lot(4, "2027-12-31")}});
    CHECK(readCounted(item, "0") == Counted{{{.quantity = 0, .expiry = {}, .number = {}}}});
    CHECK(readCounted(sampleItem("gloves"), "40") == Counted{{{.quantity = 40, .expiry = {}, .number = {}}}});
    for (const char* text :
        {"", ",", "6,", "6", "six 2027-03", "-6 2027-03", "6 2027-13", "6 00/2027", "6 2027-02-30", "6 03/27",
            "6 1999-12", "6 2027-03 x", "100001 2027-03", "6.5 2027-03", "2027-03"}) {
        CAPTURE(text);
        const auto read = readCounted(item, text);
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().hint.empty());
    }
    CHECK_FALSE(readCounted(sampleItem("kits"), "6").has_value());
}

TEST_CASE("typed lots are shown again as they can be typed")
{
    const Item item = sampleItem("oxytocin");
    const Counted answer{{{6, date("2027-03-31"), ""}, {4, date("2027-12-01"), ""}, {0, {}, ""}}};
    CHECK(counted(answer) == "6 2027-03-31, 4 2027-12-01, 0");
    CHECK(readCounted(item, counted(answer)) == answer);
    CHECK(counted(Counted{}).empty());
}

TEST_CASE("pieces are whole numbers from 0 to 100000")
{
    CHECK(readPieces("0") == 0);
    CHECK(readPieces(" 100000 ") == 100000);
    for (const char* text : {"", " ", "-1", "+1", "100001", "99999999999", "1.0", "1 2", "x"}) {
        CAPTURE(text);
        CHECK_FALSE(readPieces(text).has_value());
    }
}
