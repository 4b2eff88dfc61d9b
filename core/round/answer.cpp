// SPDX-License-Identifier: MIT
#include "core/round/answer.h"

#include <algorithm>
#include <array>

namespace cradlepost {

namespace {

constexpr std::array<std::pair<GapReason, const char*>, 6> reasonCodes {{
    {GapReason::Absent, "absent"},
    {GapReason::NotWorking, "not-working"},
    {GapReason::NotClean, "not-clean"},
    {GapReason::Expired, "expired"},
    {GapReason::OutOfLimits, "out-of-limits"},
    {GapReason::NotKnown, "not-known"},
}};

tl::unexpected<Error> refuse(const Item& item, const std::string& what, const std::string& hint)
{
    return fail(ErrorCode::InvalidArgument, "item '" + item.id + "': " + what, hint);
}

tl::unexpected<Error> wrongKind(const Item& item)
{
    return refuse(item, std::string("an answer of another kind than ") + codeName(item.kind()), "answer what the item asks");
}

/** Code points, not bytes: labels are written in any script. */
std::ptrdiff_t characters(const std::string& utf8)
{
    return std::count_if(
        utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; });
}

Result<void> checkMeasured(const Item& item, const MeasureRule& rule, const Measured& answer)
{
    if (answer.value < rule.plausibleLow || answer.value > rule.plausibleHigh)
        return refuse(item,
            answer.value.toString() + " " + rule.unit + " is outside what is possible, " + rule.plausibleLow.toString()
                + " to " + rule.plausibleHigh.toString(),
            "read the instrument again and type the number as it shows");
    return {};
}

Result<void> checkSteps(const Item& item, const StepsRule& rule, const StepsDone& answer)
{
    const bool known = std::all_of(
        answer.marks.begin(), answer.marks.end(), [](char c) { return c == 'p' || c == 'f' || c == '-'; });
    if (!known || answer.marks.size() != rule.steps.size())
        return refuse(item, "'" + answer.marks + "' are not the marks of " + std::to_string(rule.steps.size()) + " steps",
            "mark each step p, f or -");
    if (characters(answer.device) > 24)
        return refuse(item, "the device number is longer than 24 characters", "use the number on its label");
    return {};
}

Result<void> checkCounted(const Item& item, const Counted& answer)
{
    if (answer.lots.size() > 100) // a sum of lots must never overflow
        return refuse(item, "more than 100 lots", "write lots of the same expiry as one");
    for (const Lot& lot : answer.lots) {
        if (lot.quantity < 0 || lot.quantity > 100000)
            return refuse(item, std::to_string(lot.quantity) + " pieces cannot be", "count again");
        if (lot.expiry && !lot.expiry->ok())
            return refuse(item, "the expiry day does not exist", "write year-month-day as on the pack");
        if (characters(lot.number) > 32)
            return refuse(item, "the lot number is longer than 32 characters", "copy it from the pack");
    }
    return {};
}

Result<void> checkKit(const Item& item, const KitRule& rule, const KitCounted& answer)
{
    if (answer.parts.size() != rule.parts.size())
        return refuse(item, std::to_string(answer.parts.size()) + " counts for " + std::to_string(rule.parts.size())
                + " parts", "count each part");
    if (std::any_of(answer.parts.begin(), answer.parts.end(), [](int n) { return n < 0 || n > 100000; }))
        return refuse(item, "a count below zero or beyond all measure", "count again");
    return {};
}

Result<void> checkCylinder(const Item& item, const CylinderRule& rule, const CylinderRead& answer)
{
    const auto size = std::find_if(
        rule.sizes.begin(), rule.sizes.end(), [&](const CylinderSize& s) { return s.id == answer.size; });
    if (size == rule.sizes.end())
        return refuse(item, "cylinder size '" + answer.size + "' is not in the checklist", "pick a size from its list");
    const std::int64_t most = size->fullPressure.thousandths * 11; // in ten-thousandths, to be exact
    if (answer.gauge.thousandths < 0 || answer.gauge.thousandths * 10 > most)
        return refuse(item,
            "a gauge of " + answer.gauge.toString() + " " + size->unit + " is outside what is possible, 0 to "
                + Decimal {most / 10}.toString(),
            "read the gauge again, and see that the size and its unit are right");
    if (answer.flow.thousandths <= 0 || answer.flow.thousandths > 60000)
        return refuse(item, "a flow of " + answer.flow.toString() + " L/min cannot be", "give the flow that is planned");
    return {};
}

}

const char* codeName(GapReason reason)
{
    return std::find_if(reasonCodes.begin(), reasonCodes.end(), [&](const auto& c) { return c.first == reason; })->second;
}

std::optional<GapReason> gapReasonFromCode(std::string_view code)
{
    for (const auto& [reason, name] : reasonCodes) {
        if (code == name)
            return reason;
    }
    return std::nullopt;
}

Result<void> checkAnswer(const Item& item, const Answer& answer)
{
    if (std::holds_alternative<NotChecked>(answer) || std::holds_alternative<GapFound>(answer))
        return {};
    if (std::holds_alternative<DoesNotApply>(answer))
        return item.mayNotApply
            ? Result<void> {}
            : refuse(item, "always applies here", "mark it met or a gap");
    if (const auto* measured = std::get_if<Measured>(&answer)) {
        const auto* rule = std::get_if<MeasureRule>(&item.rule);
        return rule != nullptr ? checkMeasured(item, *rule, *measured) : wrongKind(item);
    }
    if (const auto* steps = std::get_if<StepsDone>(&answer)) {
        const auto* rule = std::get_if<StepsRule>(&item.rule);
        return rule != nullptr ? checkSteps(item, *rule, *steps) : wrongKind(item);
    }
    if (const auto* counted = std::get_if<Counted>(&answer))
        return item.kind() == ItemKind::Count ? checkCounted(item, *counted) : wrongKind(item);
    if (const auto* kit = std::get_if<KitCounted>(&answer)) {
        const auto* rule = std::get_if<KitRule>(&item.rule);
        return rule != nullptr ? checkKit(item, *rule, *kit) : wrongKind(item);
    }
    if (const auto* cylinder = std::get_if<CylinderRead>(&answer)) {
        const auto* rule = std::get_if<CylinderRule>(&item.rule);
        return rule != nullptr ? checkCylinder(item, *rule, *cylinder) : wrongKind(item);
    }
    const ItemKind wanted = std::holds_alternative<Confirmed>(answer) ? ItemKind::Confirm : ItemKind::Since;
    return item.kind() == wanted ? Result<void> {} : wrongKind(item);
}

}
