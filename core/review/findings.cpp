// SPDX-License-Identifier: MIT
#include "core/review/findings.h"

#include "core/review/month.h"

#include <algorithm>

namespace cradlepost {

namespace {

// When a figure is worth a sentence; our own.
constexpr double fewDone = 0.9; // the upper limit of done of due lies below it
constexpr double oftenOutside = 0.05; // the lower limit of readings outside lies above it
constexpr double longDown = 7 * 24.0; // hours in one piece
constexpr double seldomThere = 0.75; // share of time available
constexpr double oftenLate = 0.2; // the lower limit of late rounds lies above it
constexpr double oftenFast = 0.05; // share of rounds
constexpr std::int64_t fewestOdd = 3; // rounds too fast, or repeated
constexpr double noChance = 1e-6; // of so many repeats
constexpr double poorAgreement = 0.8; // the lower limit of AC1 lies below it
constexpr std::size_t mostNamed = 3; // items in one sentence

using Findings = std::vector<MonthFinding>;

MonthFinding told(MonthFindingCode code, MonthPart part) { return {.code = code, .part = part}; }

MonthFinding asked(MonthFindingCode code)
{
    return {.code = code, .part = MonthPart::Trust, .isQuestion = true};
}

double lowOf(const Share& share) { return share.interval ? share.interval->low : 0; }
double highOf(const Share& share) { return share.interval ? share.interval->high : 1; }

MonthFinding first(const MonthReview& review)
{
    MonthFinding finding = told(MonthFindingCode::HowReady, MonthPart::Readiness);
    finding.done = review.calendar.done;
    if (review.readiness.why == CannotSay::NoData) {
        finding.code = MonthFindingCode::NothingDone;
        finding.part = MonthPart::Done;
        return finding;
    }
    if (review.readiness.why)
        finding.code = MonthFindingCode::TooLittle;
    finding.ready = review.readiness.ready;
    finding.noCriticalGap = review.readiness.noCriticalGap;
    finding.index = review.readiness.meanIndex;
    return finding;
}

void askOfRounds(Findings& findings, const MonthReview& review)
{
    const TrustRepeats& repeats = review.trust.repeats;
    if (repeats.chance && repeats.repeating >= fewestOdd && repeats.chance->chanceOfSeen < noChance) {
        MonthFinding finding = asked(MonthFindingCode::AskRepeats);
        finding.share = shareOf({.x = repeats.repeating, .n = repeats.compared});
        finding.value = repeats.chance->expected;
        finding.count = repeats.chance->seen;
        findings.push_back(finding);
    }
    const TrustPace& pace = review.trust.pace;
    const Share fast = shareOf({.x = pace.tooFast, .n = pace.timed});
    if (!pace.why && pace.tooFast >= fewestOdd && *fast.value() > oftenFast) {
        MonthFinding finding = asked(MonthFindingCode::AskPace);
        finding.share = fast;
        finding.value = pace.medianPerItem;
        findings.push_back(finding);
    }
}

void tellDone(Findings& findings, const MonthReview& review)
{
    if (review.calendar.done.tally.n == 0 || highOf(review.calendar.done) >= fewDone)
        return;
    MonthFinding finding = told(MonthFindingCode::Incomplete, MonthPart::Done);
    finding.done = review.calendar.done;
    findings.push_back(finding);
}

const CourseChange* changeOn(const CourseChart& chart, int side)
{
    const auto at = std::find_if(chart.changes.begin(), chart.changes.end(),
        [&](const CourseChange& change) { return change.side == side; });
    return at == chart.changes.end() ? nullptr : &*at;
}

void tellChange(Findings& findings, const CourseChart& chart, const CourseChange& change)
{
    MonthFinding finding
        = told(change.side < 0 ? MonthFindingCode::Fell : MonthFindingCode::Rose, MonthPart::Course);
    finding.claimsChange = true;
    finding.group = chart.shift;
    finding.day = change.began;
    finding.day2 = change.signalled;
    finding.before = change.before;
    finding.after = change.since;
    findings.push_back(finding);
}

/** A change of one shift is told of that shift; a change of all of them, or of none alone, of the whole. */
void tellCourse(Findings& findings, const MonthReview& review)
{
    bool isQuiet = true;
    for (const int side : {-1, 1}) {
        const CourseChart* whole = review.course.chart(CourseMeasure::ItemsMet);
        std::vector<const CourseChart*> some;
        std::size_t shifts = 0;
        for (const CourseChart& chart : review.course.charts) {
            if (chart.measure != CourseMeasure::ItemsMet || chart.shift.empty())
                continue;
            ++shifts;
            if (changeOn(chart, side) != nullptr)
                some.push_back(&chart);
        }
        const bool ofWhole = whole != nullptr && changeOn(*whole, side) != nullptr;
        if (ofWhole && (some.empty() || some.size() == shifts))
            tellChange(findings, *whole, *changeOn(*whole, side));
        else {
            for (const CourseChart* chart : some)
                tellChange(findings, *chart, *changeOn(*chart, side));
        }
        isQuiet = isQuiet && !ofWhole && some.empty();
    }
    const CourseChart* whole = review.course.chart(CourseMeasure::ItemsMet);
    if (!isQuiet || whole == nullptr || whole->why || whole->limitsFromSpan)
        return;
    MonthFinding finding = told(MonthFindingCode::NoChange, MonthPart::Course);
    for (const stats::ChartPhase& phase : whole->chart->phases)
        finding.count += static_cast<std::int64_t>(phase.baselinePoints);
    findings.push_back(finding);
}

void tellLost(Findings& findings, const MonthReview& review)
{
    if (review.lost.items.empty() || review.lost.whole <= 0)
        return;
    MonthFinding finding = told(MonthFindingCode::LostMost, MonthPart::Lost);
    const std::size_t named = std::min(mostNamed, review.lost.items.size());
    for (std::size_t i = 0; i < named; ++i)
        finding.items.push_back(review.items[review.lost.items[i].item].id);
    finding.value = review.lost.items[named - 1].cumulated;
    finding.share = review.lost.items.front().gaps;
    findings.push_back(finding);
}

void tellPattern(Findings& findings, const ShiftPatternReview& pattern, MonthFindingCode code, MonthPart part)
{
    if (!pattern.test || !pattern.test->differs)
        return;
    MonthFinding finding = told(code, part);
    finding.claimsChange = true;
    const PatternGroup& worst = pattern.groups[pattern.test->worst];
    finding.group = worst.shift;
    finding.weekday = worst.weekday;
    finding.before = pattern.test->others;
    finding.after = worst.items;
    finding.value = pattern.test->worstP;
    findings.push_back(finding);
}

void tellIdeas(Findings& findings, const MonthReview& review)
{
    for (const ChangeEffect& effect : review.changeEffects) {
        if (!effect.difference)
            continue;
        MonthFinding finding = told(MonthFindingCode::ChangeOpen, MonthPart::Changes);
        if (effect.better() || effect.worse()) {
            finding.code = effect.better() ? MonthFindingCode::ChangeBetter : MonthFindingCode::ChangeWorse;
            finding.claimsChange = true;
        }
        finding.change = effect.change;
        finding.day = effect.from;
        finding.before = effect.metBefore;
        finding.after = effect.metAfter;
        finding.value = effect.difference->estimate;
        finding.interval = effect.difference->interval;
        findings.push_back(finding);
    }
}

void tellEquipment(Findings& findings, const MonthReview& review)
{
    for (const Availability& one : review.availability) {
        if (one.share >= seldomThere && one.longestDown.value_or(0) < longDown)
            continue;
        MonthFinding finding = told(MonthFindingCode::EquipmentDown, MonthPart::Availability);
        finding.items = {review.items[one.item].id};
        finding.value = one.share;
        finding.hours = one.downHours;
        finding.count = one.failures;
        findings.push_back(finding);
        return; // the least available one
    }
}

void tellReadings(Findings& findings, const MonthReview& review)
{
    std::vector<const ReadingReview*> outside;
    for (const ReadingReview& reading : review.readings) {
        if (lowOf(reading.outside) > oftenOutside)
            outside.push_back(&reading);
    }
    std::stable_sort(outside.begin(), outside.end(), [](const ReadingReview* a, const ReadingReview* b) {
        return *a->outside.value() > *b->outside.value();
    });
    for (const ReadingReview* reading : outside) {
        MonthFinding finding = told(MonthFindingCode::ReadingsOutside, MonthPart::Readings);
        finding.items = {review.items[reading->item].id};
        finding.share = reading->outside;
        finding.value = reading->median;
        findings.push_back(finding);
    }
}

void tellCriticalOpen(Findings& findings, const MonthReview& review)
{
    MonthFinding finding = told(MonthFindingCode::CriticalOpen, MonthPart::OpenGaps);
    for (const OpenGap& gap : review.openGaps.gaps) {
        if (gap.severity != Severity::Critical)
            continue;
        if (++finding.count == 1)
            finding.hours = gap.hours;
        if (finding.items.size() < mostNamed)
            finding.items.push_back(gap.item);
    }
    if (finding.count > 0)
        findings.push_back(finding);
}

void askOfReadings(Findings& findings, const MonthReview& review)
{
    for (const TrustReading& reading : review.trust.readings) {
        if (!reading.rounded && !reading.neverVaries)
            continue;
        MonthFinding finding
            = asked(reading.rounded ? MonthFindingCode::AskRounding : MonthFindingCode::AskSameReading);
        finding.items = {review.items[reading.item].id};
        finding.share = reading.onFives;
        finding.count = reading.n;
        // One question about rounding: of the item that shows it most.
        const auto other = std::find_if(findings.begin(), findings.end(),
            [&](const MonthFinding& one) { return one.code == finding.code; });
        if (other == findings.end())
            findings.push_back(finding);
        else if (*other->share.value() < *finding.share.value())
            *other = finding;
    }
}

void askOfTimes(Findings& findings, const MonthReview& review)
{
    const stats::Tally& inTime = review.trust.inTime.tally;
    const Share late = shareOf({.x = inTime.n - inTime.x, .n = inTime.n});
    if (lowOf(late) <= oftenLate)
        return;
    MonthFinding finding = asked(MonthFindingCode::AskLate);
    finding.share = late;
    findings.push_back(finding);
}

void askOfAgreement(Findings& findings, const MonthReview& review)
{
    const TrustAgreement& agreement = review.trust.agreement;
    const bool isPoor = !agreement.why && agreement.ac1 && agreement.ac1->interval
        && agreement.ac1->interval->low < poorAgreement;
    if (!isPoor)
        return;
    MonthFinding finding = asked(MonthFindingCode::AskAgreement);
    finding.before = agreement.agreed;
    finding.value = agreement.ac1->estimate;
    finding.interval = agreement.ac1->interval;
    for (const ItemAgreement& item : agreement.items) {
        if (item.agreed < item.both && finding.items.size() < mostNamed)
            finding.items.push_back(review.items[item.item].id);
    }
    findings.push_back(finding);
}

void tellRestore(Findings& findings, const MonthReview& review)
{
    const RestoreGroup& all = review.restore.all;
    if (!all.curve || !all.curve->median || all.mended < review.options.fewestRounds)
        return;
    MonthFinding finding = told(MonthFindingCode::TimeToRestore, MonthPart::Restore);
    finding.hours = all.curve->median;
    finding.hoursLow = all.curve->medianLow;
    finding.hoursHigh = all.curve->medianHigh;
    finding.share = shareOf({.x = all.mended, .n = all.curve->n});
    findings.push_back(finding);
}

}

std::vector<MonthFinding> findingsOf(const MonthReview& review)
{
    Findings findings{first(review)};
    if (review.readiness.why) {
        // Too few rounds to speak of the room: only what stands without them.
        tellDone(findings, review);
        tellCriticalOpen(findings, review);
        return findings;
    }
    askOfRounds(findings, review);
    tellDone(findings, review);
    Findings course;
    tellCourse(course, review);
    const bool isQuiet = !course.empty() && course.front().code == MonthFindingCode::NoChange;
    if (!isQuiet)
        findings.insert(findings.end(), course.begin(), course.end());
    tellLost(findings, review);
    tellPattern(findings, review.byShift, MonthFindingCode::ShiftDiffers, MonthPart::ByShift);
    tellPattern(findings, review.byWeekday, MonthFindingCode::WeekdayDiffers, MonthPart::ByWeekday);
    tellIdeas(findings, review);
    askOfReadings(findings, review);
    askOfTimes(findings, review);
    askOfAgreement(findings, review);
    tellEquipment(findings, review);
    tellReadings(findings, review);
    tellCriticalOpen(findings, review);
    if (isQuiet)
        findings.push_back(course.front());
    tellRestore(findings, review);
    return findings;
}

std::vector<MonthFinding> questionsOf(const MonthReview& review)
{
    Findings findings;
    if (review.readiness.why)
        return findings;
    askOfRounds(findings, review);
    askOfReadings(findings, review);
    askOfTimes(findings, review);
    askOfAgreement(findings, review);
    return findings;
}

}
