// SPDX-License-Identifier: MIT
#include "core/exchange/csvrounds.h"

#include "core/exchange/outcomecode.h"
#include "core/exchange/tablecell.h"

#include <algorithm>

namespace cradlepost {

namespace {

std::string timeText(const std::optional<Instant>& moment) { return moment ? toIso(*moment) : std::string(); }

/** What an answer holds besides its outcome, by column. */
struct AnswerParts
{
    std::string value, measuredIn, limitSet, since, steps, device, lots, pieces, parts, gauge, size, flow;
};

struct PartsOf
{
    const Item& item;
    const ChosenLimits& limits;

    AnswerParts operator()(const NotChecked&) const { return {}; }
    AnswerParts operator()(const DoesNotApply&) const { return {}; }
    AnswerParts operator()(const Confirmed&) const { return {}; }
    AnswerParts operator()(const GapFound&) const { return {}; }
    AnswerParts operator()(const Measured& a) const
    {
        const auto& rule = std::get<MeasureRule>(item.rule);
        return {.value = a.value.toString(),
            .measuredIn = rule.unit,
            .limitSet = limitsFor(item, rule, limits).id};
    }
    AnswerParts operator()(const RunningSince& a) const { return {.since = toIso(a.since)}; }
    AnswerParts operator()(const StepsDone& a) const { return {.steps = a.marks, .device = a.device}; }
    AnswerParts operator()(const Counted& a) const
    {
        AnswerParts out;
        std::int64_t pieces = 0;
        for (const Lot& lot : a.lots) {
            pieces += lot.quantity;
            out.lots += (out.lots.empty() ? "" : ";") + std::to_string(lot.quantity)
                + (lot.expiry ? '@' + toIso(*lot.expiry) : std::string());
        }
        out.pieces = std::to_string(pieces);
        return out;
    }
    AnswerParts operator()(const KitCounted& a) const
    {
        AnswerParts out;
        for (const int pieces : a.parts)
            out.parts += (out.parts.empty() ? "" : "/") + std::to_string(pieces);
        return out;
    }
    AnswerParts operator()(const CylinderRead& a) const
    {
        const auto& sizes = std::get<CylinderRule>(item.rule).sizes;
        const auto size = std::find_if(
            sizes.begin(), sizes.end(), [&](const CylinderSize& one) { return one.id == a.size; });
        return {.measuredIn = size == sizes.end() ? std::string() : size->unit,
            .gauge = a.gauge.toString(),
            .size = a.size,
            .flow = a.flow.toString()};
    }
};

}

std::string recordName(const RecordId& id) { return id.station + '/' + std::to_string(id.seq); }

std::vector<std::string> roundCells(const std::string& unit, const RoundRow& row, const SavedRound& saved)
{
    const RoundRecord& round = saved.round;
    return {recordName(row.id), unit, toIso(round.shift.date), round.shift.code, codeName(row.kind),
        row.checklist, std::to_string(row.version), toIso(row.started), toIso(row.finished),
        toIso(row.recorded), row.fromPaper ? "paper" : "screen", codeName(row.state), std::to_string(row.met),
        std::to_string(row.applicable), numberText(static_cast<double>(row.index) / 10'000),
        round.over ? recordName(*round.over) : std::string(), std::to_string(row.amendments),
        timeText(row.amendedAt)};
}

std::vector<std::vector<std::string>> answerCells(const Checklist& checklist, const SavedRound& saved)
{
    const RoundRecord& round = saved.round;
    const bool isWhole = round.kind != RoundKind::Recheck && round.kind != RoundKind::SpotCheck;
    const std::string name = recordName(saved.id);
    std::vector<std::vector<std::string>> rows;
    auto gap = round.gaps.begin();
    for (std::size_t at = 0; at < std::min(round.outcomes.size(), checklist.itemCount()); ++at) {
        const Item& item = checklist.item(at);
        const char letter = round.outcomes[at];
        const std::string reason
            = letter == 'g' && gap != round.gaps.end() ? codeName((gap++)->code) : std::string();
        if (!isWhole && letter == 'u')
            continue;
        const AnswerParts parts = checkAnswer(item, round.answers[at])
            ? std::visit(PartsOf{item, round.limits}, round.answers[at])
            : AnswerParts();
        const auto& seconds = round.seconds[at];
        rows.push_back({name, item.id, checklist.sectionOf(at).id, codeName(item.severity),
            codeName(item.kind()), outcomeCode(letter), reason, seconds ? std::to_string(*seconds) : "",
            parts.value, parts.measuredIn, parts.limitSet, parts.since, parts.steps, parts.device, parts.lots,
            parts.pieces, parts.parts, parts.gauge, parts.size, parts.flow});
    }
    return rows;
}

std::vector<std::vector<std::string>> readingCells(
    const std::string& unit, const Checklist& checklist, const SavedRound& saved)
{
    const RoundRecord& round = saved.round;
    std::vector<std::vector<std::string>> rows;
    for (std::size_t at = 0; at < std::min(round.answers.size(), checklist.itemCount()); ++at) {
        const Item& item = checklist.item(at);
        const auto* measured = std::get_if<Measured>(&round.answers[at]);
        const auto* rule = std::get_if<MeasureRule>(&item.rule);
        if (measured == nullptr || rule == nullptr || round.outcomes[at] == 'u')
            continue;
        const LimitSet& limits = limitsFor(item, *rule, round.limits);
        const auto text
            = [](const std::optional<Decimal>& limit) { return limit ? limit->toString() : std::string(); };
        const bool inside = (!limits.low || measured->value >= *limits.low)
            && (!limits.high || measured->value <= *limits.high);
        rows.push_back({recordName(saved.id), unit, toIso(round.shift.date), round.shift.code, item.id,
            measured->value.toString(), rule->unit, limits.id, text(limits.low), text(limits.high),
            inside ? "1" : "0"});
    }
    return rows;
}

}
