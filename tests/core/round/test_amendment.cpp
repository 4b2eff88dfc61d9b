// SPDX-License-Identifier: MIT
#include "core/round/amendment.h"

#include "core/ledger/canonical.h"
#include "core/round/walk.h"
#include "sample.h"

#include <doctest/doctest.h>
#include <functional>

using namespace cradlepost;

namespace {

RoundRecord aRecord()
{
    const Checklist checklist = sampleChecklist();
    Walk walk = Walk::of(checklist, TimeZone::utc(),
        Walk::begin(
            checklist, RoundKind::Shift, "unit", "AB", dayShift(), {{"temperature", "term"}}, at(24, 7, 5)))
                    .value();
    const auto answers = allMet();
    for (std::size_t i = 0; i < answers.size(); ++i)
        REQUIRE(walk.give(i, answers[i], at(24, 7, 6, static_cast<int>(i))).has_value());
    return walk.finish(at(24, 8));
}

Result<RoundRecord> with(const RoundRecord& first, std::size_t at, Answer answer)
{
    auto answers = first.answers;
    answers[at] = std::move(answer);
    return withAnswers(sampleChecklist(), TimeZone::utc(), first, std::move(answers));
}

}

TEST_CASE("a round with another answer is judged again by its own limits and times")
{
    const RoundRecord first = aRecord();
    const auto second = with(first, 3, GapFound{GapReason::NotWorking});
    REQUIRE(second.has_value());
    CHECK(second->outcomes == "mmmgmmmmmm");
    CHECK(second->gaps.size() == 1);
    CHECK(second->met == first.met - 1);
    CHECK(second->limits == first.limits);
    CHECK(second->seconds == first.seconds);
    CHECK(second->finished == first.finished);
    CHECK(checkAmendment(first, *second).has_value());
    CHECK(with(first, 3, NotChecked{})->seconds[3] == std::nullopt);
    CHECK(checkAmendment(first, *with(first, 3, NotChecked{})).has_value());
}

TEST_CASE("an answer that a live round would refuse is refused")
{
    CHECK(with(aRecord(), 3, Confirmed{}).error().message.find("another kind") != std::string::npos);
}

TEST_CASE("an amendment changes what was seen and nothing else")
{
    const RoundRecord first = aRecord();
    const RoundRecord good = *with(first, 3, GapFound{GapReason::NotWorking});
    const std::pair<const char*, std::function<void(RoundRecord&)>> changes[] = {
        {"kind", [](RoundRecord& r) { r.kind = RoundKind::PreBirth; }},
        {"checklist", [](RoundRecord& r) { r.checklist += 'x'; }},
        {"version", [](RoundRecord& r) { ++r.version; }},
        {"shift", [](RoundRecord& r) { ++r.shift.index; }},
        {"limits", [](RoundRecord& r) { r.limits.clear(); }},
        {"source", [](RoundRecord& r) { r.fromPaper = true; }},
        {"start", [](RoundRecord& r) { r.started -= std::chrono::minutes(1); }},
        {"finish", [](RoundRecord& r) { r.finished += std::chrono::minutes(1); }},
        {"a time made up", [](RoundRecord& r) { r.seconds[0] = 5000; }},
        {"fewer times", [](RoundRecord& r) { r.seconds.pop_back(); }},
    };
    for (const auto& [name, change] : changes) {
        CAPTURE(name);
        RoundRecord bad = good;
        change(bad);
        CHECK_FALSE(checkAmendment(first, bad).has_value());
    }
    CHECK(checkAmendment(first, first).error().message.find("nothing is different") != std::string::npos);
}

TEST_CASE("the times of a round from paper may be put right, but it ends after it begins")
{
    RoundRecord first = aRecord();
    first.fromPaper = true;
    RoundRecord second = first;
    second.started = second.finished = first.finished + std::chrono::minutes(30);
    CHECK(checkAmendment(first, second).has_value());
    second.finished -= std::chrono::minutes(1);
    CHECK_FALSE(checkAmendment(first, second).has_value());
}

TEST_CASE("an amendment reads back from its canonical text; with a member more or less it is refused")
{
    const RoundAmendment amendment{
        .amends = {"station", 7}, .reason = "read the wrong gauge", .round = *with(aRecord(), 3, GapFound{})};
    const auto json = parseJson(canonicalText(toBody(amendment)));
    REQUIRE(json.has_value());
    CHECK(checkBody(*json).has_value());
    CHECK(amendmentFromBody(*json).value() == amendment);
    for (const char* name : {"amends", "reason", "round"}) {
        Json body = *json;
        std::erase_if(
            std::get<Json::Object>(body.value), [&](const JsonMember& m) { return m.name == name; });
        CHECK_FALSE(amendmentFromBody(body).has_value());
    }
    Json more = *json;
    std::get<Json::Object>(more.value).push_back({"why", "x"});
    CHECK_FALSE(amendmentFromBody(more).has_value());
}

TEST_CASE("a reason is one line of 3 to 200 characters in any script")
{
    CHECK(checkAmendmentReason("दरवाज़े के पीछे थी").has_value());
    CHECK(checkAmendmentReason(std::string(200, 'x')).has_value());
    for (const std::string& bad : {std::string("ab"), std::string(201, 'x'), std::string("a\nb c"),
             std::string(" abc"), std::string("ab\xC3")})
        CHECK_FALSE(checkAmendmentReason(bad).has_value());
}
