// SPDX-License-Identifier: MIT
#include "core/round/changeidea.h"

#include "core/ledger/canonical.h"

#include <doctest/doctest.h>
#include <functional>

using namespace cradlepost;
using namespace std::chrono;

namespace {

ChangeIdea anIdea()
{
    return {.id = "kits-1",
        .title = "Kits at handover",
        .from = year(2026) / 3 / 1,
        .until = year(2026) / 5 / 31,
        .items = {"delivery-kits"},
        .hope = "half as many gaps"};
}

}

TEST_CASE("an idea reads back from its canonical text, with and without an end")
{
    ChangeIdea idea = anIdea();
    for (int i = 0; i < 2; ++i) {
        const auto json = parseJson(canonicalText(toBody(idea)));
        REQUIRE(json.has_value());
        CHECK(changeIdeaFromBody(*json).value() == idea);
        idea.until.reset();
        idea.items.clear();
    }
}

TEST_CASE("an idea is on from its first to its last day")
{
    const ChangeIdea idea = anIdea();
    CHECK_FALSE(idea.isOn(year(2026) / 2 / 28));
    CHECK(idea.isOn(year(2026) / 3 / 1));
    CHECK(idea.isOn(year(2026) / 5 / 31));
    CHECK_FALSE(idea.isOn(year(2026) / 6 / 1));
}

TEST_CASE("what does not hold of an idea is refused")
{
    const std::pair<const char*, std::function<void(ChangeIdea&)>> changes[] = {
        {"no id", [](ChangeIdea& i) { i.id.clear(); }},
        {"a capital in the id", [](ChangeIdea& i) { i.id = "Kits"; }},
        {"a long id", [](ChangeIdea& i) { i.id = std::string(41, 'a'); }},
        {"a short title", [](ChangeIdea& i) { i.title = "ab"; }},
        {"a long title", [](ChangeIdea& i) { i.title = std::string(121, 'a'); }},
        {"two lines", [](ChangeIdea& i) { i.title = "one\ntwo"; }},
        {"a long hope", [](ChangeIdea& i) { i.hope = std::string(201, 'a'); }},
        {"the end before the beginning", [](ChangeIdea& i) { i.until = year(2026) / 2 / 28; }},
        {"a day that does not exist", [](ChangeIdea& i) { i.from = year(2026) / 2 / 30; }},
        {"an item twice",
            [](ChangeIdea& i) {
                i.items = {"a", "a"};
            }},
        {"an item without a name", [](ChangeIdea& i) { i.items = {""}; }},
    };
    CHECK(checkChangeIdea(anIdea()).has_value());
    for (const auto& [name, change] : changes) {
        CAPTURE(name);
        ChangeIdea idea = anIdea();
        change(idea);
        CHECK(checkChangeIdea(idea).error().code == ErrorCode::InvalidArgument);
        CHECK_FALSE(changeIdeaFromBody(toBody(idea)).has_value());
    }
    Json more = toBody(anIdea());
    std::get<Json::Object>(more.value).push_back({"cost", 3});
    CHECK_FALSE(changeIdeaFromBody(more).has_value());
}
