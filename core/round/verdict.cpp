// SPDX-License-Identifier: MIT
#include "core/round/verdict.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace cradlepost {

namespace {

void count(SectionTally& tally, const Judgement& judgement, Severity severity)
{
    switch (judgement.outcome) {
    case Outcome::Met:
        ++tally.met;
        break;
    case Outcome::Gap:
        ++tally.gaps;
        tally.criticalGaps += severity == Severity::Critical ? 1 : 0;
        break;
    case Outcome::DoesNotApply:
        ++tally.doesNotApply;
        break;
    case Outcome::NotChecked:
        ++tally.notChecked;
        break;
    }
}

bool isUnchecked(const Reason& reason)
{
    return reason.code == ReasonCode::NotChecked || reason.code == ReasonCode::StepsUnfinished
        || reason.code == ReasonCode::UsedSince;
}

/** Smaller is sooner. */
auto mendOrder(const Reason& reason)
{
    return std::tuple(reason.severity, isUnchecked(reason), reason.readyAt.has_value());
}

int meanOfSections(const std::vector<SectionTally>& sections)
{
    // Exact over a common denominator: at most 120 items keep it far below the end of the integers.
    std::int64_t denominator = 1;
    std::int64_t counted = 0;
    for (const SectionTally& tally : sections) {
        if (tally.applicable() == 0)
            continue;
        denominator = std::lcm(denominator, std::int64_t {tally.applicable()});
        ++counted;
    }
    std::int64_t sum = 0;
    for (const SectionTally& tally : sections) {
        if (tally.applicable() != 0)
            sum += denominator / tally.applicable() * tally.met;
    }
    const std::int64_t whole = denominator * counted;
    return counted == 0 ? 0 : static_cast<int>((20000 * sum + whole) / (2 * whole));
}

}

std::vector<Judgement> judgeAll(
    const Checklist& checklist, const std::vector<Answer>& answers, const JudgeContext& context)
{
    std::vector<Judgement> judgements;
    judgements.reserve(answers.size());
    for (const Section& section : checklist.sections) {
        for (const Item& item : section.items) {
            const std::size_t at = judgements.size();
            judgements.push_back(judge(item, at < answers.size() ? answers[at] : Answer(NotChecked {}), context));
        }
    }
    return judgements;
}

Verdict verdictOf(const Checklist& checklist, const std::vector<Judgement>& judgements)
{
    Verdict verdict {.state = Readiness::Ready};
    std::size_t at = 0;
    for (const Section& section : checklist.sections) {
        SectionTally tally {.section = section.id};
        for (const Item& item : section.items) {
            const Judgement& judgement = judgements[at++];
            count(tally, judgement, item.severity);
            if (!judgement.reason)
                continue;
            verdict.reasons.push_back(*judgement.reason);
            const Readiness worst = item.severity == Severity::Critical ? Readiness::NotReady : Readiness::ReadyWithGaps;
            verdict.state = std::min(verdict.state, worst);
        }
        verdict.met += tally.met;
        verdict.applicable += tally.applicable();
        verdict.sections.push_back(std::move(tally));
    }
    verdict.index = meanOfSections(verdict.sections);
    std::stable_sort(verdict.reasons.begin(), verdict.reasons.end(),
        [](const Reason& a, const Reason& b) { return mendOrder(a) < mendOrder(b); });
    return verdict;
}

std::string outcomesOf(const std::vector<Judgement>& judgements)
{
    std::string letters;
    letters.reserve(judgements.size());
    for (const Judgement& judgement : judgements)
        letters += static_cast<char>(judgement.outcome);
    return letters;
}

const char* codeName(Readiness state)
{
    switch (state) {
    case Readiness::NotReady:
        return "not-ready";
    case Readiness::ReadyWithGaps:
        return "ready-with-gaps";
    case Readiness::Ready:
        break;
    }
    return "ready";
}

std::optional<Readiness> readinessFromCode(std::string_view code)
{
    for (const Readiness state : {Readiness::NotReady, Readiness::ReadyWithGaps, Readiness::Ready}) {
        if (code == codeName(state))
            return state;
    }
    return std::nullopt;
}

}
