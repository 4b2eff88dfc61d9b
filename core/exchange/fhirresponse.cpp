// SPDX-License-Identifier: MIT
#include "core/exchange/fhirresponse.h"

#include "core/exchange/outcomecode.h"
#include "core/exchange/tablecell.h"

#include <algorithm>

namespace cradlepost::fhir {

namespace {

Json answered(const std::string& link, const char* valueName, Json value)
{
    return Json::Object{
        {"linkId", link}, {"answer", Json::Array{Json::Object{{valueName, std::move(value)}}}}};
}

Json holding(const std::string& link, Json::Array items)
{
    return Json::Object{{"linkId", link}, {"item", std::move(items)}};
}

/** Adds what was answered besides the outcome. */
struct Answers
{
    const Item& item;
    const ChosenLimits& limits;
    Json::Array& items;

    void add(const std::string& what, const char* valueName, Json value) const
    {
        items.push_back(answered(item.id + '/' + what, valueName, std::move(value)));
    }

    void operator()(const NotChecked&) const { }
    void operator()(const DoesNotApply&) const { }
    void operator()(const Confirmed&) const { }
    void operator()(const GapFound&) const { }
    void operator()(const Measured& a) const
    {
        const auto& rule = std::get<MeasureRule>(item.rule);
        add("value", "valueQuantity", quantity(a.value.toDouble(), rule.unit));
        if (!rule.limits.empty()) {
            const LimitSet& set = limitsFor(item, rule, limits);
            add("limits", "valueCoding", ownCoding("limit-set", set.id, set.name.in("en")));
        }
    }
    void operator()(const RunningSince& a) const { add("since", "valueDateTime", toIso(a.since)); }
    void operator()(const StepsDone& a) const
    {
        const auto& rule = std::get<StepsRule>(item.rule);
        for (std::size_t i = 0; i < std::min(rule.steps.size(), a.marks.size()); ++i) {
            if (a.marks[i] != '-')
                add("step-" + rule.steps[i].id, "valueBoolean", Json(a.marks[i] == 'p'));
        }
        if (!a.device.empty())
            add("device", "valueString", a.device);
    }
    void operator()(const Counted& a) const
    {
        for (const Lot& lot : a.lots) {
            Json::Array of{answered(item.id + "/lot-pieces", "valueInteger", lot.quantity)};
            if (lot.expiry)
                of.push_back(answered(item.id + "/lot-expiry", "valueDate", cradlepost::toIso(*lot.expiry)));
            if (!lot.number.empty())
                of.push_back(answered(item.id + "/lot-number", "valueString", lot.number));
            items.push_back(holding(item.id + "/lot", std::move(of)));
        }
    }
    void operator()(const KitCounted& a) const
    {
        const auto& rule = std::get<KitRule>(item.rule);
        for (std::size_t i = 0; i < std::min(rule.parts.size(), a.parts.size()); ++i)
            add("part-" + rule.parts[i].id, "valueInteger", a.parts[i]);
    }
    void operator()(const CylinderRead& a) const
    {
        const auto& rule = std::get<CylinderRule>(item.rule);
        const auto size = std::find_if(
            rule.sizes.begin(), rule.sizes.end(), [&](const CylinderSize& one) { return one.id == a.size; });
        if (size == rule.sizes.end())
            return; // checkAnswer has refused it
        add("gauge", "valueQuantity", quantity(a.gauge.toDouble(), size->unit));
        add("size", "valueCoding", ownCoding("cylinder-size", a.size, size->name.in("en")));
        add("flow", "valueQuantity", quantity(a.flow.toDouble(), "L/min"));
    }
};

/** What was seen of one item; `reason`: of a gap. */
Json itemSeen(const Item& item, const RoundRecord& round, std::size_t at, const Reason* reason)
{
    Json::Array seen{
        answered(item.id + "/outcome", "valueCoding", ownCoding("outcome", outcomeCode(round.outcomes[at])))};
    if (reason != nullptr)
        seen.push_back(
            answered(item.id + "/reason", "valueCoding", ownCoding("reason", codeName(reason->code))));
    // An answer that does not fit its item, as of a damaged body, has nothing to say here.
    if (checkAnswer(item, round.answers[at]))
        std::visit(Answers{item, round.limits, seen}, round.answers[at]);
    return holding(item.id, std::move(seen));
}

Json aboutRound(const RoundRecord& round)
{
    return holding("_round",
        {answered("_round/date", "valueDate", cradlepost::toIso(round.shift.date)),
            answered("_round/shift", "valueString", round.shift.code),
            answered("_round/kind", "valueCoding", ownCoding("round-kind", codeName(round.kind)))});
}

Json verdict(const RoundRecord& round)
{
    return holding("_verdict",
        {answered("_verdict/state", "valueCoding", ownCoding("verdict", codeName(round.state))),
            answered("_verdict/met", "valueInteger", round.met),
            answered("_verdict/applicable", "valueInteger", round.applicable),
            answered("_verdict/index", "valueDecimal", static_cast<double>(round.index) / 10'000)});
}

}

Resource questionnaireResponse(const Checklist& checklist, const SavedRound& saved, const std::string& unit)
{
    const RoundRecord& round = saved.round;
    const bool isWhole = round.kind != RoundKind::Recheck && round.kind != RoundKind::SpotCheck;
    Json::Array items{aboutRound(round)};
    std::size_t at = 0;
    auto gap = round.gaps.begin();
    for (const Section& section : checklist.sections) {
        Json::Array seen;
        for (const Item& item : section.items) {
            const bool isGap = round.outcomes[at] == 'g' && gap != round.gaps.end();
            const Reason* reason = isGap ? &*gap++ : nullptr;
            if (isWhole || round.outcomes[at] != 'u')
                seen.push_back(itemSeen(item, round, at, reason));
            ++at;
        }
        if (!seen.empty())
            items.push_back(holding("_section/" + section.id, std::move(seen)));
    }
    items.push_back(verdict(round));
    return {.type = "QuestionnaireResponse",
        .id = saved.id.station + '-' + std::to_string(saved.id.seq),
        .members
        = {{"questionnaire", urlOf("Questionnaire", checklist.id) + '|' + std::to_string(checklist.version)},
            {"status", saved.amendments.empty() ? "completed" : "amended"},
            {"subject", reference("Location", unit)}, {"authored", toIso(round.finished)},
            {"item", std::move(items)}}};
}

}
