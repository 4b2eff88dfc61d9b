// SPDX-License-Identifier: MIT
#include "core/round/roundrecord.h"

#include "core/ledger/canonical.h"
#include "core/round/answercodec.h"
#include "core/round/draftcodec.h"

#include <algorithm>
#include <array>

namespace cradlepost {

namespace {

tl::unexpected<Error> unreadable(const std::string& what)
{
    return fail(ErrorCode::BadDocument, "round record: " + what);
}

Json toJson(const Reason& reason)
{
    Json::Object out {{"i", reason.item}, {"r", codeName(reason.code)}, {"s", codeName(reason.severity)}};
    if (!reason.value.empty())
        out.push_back({"v", reason.value});
    if (!reason.limit.empty())
        out.push_back({"l", reason.limit});
    if (!reason.part.empty())
        out.push_back({"p", reason.part});
    if (reason.readyAt)
        out.push_back({"at", toMs(*reason.readyAt)});
    return out;
}

Result<Reason> reasonFromJson(const Json& json)
{
    const auto* item = json.findString("i");
    const auto* code = json.findString("r");
    const auto* severity = json.findString("s");
    const auto known = code != nullptr ? reasonFromCode(*code) : std::nullopt;
    const auto weight = severity != nullptr ? severityFromCode(*severity) : std::nullopt;
    if (item == nullptr || !known || !weight)
        return unreadable("a gap without item, reason or severity");
    const auto text = [&](std::string_view name) {
        const auto* member = json.findString(name);
        return member != nullptr ? *member : std::string();
    };
    const auto* at = json.findInteger("at");
    return Reason {.code = *known,
        .item = *item,
        .severity = *weight,
        .value = text("v"),
        .limit = text("l"),
        .part = text("p"),
        .readyAt = at != nullptr ? std::optional(fromMs(*at)) : std::nullopt};
}

Result<std::vector<Reason>> gapsFromJson(const Json& body)
{
    const Json* list = body.find("gaps");
    if (list == nullptr || list->asArray() == nullptr)
        return unreadable("no list of gaps");
    std::vector<Reason> gaps;
    for (const Json& one : *list->asArray()) {
        auto reason = reasonFromJson(one);
        if (!reason)
            return tl::unexpected(reason.error());
        gaps.push_back(std::move(*reason));
    }
    return gaps;
}

Json secondsToJson(const std::vector<std::optional<std::int32_t>>& seconds)
{
    Json::Array out;
    for (const auto& s : seconds)
        out.push_back(s ? Json(*s) : Json());
    return out;
}

Result<std::vector<std::optional<std::int32_t>>> secondsFromJson(const Json& body)
{
    const Json* list = body.find("seconds");
    if (list == nullptr || list->asArray() == nullptr)
        return unreadable("no times of the answers");
    std::vector<std::optional<std::int32_t>> seconds;
    for (const Json& one : *list->asArray()) {
        const auto* s = one.asInteger();
        if (!one.isNull() && (s == nullptr || *s < INT32_MIN || *s > INT32_MAX))
            return unreadable("a time of an answer is no number of seconds");
        seconds.push_back(s != nullptr ? std::optional(static_cast<std::int32_t>(*s)) : std::nullopt);
    }
    return seconds;
}

Result<int> smallMember(const Json& body, std::string_view name)
{
    const auto* n = body.findInteger(name);
    if (n == nullptr || *n < 0 || *n > 1000000)
        return unreadable("'" + std::string(name) + "' is missing or no count");
    return static_cast<int>(*n);
}

/** A re-check counts the whole shift, everything else itself. */
Result<void> checkCounts(const RoundRecord& round)
{
    const auto letters = [&](char c) {
        return static_cast<int>(std::count(round.outcomes.begin(), round.outcomes.end(), c));
    };
    const int items = static_cast<int>(round.outcomes.size());
    const bool sound = round.version >= 1 && round.index <= 10000 && round.met <= round.applicable
        && round.applicable <= items;
    const bool own = round.met == letters('m') && round.applicable == items - letters('n');
    if (!sound || (round.kind != RoundKind::Recheck && !own))
        return unreadable("version, counts or index do not fit the outcomes");
    return {};
}

/** Refuses rather than drops what it does not know: the verdict may rest on it. */
Result<void> checkNames(const Json& body)
{
    static constexpr std::array known {"answers", "applicable", "checklist", "finished", "gaps", "index", "kind",
        "limits", "met", "outcomes", "over", "seconds", "shift", "source", "started", "verdict", "version"};
    if (body.asObject() == nullptr)
        return unreadable("it is no object");
    for (const JsonMember& member : *body.asObject()) {
        if (std::find(known.begin(), known.end(), member.name) == known.end())
            return fail(ErrorCode::NewerSchema,
                "round record: a later version of this program wrote it; this one does not know its member '"
                    + member.name + "'",
                "Install the version of the station that wrote it, or a later one.");
    }
    return {};
}

/** What must agree between the parts of a record. */
Result<void> checkWhole(const RoundRecord& round)
{
    const std::size_t n = round.outcomes.size();
    if (n == 0 || n != round.answers.size() || n != round.seconds.size())
        return unreadable("answers, times and outcomes do not have the same number of items");
    if (round.outcomes.find_first_not_of("mgnu") != std::string::npos)
        return unreadable("an outcome is none of m, g, n, u");
    if (static_cast<std::size_t>(std::count(round.outcomes.begin(), round.outcomes.end(), 'g')) != round.gaps.size())
        return unreadable("the reasons do not match the gaps");
    if ((round.kind == RoundKind::Recheck) != round.over.has_value())
        return unreadable("a re-check names its round, and nothing else does");
    return checkCounts(round);
}

/** The members that are a code or a count. */
Result<void> readHead(const Json& body, RoundRecord& round)
{
    const auto* kind = body.findString("kind");
    const auto* checklist = body.findString("checklist");
    const auto* state = body.findString("verdict");
    const auto* outcomes = body.findString("outcomes");
    const auto* started = body.findInteger("started");
    const auto* finished = body.findInteger("finished");
    const auto known = kind != nullptr ? roundKindFromCode(*kind) : std::nullopt;
    const auto readiness = state != nullptr ? readinessFromCode(*state) : std::nullopt;
    if (!known || checklist == nullptr || !readiness || outcomes == nullptr || started == nullptr || finished == nullptr)
        return unreadable("kind, checklist, verdict, outcomes or a time is missing");
    round.kind = *known;
    round.checklist = *checklist;
    round.state = *readiness;
    round.outcomes = *outcomes;
    round.started = fromMs(*started);
    round.finished = fromMs(*finished);
    for (const auto& [name, target] : {std::pair("version", &round.version), std::pair("met", &round.met),
             std::pair("applicable", &round.applicable), std::pair("index", &round.index)}) {
        const auto n = smallMember(body, name);
        if (!n)
            return tl::unexpected(n.error());
        *target = *n;
    }
    return {};
}

}

Json toBody(const RoundRecord& round)
{
    Json::Array gaps;
    for (const Reason& reason : round.gaps)
        gaps.push_back(toJson(reason));
    Json::Object body;
    body.reserve(16);
    // Moved in one by one: a braced list would copy the answers twice.
    const auto add = [&](const char* name, Json value) { body.push_back({name, std::move(value)}); };
    add("answers", answersToJson(round.answers));
    add("applicable", round.applicable);
    add("checklist", round.checklist);
    add("finished", toMs(round.finished));
    add("gaps", std::move(gaps));
    add("index", round.index);
    add("kind", codeName(round.kind));
    add("limits", limitsToJson(round.limits));
    add("met", round.met);
    add("outcomes", round.outcomes);
    add("seconds", secondsToJson(round.seconds));
    add("shift", toJson(round.shift));
    add("started", toMs(round.started));
    add("verdict", codeName(round.state));
    add("version", round.version);
    if (round.over)
        add("over", toJson(*round.over));
    if (round.fromPaper)
        add("source", "paper");
    return body;
}

Result<RoundRecord> roundFromBody(const Json& body)
{
    if (auto sound = checkBody(body); !sound)
        return tl::unexpected(sound.error());
    return roundFromBody(body, canonicalText(body));
}

Result<RoundRecord> roundFromBody(const Json& body, std::string_view text)
{
    if (auto names = checkNames(body); !names)
        return tl::unexpected(names.error());
    RoundRecord round;
    if (auto head = readHead(body, round); !head)
        return tl::unexpected(head.error());
    auto answers = answersFromJson(body.find("answers"));
    auto seconds = secondsFromJson(body);
    auto gaps = gapsFromJson(body);
    auto shift = shiftFromJson(body.find("shift"));
    auto limits = limitsFromJson(body.find("limits"));
    for (const Error* error : {answers ? nullptr : &answers.error(), seconds ? nullptr : &seconds.error(),
             gaps ? nullptr : &gaps.error(), shift ? nullptr : &shift.error(), limits ? nullptr : &limits.error()}) {
        if (error != nullptr)
            return tl::unexpected(*error);
    }
    round.answers = std::move(*answers);
    round.seconds = std::move(*seconds);
    round.gaps = std::move(*gaps);
    round.shift = std::move(*shift);
    round.limits = std::move(*limits);
    if (const Json* over = body.find("over")) {
        auto id = recordIdFromJson(*over);
        if (!id)
            return tl::unexpected(id.error());
        round.over = std::move(*id);
    }
    if (const Json* source = body.find("source")) {
        if (source->asString() == nullptr || *source->asString() != "paper")
            return unreadable("it comes from neither this station nor paper");
        round.fromPaper = true;
    }
    if (auto whole = checkWhole(round); !whole)
        return tl::unexpected(whole.error());
    if (canonicalText(toBody(round)) != text)
        return unreadable("a part of a member is not written as this version writes it");
    return round;
}

}
