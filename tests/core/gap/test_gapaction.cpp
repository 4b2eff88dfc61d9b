// SPDX-License-Identifier: MIT
#include "core/gap/gapaction.h"

#include "core/ledger/canonical.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

std::string repeated(const std::string& piece, std::size_t times)
{
    std::string text;
    for (std::size_t i = 0; i < times; ++i)
        text += piece;
    return text;
}

GapAction action() { return {.item = "suction", .nth = 2, .owner = {}, .due = {}, .remark = {}}; }
GapAction withOwner(std::string owner)
{
    GapAction made = action();
    made.owner = std::move(owner);
    return made;
}
GapAction withRemark(std::string remark)
{
    GapAction made = action();
    made.remark = std::move(remark);
    return made;
}

}

TEST_CASE("an action names its gap and decides something")
{
    CHECK_FALSE(checkAction(action()).has_value());
    CHECK(checkAction(withOwner("AB")).has_value());
    CHECK(checkAction(withOwner("")).has_value()); // takes the owner off again
    CHECK(checkAction(withRemark("ordered")).has_value());
    GapAction due = action();
    due.due = fromMs(0);
    CHECK(checkAction(due).has_value());
    GapAction nobody = withOwner("AB");
    nobody.item.clear();
    CHECK_FALSE(checkAction(nobody).has_value());
    GapAction none = withOwner("AB");
    none.nth = 0;
    CHECK_FALSE(checkAction(none).has_value());
}

TEST_CASE("texts are limited in characters, whatever bytes they take")
{
    for (const std::string letter : {"A", "é", "क", "😀"}) {
        CAPTURE(letter);
        CHECK(checkAction(withOwner(repeated(letter, maxOwnerLength))).has_value());
        CHECK_FALSE(checkAction(withOwner(repeated(letter, maxOwnerLength + 1))).has_value());
        CHECK(checkAction(withRemark(repeated(letter, maxRemarkLength))).has_value());
        CHECK_FALSE(checkAction(withRemark(repeated(letter, maxRemarkLength + 1))).has_value());
    }
    // 17 letters and signs in 47 bytes; vowel signs count on their own.
    CHECK(checkAction(withOwner("जननी इकाई प्रभारी")).has_value());
}

TEST_CASE("an action is laid over its gap and leaves the rest alone")
{
    const Gap gap{
        .unit = "unit", .item = "suction", .nth = 2, .owner = "AB", .due = fromMs(1000), .remark = "seen"};
    Gap expected = gap;
    expected.owner.clear();
    CHECK(withAction(gap, withOwner("")) == expected);
    expected = gap;
    expected.remark = "ordered";
    CHECK(withAction(gap, withRemark("ordered")) == expected);
    GapAction due = action();
    due.due = fromMs(5000);
    expected = gap;
    expected.due = fromMs(5000);
    CHECK(withAction(gap, due) == expected);
    CHECK(withAction(gap, action()) == gap);
}

TEST_CASE("an action reads back from its record, whatever of it is there")
{
    for (int set = 1; set < 8; ++set) {
        GapAction made = action();
        if ((set & 1) != 0)
            made.owner = "प्रभारी";
        if ((set & 2) != 0)
            made.due = fromMs(-1);
        if ((set & 4) != 0)
            made.remark = "a \"quoted\"\nremark";
        const Json body = toBody(made);
        CHECK(checkBody(body).has_value());
        const auto parsed = parseJson(canonicalText(body));
        REQUIRE(parsed.has_value());
        const auto back = gapActionFromBody(*parsed);
        REQUIRE(back.has_value());
        CHECK(*back == made);
    }
}

TEST_CASE("every broken member of an action is refused")
{
    for (const char* text : {"null", "[]", "{}", R"({"item":"suction","nth":1})", R"({"nth":1,"owner":"AB"})",
             R"({"item":"suction","owner":"AB"})", R"({"item":7,"nth":1,"owner":"AB"})",
             R"({"item":"","nth":1,"owner":"AB"})", R"({"item":"suction","nth":"1","owner":"AB"})",
             R"({"item":"suction","nth":0,"owner":"AB"})", R"({"item":"suction","nth":1000001,"owner":"AB"})",
             R"({"item":"suction","nth":1,"owner":7})",
             R"({"item":"suction","nth":1,"owner":"AB","due":"soon"})",
             R"({"item":"suction","nth":1,"owner":"AB","remark":null})",
             R"({"item":"suction","nth":1,"owner":"AB","due":1.5})",
             R"({"item":"suction","nth":1,"owner":"AB","mother":"of A"})",
             R"({"item":"suction","nth":1,"owner":"ABCDEFGHIJKLMNOPQRSTUVWXYZ"})"}) {
        CAPTURE(text);
        const auto json = parseJson(text);
        REQUIRE(json.has_value());
        const auto read = gapActionFromBody(*json);
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().message.empty());
    }
}

TEST_CASE("what helps meanwhile, who mended it and who verified it read back from the record")
{
    GapAction made = action();
    made.measure = "spare from theatre";
    made.mended = "AB";
    made.at = fromMs(7000);
    CHECK(gapActionFromBody(toBody(made)) == made);
    GapAction verified = action();
    verified.verified = "CD";
    verified.at = fromMs(8000);
    CHECK(gapActionFromBody(toBody(verified)) == verified);
}

TEST_CASE("who mended a gap cannot verify it, however the initials are written")
{
    Gap gap;
    gap.severity = Severity::Critical;
    GapAction verified = action();
    verified.verified = "m.r.";
    verified.at = fromMs(9000);
    CHECK_FALSE(checkActionOn(gap, verified).has_value()); // nobody mended it
    gap.mendedBy = "M. R.";
    CHECK_FALSE(checkActionOn(gap, verified).has_value());
    CHECK(withAction(gap, verified).verifiedBy.empty()); // from elsewhere: not refused, but it does not count
    verified.verified = "A. T.";
    REQUIRE(checkActionOn(gap, verified).has_value());
    CHECK(withAction(gap, verified).verifiedBy == "A. T.");
    CHECK(withAction(gap, verified).verifiedAt == fromMs(9000));
    gap.closedAt = fromMs(8500);
    CHECK(checkActionOn(gap, verified).has_value());
    verified.owner = "A. T.";
    CHECK_FALSE(checkActionOn(gap, verified).has_value());
}

TEST_CASE("taking back that it is mended reopens the gap; mending it anew wants a new verification")
{
    Gap gap;
    GapAction mended = action();
    mended.mended = "AB";
    mended.at = fromMs(1000);
    gap = withAction(gap, mended);
    CHECK(gap.mendedBy == "AB");
    CHECK(gap.mendedAt == fromMs(1000));
    gap.verifiedBy = "CD";
    CHECK(withAction(gap, mended).verifiedBy.empty());
    GapAction back = action();
    back.mended = "";
    back.at = fromMs(2000);
    gap = withAction(gap, back);
    CHECK(gap.mendedBy.empty());
    CHECK(gap.reopened == 1);
    CHECK(withAction(gap, back).reopened == 1); // it was not said to be mended
}

TEST_CASE("an action that mends and verifies, verifies by nobody, or has a time for nothing is refused")
{
    GapAction both = action();
    both.mended = "AB";
    both.verified = "CD";
    both.at = fromMs(1);
    CHECK_FALSE(checkAction(both).has_value());
    GapAction nobody = action();
    nobody.verified = " . ";
    nobody.at = fromMs(1);
    CHECK_FALSE(checkAction(nobody).has_value());
    GapAction timed = action();
    timed.owner = "AB";
    timed.at = fromMs(1);
    CHECK_FALSE(checkAction(timed).has_value());
    GapAction untimed = action();
    untimed.mended = "AB";
    CHECK_FALSE(checkAction(untimed).has_value());
}
