// SPDX-License-Identifier: MIT
#include "core/checklist/rulereader.h"

#include <array>

namespace cradlepost {

namespace {

constexpr int maxDecimals = 3;
constexpr int maxMinutes = 7 * 24 * 60;
constexpr int maxPieces = 9999;
// Far above any cylinder (a bank of twelve large ones holds 600 L a bar); a product of the two never overflows.
constexpr Decimal maxLitresPerUnit{1'000'000};
constexpr Decimal maxPressure{100'000'000};
constexpr std::size_t maxLines = 30; ///< limits, steps, parts or sizes of one rule

/** An id that is not yet in `taken`. */
template <class Lines> std::string newId(ObjectReader& reader, const Lines& taken)
{
    std::string id = reader.id("id");
    for (const auto& line : taken) {
        if (line.id == id)
            reader.fault("id", "'" + id + "' stands twice in one rule");
    }
    return id;
}

bool fits(Decimal value, int decimals)
{
    constexpr std::array<std::int64_t, maxDecimals + 1> step{1000, 100, 10, 1};
    return value.thousandths % step.at(static_cast<std::size_t>(decimals)) == 0;
}

/** An end that is not written leaves the band open there. */
std::optional<Decimal> readEnd(ObjectReader& reader, std::string_view member, const MeasureRule& rule)
{
    if (!reader.has(member))
        return std::nullopt;
    const Decimal end = reader.decimal(member);
    if (end < rule.plausibleLow || end > rule.plausibleHigh) {
        reader.fault(member,
            end.toString() + " is outside the plausible band " + rule.plausibleLow.toString() + " to "
                + rule.plausibleHigh.toString());
    }
    if (!fits(end, rule.decimals))
        reader.fault(member, end.toString() + " has more decimals than the instrument shows");
    return end;
}

LimitSet readLimitSet(const Json& value, const MeasureRule& rule, ReadingContext& context)
{
    ObjectReader reader(value, "limits", {"id", "name", "low", "high", "source"}, context);
    LimitSet limits;
    limits.id = newId(reader, rule.limits);
    limits.name = reader.wording("name");
    limits.source = reader.text("source");
    limits.low = readEnd(reader, "low", rule);
    limits.high = readEnd(reader, "high", rule);
    if (!limits.low && !limits.high)
        context.fault.report(value.line, "limits: needs 'low' or 'high'");
    if (limits.low && limits.high && *limits.low > *limits.high) {
        context.fault.report(
            value.line, "low " + limits.low->toString() + " is above high " + limits.high->toString());
    }
    return limits;
}

MeasureRule readMeasure(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "", {"kind", "unit", "decimals", "plausible", "limits"}, context);
    MeasureRule rule;
    rule.unit = reader.text("unit");
    rule.decimals = reader.integer("decimals", 0, maxDecimals);
    ObjectReader band(reader.object("plausible"), "plausible", {"low", "high"}, context);
    rule.plausibleLow = band.decimal("low");
    rule.plausibleHigh = band.decimal("high");
    if (rule.plausibleLow >= rule.plausibleHigh) {
        reader.fault("plausible",
            "low " + rule.plausibleLow.toString() + " is not below high " + rule.plausibleHigh.toString());
    }
    for (const Json& limits : reader.array("limits", 1, maxLines))
        rule.limits.push_back(readLimitSet(limits, rule, context));
    return rule;
}

std::chrono::minutes readMinutes(ObjectReader& reader)
{
    return std::chrono::minutes{reader.integer("minutes", 1, maxMinutes)};
}

SinceRule readSince(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "", {"kind", "minutes", "source"}, context);
    return {.minutes = readMinutes(reader), .source = reader.text("source")};
}

StepsRule readSteps(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "", {"kind", "steps"}, context);
    StepsRule rule;
    for (const Json& line : reader.array("steps", 2, maxLines)) {
        ObjectReader step(line, "steps", {"id", "label"}, context);
        rule.steps.push_back({.id = newId(step, rule.steps), .label = step.wording("label")});
    }
    return rule;
}

CountRule readCount(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "", {"kind", "par", "expires"}, context);
    return {.par = reader.integer("par", 1, maxPieces), .expires = reader.boolean("expires")};
}

KitRule readKit(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "", {"kind", "par", "parts"}, context);
    KitRule rule;
    rule.par = reader.integer("par", 1, maxPieces);
    for (const Json& line : reader.array("parts", 2, maxLines)) {
        ObjectReader part(line, "parts", {"id", "label", "perKit"}, context);
        rule.parts.push_back({.id = newId(part, rule.parts),
            .label = part.wording("label"),
            .perKit = part.integer("perKit", 1, maxPieces)});
    }
    return rule;
}

void checkPressures(ObjectReader& reader, const CylinderSize& size)
{
    if (size.unit != "psi" && size.unit != "bar")
        reader.fault("unit", "must be 'psi' or 'bar'");
    if (size.litresPerUnit <= Decimal{})
        reader.fault("litresPerUnit", "must be above 0");
    if (size.litresPerUnit > maxLitresPerUnit)
        reader.fault("litresPerUnit", "must not be above " + maxLitresPerUnit.toString());
    if (size.residual < Decimal{})
        reader.fault("residual", "must not be below 0");
    if (size.fullPressure <= size.residual) {
        reader.fault("fullPressure",
            size.fullPressure.toString() + " is not above residual " + size.residual.toString());
    }
    if (size.fullPressure > maxPressure)
        reader.fault("fullPressure", "must not be above " + maxPressure.toString());
}

CylinderSize readSize(const Json& value, const CylinderRule& rule, ReadingContext& context)
{
    ObjectReader reader(value, "sizes",
        {"id", "name", "unit", "litresPerUnit", "residual", "fullPressure", "source"}, context);
    CylinderSize size;
    size.id = newId(reader, rule.sizes);
    size.name = reader.wording("name");
    size.unit = reader.text("unit");
    size.litresPerUnit = reader.decimal("litresPerUnit");
    size.residual = reader.decimal("residual");
    size.fullPressure = reader.decimal("fullPressure");
    size.source = reader.text("source");
    checkPressures(reader, size);
    return size;
}

CylinderRule readCylinder(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "", {"kind", "minutes", "flow", "sizes", "source"}, context);
    CylinderRule rule;
    rule.minutes = readMinutes(reader);
    rule.flow = reader.decimal("flow");
    if (rule.flow <= Decimal{})
        reader.fault("flow", "must be above 0");
    rule.source = reader.text("source");
    for (const Json& size : reader.array("sizes", 1, maxLines))
        rule.sizes.push_back(readSize(size, rule, context));
    return rule;
}

ConfirmRule readConfirm(const Json& value, ReadingContext& context)
{
    const ObjectReader reader(value, "", {"kind"}, context);
    return {};
}

ItemRule readRuleOf(ItemKind kind, const Json& value, ReadingContext& context)
{
    switch (kind) {
    case ItemKind::Confirm:
        return readConfirm(value, context);
    case ItemKind::Measure:
        return readMeasure(value, context);
    case ItemKind::Since:
        return readSince(value, context);
    case ItemKind::Steps:
        return readSteps(value, context);
    case ItemKind::Count:
        return readCount(value, context);
    case ItemKind::Kit:
        return readKit(value, context);
    case ItemKind::Cylinder:
        return readCylinder(value, context);
    }
    return ConfirmRule{};
}

}

ItemRule readRule(const Json& value, ReadingContext& context)
{
    const std::string* code = value.findString("kind");
    const auto kind = code == nullptr ? std::nullopt : itemKindFromCode(*code);
    if (!kind) {
        const Json* written = value.find("kind");
        context.fault.report(written == nullptr ? value.line : written->line,
            "rule: 'kind' must be confirm, measure, since, steps, count, kit or cylinder");
        return ConfirmRule{};
    }
    context.fault.rule = *code;
    ItemRule rule = readRuleOf(*kind, value, context);
    context.fault.rule.clear();
    return rule;
}

}
