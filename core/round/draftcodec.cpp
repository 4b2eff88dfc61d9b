// SPDX-License-Identifier: MIT
#include "core/round/draftcodec.h"

#include "core/ledger/canonical.h"
#include "core/round/answercodec.h"
#include "core/round/walk.h"

#include <algorithm>
#include <functional>

namespace cradlepost {

namespace {

tl::unexpected<Error> unreadable(const std::string& what) { return fail(ErrorCode::BadDocument, "draft: " + what); }

Result<void> readNames(const Json& json, Draft& draft)
{
    for (const auto& [name, target] : {std::pair("unit", &draft.unit), std::pair("checklist", &draft.checklist),
             std::pair("actor", &draft.actor)}) {
        const auto* text = json.findString(name);
        if (text == nullptr)
            return unreadable("'" + std::string(name) + "' is missing");
        *target = *text;
    }
    return {};
}

Result<void> readOver(const Json& json, Draft& draft)
{
    const Json* over = json.find("over");
    if ((draft.kind == RoundKind::Recheck) != (over != nullptr))
        return unreadable("a re-check names its round, and nothing else does");
    if (over == nullptr)
        return {};
    auto id = recordIdFromJson(*over);
    if (!id)
        return tl::unexpected(id.error());
    draft.over = std::move(*id);
    return {};
}

/** Whole numbers or null, `n` of them. */
Result<std::vector<std::optional<std::int64_t>>> numbers(const Json* json)
{
    if (json == nullptr || json->asArray() == nullptr)
        return unreadable("a list is missing");
    std::vector<std::optional<std::int64_t>> out;
    for (const Json& one : *json->asArray()) {
        const auto* n = one.asInteger();
        if (n == nullptr && !one.isNull())
            return unreadable("a list holds something else than whole numbers");
        out.push_back(n != nullptr ? std::optional(*n) : std::nullopt);
    }
    return out;
}

Result<void> readAsked(const Json& json, Draft& draft)
{
    const auto asked = numbers(json.find("asked"));
    const auto times = numbers(json.find("answeredAt"));
    if (!asked || !times)
        return tl::unexpected((asked ? times : asked).error());
    for (const auto& at : *asked) {
        if (!at || *at < 0 || static_cast<std::size_t>(*at) >= draft.answers.size())
            return unreadable("it asks an item that the checklist does not have");
        draft.asked.push_back(static_cast<std::size_t>(*at));
    }
    const bool rising = std::adjacent_find(draft.asked.begin(), draft.asked.end(), std::greater_equal<>())
        == draft.asked.end();
    const bool fits = draft.before.empty() || draft.before.size() == draft.answers.size();
    if (!rising || !fits || times->size() != draft.answers.size())
        return unreadable("its lists do not fit each other");
    for (const auto& time : *times)
        draft.answeredAt.push_back(time ? std::optional(fromMs(*time)) : std::nullopt);
    return {};
}

}

Json answersToJson(const std::vector<Answer>& answers)
{
    Json::Array out;
    out.reserve(answers.size());
    for (const Answer& answer : answers)
        out.push_back(toJson(answer));
    return out;
}

Result<std::vector<Answer>> answersFromJson(const Json* json)
{
    if (json == nullptr || json->asArray() == nullptr)
        return fail(ErrorCode::BadDocument, "answers are missing");
    std::vector<Answer> answers;
    for (const Json& one : *json->asArray()) {
        auto answer = answerFromJson(one);
        if (!answer)
            return tl::unexpected(answer.error());
        answers.push_back(std::move(*answer));
    }
    return answers;
}

Json limitsToJson(const ChosenLimits& limits)
{
    Json::Object out;
    for (const auto& [item, set] : limits)
        out.push_back({item, set});
    return out;
}

Result<ChosenLimits> limitsFromJson(const Json* json)
{
    if (json == nullptr || json->asObject() == nullptr)
        return fail(ErrorCode::BadDocument, "chosen limits are missing");
    ChosenLimits limits;
    for (const auto& [item, set] : *json->asObject()) {
        if (set.asString() == nullptr)
            return fail(ErrorCode::BadDocument, "chosen limits of '" + item + "' are no name");
        limits[item] = *set.asString();
    }
    return limits;
}

Json toJson(const Shift& shift)
{
    return Json::Object {{"begins", toMs(shift.begins)}, {"code", shift.code}, {"date", toIso(shift.date)},
        {"ends", toMs(shift.ends)}, {"index", shift.index}};
}

Result<Shift> shiftFromJson(const Json* json)
{
    const auto* date = json != nullptr ? json->findString("date") : nullptr;
    const auto* code = json != nullptr ? json->findString("code") : nullptr;
    const auto* index = json != nullptr ? json->findInteger("index") : nullptr;
    const auto* begins = json != nullptr ? json->findInteger("begins") : nullptr;
    const auto* ends = json != nullptr ? json->findInteger("ends") : nullptr;
    if (date == nullptr || code == nullptr || index == nullptr || begins == nullptr || ends == nullptr || *index < 0
        || *index >= maxShiftsPerDay)
        return fail(ErrorCode::BadDocument, "a shift needs date, index, code, begin and end");
    const auto day = dateFromIso(*date);
    if (!day)
        return tl::unexpected(day.error());
    return Shift {.date = *day,
        .index = static_cast<int>(*index),
        .code = *code,
        .begins = fromMs(*begins),
        .ends = fromMs(*ends)};
}

Json toJson(const RecordId& id) { return Json::Array {Json(id.station), Json(id.seq)}; }

Result<RecordId> recordIdFromJson(const Json& json)
{
    const auto* parts = json.asArray();
    if (parts == nullptr || parts->size() != 2 || (*parts)[0].asString() == nullptr || (*parts)[1].asInteger() == nullptr)
        return fail(ErrorCode::BadDocument, "a record is not named by station and number");
    return RecordId {.station = *(*parts)[0].asString(), .seq = *(*parts)[1].asInteger()};
}

Json toJson(const Draft& draft)
{
    Json::Array asked;
    for (const std::size_t at : draft.asked)
        asked.emplace_back(static_cast<std::int64_t>(at));
    Json::Array times;
    for (const auto& time : draft.answeredAt)
        times.push_back(time ? Json(toMs(*time)) : Json());
    Json::Object out {{"actor", draft.actor}, {"answeredAt", std::move(times)}, {"answers", answersToJson(draft.answers)},
        {"asked", std::move(asked)}, {"before", answersToJson(draft.before)}, {"checklist", draft.checklist},
        {"kind", codeName(draft.kind)}, {"limits", limitsToJson(draft.limits)}, {"shift", toJson(draft.shift)},
        {"started", toMs(draft.started)}, {"unit", draft.unit}, {"version", draft.version}};
    if (draft.over)
        out.push_back({"over", toJson(*draft.over)});
    return out;
}

Result<Draft> draftFromJson(const Json& json)
{
    // Moments beyond 2^53 ms would overflow when they are compared.
    if (auto sound = checkBody(json); !sound)
        return tl::unexpected(sound.error());
    const auto* word = json.findString("kind");
    const auto kind = word != nullptr ? roundKindFromCode(*word) : std::nullopt;
    const auto* version = json.findInteger("version");
    const auto* started = json.findInteger("started");
    auto answers = answersFromJson(json.find("answers"));
    auto before = answersFromJson(json.find("before"));
    auto limits = limitsFromJson(json.find("limits"));
    auto shift = shiftFromJson(json.find("shift"));
    if (!kind || version == nullptr || *version < 1 || *version > 1000000 || started == nullptr || !answers || !before
        || !limits || !shift)
        return unreadable("kind, version, start, answers, limits or shift is missing or broken");
    Draft draft {.kind = *kind,
        .version = static_cast<int>(*version),
        .shift = std::move(*shift),
        .started = fromMs(*started),
        .limits = std::move(*limits),
        .answers = std::move(*answers),
        .over = std::nullopt,
        .before = std::move(*before)};
    for (const auto& read : {readNames(json, draft), readAsked(json, draft), readOver(json, draft)}) {
        if (!read)
            return tl::unexpected(read.error());
    }
    return draft;
}

}
