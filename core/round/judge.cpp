// SPDX-License-Identifier: MIT
#include "core/round/judge.h"

#include <algorithm>
#include <array>
#include <limits>

namespace cradlepost {

namespace {

constexpr std::array<std::pair<ReasonCode, const char*>, 17> reasonNames {{
    {ReasonCode::Absent, "absent"},
    {ReasonCode::NotWorking, "not-working"},
    {ReasonCode::NotClean, "not-clean"},
    {ReasonCode::Expired, "expired"},
    {ReasonCode::OutOfLimits, "out-of-limits"},
    {ReasonCode::NotKnown, "not-known"},
    {ReasonCode::TooLow, "too-low"},
    {ReasonCode::TooHigh, "too-high"},
    {ReasonCode::Warming, "warming"},
    {ReasonCode::StepFailed, "step-failed"},
    {ReasonCode::TooFew, "too-few"},
    {ReasonCode::TooFewUsable, "too-few-usable"},
    {ReasonCode::KitsIncomplete, "kits-incomplete"},
    {ReasonCode::CylinderLow, "cylinder-low"},
    {ReasonCode::NotChecked, "not-checked"},
    {ReasonCode::StepsUnfinished, "steps-unfinished"},
    {ReasonCode::UsedSince, "used-since"},
}};

ReasonCode reasonOf(GapReason said)
{
    switch (said) {
    case GapReason::Absent:
        return ReasonCode::Absent;
    case GapReason::NotWorking:
        return ReasonCode::NotWorking;
    case GapReason::NotClean:
        return ReasonCode::NotClean;
    case GapReason::Expired:
        return ReasonCode::Expired;
    case GapReason::OutOfLimits:
        return ReasonCode::OutOfLimits;
    case GapReason::NotKnown:
        break;
    }
    return ReasonCode::NotKnown;
}

/** Judges one item; every function is one kind. */
class Bench
{
public:
    Bench(const Item& item, const JudgeContext& context)
        : m_item(item)
        , m_context(context)
    {
    }

    [[nodiscard]] Judgement unchecked(ReasonCode code = ReasonCode::NotChecked) const
    {
        return {.outcome = Outcome::NotChecked, .reason = reason(code)};
    }

    Judgement operator()(const ConfirmRule&, const Confirmed&) const { return met(); }

    Judgement operator()(const MeasureRule& rule, const Measured& answer) const
    {
        const LimitSet& limits = limitsFor(m_item, rule, m_context.limits);
        if (limits.low && answer.value < *limits.low)
            return gap(ReasonCode::TooLow, answer.value.toString(), limits.low->toString());
        if (limits.high && answer.value > *limits.high)
            return gap(ReasonCode::TooHigh, answer.value.toString(), limits.high->toString());
        return met();
    }

    Judgement operator()(const SinceRule& rule, const RunningSince& answer) const
    {
        using namespace std::chrono;
        // A start that lies ahead is a slip or a clock set back: nothing has run yet.
        const auto on = std::max(floor<minutes>(m_context.reference - answer.since), minutes(0));
        if (on >= rule.minutes)
            return met();
        Judgement j = gap(ReasonCode::Warming, std::to_string(on.count()), std::to_string(rule.minutes.count()));
        j.reason->readyAt = answer.since + rule.minutes;
        return j;
    }

    Judgement operator()(const StepsRule& rule, const StepsDone& answer) const
    {
        const std::size_t failed = answer.marks.find('f');
        if (failed != std::string::npos)
            return gap(ReasonCode::StepFailed, std::to_string(failed + 1), std::to_string(rule.steps.size()),
                rule.steps[failed].id);
        if (answer.marks.find('-') != std::string::npos)
            return unchecked(ReasonCode::StepsUnfinished);
        return met();
    }

    Judgement operator()(const CountRule& rule, const Counted& answer) const
    {
        int all = 0;
        for (const Lot& lot : answer.lots)
            all += lot.quantity;
        const int usable = usablePieces(answer, m_context.lastDay);
        if (usable >= rule.par)
            return met();
        return gap(all >= rule.par ? ReasonCode::TooFewUsable : ReasonCode::TooFew, std::to_string(usable),
            std::to_string(rule.par));
    }

    Judgement operator()(const KitRule& rule, const KitCounted& answer) const
    {
        const WholeKits whole = wholeKits(rule, answer);
        if (whole.kits >= rule.par)
            return met();
        return gap(ReasonCode::KitsIncomplete, std::to_string(whole.kits), std::to_string(rule.par),
            rule.parts[whole.limitingPart].id);
    }

    Judgement operator()(const CylinderRule& rule, const CylinderRead& answer) const
    {
        const auto size = std::find_if(
            rule.sizes.begin(), rule.sizes.end(), [&](const CylinderSize& s) { return s.id == answer.size; });
        const std::int64_t left = cylinderMinutes(*size, answer.gauge, answer.flow);
        if (left >= rule.minutes.count())
            return met();
        return gap(ReasonCode::CylinderLow, std::to_string(left), std::to_string(rule.minutes.count()));
    }

    Judgement operator()(const auto&, const DoesNotApply&) const
    {
        return {.outcome = Outcome::DoesNotApply, .reason = std::nullopt};
    }
    Judgement operator()(const auto&, const GapFound& answer) const { return gap(reasonOf(answer.reason)); }
    Judgement operator()(const auto&, const auto&) const { return unchecked(); }

private:
    static Judgement met() { return {.outcome = Outcome::Met, .reason = std::nullopt}; }
    [[nodiscard]] Judgement gap(
        ReasonCode code, std::string value = {}, std::string limit = {}, std::string part = {}) const
    {
        return {.outcome = Outcome::Gap, .reason = reason(code, std::move(value), std::move(limit), std::move(part))};
    }
    [[nodiscard]] Reason reason(
        ReasonCode code, std::string value = {}, std::string limit = {}, std::string part = {}) const
    {
        return {.code = code,
            .item = m_item.id,
            .severity = m_item.severity,
            .value = std::move(value),
            .limit = std::move(limit),
            .part = std::move(part),
            .readyAt = std::nullopt};
    }

    const Item& m_item;
    const JudgeContext& m_context;
};

}

const char* codeName(ReasonCode code)
{
    return std::find_if(reasonNames.begin(), reasonNames.end(), [&](const auto& c) { return c.first == code; })->second;
}

std::optional<ReasonCode> reasonFromCode(std::string_view code)
{
    for (const auto& [reason, name] : reasonNames) {
        if (code == name)
            return reason;
    }
    return std::nullopt;
}

Judgement judge(const Item& item, const Answer& answer, const JudgeContext& context)
{
    const Bench bench(item, context);
    if (!checkAnswer(item, answer))
        return bench.unchecked();
    return std::visit(bench, item.rule, answer);
}

const LimitSet& limitsFor(const Item& item, const MeasureRule& rule, const ChosenLimits& chosen)
{
    const auto picked = chosen.find(item.id);
    if (picked != chosen.end()) {
        for (const LimitSet& set : rule.limits) {
            if (set.id == picked->second)
                return set;
        }
    }
    return rule.limits.front();
}

std::int64_t cylinderMinutes(const CylinderSize& size, Decimal gauge, Decimal flow)
{
    // Handbook form, minutes = factor x (gauge - residual) / flow, in whole thousandths so that the floor is exact.
    const std::int64_t above = gauge.thousandths - size.residual.thousandths;
    if (above <= 0 || flow.thousandths <= 0)
        return 0;
    return size.litresPerUnit.thousandths * above / (flow.thousandths * 1000);
}

WholeKits wholeKits(const KitRule& rule, const KitCounted& counted)
{
    WholeKits whole {.kits = std::numeric_limits<int>::max(), .limitingPart = 0};
    for (std::size_t i = 0; i < rule.parts.size() && i < counted.parts.size(); ++i) {
        const int kits = counted.parts[i] / rule.parts[i].perKit;
        if (kits < whole.kits)
            whole = {.kits = kits, .limitingPart = i};
    }
    return whole;
}

int usablePieces(const Counted& counted, Date day)
{
    int usable = 0;
    for (const Lot& lot : counted.lots) {
        if (!lot.expiry || *lot.expiry >= day)
            usable += lot.quantity;
    }
    return usable;
}

}
