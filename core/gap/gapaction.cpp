// SPDX-License-Identifier: MIT
#include "core/gap/gapaction.h"

#include <algorithm>

namespace cradlepost {

namespace {
/** Code points, not bytes: a letter of Devanagari takes three. */
std::size_t characters(const std::string& utf8)
{
    return static_cast<std::size_t>(
        std::count_if(utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}
}

Result<void> checkAction(const GapAction& action)
{
    if (action.item.empty() || action.nth < 1)
        return fail(ErrorCode::InvalidArgument, "gap action: no gap is named");
    if (!action.owner && !action.due && !action.remark)
        return fail(ErrorCode::InvalidArgument, "gap action: nothing is decided", "give an owner, a time or a remark");
    if (action.owner && characters(*action.owner) > maxOwnerLength)
        return fail(ErrorCode::InvalidArgument, "gap action: the owner is longer than 24 characters",
            "use initials or a role");
    if (action.remark && characters(*action.remark) > maxRemarkLength)
        return fail(ErrorCode::InvalidArgument, "gap action: the remark is longer than 200 characters", "shorten it");
    return {};
}

Json toBody(const GapAction& action)
{
    Json::Object body {{"item", action.item}, {"nth", action.nth}};
    if (action.due)
        body.push_back({"due", toMs(*action.due)});
    if (action.owner)
        body.push_back({"owner", *action.owner});
    if (action.remark)
        body.push_back({"remark", *action.remark});
    return body;
}

Result<GapAction> gapActionFromBody(const Json& body)
{
    const auto* item = body.findString("item");
    const auto* nth = body.findInteger("nth");
    if (item == nullptr || nth == nullptr || *nth < 1 || *nth > 1000000)
        return fail(ErrorCode::BadDocument, "gap action: no gap is named");
    GapAction action {.item = *item, .nth = static_cast<int>(*nth), .owner = {}, .due = {}, .remark = {}};
    if (const auto* due = body.findInteger("due"))
        action.due = fromMs(*due);
    if (const auto* owner = body.findString("owner"))
        action.owner = *owner;
    if (const auto* remark = body.findString("remark"))
        action.remark = *remark;
    // What is there and was not taken is of a wrong kind, or no member of ours.
    const std::size_t taken = 2U + (action.due ? 1U : 0U) + (action.owner ? 1U : 0U) + (action.remark ? 1U : 0U);
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
    return gap;
}

}
