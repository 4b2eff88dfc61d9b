// SPDX-License-Identifier: MIT
#include "core/gap/gap.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <random>

using namespace cradlepost;

namespace {

Instant at(int day, int hour)
{
    return std::chrono::sys_days(std::chrono::year(2026) / 11 / day) + std::chrono::hours(hour);
}

Finding finding(Outcome outcome, int day = 24, Severity severity = Severity::Major)
{
    return {.unit = "unit",
        .item = "suction",
        .outcome = outcome,
        .severity = severity,
        .reason = {.code = ReasonCode::NotWorking, .item = "suction", .severity = severity},
        .slot = day * 4,
        .at = at(day, 8),
        .shiftEnds = at(day, 19),
        .record = {.station = "station", .seq = day}};
}

Gap openGap(int day = 24)
{
    const auto gap = carry(std::nullopt, 0, finding(Outcome::Gap, day));
    REQUIRE(gap.has_value());
    return *gap;
}

}

TEST_CASE("a gap opens when it is found and none is open")
{
    const Gap gap = openGap();
    CHECK(gap.isOpen());
    CHECK(gap.unit == "unit");
    CHECK(gap.item == "suction");
    CHECK(gap.nth == 1);
    CHECK(gap.found == 1);
    CHECK(gap.severity == Severity::Major);
    CHECK(gap.reason.code == ReasonCode::NotWorking);
    CHECK(gap.openedSlot == 96);
    CHECK(gap.openedAt == at(24, 8));
    CHECK(gap.lastFound == at(24, 8));
    CHECK(gap.openedBy == RecordId{"station", 24});
    CHECK(gap.owner.empty());
    CHECK(gap.remark.empty());
    CHECK(carry(std::nullopt, 3, finding(Outcome::Gap))->nth == 4);
}

TEST_CASE("a gap found again goes on with its owner, and says what was found last")
{
    Gap open = openGap();
    open.owner = "AB";
    open.remark = "ordered";
    open.due = at(30, 0);
    Finding later = finding(Outcome::Gap, 25, Severity::Critical);
    later.reason.code = ReasonCode::Absent;
    const auto gap = carry(open, 1, later);
    REQUIRE(gap.has_value());
    Gap expected = open;
    expected.found = 2;
    expected.lastFound = at(25, 8);
    expected.severity = Severity::Critical;
    expected.reason = later.reason;
    expected.due = at(25, 19); // it became critical: no later than the end of the shift that found it so
    CHECK(*gap == expected);
}

TEST_CASE("a gap closes when it is met or does not apply, and says which")
{
    for (const Outcome outcome : {Outcome::Met, Outcome::DoesNotApply}) {
        const Gap open = openGap();
        const auto gap = carry(open, 1, finding(outcome, 26));
        REQUIRE(gap.has_value());
        CHECK_FALSE(gap->isOpen());
        Gap expected = open;
        expected.closedAt = at(26, 8);
        expected.closedSlot = 104;
        expected.closedBy = RecordId{"station", 26};
        expected.closedAsNotApplicable = outcome == Outcome::DoesNotApply;
        CHECK(*gap == expected);
    }
}

TEST_CASE("what was not checked changes nothing, and a met item without a gap writes nothing")
{
    CHECK_FALSE(carry(openGap(), 1, finding(Outcome::NotChecked)).has_value());
    CHECK_FALSE(carry(std::nullopt, 0, finding(Outcome::NotChecked)).has_value());
    CHECK_FALSE(carry(std::nullopt, 2, finding(Outcome::Met)).has_value());
    CHECK_FALSE(carry(std::nullopt, 2, finding(Outcome::DoesNotApply)).has_value());
}

TEST_CASE("a critical gap is due at the end of the shift, others after their hours")
{
    // Common practice, no source.
    CHECK(dueFor(finding(Outcome::Gap, 24, Severity::Critical)) == at(24, 19));
    CHECK(dueFor(finding(Outcome::Gap, 24, Severity::Major)) == at(25, 8));
    CHECK(dueFor(finding(Outcome::Gap, 23, Severity::Minor)) == at(30, 8));
    Finding late = finding(Outcome::Gap, 24, Severity::Critical);
    late.at = at(24, 20); // finished after the shift ended: due at once, not before it was found
    CHECK(dueFor(late) == at(24, 20));
    const DueTimes site{.major = std::chrono::hours(48), .minor = std::chrono::hours(1)};
    CHECK(dueFor(finding(Outcome::Gap, 24, Severity::Critical), site) == at(24, 19));
    CHECK(dueFor(finding(Outcome::Gap, 24, Severity::Major), site) == at(26, 8));
    CHECK(dueFor(finding(Outcome::Gap, 24, Severity::Minor), site) == at(24, 9));
    CHECK(openGap().due == at(25, 8));
}

namespace {

/** Lives told from the whole string of letters: runs of 'g' that only 'u' may interrupt. */
struct Life
{
    std::size_t opened = 0;
    std::size_t last = 0;
    int found = 0;
    std::optional<std::size_t> closed;
    bool isNotApplicable = false;
};

std::vector<Life> livesOf(const std::string& letters)
{
    std::vector<Life> lives;
    std::size_t from = letters.find('g');
    while (from != std::string::npos) {
        const std::size_t end = std::min(letters.find('m', from), letters.find('n', from));
        const std::string run
            = letters.substr(from, end == std::string::npos ? std::string::npos : end - from);
        lives.push_back({.opened = from,
            .last = from + run.rfind('g'),
            .found = static_cast<int>(std::count(run.begin(), run.end(), 'g')),
            .closed = end == std::string::npos ? std::nullopt : std::optional(end),
            .isNotApplicable = end != std::string::npos && letters[end] == 'n'});
        from = end == std::string::npos ? end : letters.find('g', end);
    }
    return lives;
}

Instant hour(std::size_t i) { return at(1, 0) + std::chrono::hours(static_cast<int>(i)); }

std::vector<Gap> carried(const std::string& letters)
{
    std::vector<Gap> gaps;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        Finding one = finding(static_cast<Outcome>(letters[i]));
        one.at = hour(i);
        one.slot = static_cast<Slot>(i);
        const bool isOpen = !gaps.empty() && gaps.back().isOpen();
        const auto gap
            = carry(isOpen ? std::optional(gaps.back()) : std::nullopt, static_cast<int>(gaps.size()), one);
        if (gap && isOpen)
            gaps.back() = *gap;
        else if (gap)
            gaps.push_back(*gap);
    }
    return gaps;
}

}

TEST_CASE("random months of findings give the lives that their letters tell")
{
    std::mt19937 random(1125);
    for (int i = 0; i < 2000; ++i) {
        std::string letters;
        for (std::size_t n = random() % 90; n > 0; --n)
            letters += "mmgggnuu"[random() % 8];
        CAPTURE(letters);
        const std::vector<Gap> gaps = carried(letters);
        const std::vector<Life> lives = livesOf(letters);
        REQUIRE(gaps.size() == lives.size());
        for (std::size_t k = 0; k < lives.size(); ++k) {
            REQUIRE(gaps[k].nth == static_cast<int>(k) + 1);
            REQUIRE(gaps[k].openedAt == hour(lives[k].opened));
            REQUIRE(gaps[k].openedSlot == static_cast<Slot>(lives[k].opened));
            REQUIRE(gaps[k].lastFound == hour(lives[k].last));
            REQUIRE(gaps[k].found == lives[k].found);
            REQUIRE(gaps[k].isOpen() == !lives[k].closed.has_value());
            if (lives[k].closed)
                REQUIRE(gaps[k].closedAt == hour(*lives[k].closed));
            REQUIRE(gaps[k].closedAsNotApplicable == lives[k].isNotApplicable);
        }
    }
}

TEST_CASE("a gap found graver than before is due no later than a new one of that severity")
{
    Gap open = openGap(); // major, found on the 24th at 8: due on the 25th at 8
    CHECK(open.due == at(25, 8));
    const auto critical = carry(open, 1, finding(Outcome::Gap, 24, Severity::Critical));
    REQUIRE(critical.has_value());
    CHECK(critical->due == at(24, 19)); // the end of the shift that found it
    open.due = at(24, 12); // the owner had promised it earlier than that
    CHECK(carry(open, 1, finding(Outcome::Gap, 24, Severity::Critical))->due == at(24, 12));
    CHECK(carry(open, 1, finding(Outcome::Gap, 24, Severity::Minor))->due == at(24, 12));
}

TEST_CASE("a gap that was said to be mended and is found again is reopened")
{
    Gap open = openGap();
    open.mendedBy = "AB";
    open.mendedAt = at(24, 10);
    open.verifiedBy = "CD";
    open.verifiedAt = at(24, 11);
    const auto again = carry(open, 1, finding(Outcome::Gap, 25));
    REQUIRE(again.has_value());
    CHECK(again->isOpen());
    CHECK(again->reopened == 1);
    CHECK(again->mendedBy.empty());
    CHECK_FALSE(again->mendedAt.has_value());
    CHECK(again->verifiedBy.empty());
    // A round that was finished before it was mended says nothing against it.
    CHECK(carry(open, 1, finding(Outcome::Gap, 24))->mendedBy == "AB");
    const auto closed = carry(open, 1, finding(Outcome::Met, 25));
    REQUIRE(closed.has_value());
    CHECK_FALSE(closed->isOpen());
    CHECK(closed->mendedBy == "AB");
    CHECK(closed->reopened == 0);
}

TEST_CASE("only a critical gap that was mended wants a second pair of eyes")
{
    Gap gap = openGap();
    gap.mendedBy = "AB";
    CHECK_FALSE(gap.wantsVerifying());
    gap.severity = Severity::Critical;
    CHECK(gap.wantsVerifying());
    gap.verifiedBy = "CD";
    CHECK_FALSE(gap.wantsVerifying());
    gap.verifiedBy.clear();
    gap.mendedBy.clear();
    CHECK_FALSE(gap.wantsVerifying());
}
