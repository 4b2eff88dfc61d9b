// SPDX-License-Identifier: MIT
#include "core/round/judge.h"

#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

JudgeContext context(Instant reference = at(24, 8))
{
    return {.reference = reference, .lastDay = date("2026-11-24"), .limits = {}};
}

Judgement judged(const char* item, const Answer& answer, const JudgeContext& against = context())
{
    return judge(sampleItem(item), answer, against);
}

/** What is expected of a gap; `code` empty: met. */
struct Expected
{
    std::optional<ReasonCode> code;
    std::string value;
    std::string limit;
    std::string part;
};

void check(const char* item, const Judgement& judgement, const Expected& expected)
{
    if (!expected.code) {
        CHECK(judgement.outcome == Outcome::Met);
        CHECK_FALSE(judgement.reason.has_value());
        return;
    }
    CHECK(judgement.outcome == Outcome::Gap);
    REQUIRE(judgement.reason.has_value());
    CHECK(std::string(codeName(judgement.reason->code)) == codeName(*expected.code));
    CHECK(judgement.reason->item == item);
    CHECK(judgement.reason->severity == sampleItem(item).severity);
    CHECK(judgement.reason->value == expected.value);
    CHECK(judgement.reason->limit == expected.limit);
    CHECK(judgement.reason->part == expected.part);
}

constexpr std::optional<ReasonCode> met;

Counted lots(const std::vector<std::pair<int, const char*>>& list)
{
    Counted counted;
    for (const auto& [quantity, expiry] : list) {
        counted.lots.push_back({.quantity = quantity,
            .expiry = expiry != nullptr ? std::optional(date(expiry)) : std::nullopt,
            .number = {}});
    }
    return counted;
}

}

TEST_CASE("a confirm is met by yes, a gap by its reason, and says nothing without an answer")
{
    check("register", judged("register", Confirmed{}), {});
    const std::vector<std::pair<GapReason, ReasonCode>> reasons{{GapReason::Absent, ReasonCode::Absent},
        {GapReason::NotWorking, ReasonCode::NotWorking}, {GapReason::NotClean, ReasonCode::NotClean},
        {GapReason::Expired, ReasonCode::Expired}, {GapReason::OutOfLimits, ReasonCode::OutOfLimits},
        {GapReason::NotKnown, ReasonCode::NotKnown}};
    for (const auto& [said, found] : reasons) {
        check("register", judged("register", GapFound{said}), {.code = found});
        check("temperature", judged("temperature", GapFound{said}), {.code = found});
    }
    const Judgement open = judged("register", NotChecked{});
    CHECK(open.outcome == Outcome::NotChecked);
    REQUIRE(open.reason.has_value());
    CHECK(open.reason->code == ReasonCode::NotChecked);
    CHECK(open.reason->item == "register");
}

TEST_CASE("what does not apply is neither met nor a gap, and counts only where the checklist allows it")
{
    const Judgement allowed = judged("suction", DoesNotApply{});
    CHECK(allowed.outcome == Outcome::DoesNotApply);
    CHECK_FALSE(allowed.reason.has_value());
    CHECK(judged("register", DoesNotApply{}).outcome == Outcome::NotChecked);
}

TEST_CASE("an answer that is not allowed counts as not checked")
{
    for (const Answer& answer :
        std::vector<Answer>{Confirmed{}, Measured{num("0.4")}, Measured{num("50.1")}}) {
        const Judgement judgement = judged("temperature", answer);
        CHECK(judgement.outcome == Outcome::NotChecked);
        CHECK(judgement.reason->code == ReasonCode::NotChecked);
    }
    CHECK(judged("kits", KitCounted{{8, 4}}).outcome == Outcome::NotChecked);
    CHECK(judged("bag", StepsDone{"pp", ""}).outcome == Outcome::NotChecked);
    CHECK(judged("oxygen", CylinderRead{num("100"), "other", num("5")}).outcome == Outcome::NotChecked);
}

TEST_CASE("a measure is held against the limit set that the site has picked, its ends included")
{
    struct Case
    {
        const char* set;
        const char* value;
        Expected expected;
    };
    using enum ReasonCode;
    // 26 to 28 degrees C is common practice; here the sets only stand for different bands.
    for (const Case& c : std::vector<Case>{{"term", "25.9", {TooLow, "25.9", "26", ""}},
             {"term", "26", {met}}, {"term", "25.999", {TooLow, "25.999", "26", ""}}, {"term", "28", {met}},
             {"term", "28.001", {TooHigh, "28.001", "28", ""}},
             {"preterm", "27.4", {TooLow, "27.4", "27.5", ""}}, {"preterm", "27.5", {met}},
             {"preterm", "30", {met}}, {"preterm", "30.1", {TooHigh, "30.1", "30", ""}},
             {"floor", "24.9", {TooLow, "24.9", "25", ""}}, {"floor", "25", {met}}, {"floor", "50", {met}},
             {"ceiling", "0.5", {met}}, {"ceiling", "30", {met}},
             {"ceiling", "30.1", {TooHigh, "30.1", "30", ""}}, {"", "25.9", {TooLow, "25.9", "26", ""}},
             {"no-such-set", "28.1", {TooHigh, "28.1", "28", ""}}}) {
        CAPTURE(c.set);
        CAPTURE(c.value);
        JudgeContext against = context();
        if (*c.set != '\0')
            against.limits["temperature"] = c.set;
        check("temperature", judged("temperature", Measured{num(c.value)}, against), c.expected);
    }
}

TEST_CASE("a warmer is met at its minutes, and before that says when it will be")
{
    struct Case
    {
        Instant since;
        bool isMet;
        const char* minutesOn;
    };
    for (const Case& c : std::vector<Case>{{at(24, 7, 29), true, "31"}, {at(24, 7, 30), true, "30"},
             {at(24, 7, 30, 1), false, "29"}, {at(24, 7, 31), false, "29"}, {at(24, 8), false, "0"},
             {at(24, 8, 0, 1), false, "0"}, {at(24, 9), false, "0"}, {at(1, 0), true, ""}}) {
        CAPTURE(toMs(c.since));
        const Judgement judgement = judged("warmer", RunningSince{c.since});
        check("warmer", judgement,
            c.isMet ? Expected{}
                    : Expected{.code = ReasonCode::Warming, .value = c.minutesOn, .limit = "30"});
        if (!c.isMet)
            CHECK(judgement.reason->readyAt == c.since + std::chrono::minutes(30));
    }
}

TEST_CASE("a warmer is due exactly at the moment that was promised, and not a millisecond before")
{
    const Answer since = RunningSince{at(24, 7, 41, 13) + std::chrono::milliseconds(417)};
    const Judgement warming = judged("warmer", since);
    REQUIRE(warming.reason.has_value());
    REQUIRE(warming.reason->readyAt.has_value());
    const Instant ready = *warming.reason->readyAt;
    CHECK(judged("warmer", since, context(ready - std::chrono::milliseconds(1))).outcome == Outcome::Gap);
    CHECK(judged("warmer", since, context(ready)).outcome == Outcome::Met);
}

TEST_CASE("the next birth may be the reference: on at 07:50 is not warm now and warm for a birth at 08:20")
{
    const Answer since = RunningSince{at(24, 7, 50)};
    CHECK(judged("warmer", since, context(at(24, 8))).outcome == Outcome::Gap);
    CHECK(judged("warmer", since, context(at(24, 8, 20))).outcome == Outcome::Met);
    // The clock set back behind the start: nothing has run yet, and nothing is promised earlier than before.
    const Judgement back = judged("warmer", since, context(at(23, 8)));
    CHECK(back.reason->value == "0");
    CHECK(back.reason->readyAt == at(24, 8, 20));
}

TEST_CASE("the first failed step names itself; a test begun and not ended is not checked")
{
    using enum ReasonCode;
    check("bag", judged("bag", StepsDone{"ppp", "7"}), {});
    check("bag", judged("bag", StepsDone{"fpp", "7"}), {StepFailed, "1", "3", "seal"});
    check("bag", judged("bag", StepsDone{"pfp", "7"}), {StepFailed, "2", "3", "refill"});
    check("bag", judged("bag", StepsDone{"pff", "7"}), {StepFailed, "2", "3", "refill"});
    check("bag", judged("bag", StepsDone{"--f", "7"}), {StepFailed, "3", "3", "valve"});
    for (const char* marks : {"---", "p--", "pp-", "-pp"}) {
        CAPTURE(marks);
        const Judgement unfinished = judged("bag", StepsDone{marks, "7"});
        CHECK(unfinished.outcome == Outcome::NotChecked);
        REQUIRE(unfinished.reason.has_value());
        CHECK(unfinished.reason->code == ReasonCode::StepsUnfinished);
    }
}

TEST_CASE("stock counts when it is usable on the last day of the shift")
{
    using enum ReasonCode;
    // par 10, the shift ends on 24 November.
    check("oxytocin", judged("oxytocin", lots({{10, "2026-11-25"}})), {});
    check("oxytocin", judged("oxytocin", lots({{10, "2026-11-24"}})), {});
    check("oxytocin", judged("oxytocin", lots({{10, "2026-11-23"}})), {TooFewUsable, "0", "10", ""});
    check("oxytocin", judged("oxytocin", lots({{9, "2027-01-31"}})), {TooFew, "9", "10", ""});
    check("oxytocin", judged("oxytocin", lots({{9, "2027-01-31"}, {1, "2026-11-24"}})), {});
    check("oxytocin", judged("oxytocin", lots({{9, "2027-01-31"}, {1, "2026-11-23"}})),
        {TooFewUsable, "9", "10", ""});
    check("oxytocin", judged("oxytocin", lots({{5, "2027-01-31"}, {4, "2026-11-23"}})),
        {TooFew, "5", "10", ""});
    check("oxytocin", judged("oxytocin", lots({{11, nullptr}})), {});
    JudgeContext dayAfter = context();
    dayAfter.lastDay = date("2026-11-25");
    check(
        "oxytocin", judged("oxytocin", lots({{10, "2026-11-24"}}), dayAfter), {TooFewUsable, "0", "10", ""});
}

TEST_CASE("nothing there is a gap, nothing counted is not checked")
{
    using enum ReasonCode;
    check("oxytocin", judged("oxytocin", Counted{}), {TooFew, "0", "10", ""});
    check("oxytocin", judged("oxytocin", lots({{0, nullptr}})), {TooFew, "0", "10", ""});
    check("kits", judged("kits", KitCounted{{0, 0, 0}}), {KitsIncomplete, "0", "4", "ties"});
    check(
        "oxygen", judged("oxygen", CylinderRead{num("0"), "us-e", num("5")}), {CylinderLow, "0", "120", ""});
    for (const char* id : {"oxytocin", "kits", "oxygen", "temperature", "warmer", "bag"})
        CHECK(judged(id, cradlepost::NotChecked{}).outcome == Outcome::NotChecked);
}

TEST_CASE("the part that limits a kit names itself, the first of equals")
{
    struct Case
    {
        std::vector<int> parts; // 2 ties, 1 blade and 3 cloths a kit, par 4
        Expected expected;
    };
    using enum ReasonCode;
    for (const Case& c : std::vector<Case>{{{8, 4, 12}, {met}}, {{100, 100, 100}, {met}},
             {{7, 4, 12}, {KitsIncomplete, "3", "4", "ties"}},
             {{8, 3, 12}, {KitsIncomplete, "3", "4", "blade"}},
             {{8, 4, 11}, {KitsIncomplete, "3", "4", "cloth"}},
             {{7, 3, 11}, {KitsIncomplete, "3", "4", "ties"}},
             {{8, 3, 9}, {KitsIncomplete, "3", "4", "blade"}},
             {{7, 2, 6}, {KitsIncomplete, "2", "4", "blade"}},
             {{1, 9, 9}, {KitsIncomplete, "0", "4", "ties"}}}) {
        CAPTURE(c.parts[0]);
        CAPTURE(c.parts[1]);
        CAPTURE(c.parts[2]);
        check("kits", judged("kits", KitCounted{c.parts}), c.expected);
    }
}

TEST_CASE("every reason has a code of its own that reads back")
{
    for (int i = 0; i <= static_cast<int>(ReasonCode::UsedSince); ++i) {
        const auto code = static_cast<ReasonCode>(i);
        CHECK(reasonFromCode(codeName(code)) == code);
    }
    CHECK_FALSE(reasonFromCode("no-such-reason").has_value());
}
