// SPDX-License-Identifier: MIT
#include "handmade.h"

#include "tests/support/builders.h"

#include <cmath>

namespace cradlepost::test {

using namespace std::chrono;

namespace {

Decimal decimal(double value) { return {.thousandths = std::llround(value * 1000)}; }

std::shared_ptr<const Checklist> fourItems()
{
    MeasureRule temperature{
        .unit = "°C", .decimals = 1, .plausibleLow = decimal(10), .plausibleHigh = decimal(45)};
    temperature.limits.push_back({.id = "26-28", .low = decimal(26), .high = decimal(28)});
    const StepsRule test{.steps = {{.id = "on"}, {.id = "warm"}}};
    Checklist list{.id = "four", .version = 1};
    list.sections = {{.id = "room",
                         .items = {{.id = "clean", .severity = Severity::Critical, .rule = ConfirmRule()},
                             {.id = "temperature", .severity = Severity::Major, .rule = temperature}}},
        {.id = "rest",
            .items = {{.id = "device", .severity = Severity::Major, .mayNotApply = true, .rule = test},
                {.id = "paper", .severity = Severity::Minor, .rule = ConfirmRule()}}}};
    return std::make_shared<const Checklist>(std::move(list));
}

}

HandMade::HandMade()
    : span(ReviewSpan::ofMonth(2026y / October))
{
    history.unit = "hand-made";
    history.from = lookBack(span);
    history.to = span.to;
    history.lists.push_back({.checklist = fourItems(), .limits = {}});
    const ShiftCalendar calendar(ShiftPattern::twoByTwelve(), TimeZone::utc());
    for (Date day = history.from; day < history.to; day = addDays(day, 1)) {
        for (int shift = 0; shift < 2; ++shift)
            history.due.push_back(calendar.shift(day, shift));
    }
    history.now = history.due.back().ends;
}

RoundFact& HandMade::round(Date day, int shift, const std::string& outcomes, const More& more)
{
    const ShiftCalendar calendar(ShiftPattern::twoByTwelve(), TimeZone::utc());
    const Instant finished = calendar.shift(day, shift).begins + minutes(more.after);
    std::vector<Judgement> judgements;
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        const auto outcome = static_cast<Outcome>(outcomes[i]);
        const bool isReason = outcome == Outcome::Gap || outcome == Outcome::NotChecked;
        const Item& item = history.lists.front().checklist->item(i);
        judgements.push_back({.outcome = outcome,
            .reason
            = isReason ? std::optional(Reason{.item = item.id, .severity = item.severity}) : std::nullopt});
    }
    const Verdict verdict = verdictOf(*history.lists.front().checklist, judgements);
    RoundFact fact{.slot = slotOf(day, shift),
        .outcomes = outcomes,
        .state = verdict.state,
        .met = verdict.met,
        .applicable = verdict.applicable,
        .index = verdict.index,
        .started = finished - seconds(more.seconds),
        .finished = finished,
        .recorded = finished,
        .fromPaper = more.fromPaper,
        .amended = more.amended,
        .actor = more.actor};
    if (more.temperature)
        fact.readings.push_back({.position = 1, .value = decimal(*more.temperature)});
    history.rounds.push_back(std::move(fact));
    return history.rounds.back();
}

Gap& HandMade::gap(const std::string& item, Severity severity, double opened, std::optional<double> closed)
{
    const Instant start = sys_days(octoberFirst) + hours(7);
    const auto at = [&](double h) {
        return start + duration_cast<milliseconds>(duration<double, std::ratio<3600>>(h));
    };
    Gap gap{.unit = history.unit,
        .item = item,
        .severity = severity,
        .openedAt = at(opened),
        .due = at(opened + 24)};
    if (closed)
        gap.closedAt = at(*closed);
    history.gaps.push_back(std::move(gap));
    return history.gaps.back();
}

Selection HandMade::selection(const ReviewFilter& filter, const ReviewOptions& options) const
{
    return must(select(history, span, filter, options));
}

MonthReview HandMade::review(const ReviewOptions& options) const
{
    return must(reviewMonth(history, span, {}, options));
}

}
