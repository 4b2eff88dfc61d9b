// SPDX-License-Identifier: MIT
#include "core/round/draftcodec.h"

#include "core/ledger/canonical.h"
#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

Draft freshDraft()
{
    return Walk::begin(sampleChecklist(), RoundKind::Shift, "unit", "AB", dayShift(),
        {{"temperature", "term"}}, at(24, 7, 5));
}
Draft recheckDraft()
{
    return Walk::beginRecheck(
        sampleChecklist(), "unit", "CD", dayShift(), {}, {"station", 12}, allMet(), {0, 3}, at(24, 9));
}

Draft randomDraft(Dice& dice)
{
    const Checklist checklist = sampleChecklist();
    Walk walk = Walk::of(checklist, TimeZone::utc(), dice.coin() ? freshDraft() : recheckDraft()).value();
    for (const std::size_t i : walk.draft().asked) {
        const Instant when = at(24, 8) + std::chrono::milliseconds(dice.upTo(3600000));
        REQUIRE(walk.give(i, randomAnswer(checklist.item(i), dice), when).has_value());
    }
    return walk.draft();
}

Result<Draft> withMember(const Draft& draft, const std::string& name, const Json& value)
{
    Json json = toJson(draft);
    auto& members = std::get<Json::Object>(json.value);
    std::erase_if(members, [&](const JsonMember& one) { return one.name == name; });
    members.push_back({name, value});
    return draftFromJson(json);
}

Json listOf(const std::vector<int>& numbers)
{
    Json::Array out;
    for (const int n : numbers)
        out.emplace_back(n);
    return out;
}

}

TEST_CASE("two thousand drafts are taken up again as they were left")
{
    Dice dice(99);
    for (int i = 0; i < 2000; ++i) {
        const Draft draft = randomDraft(dice);
        const std::string text = canonicalText(toJson(draft));
        const auto json = parseJson(text);
        REQUIRE(json.has_value());
        const auto back = draftFromJson(*json);
        REQUIRE_MESSAGE(back.has_value(), text);
        REQUIRE_MESSAGE(*back == draft, text);
    }
}

TEST_CASE("every missing or broken member of a draft is refused")
{
    for (const Draft& draft : {freshDraft(), recheckDraft()}) {
        const Json whole = toJson(draft);
        REQUIRE(draftFromJson(whole).has_value());
        for (const JsonMember& one : *whole.asObject()) {
            CAPTURE(one.name);
            Json without = whole;
            std::erase_if(std::get<Json::Object>(without.value),
                [&](const JsonMember& m) { return m.name == one.name; });
            CHECK_FALSE(draftFromJson(without).has_value());
            for (const Json& wrong :
                {Json(), Json(true), Json(1.5), Json(std::int64_t{1} << 60), Json(Json::Array{Json("?")})})
                CHECK_FALSE(withMember(draft, one.name, wrong).has_value());
        }
    }
}

TEST_CASE("a draft whose lists do not fit each other is refused")
{
    const Draft fresh = freshDraft();
    const Draft recheck = recheckDraft();
    CHECK(withMember(recheck, "asked", listOf({0, 9})).has_value());
    CHECK(withMember(recheck, "asked", listOf({})).has_value());
    for (const std::vector<int>& asked : {std::vector{0, 10}, {-1}, {3, 0}, {3, 3}}) {
        CAPTURE(asked.size());
        CHECK_FALSE(withMember(recheck, "asked", listOf(asked)).has_value());
    }
    CHECK_FALSE(withMember(fresh, "asked", Json::Array{Json()}).has_value());
    CHECK_FALSE(withMember(fresh, "answeredAt", listOf({1, 2})).has_value());
    CHECK_FALSE(withMember(recheck, "before", Json::Array{Json("y")}).has_value());
    CHECK_FALSE(withMember(fresh, "version", 0).has_value());
    CHECK_FALSE(withMember(fresh, "version", (std::int64_t{1} << 32) + 3).has_value());
    CHECK_FALSE(withMember(fresh, "kind", "recheck").has_value());
    CHECK_FALSE(withMember(recheck, "kind", "shift").has_value());
    CHECK_FALSE(withMember(recheck, "over", listOf({1, 2})).has_value());
}

TEST_CASE("a record is named by station and number")
{
    CHECK(recordIdFromJson(toJson(RecordId{"s", 7})) == RecordId{"s", 7});
    for (const Json& wrong :
        {Json(), Json("s"), Json(Json::Array{Json("s")}), Json(Json::Array{Json("s"), Json("7")}),
            Json(Json::Array{Json(7), Json("s")}), Json(Json::Array{Json("s"), Json(7), Json(8)})})
        CHECK_FALSE(recordIdFromJson(wrong).has_value());
}
