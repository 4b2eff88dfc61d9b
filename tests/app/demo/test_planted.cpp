// SPDX-License-Identifier: MIT
#include "larkmere.h"

#include "core/review/month.h"
#include "core/store/unithistory.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::demo;
using namespace std::chrono;

namespace {

std::vector<MonthFinding> findings(const std::string& unit, year_month month)
{
    const ReviewSpan span = ReviewSpan::ofMonth(month);
    const auto history = unitHistory(Larkmere::whole().store(), unit, span, writtenAt);
    REQUIRE(history);
    auto review = reviewMonth(*history, span);
    REQUIRE(review);
    return std::move(review->findings);
}

const MonthFinding* found(
    const std::vector<MonthFinding>& findings, MonthFindingCode code, const std::string& item = {})
{
    const auto at = std::find_if(findings.begin(), findings.end(), [&](const MonthFinding& finding) {
        const bool names = std::find(finding.items.begin(), finding.items.end(), item) != finding.items.end();
        return finding.code == code && (item.empty() || names);
    });
    return at == findings.end() ? nullptr : &*at;
}

/** Whether it is among the sentences at the top. */
bool isAtTop(const std::vector<MonthFinding>& all, const MonthFinding* finding)
{
    return finding != nullptr && static_cast<std::size_t>(finding - all.data()) < mostFindings;
}

year_month monthOf(Date day) { return day.year() / day.month(); }

}

TEST_CASE("October at Sorrel Hill says that the warmer was down for three weeks")
{
    const auto october = findings(sorrelHill, monthOf(Larkmere::whole().stories().warmerBroken.from));
    const MonthFinding* down = found(october, MonthFindingCode::EquipmentDown, "warmer-function-test");
    REQUIRE(isAtTop(october, down));
    CHECK(*down->hours > 18 * 24);
    CHECK(*down->hours < 23 * 24);
    CHECK(isAtTop(october, found(october, MonthFindingCode::LostMost, "warmer-function-test")));
}

TEST_CASE("the copied months at Tarn Ferry are asked about, and the others are not")
{
    const Span copied = Larkmere::whole().stories().copied;
    for (year_month month = monthOf(copied.from); month < monthOf(copied.to); month += months(1)) {
        const auto one = findings(tarnFerry, month);
        CHECK(isAtTop(one, found(one, MonthFindingCode::AskRepeats)));
        CHECK(isAtTop(one, found(one, MonthFindingCode::AskPace)));
    }
    for (const year_month month : {monthOf(copied.from) - months(1), monthOf(copied.to)}) {
        const auto one = findings(tarnFerry, month);
        CHECK(found(one, MonthFindingCode::AskRepeats) == nullptr);
        CHECK(found(one, MonthFindingCode::AskPace) == nullptr);
    }
}

TEST_CASE("Quillmere rose again and again, and never fell")
{
    int rose = 0;
    for (year_month month = 2025y / November; month <= 2026y / November; month += months(1)) {
        const auto one = findings(quillmere, month);
        rose += found(one, MonthFindingCode::Rose) != nullptr ? 1 : 0;
        CHECK(found(one, MonthFindingCode::Fell) == nullptr);
    }
    CHECK(rose >= 5);
}

TEST_CASE("the silent month of Ostrey is a month with nothing done, not one of 0 %")
{
    const auto silent = findings(ostrey, monthOf(Larkmere::whole().stories().silent.from));
    CHECK(silent.front().code == MonthFindingCode::NothingDone);
    CHECK(silent.front().done.tally.x == 0);
    CHECK_FALSE(silent.front().index);
    CHECK(found(silent, MonthFindingCode::Fell) == nullptr);
}

TEST_CASE("Penny Weir's nights differ from the month on in which they got worse, and not before")
{
    const year_month from = monthOf(Larkmere::whole().stories().nightsWorse);
    for (int i = 1; i <= 6; ++i)
        CHECK(found(findings(pennyWeir, from - months(i)), MonthFindingCode::ShiftDiffers) == nullptr);
    for (int i = 0; i <= 6; ++i) {
        const auto one = findings(pennyWeir, from + months(i));
        const MonthFinding* differs = found(one, MonthFindingCode::ShiftDiffers);
        REQUIRE(isAtTop(one, differs));
        CHECK(differs->group == "night");
    }
}

TEST_CASE("the weekly chart dates the fall of Penny Weir's nights to the week in which it began or the next")
{
    const Date began = Larkmere::whole().stories().nightsWorse;
    const MonthFinding* fell = nullptr;
    std::vector<MonthFinding> one;
    for (int i = 0; i < 4 && fell == nullptr; ++i) {
        one = findings(pennyWeir, monthOf(began) + months(i));
        fell = found(one, MonthFindingCode::Fell);
    }
    REQUIRE(fell != nullptr);
    CHECK(fell->group == "night");
    CHECK(std::abs(daysBetween(began, *fell->day)) <= 14);
}

TEST_CASE("Penny Weir's suction is among what is lost most or out of limits in most months")
{
    int named = 0;
    for (year_month month = 2025y / August; month <= 2026y / October; month += months(1)) {
        const auto one = findings(pennyWeir, month);
        const bool lost = found(one, MonthFindingCode::LostMost, "suction-pressure") != nullptr;
        named += lost || found(one, MonthFindingCode::ReadingsOutside, "suction-pressure") != nullptr ? 1 : 0;
    }
    CHECK(named >= 10); // of 15
}

TEST_CASE("Ash Lock is said to be incomplete, not worse than others")
{
    const auto one = findings(ashLock, 2026y / September);
    CHECK(isAtTop(one, found(one, MonthFindingCode::Incomplete)));
    CHECK(found(one, MonthFindingCode::AskRepeats) == nullptr);
    CHECK(found(one, MonthFindingCode::AskPace) == nullptr);
}

TEST_CASE("Hallow Down's cold room and warm fridge are readings outside")
{
    const auto january = findings(hallowDown, 2026y / January);
    const MonthFinding* cold = found(january, MonthFindingCode::ReadingsOutside, "room-temperature");
    REQUIRE(isAtTop(january, cold));
    CHECK(*cold->share.value() > 0.8);
    CHECK(found(findings(hallowDown, 2026y / July), MonthFindingCode::ReadingsOutside, "room-temperature")
        == nullptr);
    const auto warm = findings(hallowDown, monthOf(Larkmere::whole().stories().fridgeWarm.from));
    CHECK(isAtTop(warm, found(warm, MonthFindingCode::ReadingsOutside, "fridge-temperature")));
}

TEST_CASE("Marl Gate alone is asked about rounded readings and late rounds")
{
    const auto one = findings(marlGate, 2026y / September);
    CHECK(isAtTop(one, found(one, MonthFindingCode::AskRounding)));
    CHECK(isAtTop(one, found(one, MonthFindingCode::AskLate)));
    for (const std::string& unit : Larkmere::units()) {
        if (unit == marlGate)
            continue;
        CAPTURE(unit);
        const auto other = findings(unit, 2026y / September);
        CHECK(found(other, MonthFindingCode::AskRounding) == nullptr);
        CHECK(found(other, MonthFindingCode::AskLate) == nullptr);
    }
}
