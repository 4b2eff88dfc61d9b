// SPDX-License-Identifier: MIT
#include "core/review/districtfindings.h"

#include "core/review/district.h"

#include <algorithm>
#include <set>

namespace cradlepost {

namespace {

using Code = DistrictFindingCode;
using Findings = std::vector<DistrictFinding>;

DistrictFinding first(const DistrictReview& review)
{
    std::int64_t due = 0;
    for (const DistrictUnit& unit : review.units)
        due += unit.span.due;
    if (review.funnel.whole.tally.n == 0)
        return {.code = Code::NothingDone, .part = DistrictPart::Reporting, .count = due};
    if (review.visits.empty())
        return {.code = Code::NobodyFirst, .part = DistrictPart::Visits};
    const VisitNeed& visit = review.visits.front();
    return {
        .code = Code::SeeFirst, .part = DistrictPart::Visits, .units = {visit.unit}, .value = visit.points};
}

void tellBand(Findings& findings, const DistrictReview& review, UnitBand band, Code code)
{
    DistrictFinding finding{.code = code, .part = DistrictPart::Funnel, .share = review.funnel.whole};
    for (const UnitStanding& standing : review.funnel.units) {
        if (standing.band == band)
            finding.units.push_back(standing.unit);
    }
    finding.count = static_cast<std::int64_t>(finding.units.size());
    if (!finding.units.empty() && !review.funnel.why)
        findings.push_back(std::move(finding));
}

void tellFew(Findings& findings, const DistrictReview& review)
{
    DistrictFinding finding{.code = Code::TooFew, .part = DistrictPart::Funnel};
    for (const UnitStanding& standing : review.funnel.units) {
        if (!standing.few)
            continue;
        if (finding.units.empty())
            finding.share = standing.share;
        finding.units.push_back(standing.unit);
    }
    if (!finding.units.empty())
        findings.push_back(std::move(finding));
}

/** Units for which `holds`, the largest `weight` first; `fill` takes the figures of the first. */
template <class Holds, class Weight, class Fill>
void tellReporting(Findings& findings, const DistrictReview& review, DistrictFinding finding, Holds holds,
    Weight weight, Fill fill)
{
    std::vector<const UnitReporting*> found;
    for (const UnitReporting& one : review.reporting) {
        if (holds(one))
            found.push_back(&one);
    }
    if (found.empty())
        return;
    std::stable_sort(found.begin(), found.end(),
        [&](const UnitReporting* a, const UnitReporting* b) { return weight(*a) > weight(*b); });
    for (const UnitReporting* one : found)
        finding.units.push_back(one->unit);
    fill(finding, *found.front());
    findings.push_back(std::move(finding));
}

double silenceOf(const UnitReporting& one) { return std::max<double>(one.longestSilence, one.silentDays); }

void tellSilent(Findings& findings, const DistrictReview& review)
{
    tellReporting(
        findings, review, {.code = Code::Silent, .part = DistrictPart::Reporting},
        [](const UnitReporting& one) { return one.isSilent; }, silenceOf,
        [](DistrictFinding& finding, const UnitReporting& one) {
            finding.count = static_cast<std::int64_t>(silenceOf(one));
        });
}

void tellIncomplete(Findings& findings, const DistrictReview& review)
{
    tellReporting(
        findings, review, {.code = Code::Incomplete, .part = DistrictPart::Reporting},
        [](const UnitReporting& one) { return one.isIncomplete; },
        [](const UnitReporting& one) { return -*one.done.value(); },
        [](DistrictFinding& finding, const UnitReporting& one) { finding.share = one.done; });
}

void tellLate(Findings& findings, const DistrictReview& review)
{
    tellReporting(
        findings, review, {.code = Code::Late, .part = DistrictPart::Reporting, .isQuestion = true},
        [](const UnitReporting& one) { return one.isLate; },
        [](const UnitReporting& one) { return *one.late.value(); },
        [](DistrictFinding& finding, const UnitReporting& one) { finding.share = one.late; });
}

void askEntries(Findings& findings, const DistrictReview& review)
{
    tellReporting(
        findings, review, {.code = Code::AskEntries, .part = DistrictPart::Reporting, .isQuestion = true},
        [](const UnitReporting& one) { return one.questions.value_or(0) > 0; },
        [](const UnitReporting& one) { return static_cast<double>(*one.questions); },
        [](DistrictFinding& finding, const UnitReporting& one) { finding.count = *one.questions; });
}

void tellChanges(Findings& findings, const DistrictReview& review)
{
    for (const UnitChange& change : review.changes) {
        if (change.fell || change.rose)
            findings.push_back({.code = change.fell ? Code::Fell : Code::Rose,
                .part = DistrictPart::Changes,
                .units = {change.unit},
                .share = change.after,
                .before = change.before});
    }
}

void tellMoves(Findings& findings, const DistrictReview& review)
{
    if (!review.transfers || review.transfers->moves.empty())
        return;
    DistrictFinding finding{.code = Code::CouldMove, .part = DistrictPart::Stock};
    std::set<std::string> items;
    std::set<std::size_t> takers;
    for (const Transfer& move : review.transfers->moves) {
        items.insert(move.item);
        takers.insert(move.to);
    }
    finding.units.assign(takers.begin(), takers.end());
    finding.count = static_cast<std::int64_t>(items.size());
    findings.push_back(std::move(finding));
}

void tellVisits(Findings& findings, const DistrictReview& review)
{
    DistrictFinding finding{.code = Code::NotReached, .part = DistrictPart::Visits};
    for (std::size_t unit = 0; unit < review.units.size(); ++unit) {
        const auto& visits = review.units[unit].visits;
        if (!visits.empty() && visits.back().decision() == VisitDecision::NotReached)
            finding.units.push_back(unit);
    }
    if (!finding.units.empty())
        findings.push_back(std::move(finding));
}

/** The item often missing in most units, two at least: a thing of the district, not of one ward. */
void tellItem(Findings& findings, const DistrictReview& review)
{
    const DistrictItem* most = nullptr;
    for (const DistrictItem& item : review.itemMap.items) {
        if (item.oftenIn.size() >= 2 && (most == nullptr || item.oftenIn.size() > most->oftenIn.size()))
            most = &item;
    }
    if (most != nullptr)
        findings.push_back({.code = Code::OftenMissing,
            .part = DistrictPart::Items,
            .units = most->oftenIn,
            .items = {review.items[most->item].id},
            .share = shareOf(most->gaps)});
}

}

const char* codeName(DistrictFindingCode code)
{
    static constexpr const char* names[] = {"see-first", "nobody-first", "nothing-done", "lower", "higher",
        "not-told-apart", "too-few", "silent", "incomplete", "late", "fell", "rose", "often-missing",
        "ask-entries", "could-move", "not-reached"};
    return names[static_cast<std::size_t>(code)];
}

const char* codeName(DistrictPart part)
{
    static constexpr const char* names[]
        = {"funnel", "side-by-side", "months", "items", "reporting", "changes", "visits", "stock"};
    return names[static_cast<std::size_t>(part)];
}

std::vector<DistrictFinding> findingsOf(const DistrictReview& review)
{
    Findings findings{first(review)};
    tellBand(findings, review, UnitBand::Lower, Code::Lower);
    tellSilent(findings, review);
    tellChanges(findings, review);
    tellMoves(findings, review);
    tellItem(findings, review);
    tellVisits(findings, review);
    tellFew(findings, review);
    tellIncomplete(findings, review);
    askEntries(findings, review);
    tellLate(findings, review);
    tellBand(findings, review, UnitBand::Higher, Code::Higher);
    tellBand(findings, review, UnitBand::NotToldApart, Code::NotToldApart);
    return findings;
}

}
