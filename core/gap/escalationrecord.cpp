// SPDX-License-Identifier: MIT
#include "core/gap/escalationrecord.h"

#include "core/base/refusal.h"

#include <algorithm>

namespace cradlepost {

namespace {

tl::unexpected<Error> unreadable(const std::string& what)
{
    return fail(ErrorCode::BadDocument, "escalation record: " + what);
}

Result<EscalationLevel> levelFrom(const Json& body)
{
    const auto* to = body.findString("to");
    const auto* percent = body.findInteger("percent");
    if (to == nullptr || percent == nullptr || body.asObject()->size() != 2)
        return unreadable("a level needs to and percent, and nothing else");
    const auto who = escalationToFromCode(*to);
    if (!who)
        return unreadable("'" + *to + "' is not known");
    if (*percent < 1 || *percent > mostEscalationPercent)
        return unreadable("a level lies within 1 to 1000 per cent");
    return EscalationLevel{.to = *who, .percent = static_cast<int>(*percent)};
}

}

Result<void> checkEscalation(const EscalationSet& set)
{
    const auto wrong = [](const std::string& what) {
        return tl::unexpected(refused(refusal::escalationOrder, {}, "escalation: " + what,
            "Name each who once, from the owner to the district, each later than the one before."));
    };
    const EscalationLevel* before = nullptr;
    for (const EscalationLevel& level : set.levels) {
        if (level.percent < 1 || level.percent > mostEscalationPercent)
            return wrong("a level lies within 1 to 1000 per cent");
        if (before != nullptr && (before->to >= level.to || before->percent >= level.percent))
            return wrong("the levels do not rise");
        before = &level;
    }
    return {};
}

Json toBody(const EscalationSet& set)
{
    Json::Array levels;
    for (const EscalationLevel& level : set.levels)
        levels.emplace_back(Json::Object{{"percent", level.percent}, {"to", codeName(level.to)}});
    return Json::Object{{"at", toMs(set.at)}, {"levels", std::move(levels)}};
}

Result<EscalationSet> escalationFromBody(const Json& body)
{
    const auto* at = body.findInteger("at");
    const Json* levels = body.find("levels");
    if (at == nullptr || levels == nullptr || levels->asArray() == nullptr || body.asObject()->size() != 2)
        return unreadable("it needs at and levels, and nothing else");
    EscalationSet set{.at = fromMs(*at), .levels = {}};
    for (const Json& one : *levels->asArray()) {
        const auto level = levelFrom(one);
        if (!level)
            return tl::unexpected(level.error());
        set.levels.push_back(*level);
    }
    if (const auto sound = checkEscalation(set); !sound)
        return unreadable(sound.error().message);
    return set;
}

}
