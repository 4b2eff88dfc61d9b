// SPDX-License-Identifier: MIT
#include "core/round/roundrecord.h"

#include "core/ledger/canonical.h"
#include "sample.h"

#include <doctest/doctest.h>
#include <functional>

using namespace cradlepost;

namespace {

Json::Object& members(Json& json) { return std::get<Json::Object>(json.value); }
Json& member(Json& json, std::string_view name)
{
    for (JsonMember& one : members(json)) {
        if (one.name == name)
            return one.value;
    }
    FAIL("no member ", std::string(name));
    return json;
}
void drop(Json& json, std::string_view name)
{
    std::erase_if(members(json), [&](const JsonMember& one) { return one.name == name; });
}
Json& element(Json& json, std::size_t at) { return std::get<Json::Array>(json.value).at(at); }

/** Ten items: one gap that warms, one of a step, one not checked, one that does not apply. */
RoundRecord sampleRecord()
{
    const Checklist checklist = sampleChecklist();
    Walk walk = Walk::of(checklist, TimeZone::utc(),
        Walk::begin(
            checklist, RoundKind::Shift, "unit", "AB", dayShift(), {{"temperature", "term"}}, at(24, 7, 5)))
                    .value();
    std::vector<Answer> answers = allMet();
    answers[1] = DoesNotApply{};
    answers[2] = RunningSince{at(24, 7)};
    answers[3] = StepsDone{.marks = "pf-", .device = "7"};
    answers[9] = NotChecked{};
    for (std::size_t i = 0; i < answers.size(); ++i)
        REQUIRE(walk.give(i, answers[i], at(24, 7, 6, static_cast<int>(i))).has_value());
    return walk.finish(at(24, 7, 20));
}

RoundRecord randomRecord(Dice& dice)
{
    const Checklist checklist = sampleChecklist();
    const bool isRecheck = dice.coin();
    const RecordId over{"station", 1 + dice.upTo(100)};
    Draft draft = isRecheck
        ? Walk::beginRecheck(checklist, "unit", "AB", dayShift(), {}, over, allMet(), {1, 2, 5, 8}, at(24, 9))
        : Walk::begin(
            checklist, RoundKind::Shift, "unit", "AB", dayShift(), {{"temperature", "preterm"}}, at(24, 7));
    Walk walk = Walk::of(checklist, TimeZone::utc(), std::move(draft)).value();
    for (const std::size_t i : walk.draft().asked)
        REQUIRE(walk.give(i, randomAnswer(checklist.item(i), dice), at(24, 8, dice.upTo(60))).has_value());
    return walk.finish(at(24, 9, dice.upTo(60)));
}

}

TEST_CASE("a record reads back as it was written, and holds nothing that a ledger refuses")
{
    const RoundRecord record = sampleRecord();
    CHECK(record.outcomes == "mnggmmmmmu");
    const Json body = toBody(record);
    CHECK(checkBody(body).has_value());
    const auto back = roundFromBody(body);
    REQUIRE(back.has_value());
    CHECK(*back == record);
}

TEST_CASE("two thousand random records read back from their canonical text")
{
    Dice dice(17);
    for (int i = 0; i < 2000; ++i) {
        const RoundRecord record = randomRecord(dice);
        const std::string text = canonicalText(toBody(record));
        const auto json = parseJson(text);
        REQUIRE(json.has_value());
        const auto back = roundFromBody(*json);
        REQUIRE_MESSAGE(back.has_value(), text);
        REQUIRE_MESSAGE(*back == record, text);
    }
}

TEST_CASE("a round from paper says so, and one of the station says nothing of it")
{
    RoundRecord record = sampleRecord();
    CHECK(toBody(record).find("source") == nullptr);
    record.fromPaper = true;
    Json body = toBody(record);
    CHECK(*body.findString("source") == "paper");
    CHECK(roundFromBody(body).value() == record);
    member(body, "source") = "memory";
    CHECK_FALSE(roundFromBody(body).has_value());
}

TEST_CASE("every broken or missing member of a record is refused")
{
    const Json whole = toBody(sampleRecord());
    for (const JsonMember& one : *whole.asObject()) {
        CAPTURE(one.name);
        Json without = whole;
        drop(without, one.name);
        CHECK_FALSE(roundFromBody(without).has_value());
        for (const Json& wrong : {Json(), Json(true), Json("?"), Json(-1), Json(1.5),
                 Json(std::int64_t{1} << 60), Json(Json::Array{Json("?")}), Json(Json::Object{{"?", "?"}})}) {
            // The two times are free: a clock may stand anywhere, so -1 is one.
            if (wrong.asInteger() != nullptr && *wrong.asInteger() == -1
                && (one.name == "started" || one.name == "finished"))
                continue;
            // Any text may name a checklist.
            if (one.name == "checklist" && wrong.asString() != nullptr)
                continue;
            // Which limit sets there are is known to the checklist only.
            if (one.name == "limits" && wrong.asObject() != nullptr)
                continue;
            Json broken = whole;
            member(broken, one.name) = wrong;
            CHECK_FALSE(roundFromBody(broken).has_value());
        }
    }
    CHECK_FALSE(roundFromBody(Json()).has_value());
    CHECK_FALSE(roundFromBody(Json(Json::Array())).has_value());
}

TEST_CASE("a record whose parts do not agree is refused")
{
    struct Case
    {
        const char* what;
        std::function<void(Json&)> breakIt;
    };
    const auto set = [](const char* name, Json value) {
        return [name, value](Json& body) { member(body, name) = value; };
    };
    for (const Case& c : std::vector<Case>{{"no items",
                                               [](Json& body) {
                                                   for (const char* name : {"answers", "seconds", "gaps"})
                                                       member(body, name) = Json::Array();
                                                   member(body, "outcomes") = "";
                                               }},
             {"a letter short", set("outcomes", "mnggmmmmm")},
             {"a letter more", set("outcomes", "mnggmmmmmum")},
             {"an unknown letter", set("outcomes", "mnggmmmmmx")},
             {"a gap without its reason", set("outcomes", "mnggmmmmgu")},
             {"a reason without its gap", set("outcomes", "mnmgmmmmmu")},
             {"more met than letters say", set("met", 8)},
             {"more applicable than items", set("applicable", 11)},
             {"fewer applicable than letters say", set("applicable", 8)},
             {"an index above one", set("index", 10001)}, {"version 0", set("version", 0)},
             {"a shift round that names another",
                 [](Json& body) {
                     members(body).push_back({"over", Json::Array{Json("s"), Json(1)}});
                 }},
             {"a re-check without its round", set("kind", "recheck")},
             {"a shift index beyond the day", [](Json& body) { member(member(body, "shift"), "index") = 4; }},
             {"a shift without its end", [](Json& body) { drop(member(body, "shift"), "ends"); }},
             {"a shift on no day", [](Json& body) { member(member(body, "shift"), "date") = "2026-02-30"; }},
             {"a gap of no known reason",
                 [](Json& body) { member(element(member(body, "gaps"), 0), "r") = "bored"; }},
             {"a gap of no known severity",
                 [](Json& body) { member(element(member(body, "gaps"), 0), "s") = "bad"; }},
             {"a gap of no item", [](Json& body) { drop(element(member(body, "gaps"), 0), "i"); }},
             {"a gap with a number for its value",
                 [](Json& body) { member(element(member(body, "gaps"), 0), "v") = 5; }},
             {"a gap ready at a word",
                 [](Json& body) { member(element(member(body, "gaps"), 0), "at") = "soon"; }},
             {"a decimal comma",
                 [](Json& body) {
                     element(member(body, "answers"), 0) = Json::Object{{"v", "26,4"}};
                 }},
             {"a trailing zero",
                 [](Json& body) {
                     element(member(body, "answers"), 0) = Json::Object{{"v", "26.40"}};
                 }},
             {"two answers in one",
                 [](Json& body) {
                     element(member(body, "answers"), 0) = Json::Object{{"v", "26.4"}, {"s", 1}};
                 }},
             {"a second beyond all rounds",
                 [](Json& body) { element(member(body, "seconds"), 0) = std::int64_t{1} << 40; }},
             {"a limit set that is a number",
                 [](Json& body) { member(member(body, "limits"), "temperature") = 26; }}}) {
        CAPTURE(c.what);
        Json body = toBody(sampleRecord());
        REQUIRE(roundFromBody(body).has_value());
        c.breakIt(body);
        const auto read = roundFromBody(body);
        REQUIRE_FALSE(read.has_value());
        CHECK_FALSE(read.error().message.empty());
    }
}

TEST_CASE("a record with a member of a later version is refused and says what to do")
{
    Json body = toBody(sampleRecord());
    members(body).push_back({"births", 2});
    const auto read = roundFromBody(body);
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().code == ErrorCode::NewerSchema);
    CHECK(read.error().message.find("a later version of this program wrote it") != std::string::npos);
    CHECK(read.error().message.find("'births'") != std::string::npos);
    CHECK(read.error().hint == "Install the version of the station that wrote it, or a later one.");
}

TEST_CASE("the order of members does not matter")
{
    const RoundRecord record = sampleRecord();
    Json body = toBody(record);
    std::reverse(members(body).begin(), members(body).end());
    const auto back = roundFromBody(body);
    REQUIRE(back.has_value());
    CHECK(*back == record);
}
