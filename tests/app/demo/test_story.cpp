// SPDX-License-Identifier: MIT
#include "larkmere.h"

#include <cmath>
#include <doctest/doctest.h>
#include <map>

using namespace cradlepost;
using namespace cradlepost::demo;

namespace {

const Larkmere& larkmereWhole() { return Larkmere::whole(); }

using Readings = std::vector<std::pair<std::string, std::int64_t>>;

/** What was read in each shift's round. */
std::map<Slot, Readings> readingsByRound(const std::string& unit, Span span)
{
    std::map<RecordId, Slot> shiftRounds;
    for (const RoundRow& row : larkmereWhole().shiftRounds(unit, span))
        shiftRounds.emplace(row.id, row.slot);
    std::map<Slot, Readings> all;
    for (const char* item : {"room-temperature", "suction-pressure", "fridge-temperature", "scale-check"}) {
        for (const Reading& reading : larkmereWhole().readings(unit, item, span)) {
            if (shiftRounds.contains(reading.id))
                all[reading.slot].emplace_back(item, reading.thousandths);
        }
    }
    return all;
}

/** Share of the rounds of `span` that say what the same shift of the day before said. */
double shareRepeated(const std::string& unit, Span span)
{
    const Span withBefore{.from = addDays(span.from, -1), .to = span.to};
    const auto readings = readingsByRound(unit, withBefore);
    std::map<Slot, std::string> outcomes;
    for (const RoundRow& row : larkmereWhole().shiftRounds(unit, withBefore))
        outcomes.emplace(row.slot, row.outcomes);
    const auto rounds = larkmereWhole().shiftRounds(unit, span);
    return shareOf(rounds, [&](const RoundRow& row) {
        const Slot before = slotOf(addDays(dateOfSlot(row.slot), -1), shiftOfSlot(row.slot));
        const auto said = outcomes.find(before);
        return said != outcomes.end() && said->second == row.outcomes && readings.contains(row.slot)
            && readings.contains(before) && readings.at(before) == readings.at(row.slot);
    });
}

double medianMinutes(const std::string& unit, Span span)
{
    std::vector<double> minutes;
    for (const RoundRow& row : larkmereWhole().shiftRounds(unit, span))
        minutes.push_back(std::chrono::duration<double, std::ratio<60>>(row.finished - row.started).count());
    REQUIRE(!minutes.empty());
    std::sort(minutes.begin(), minutes.end());
    return minutes[minutes.size() / 2];
}

bool isNightRow(const RoundRow& row) { return shiftOfSlot(row.slot) == 2; }

/** How much less ready the nights were than the other shifts. */
double nightLoss(const std::string& unit, Span span)
{
    auto nights = larkmereWhole().shiftRounds(unit, span);
    auto others = nights;
    std::erase_if(nights, [](const RoundRow& row) { return !isNightRow(row); });
    std::erase_if(others, isNightRow);
    return meanIndex(others) - meanIndex(nights);
}

double shareOfMonthEnds(const std::string& item)
{
    const auto gaps = larkmereWhole().store().gapsOf(pennyWeir, item);
    REQUIRE(gaps);
    REQUIRE(gaps->size() >= 10);
    return shareOf(
        *gaps, [](const Gap& gap) { return static_cast<unsigned>(dateOfSlot(gap.openedSlot).day()) >= 25; });
}

double shareHalf(const std::string& unit)
{
    std::vector<Reading> all;
    for (const char* item : {"room-temperature", "fridge-temperature"}) {
        const auto more = larkmereWhole().readings(unit, item, larkmereWhole().always());
        all.insert(all.end(), more.begin(), more.end());
    }
    return shareOf(all, [](const Reading& reading) { return reading.thousandths % 500 == 0; });
}

}

TEST_CASE("Sorrel Hill's warmer has a dead heating element for three weeks, and an engineer who owns it")
{
    const auto gaps = larkmereWhole().store().gapsOf(sorrelHill, "warmer-function-test");
    REQUIRE(gaps);
    const Span broken = larkmereWhole().stories().warmerBroken;
    const auto dead = std::find_if(gaps->begin(), gaps->end(), [&](const Gap& gap) {
        return gap.reason.part == "heat" && broken.contains(dateOfSlot(gap.openedSlot));
    });
    REQUIRE(dead != gaps->end());
    REQUIRE(dead->closedAt);
    CHECK(*dead->closedAt - dead->openedAt >= std::chrono::days(18));
    CHECK(dead->openedAt > writtenAt - std::chrono::days(61));
    CHECK(dead->owner == "engineer");
    CHECK(dead->remark == "Element replaced, test tomorrow.");
    CHECK(dead->found > 40);
}

TEST_CASE("Tarn Ferry hands in yesterday's rounds for two months, and nobody else does")
{
    const Span copied = larkmereWhole().stories().copied;
    const Span before{.from = addDays(copied.from, -60), .to = copied.from};
    CHECK(shareRepeated(tarnFerry, copied) > 0.8);
    CHECK(shareRepeated(tarnFerry, before) < 0.1);
    CHECK(medianMinutes(tarnFerry, copied) < 1.5);
    CHECK(medianMinutes(tarnFerry, before) > 5);
    for (const std::string& unit : Larkmere::units()) {
        CAPTURE(unit);
        if (unit != tarnFerry && unit != ostrey)
            CHECK(shareRepeated(unit, copied) < 0.1);
    }
}

TEST_CASE("Quillmere gets better over the months")
{
    const Date first = larkmereWhole().stories().first;
    const Date today = larkmereWhole().stories().today;
    const double then
        = meanIndex(larkmereWhole().shiftRounds(quillmere, {.from = first, .to = addDays(first, 91)}));
    const double now
        = meanIndex(larkmereWhole().shiftRounds(quillmere, {.from = addDays(today, -91), .to = today}));
    CHECK(then > 0.62);
    CHECK(then < 0.76);
    CHECK(now > 0.87);
    CHECK(now < 0.96);
    CHECK(now - then > 0.15);
}

TEST_CASE("Ostrey does not report for a calendar month")
{
    const Span silent = larkmereWhole().stories().silent;
    CHECK(larkmereWhole().rounds(ostrey, silent).empty());
    CHECK(larkmereWhole().shiftRounds(ostrey, {.from = addDays(silent.from, -30), .to = silent.from}).size()
        > 60);
    CHECK(larkmereWhole().shiftRounds(ostrey, {.from = silent.to, .to = addDays(silent.to, 30)}).size() > 60);
    CHECK(silent.from.day() == std::chrono::day(1));
    CHECK(silent.to.day() == std::chrono::day(1));
}

TEST_CASE("Penny Weir's suction fails often and its medicines run out at the end of the month")
{
    CHECK(larkmereWhole().gapShare(pennyWeir, "suction-pressure") > 0.18);
    CHECK(larkmereWhole().gapShare(sorrelHill, "suction-pressure") < 0.1);
    CHECK(shareOfMonthEnds("oxytocin") > 0.5);
    CHECK(shareOfMonthEnds("vitamin-k") > 0.5);
}

TEST_CASE("Penny Weir's nights are worse than its days from one day on")
{
    const Date from = larkmereWhole().stories().nightsWorse;
    CHECK(std::abs(nightLoss(pennyWeir, {.from = addDays(from, -210), .to = from})) < 0.02);
    CHECK(nightLoss(pennyWeir, {.from = from, .to = addDays(from, 210)}) > 0.04);
    CHECK(std::abs(nightLoss(sorrelHill, {.from = from, .to = addDays(from, 210)})) < 0.02);
}

TEST_CASE("Ash Lock does four rounds in ten and leaves out what it did not see")
{
    const auto rounds = larkmereWhole().shiftRounds(ashLock, larkmereWhole().always());
    const double due = 2.0 * daysBetween(larkmereWhole().always().from, larkmereWhole().always().to);
    CHECK(static_cast<double>(rounds.size()) / due > 0.35);
    CHECK(static_cast<double>(rounds.size()) / due < 0.47);
    CHECK(shareOf(rounds, [](const RoundRow& row) { return row.outcomes.find('u') != std::string::npos; })
        > 0.2);
}

TEST_CASE("Hallow Down is too cold in the cold months only")
{
    const auto all = larkmereWhole().readings(hallowDown, "room-temperature", larkmereWhole().always());
    auto cold = all;
    auto warm = all;
    const auto monthOf
        = [](const Reading& reading) { return static_cast<unsigned>(dateOfSlot(reading.slot).month()); };
    std::erase_if(
        cold, [&](const Reading& reading) { return monthOf(reading) != 12 && monthOf(reading) != 1; });
    std::erase_if(warm, [&](const Reading& reading) { return monthOf(reading) < 4 || monthOf(reading) > 9; });
    const auto below = [](const Reading& reading) { return reading.thousandths < 26000; };
    CHECK(shareOf(cold, below) > 0.8);
    CHECK(shareOf(warm, below) < 0.12);
}

TEST_CASE("Hallow Down's fridge is too warm for four days")
{
    const Span warm = larkmereWhole().stories().fridgeWarm;
    const auto above = [](const Reading& reading) { return reading.thousandths > 8000; };
    CHECK(daysBetween(warm.from, warm.to) == 4);
    CHECK(shareOf(larkmereWhole().readings(hallowDown, "fridge-temperature", warm), above) == 1.0);
    CHECK(shareOf(larkmereWhole().readings(hallowDown, "fridge-temperature", larkmereWhole().always()), above)
        < 0.15);
}

TEST_CASE("Marl Gate writes halves and wholes, and late")
{
    for (const std::string& unit : Larkmere::units()) {
        CAPTURE(unit);
        const bool isMarl = unit == marlGate;
        CHECK((shareHalf(unit) > 0.5) == isMarl);
        CHECK((larkmereWhole().medianDelay(unit) > 120) == isMarl);
        if (!isMarl) {
            CHECK(shareHalf(unit) > 0.12); // two endings of ten
            CHECK(shareHalf(unit) < 0.28);
            CHECK(larkmereWhole().medianDelay(unit) > 5);
            CHECK(larkmereWhole().medianDelay(unit) < 50);
        }
    }
}
