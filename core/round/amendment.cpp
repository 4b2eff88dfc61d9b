// SPDX-License-Identifier: MIT
#include "core/round/amendment.h"

#include "core/base/characters.h"
#include "core/base/refusal.h"
#include "core/ledger/canonical.h"
#include "core/round/draftcodec.h"
#include "core/round/walk.h"

#include <algorithm>

namespace cradlepost {

namespace {

tl::unexpected<Error> refuse(const std::string& what, const std::string& hint)
{
    return fail(ErrorCode::InvalidArgument, "amendment: " + what, hint);
}

/** A time of an answer may be left out, but none made up. */
bool keepsSeconds(const RoundRecord& first, const RoundRecord& corrected)
{
    return std::equal(first.seconds.begin(), first.seconds.end(), corrected.seconds.begin(),
        corrected.seconds.end(), [](const auto& was, const auto& is) { return !is || is == was; });
}

}

Result<void> checkAmendmentReason(const std::string& reason)
{
    const std::size_t length = countCharacters(reason);
    if (!isUtf8(reason) || !isOneLine(reason) || length < minAmendmentReason || length > maxAmendmentReason)
        return tl::unexpected(
            refused(refusal::line, {std::to_string(minAmendmentReason), std::to_string(maxAmendmentReason)},
                "amendment: the reason is not one line of 3 to 200 characters",
                "say in a few words what was wrong; nothing about a patient"));
    return {};
}

Result<void> checkAmendment(const RoundRecord& first, const RoundRecord& corrected)
{
    if (first.kind == RoundKind::SpotCheck)
        return refuse("a spot check is not amended", "make another one");
    const bool sameList = first.checklist == corrected.checklist && first.version == corrected.version
        && first.outcomes.size() == corrected.outcomes.size() && first.limits == corrected.limits;
    if (first.kind != corrected.kind || first.shift != corrected.shift || first.over != corrected.over
        || first.fromPaper != corrected.fromPaper || !sameList)
        return refuse("it is of another shift, kind or checklist than the round", "amend what was seen only");
    const bool sameTimes = first.started == corrected.started && first.finished == corrected.finished;
    if (!keepsSeconds(first, corrected) || (!first.fromPaper && !sameTimes))
        return refuse(
            "the times of a round that was walked here stay as they are", "amend what was seen only");
    if (corrected.finished < corrected.started)
        return tl::unexpected(refused(refusal::endsFirst, {}, "amendment: the round ends before it begins",
            "give the later time as the end"));
    if (first == corrected)
        return tl::unexpected(
            refused(refusal::nothingChanged, {}, "amendment: nothing is different", "change an answer first"));
    return {};
}

Result<RoundRecord> withAnswers(const Checklist& checklist, const TimeZone& zone, const RoundRecord& first,
    std::vector<Answer> answers, std::vector<Answer> before)
{
    const std::size_t items = checklist.itemCount();
    if (answers.size() != items || first.answers.size() != items)
        return refuse("it has not one answer an item", "answer as the round's checklist asks");
    for (std::size_t at = 0; at < items; ++at) {
        if (auto allowed = checkAnswer(checklist.item(at), answers[at]); !allowed)
            return tl::unexpected(allowed.error());
    }
    Draft draft = Walk::begin(checklist, first.kind, {}, {}, first.shift, first.limits, first.started);
    draft.answers = std::move(answers);
    draft.over = first.over;
    draft.before = std::move(before);
    const auto walk = Walk::of(checklist, zone, std::move(draft));
    if (!walk)
        return tl::unexpected(walk.error());
    RoundRecord round = walk->finish(first.finished);
    round.limits = first.limits;
    round.fromPaper = first.fromPaper;
    for (std::size_t at = 0; at < items; ++at) {
        const bool checked = isChecked(round.answers[at]) && at < first.seconds.size();
        round.seconds[at] = checked ? first.seconds[at] : std::nullopt;
    }
    return round;
}

Json toBody(const RoundAmendment& amendment)
{
    return Json::Object{{"amends", toJson(amendment.amends)}, {"reason", amendment.reason},
        {"round", toBody(amendment.round)}};
}

Result<RoundAmendment> amendmentFromBody(const Json& body)
{
    const Json* amends = body.find("amends");
    const auto* reason = body.findString("reason");
    const Json* corrected = body.find("round");
    if (amends == nullptr || reason == nullptr || corrected == nullptr || body.asObject()->size() != 3)
        return fail(ErrorCode::BadDocument,
            "amendment: it needs the record that it amends, a reason and the round, and nothing else");
    auto id = recordIdFromJson(*amends);
    if (!id)
        return tl::unexpected(id.error());
    if (auto sound = checkAmendmentReason(*reason); !sound)
        return tl::unexpected(sound.error());
    auto round = roundFromBody(*corrected);
    if (!round)
        return tl::unexpected(round.error());
    return RoundAmendment{.amends = std::move(*id), .reason = *reason, .round = std::move(*round)};
}

}
