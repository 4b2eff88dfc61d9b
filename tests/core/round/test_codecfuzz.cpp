// SPDX-License-Identifier: MIT
#include "core/ledger/canonical.h"
#include "core/round/standing.h"
#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

void collect(Json& json, std::vector<Json*>& nodes)
{
    nodes.push_back(&json);
    if (auto* array = std::get_if<Json::Array>(&json.value)) {
        for (Json& one : *array)
            collect(one, nodes);
    }
    if (auto* object = std::get_if<Json::Object>(&json.value)) {
        for (JsonMember& one : *object)
            collect(one.value, nodes);
    }
}

Json::Array listOf(Json one) { return {std::move(one)}; }

/** Puts something else in the place of one value: a stranger, or a value from elsewhere in the text. */
std::string withStranger(Json json, Dice& dice)
{
    static const std::vector<Json> strangers{{}, true, 0, -1, 10001, INT64_MAX, INT64_MIN,
        (std::int64_t{1} << 53) - 1, 1 - (std::int64_t{1} << 53), 0.5, "", "-", "y", "absent", "m", "recheck",
        "2026-02-30", Json::Array(), Json::Object(), Json::Object{{"k", Json::Array()}},
        Json::Object{{"n", listOf(listOf(100001))}}, Json::Object{{"s", 1 - (std::int64_t{1} << 53)}},
        Json::Object{{"t", ""}}, Json::Object{{"v", "-999999999999"}}};
    std::vector<Json*> nodes;
    collect(json, nodes);
    const Json other = *nodes[dice.below(nodes.size())];
    // The root last of all: what replaces it leaves nothing to look at.
    Json& target = *nodes[1 + dice.below(nodes.size() - 1)];
    target = dice.below(4) == 0 ? other : strangers[dice.below(strangers.size())];
    return canonicalText(json);
}

/** A byte, a length, a digit or a repetition: what disks do. */
std::string withInjury(std::string text, Dice& dice)
{
    const std::size_t where = dice.below(text.size());
    switch (dice.below(6)) {
    case 0:
        text[where] = static_cast<char>(static_cast<unsigned char>(text[where]) ^ (1U << dice.below(8)));
        break;
    case 1:
        text.resize(where);
        break;
    case 2:
        text.insert(dice.below(text.size()), text.substr(where, 1 + dice.below(40)));
        break;
    default:
        if (const auto digit = text.find_first_of("0123456789", where); digit != std::string::npos)
            text[digit] = static_cast<char>('0' + dice.below(10));
        break;
    }
    return text;
}

std::string mutated(const Json& json, Dice& dice)
{
    return dice.coin() ? withStranger(json, dice) : withInjury(canonicalText(json), dice);
}

struct Tally
{
    int noJson = 0;
    int refused = 0;
    int read = 0;
};

Draft sampleDraft(Dice& dice, bool isRecheck)
{
    const Checklist checklist = sampleChecklist();
    Walk walk = Walk::of(checklist, TimeZone::utc(),
        isRecheck ? Walk::beginRecheck(
            checklist, "u", "AB", dayShift(), {}, {"s", 1}, allMet(), {0, 2, 3, 5, 8}, at(24, 9))
                  : Walk::begin(checklist, RoundKind::Shift, "u", "AB", dayShift(), {{"temperature", "term"}},
                      at(24, 7)))
                    .value();
    for (const std::size_t i : walk.draft().asked)
        REQUIRE(walk.give(i, randomAnswer(checklist.item(i), dice), at(24, 9, 5)).has_value());
    return walk.draft();
}

}

TEST_CASE("five thousand injured drafts are read whole or refused, and what is read can be walked")
{
    Dice dice(314159);
    const Checklist checklist = sampleChecklist();
    Tally tally;
    int walked = 0;
    int misfits = 0; // read, but of another checklist, version or length
    for (int i = 0; i < 5000; ++i) {
        const std::string text = mutated(toJson(sampleDraft(dice, dice.coin())), dice);
        const auto json = parseJson(text);
        if (!json) {
            ++tally.noJson;
            continue;
        }
        const auto draft = draftFromJson(*json);
        ++(draft ? tally.read : tally.refused);
        if (!draft)
            continue;
        const auto walk = Walk::of(checklist, TimeZone::utc(), *draft);
        ++(walk ? walked : misfits);
        if (!walk)
            continue;
        REQUIRE(walk->open().size() <= checklist.itemCount());
        REQUIRE(walk->finish(at(24, 10)).outcomes.size() == checklist.itemCount());
    }
    CHECK(walked > 100);
    CHECK(misfits > 0);
    MESSAGE("no JSON ", tally.noJson, ", refused ", tally.refused, ", read ", tally.read);
    CHECK(tally.refused > 1000);
    CHECK(tally.read > 500);
}

TEST_CASE("five thousand injured records are read whole or refused, and what is read can stand")
{
    Dice dice(271828);
    const Checklist checklist = sampleChecklist();
    Tally tally;
    for (int i = 0; i < 5000; ++i) {
        const Walk walk = Walk::of(checklist, TimeZone::utc(), sampleDraft(dice, dice.coin())).value();
        const std::string text = mutated(toBody(walk.finish(at(24, 10))), dice);
        const auto json = parseJson(text);
        if (!json) {
            ++tally.noJson;
            continue;
        }
        const auto record = roundFromBody(*json);
        ++(record ? tally.read : tally.refused);
        if (!record)
            continue;
        REQUIRE(canonicalText(toBody(*record)) == canonicalText(*json));
        const auto standing = standingAt(checklist, {{{"s", 1}, "AB", *record}}, TimeZone::utc(), at(24, 11));
        if (standing)
            REQUIRE(standing->judgements.size() == checklist.itemCount());
    }
    MESSAGE("no JSON ", tally.noJson, ", refused ", tally.refused, ", read ", tally.read);
    CHECK(tally.refused > 1000);
    CHECK(tally.read > 500);
}
