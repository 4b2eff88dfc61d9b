// SPDX-License-Identifier: MIT
#include "app/demo/decisions.h"

#include <algorithm>

namespace cradlepost::demo {

using namespace std::chrono;

namespace {

constexpr std::size_t mostAtOnce = 3;

/** Who mends such a thing, and what is said about it. */
struct Remedy
{
    const char* owner; ///< a role; empty: somebody of the ward
    std::vector<const char*> remarks;
};

const Remedy& remedyFor(const Reason& reason)
{
    static const Remedy supply{.owner = "store",
        .remarks
        = {"Asked the store.", "Borrowed from the postnatal ward.", "Comes with the next delivery."}};
    static const Remedy repair{.owner = "engineer",
        .remarks = {"Labelled, engineer called.", "The spare one is in use.", "Part is ordered."}};
    static const Remedy reading{
        .owner = "", .remarks = {"To be read again in an hour.", "Setting looked at."}};
    static const Remedy care{
        .owner = "", .remarks = {"To be done this shift.", "Told the cleaner.", "Handed over."}};
    if (reason.item.starts_with("mask-"))
        return supply; // nobody repairs a mask
    switch (reason.code) {
    case ReasonCode::Absent:
    case ReasonCode::Expired:
    case ReasonCode::TooFew:
    case ReasonCode::TooFewUsable:
    case ReasonCode::KitsIncomplete:
    case ReasonCode::CylinderLow:
        return supply;
    case ReasonCode::NotWorking:
    case ReasonCode::StepFailed:
        return repair;
    case ReasonCode::TooLow:
    case ReasonCode::TooHigh:
    case ReasonCode::OutOfLimits:
        return reading;
    default:
        return care;
    }
}

GapAction actionOn(
    const UnitPlan& plan, const std::string& item, const GapBook::Entry& entry, Instant now, Random& random)
{
    const Remedy& remedy = remedyFor(entry.reason);
    const bool isOurs = *remedy.owner == '\0' || random.chance(0.35);
    GapAction action{
        .item = item, .nth = entry.nth, .owner = isOurs ? random.pick(plan.people).initials : remedy.owner};
    if (random.chance(0.4))
        action.due = floor<minutes>(now)
            + hours(entry.reason.severity == Severity::Critical ? 4 : 12 * random.between(1, 8));
    if (random.chance(0.6))
        action.remark = random.pick(remedy.remarks);
    return action;
}

/** Gaps without an owner, what weighs most first. */
std::vector<std::pair<std::string, GapBook::Entry>> unowned(const GapBook& book)
{
    std::vector<std::pair<std::string, GapBook::Entry>> open;
    for (const auto& [item, entry] : book.entries()) {
        if (entry.isOpen && !entry.hasOwner)
            open.emplace_back(item, entry);
    }
    std::stable_sort(open.begin(), open.end(),
        [](const auto& a, const auto& b) { return a.second.reason.severity < b.second.reason.severity; });
    return open;
}

bool isWarmerOfStory(const UnitPlan& plan, const Stories& stories, const std::string& item, Date today)
{
    return plan.is(sorrelHill) && item == "warmer-function-test" && stories.warmerBroken.contains(today);
}

/** The decision that falls due today; its first round of the day takes it. */
std::optional<GapAction> warmerDecision(const Stories& stories, const GapBook::Entry& entry, Date today)
{
    const int day = daysBetween(stories.warmerBroken.from, today);
    for (const Decision& decision : warmerDecisions()) {
        if (decision.day == day && entry.isOpen)
            return GapAction{.item = "warmer-function-test",
                .nth = entry.nth,
                .owner = decision.owner,
                .due = floor<hours>(entry.openedAt) + days(decision.dueDay),
                .remark = decision.remark};
    }
    return std::nullopt;
}

}

std::vector<GapAction> decide(const UnitPlan& plan, const Stories& stories, const GapBook& book, Date today,
    Instant now, Random& random)
{
    std::vector<GapAction> actions;
    const auto warmer = book.entries().find("warmer-function-test");
    if (warmer != book.entries().end() && isWarmerOfStory(plan, stories, warmer->first, today)) {
        if (auto decision = warmerDecision(stories, warmer->second, today))
            actions.push_back(std::move(*decision));
    }
    for (const auto& [item, entry] : unowned(book)) {
        if (actions.size() == mostAtOnce)
            break;
        if (!isWarmerOfStory(plan, stories, item, today) && random.chance(plan.habits.actsOnGaps))
            actions.push_back(actionOn(plan, item, entry, now, random));
    }
    return actions;
}

std::vector<GapAction> decideNow(const UnitPlan& plan, const GapBook& book, Instant now, Random& random)
{
    std::vector<GapAction> actions;
    for (const auto& [item, entry] : book.entries()) {
        if (!entry.isOpen)
            continue;
        if (item == "delivery-kits")
            actions.push_back({.item = item,
                .nth = entry.nth,
                .owner = "store",
                .due = floor<minutes>(now) + hours(2),
                .remark = "Cord ties asked from the main store."});
        else if (item == "mask-size-0")
            actions.push_back({.item = item,
                .nth = entry.nth,
                .owner = plan.people[1].initials,
                .due = floor<minutes>(now) + hours(20),
                .remark = "Does not seal. New one from the store."});
        else if (!entry.hasOwner && entry.reason.severity != Severity::Critical
            && actions.size() < mostAtOnce)
            actions.push_back(actionOn(plan, item, entry, now, random));
    }
    return actions;
}

}
