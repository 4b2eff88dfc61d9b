// SPDX-License-Identifier: MIT
#include "core/gap/gapaction.h"

#include "core/base/refusal.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Code points, not bytes: a letter of Devanagari takes three. */
std::size_t characters(const std::string& utf8)
{
    return static_cast<std::size_t>(std::count_if(
        utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

bool isTooLong(const std::optional<std::string>& text, std::size_t most)
{
    return text && characters(*text) > most;
}

/** Initials without what is written one way by one and another way by the other. */
std::string bare(const std::string& initials)
{
    std::string out;
    for (const char c : initials) {
        if (c != '.' && c != ' ')
            out += 'A' <= c && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return out;
}

bool decidesNothing(const GapAction& action)
{
    return !action.owner && !action.due && !action.remark && !action.measure && !action.mended
        && !action.verified;
}

Result<void> checkTexts(const GapAction& action)
{
    if (isTooLong(action.owner, maxOwnerLength))
        return tl::unexpected(refused(refusal::owner, {std::to_string(maxOwnerLength)},
            "gap action: the owner is longer than 24 characters", "use initials or a role"));
    if (isTooLong(action.mended, maxOwnerLength) || isTooLong(action.verified, maxOwnerLength))
        return tl::unexpected(refused(
            refusal::nobodyNamed, {}, "gap action: a name is longer than 24 characters", "use initials"));
    if (isTooLong(action.remark, maxRemarkLength))
        return tl::unexpected(refused(refusal::remark, {std::to_string(maxRemarkLength)},
            "gap action: the remark is longer than 200 characters", "shorten it"));
    if (isTooLong(action.measure, maxRemarkLength))
        return tl::unexpected(refused(refusal::remark, {std::to_string(maxRemarkLength)},
            "gap action: the measure is longer than 200 characters", "shorten it"));
    return {};
}

}

bool samePerson(const std::string& one, const std::string& other) { return bare(one) == bare(other); }

Result<void> checkAction(const GapAction& action)
{
    if (action.item.empty() || action.nth < 1)
        return fail(ErrorCode::InvalidArgument, "gap action: no gap is named");
    if (decidesNothing(action))
        return fail(ErrorCode::InvalidArgument, "gap action: nothing is decided",
            "give an owner, a time or a remark");
    if (action.mended && action.verified)
        return fail(ErrorCode::InvalidArgument, "gap action: mended and verified in one breath",
            "let another person verify it");
    if (action.verified && bare(*action.verified).empty())
        return tl::unexpected(refused(
            refusal::nobodyNamed, {}, "gap action: nobody is named who verified it", "give initials"));
    if (action.at.has_value() != (action.mended || action.verified))
        return fail(ErrorCode::InvalidArgument, "gap action: the time belongs to what is mended or verified");
    return checkTexts(action);
}

Result<void> checkActionOn(const Gap& gap, const GapAction& action)
{
    const bool onlyVerifies
        = action.verified && !action.owner && !action.due && !action.remark && !action.measure;
    if (!gap.isOpen() && !onlyVerifies)
        return tl::unexpected(
            refused(refusal::gapClosed, {}, "the gap is closed", "Act on the gap that is open now."));
    if (action.verified && gap.mendedBy.empty())
        return tl::unexpected(
            refused(refusal::notMended, {}, "nobody has said that it is mended", "Say who mended it first."));
    if (action.verified && samePerson(*action.verified, gap.mendedBy))
        return tl::unexpected(refused(
            refusal::menderVerifies, {}, "who mended it cannot verify it", "Let a second person look."));
    return {};
}

Json toBody(const GapAction& action)
{
    Json::Object body{{"item", action.item}, {"nth", action.nth}};
    if (action.at)
        body.push_back({"at", toMs(*action.at)});
    if (action.due)
        body.push_back({"due", toMs(*action.due)});
    for (const auto& [name, text] : {std::pair("owner", &action.owner), std::pair("remark", &action.remark),
             std::pair("measure", &action.measure), std::pair("mended", &action.mended),
             std::pair("verified", &action.verified)}) {
        if (*text)
            body.push_back({name, **text});
    }
    return body;
}

Result<GapAction> gapActionFromBody(const Json& body)
{
    const auto* item = body.findString("item");
    const auto* nth = body.findInteger("nth");
    if (item == nullptr || nth == nullptr || *nth < 1 || *nth > 1000000)
        return fail(ErrorCode::BadDocument, "gap action: no gap is named");
    GapAction action{.item = *item, .nth = static_cast<int>(*nth), .owner = {}, .due = {}, .remark = {}};
    std::size_t taken = 2;
    for (const auto& [name, time] : {std::pair("at", &action.at), std::pair("due", &action.due)}) {
        if (const auto* member = body.findInteger(name)) {
            *time = fromMs(*member);
            ++taken;
        }
    }
    for (const auto& [name, text] : {std::pair("owner", &action.owner), std::pair("remark", &action.remark),
             std::pair("measure", &action.measure), std::pair("mended", &action.mended),
             std::pair("verified", &action.verified)}) {
        if (const auto* member = body.findString(name)) {
            *text = *member;
            ++taken;
        }
    }
    // What is there and was not taken is of a wrong kind, or no member of ours.
    if (body.asObject()->size() != taken)
        return fail(ErrorCode::BadDocument, "gap action: a member is broken or not known");
    if (auto allowed = checkAction(action); !allowed)
        return tl::unexpected(allowed.error());
    return action;
}

Gap withAction(Gap gap, const GapAction& action)
{
    if (action.owner)
        gap.owner = *action.owner;
    if (action.due)
        gap.due = *action.due;
    if (action.remark)
        gap.remark = *action.remark;
    if (action.measure)
        gap.measure = *action.measure;
    if (action.mended && !action.mended->empty()) {
        gap.mendedBy = *action.mended;
        gap.mendedAt = action.at;
        gap.verifiedBy.clear();
        gap.verifiedAt.reset();
    } else if (action.mended && !gap.mendedBy.empty()) {
        gap = reopened(std::move(gap));
    }
    if (action.verified
        && checkActionOn(
            gap, {.item = gap.item, .owner = {}, .due = {}, .remark = {}, .verified = action.verified})) {
        gap.verifiedBy = *action.verified;
        gap.verifiedAt = action.at;
    }
    return gap;
}

}
