// SPDX-License-Identifier: MIT
#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

Wording said(const std::string& text) { return Wording({{"en", text}}); }

Item item(std::string id, Severity severity, bool mayNotApply, ItemRule rule)
{
    return {.id = std::move(id),
        .severity = severity,
        .mayNotApply = mayNotApply,
        .label = said("label"),
        .help = {},
        .whenNotMet = said("mend it"),
        .source = "common practice, no source",
        .rule = std::move(rule)};
}

MeasureRule temperature()
{
    return {.unit = "°C",
        .decimals = 1,
        .plausibleLow = num("0.5"),
        .plausibleHigh = num("50"),
        .limits = {{.id = "term", .name = said("Term"), .low = num("26"), .high = num("28"), .source = "A"},
            {.id = "preterm", .name = said("Preterm"), .low = num("27.5"), .high = num("30"), .source = "B"},
            {.id = "floor", .name = said("Floor"), .low = num("25"), .high = {}, .source = "C"},
            {.id = "ceiling", .name = said("Ceiling"), .low = {}, .high = num("30"), .source = "D"}}};
}

StepsRule bagSteps()
{
    return {.steps = {{.id = "seal", .label = said("Seal")}, {.id = "refill", .label = said("Refill")},
                {.id = "valve", .label = said("Valve")}}};
}

KitRule kit()
{
    return {.par = 4,
        .parts = {{.id = "ties", .label = said("Ties"), .perKit = 2},
            {.id = "blade", .label = said("Blade"), .perKit = 1},
            {.id = "cloth", .label = said("Cloth"), .perKit = 3}}};
}

CylinderRule cylinder()
{
    return {.minutes = std::chrono::minutes(120),
        .flow = num("5"),
        .sizes = {{.id = "us-e",
                      .name = said("US E"),
                      .unit = "psi",
                      .litresPerUnit = num("0.28"),
                      .residual = num("200"),
                      .fullPressure = num("2015"),
                      .source = "F"},
            {.id = "ten-litre",
                .name = said("10 L"),
                .unit = "bar",
                .litresPerUnit = num("10"),
                .residual = num("10"),
                .fullPressure = num("150.005"),
                .source = "F"}},
        .source = "E"};
}

std::string word(Dice& dice, std::size_t longest)
{
    static const std::vector<std::string> letters{"A", "7", "-", "z", "\"", "\\", " ", "क", "é", "\n", "😀"};
    std::string text;
    for (std::size_t n = dice.below(longest + 1); n > 0; --n)
        text += letters[dice.below(letters.size())];
    return text;
}

struct Maker
{
    Dice& dice;

    Answer operator()(const ConfirmRule&) const { return Confirmed{}; }
    Answer operator()(const MeasureRule& rule) const
    {
        const auto band = rule.plausibleHigh.thousandths - rule.plausibleLow.thousandths;
        const auto up = static_cast<std::int64_t>(dice.below(static_cast<std::size_t>(band) + 1));
        return Measured{Decimal{rule.plausibleLow.thousandths + up}};
    }
    Answer operator()(const SinceRule&) const
    {
        return RunningSince{at(24, 7) + std::chrono::milliseconds(dice.upTo(7200000) - 3600000)};
    }
    Answer operator()(const StepsRule& rule) const
    {
        StepsDone done{.marks = {}, .device = word(dice, 24)};
        for (std::size_t i = 0; i < rule.steps.size(); ++i)
            done.marks += "ppf-"[dice.below(4)];
        return done;
    }
    Answer operator()(const CountRule&) const
    {
        Counted counted;
        for (std::size_t n = dice.below(5); n > 0; --n) {
            Lot lot{.quantity = dice.upTo(100001), .expiry = {}, .number = word(dice, 32)};
            if (dice.coin())
                lot.expiry = addDays(date("2026-11-24"), dice.upTo(2001) - 1000);
            counted.lots.push_back(lot);
        }
        return counted;
    }
    Answer operator()(const KitRule& rule) const
    {
        KitCounted counted;
        for (std::size_t i = 0; i < rule.parts.size(); ++i)
            counted.parts.push_back(dice.upTo(20));
        return counted;
    }
    Answer operator()(const CylinderRule& rule) const
    {
        const CylinderSize& size = rule.sizes[dice.below(rule.sizes.size())];
        const auto gauge = dice.below(static_cast<std::size_t>(size.fullPressure.thousandths));
        return CylinderRead{.gauge = Decimal{static_cast<std::int64_t>(gauge)},
            .size = size.id,
            .flow = Decimal{1 + dice.upTo(60000)}};
    }
};

}

Instant at(int day, int hour, int minute, int second)
{
    using namespace std::chrono;
    return sys_days(2026y / November / day) + hours(hour) + minutes(minute) + seconds(second);
}

Decimal num(std::string_view text)
{
    const auto value = Decimal::parse(text);
    REQUIRE(value.has_value());
    return *value;
}

Date date(std::string_view iso)
{
    const auto day = dateFromIso(iso);
    REQUIRE(day.has_value());
    return *day;
}

Shift dayShift()
{
    return {.date = date("2026-11-24"), .index = 0, .code = "day", .begins = at(24, 7), .ends = at(24, 19)};
}

Checklist sampleChecklist()
{
    return {.id = "sample",
        .version = 3,
        .use = RoundKind::Shift,
        .title = said("Sample"),
        .sections = {{.id = "room",
                         .title = said("Room"),
                         .items = {item("temperature", Severity::Critical, false, temperature()),
                             item("draught", Severity::Minor, true, ConfirmRule{})}},
            {.id = "corner",
                .title = said("Corner"),
                .items = {item("warmer", Severity::Critical, false, SinceRule{std::chrono::minutes(30), "D"}),
                    item("bag", Severity::Critical, false, bagSteps()),
                    item("suction", Severity::Major, true, ConfirmRule{})}},
            {.id = "stock",
                .title = said("Stock"),
                .items = {item("oxytocin", Severity::Critical, false, CountRule{.par = 10, .expires = true}),
                    item("gloves", Severity::Minor, false, CountRule{.par = 20, .expires = false}),
                    item("kits", Severity::Critical, false, kit()),
                    item("oxygen", Severity::Major, false, cylinder()),
                    item("register", Severity::Minor, false, ConfirmRule{})}}}};
}

Item sampleItem(std::string_view id)
{
    const Checklist checklist = sampleChecklist();
    const auto position = checklist.position(id);
    REQUIRE_MESSAGE(position.has_value(), "the sample has no item ", std::string(id));
    return checklist.item(*position);
}

std::vector<Answer> allMet()
{
    return {Measured{num("26.4")}, Confirmed{}, RunningSince{at(24, 7)},
        StepsDone{.marks = "ppp", .device = "7"}, Confirmed{},
        Counted{{{.quantity = 12, .expiry = date("2027-03-31"), .number = "L1"}}},
        Counted{{{.quantity = 40, .expiry = {}, .number = {}}}}, KitCounted{{8, 4, 12}},
        CylinderRead{.gauge = num("150"), .size = "ten-litre", .flow = num("5")}, Confirmed{}};
}

Checklist plainChecklist(const std::vector<std::vector<Severity>>& sections)
{
    Checklist checklist{
        .id = "plain", .version = 1, .use = RoundKind::Shift, .title = said("Plain"), .sections = {}};
    int number = 0;
    for (const auto& severities : sections) {
        Section section{
            .id = "s" + std::to_string(checklist.sections.size()), .title = said("S"), .items = {}};
        for (const Severity severity : severities)
            section.items.push_back(item("i" + std::to_string(number++), severity, true, ConfirmRule{}));
        checklist.sections.push_back(std::move(section));
    }
    return checklist;
}

Answer randomAnswer(const Item& item, Dice& dice)
{
    switch (dice.below(8)) {
    case 0:
        return NotChecked{};
    case 1:
        return GapFound{static_cast<GapReason>(dice.below(6))};
    case 2:
        return item.mayNotApply ? Answer(DoesNotApply{}) : Answer(NotChecked{});
    default:
        return std::visit(Maker{dice}, item.rule);
    }
}
