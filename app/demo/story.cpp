// SPDX-License-Identifier: MIT
#include "app/demo/story.h"

#include "app/demo/random.h"

#include <algorithm>
#include <array>

namespace cradlepost::demo {

using namespace std::chrono;

namespace {

/** Share of rounds in which an item is a gap, and the chance a shift that it is mended. */
struct Usual
{
    double share;
    double mend;
};

Usual usualOf(Severity severity)
{
    switch (severity) {
    case Severity::Critical:
        return {.share = 0.021, .mend = 0.45};
    case Severity::Major:
        return {.share = 0.09, .mend = 0.22};
    case Severity::Minor:
        break;
    }
    return {.share = 0.12, .mend = 0.12};
}

Risk riskFor(double share, double mend)
{
    const double bounded = std::min(share, 0.75);
    return {.onset = std::min(1.0, mend * bounded / (1 - bounded)), .mend = mend};
}

/** Every ward has its own weak spots. */
double weakness(const UnitPlan& plan, const Item& item)
{
    return 0.3 + 1.4 * Random::named(plan.unit.id + '/' + item.id).real();
}

double progress(Date day, const Stories& stories)
{
    const int whole = std::max(1, daysBetween(stories.first, stories.today));
    return std::clamp(static_cast<double>(daysBetween(stories.first, day)) / whole, 0.0, 1.0);
}

constexpr Risk fails(int which) { return {.onset = 1, .mend = 0, .which = which}; }
constexpr Risk isWell{.onset = 0, .mend = 1};

constexpr int daysGiven = 30; // so long ago Tarn Ferry was given more than it asked for

bool isGiven(const std::string& item) { return item == "vitamin-k" || item == "magnesium-sulphate"; }

std::optional<Risk> atSorrelHill(const Item& item, const Moment& moment, const Stories& stories)
{
    const Span& broken = stories.warmerBroken;
    const Span noOther{.from = broken.from, .to = addDays(broken.from, 3)};
    constexpr int heat = 0;
    constexpr int fit = 1;
    constexpr int ties = 1;
    if (item.id == "warmer-function-test" && broken.contains(moment.day))
        return fails(heat);
    if (item.id == "warmer-on-since" && noOther.contains(moment.day))
        return fails(0);
    if (item.id == "warmer-function-test" || (item.id == "warmer-on-since" && broken.contains(moment.day)))
        return daysBetween(broken.from, moment.day) >= 0 ? std::optional(isWell) : std::nullopt;
    const int daysAgo = daysBetween(moment.day, stories.today);
    if (daysAgo > 2)
        return std::nullopt;
    if (item.id == "mask-size-0")
        return fails(fit);
    if (item.id == "wall-clock")
        return fails(0);
    if (item.id == "delivery-kits" && daysAgo == 0)
        return fails(ties);
    return item.severity == Severity::Critical ? std::optional(isWell) : std::nullopt;
}

bool isNightTrouble(const std::string& item)
{
    static constexpr std::array items{"person-ventilates", "helper-named", "referral-transport",
        "sterile-gloves", "light", "room-clean", "hand-rub", "towels", "newborn-linen", "oxygen-spare",
        "sharps-box", "waste-bins", "backup-light", "caps-socks", "partograph-sheets", "magnesium-sulphate"};
    return std::find(items.begin(), items.end(), item) != items.end();
}

std::optional<Risk> atPennyWeir(const Item& item, const Moment& moment, const Stories& stories)
{
    if (item.id == "suction-pressure")
        return riskFor(0.36, 0.15);
    if (item.id == "oxytocin" || item.id == "vitamin-k") {
        const auto day = static_cast<unsigned>(moment.day.day());
        if (day >= 25)
            return Risk{.onset = 0.3, .mend = 0};
        return day <= 3 ? Risk{.onset = 0, .mend = 0.4} : Risk{.onset = 0.003, .mend = 0.5};
    }
    if (moment.day >= stories.nightsWorse && isNightTrouble(item.id))
        return moment.night ? Risk{.onset = 0.26, .mend = 0.1} : Risk{.onset = 0.01, .mend = 0.9};
    return std::nullopt;
}

/** 1 in the middle of the cold months, 0 from spring to autumn. */
double coldness(Date day)
{
    const Date middle{day.year() + years(day.month() >= July ? 1 : 0), January, std::chrono::day(8)};
    return std::max(0.0, 1.0 - std::abs(daysBetween(day, middle)) / 65.0);
}

}

Stories storiesUpTo(Date today, int monthsBack)
{
    const year_month month = today.year() / today.month();
    const auto firstOf = [&](int back) { return Date((month - months(back)) / day(1)); };
    const year_month_day_last lastDay = (month - months(monthsBack)) / last;
    return {.first = (month - months(monthsBack)) / std::min(today.day(), lastDay.day()),
        .today = today,
        .warmerBroken = {.from = addDays(today, -52), .to = addDays(today, -31)},
        .copied = {.from = firstOf(4), .to = firstOf(2)},
        .silent = {.from = firstOf(3), .to = firstOf(2)},
        .nightsWorse = firstOf(7),
        .fridgeWarm = {.from = addDays(firstOf(1), 8), .to = addDays(firstOf(1), 12)},
        .onPaper = {.from = addDays(firstOf(2), 8), .to = addDays(firstOf(2), 22)}};
}

Risk riskOf(const UnitPlan& plan, const Item& item, const Moment& moment, const Stories& stories)
{
    std::optional<Risk> told;
    if (plan.is(sorrelHill))
        told = atSorrelHill(item, moment, stories);
    else if (plan.is(pennyWeir))
        told = atPennyWeir(item, moment, stories);
    else if (plan.is(tarnFerry) && isGiven(item.id) && daysBetween(moment.day, stories.today) <= daysGiven)
        told = isWell; // more than enough of it
    else if (plan.is(hallowDown) && item.id == "fridge-temperature"
        && stories.fridgeWarm.contains(moment.day))
        told = isWell; // it is the season of offsetOf
    if (told)
        return *told;
    const Usual usual = usualOf(item.severity);
    double load = plan.habits.gapLoad;
    if (plan.is(quillmere))
        load = 4.3 - 3.0 * progress(moment.day, stories);
    return riskFor(usual.share * load * weakness(plan, item), usual.mend);
}

double offsetOf(const UnitPlan& plan, const Item& item, const Moment& moment, const Stories& stories)
{
    if (item.id == "room-temperature")
        return (moment.night ? -0.15 : 0.1) - (plan.is(hallowDown) ? 2.8 : 0.25) * coldness(moment.day);
    if (item.id == "fridge-temperature" && plan.is(hallowDown) && stories.fridgeWarm.contains(moment.day))
        return 7.0;
    return 0;
}

StoreNews newsOf(const UnitPlan& plan, const std::string& item, Date day, const Stories& stories)
{
    const int daysAgo = daysBetween(day, stories.today);
    if (plan.is(pennyWeir) && item == "vitamin-k")
        return {.none = daysAgo <= 18};
    if (!plan.is(tarnFerry) || daysAgo != daysGiven)
        return {};
    if (item == "vitamin-k")
        return {.gives = Lot{.quantity = 150, .expiry = addDays(stories.today, 400), .number = "VK5531"}};
    if (item == "magnesium-sulphate")
        return {.gives = Lot{.quantity = 120, .expiry = addDays(stories.today, 61), .number = "MS4102"}};
    return {};
}

bool isCopied(const UnitPlan& plan, Date day, const Stories& stories)
{
    return plan.is(tarnFerry) && stories.copied.contains(day);
}

bool isOnPaper(const UnitPlan& plan, Date day, const Stories& stories)
{
    return plan.is(ashLock) && stories.onPaper.contains(day);
}

bool hasSpotChecks(const UnitPlan& plan) { return plan.is(sorrelHill) || plan.is(tarnFerry); }

std::vector<ChangeIdea> changeIdeas(const UnitPlan& plan, const Stories& stories)
{
    if (plan.is(quillmere))
        return {{.id = {},
            .title = "One shelf for each section, labelled",
            .from = addDays(stories.first, 21),
            .until = std::nullopt,
            .items = {},
            .hope = "Nine of ten items met by the end of the year"}};
    if (plan.is(pennyWeir))
        return {{.id = {},
            .title = "The evening shift names the night's helper and lays out gloves and towels",
            .from = addDays(stories.nightsWorse, 75),
            .until = addDays(stories.nightsWorse, 150),
            .items = {"person-ventilates", "helper-named", "sterile-gloves", "towels"},
            .hope = "Nights as ready as days"}};
    return {};
}

bool isSilent(const UnitPlan& plan, Date day, const Stories& stories)
{
    return plan.is(ostrey) && stories.silent.contains(day);
}

bool isBehindNow(const UnitPlan& plan) { return plan.is(ashLock) || plan.is(marlGate); }

bool isLate(const UnitPlan& plan) { return plan.is(marlGate); }

const std::vector<Decision>& warmerDecisions()
{
    static const std::vector<Decision> decisions{
        {.day = 0, .dueDay = 7, .owner = "engineer", .remark = "No heat. Warmer labelled, engineer called."},
        {.day = 2,
            .dueDay = 7,
            .owner = "engineer",
            .remark = "Spare warmer from the postnatal ward is here."},
        {.day = 6, .dueDay = 16, .owner = "engineer", .remark = "Heating element is dead. New one ordered."},
        {.day = 15, .dueDay = 21, .owner = "engineer", .remark = "Element still on its way, asked again."},
        {.day = 20, .dueDay = 21, .owner = "engineer", .remark = "Element replaced, test tomorrow."},
    };
    return decisions;
}

}
