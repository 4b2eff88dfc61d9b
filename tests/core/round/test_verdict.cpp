// SPDX-License-Identifier: MIT
#include "core/round/verdict.h"

#include "sample.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

using Severities = std::vector<std::vector<Severity>>;
constexpr auto C = Severity::Critical;
constexpr auto A = Severity::Major;
constexpr auto M = Severity::Minor;

/** Letters to judgements: m met, g gap, n not applicable, u not checked. */
std::vector<Judgement> judgementsFrom(const Checklist& checklist, std::string_view letters)
{
    std::vector<Judgement> judgements;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const auto outcome = static_cast<Outcome>(letters[i]);
        Judgement judgement{.outcome = outcome, .reason = std::nullopt};
        if (outcome == Outcome::Gap || outcome == Outcome::NotChecked) {
            judgement.reason
                = Reason{.code = outcome == Outcome::Gap ? ReasonCode::Absent : ReasonCode::NotChecked,
                    .item = checklist.item(i).id,
                    .severity = checklist.item(i).severity};
        }
        judgements.push_back(judgement);
    }
    return judgements;
}

Verdict verdictFor(const Severities& sections, std::string_view letters)
{
    const Checklist checklist = plainChecklist(sections);
    REQUIRE(checklist.itemCount() == letters.size());
    return verdictOf(checklist, judgementsFrom(checklist, letters));
}

std::vector<std::string> itemsOf(const std::vector<Reason>& reasons)
{
    std::vector<std::string> items;
    for (const Reason& reason : reasons)
        items.push_back(reason.item);
    return items;
}

Severities randomSections(Dice& dice)
{
    Severities sections(1 + dice.below(8));
    for (auto& section : sections) {
        section.resize(1 + dice.below(12));
        for (Severity& severity : section)
            severity = static_cast<Severity>(dice.below(3));
    }
    return sections;
}

std::string randomLetters(const Severities& sections, Dice& dice, const char* from)
{
    std::string letters;
    for (const auto& section : sections) {
        for (std::size_t i = 0; i < section.size(); ++i)
            letters += from[dice.below(std::char_traits<char>::length(from))];
    }
    return letters;
}

/** The verdict said again, another way: by counting letters. */
struct Oracle
{
    int met = 0;
    int applicable = 0;
    bool isCriticalOpen = false;
    bool isOtherOpen = false;
    long double sumOfShares = 0;
    int sections = 0;

    Oracle(const Severities& severities, const std::string& letters)
    {
        std::size_t next = 0;
        for (const auto& section : severities) {
            const std::string part = letters.substr(next, section.size());
            const auto here
                = part.size() - static_cast<std::size_t>(std::count(part.begin(), part.end(), 'n'));
            const auto good = std::count(part.begin(), part.end(), 'm');
            for (std::size_t i = 0; i < section.size(); ++i) {
                const bool isOpen = part[i] == 'g' || part[i] == 'u';
                isCriticalOpen = isCriticalOpen || (isOpen && section[i] == C);
                isOtherOpen = isOtherOpen || (isOpen && section[i] != C);
            }
            if (here > 0) {
                sumOfShares += static_cast<long double>(good) / static_cast<long double>(here);
                ++sections;
            }
            met += static_cast<int>(good);
            applicable += static_cast<int>(here);
            next += section.size();
        }
    }
    [[nodiscard]] Readiness state() const
    {
        return isCriticalOpen ? Readiness::NotReady
            : isOtherOpen     ? Readiness::ReadyWithGaps
                              : Readiness::Ready;
    }
};

}

TEST_CASE("severity decides, not arithmetic")
{
    struct Case
    {
        const char* what;
        Severities sections;
        std::string letters;
        Readiness state;
        int index;
    };
    const std::vector<Severity> ten(10, M);
    std::vector<Severity> oneCritical = ten;
    oneCritical[3] = C;
    const std::string met50(50, 'm');
    for (const Case& c : std::vector<Case>{{"one critical gap of 60", {oneCritical, ten, ten, ten, ten, ten},
                                               "mmmgmmmmmm" + met50, Readiness::NotReady, 9833},
             {"one critical item of 60 not checked", {oneCritical, ten, ten, ten, ten, ten},
                 "mmmummmmmm" + met50, Readiness::NotReady, 9833},
             {"30 minor gaps", {std::vector<Severity>(30, M), {C, C}}, std::string(30, 'g') + "mm",
                 Readiness::ReadyWithGaps, 5000},
             {"nothing but minor gaps", {std::vector<Severity>(30, M)}, std::string(30, 'g'),
                 Readiness::ReadyWithGaps, 0},
             {"one major gap", {{A, C}}, "gm", Readiness::ReadyWithGaps, 5000},
             {"one minor item not checked", {{M, C}}, "um", Readiness::ReadyWithGaps, 5000},
             {"all met", {{C, A}, {M}}, "mmm", Readiness::Ready, 10000},
             {"a critical item that does not apply", {{C, M}}, "nm", Readiness::Ready, 10000},
             {"nothing applies", {{C, M}}, "nn", Readiness::Ready, 0}}) {
        CAPTURE(c.what);
        const Verdict verdict = verdictFor(c.sections, c.letters);
        CHECK(std::string(codeName(verdict.state)) == codeName(c.state));
        CHECK(verdict.index == c.index);
    }
}

TEST_CASE("adding met items never turns not ready into ready")
{
    Dice dice(8081);
    for (int i = 0; i < 500; ++i) {
        Severities sections = randomSections(dice);
        sections.front().front() = C;
        std::string letters = randomLetters(sections, dice, "mmmgnu");
        letters[0] = dice.coin() ? 'g' : 'u';
        REQUIRE(verdictFor(sections, letters).state == Readiness::NotReady);
        const std::size_t more = 1 + dice.below(200);
        sections.emplace_back(more, static_cast<Severity>(dice.below(3)));
        letters += std::string(more, 'm');
        REQUIRE(verdictFor(sections, letters).state == Readiness::NotReady);
    }
}

TEST_CASE("the index is the mean of sections, and the pooled share stands beside it")
{
    // Method: mean of the domain scores by tracer items, WHO Service Availability and Readiness Assessment,
    // reference manual 2015. The values are computed: 3/4, 8/10 and 2/6 give 62.8 %, pooled 13/20 = 65.0 %.
    const Severities sections{
        std::vector<Severity>(4, M), std::vector<Severity>(10, M), std::vector<Severity>(6, M)};
    const Verdict verdict = verdictFor(sections, "mmmgmmmmmmmmggmmgggg");
    CHECK(verdict.index == 6278);
    CHECK(verdict.met == 13);
    CHECK(verdict.applicable == 20);
}

TEST_CASE("sections where nothing applies are left out of the index")
{
    CHECK(verdictFor({{M, M}, {M, M}}, "mgnn").index == 5000);
    CHECK(verdictFor({{M, M}, {M, M}}, "mgng").index == 2500);
    CHECK(verdictFor({{M, M}, {}, {M}}, "mgm").index == 7500);
    const Verdict verdict = verdictFor({{M, M}, {M, M}}, "mgnn");
    REQUIRE(verdict.sections.size() == 2);
    CHECK(verdict.sections[1].applicable() == 0);
    CHECK(verdict.sections[1].doesNotApply == 2);
}

TEST_CASE("what was not checked counts as applicable and not met")
{
    const Verdict verdict = verdictFor({{C, A, M, M}}, "umgn");
    CHECK(verdict.met == 1);
    CHECK(verdict.applicable == 3);
    CHECK(verdict.index == 3333);
    CHECK(verdict.sections.front()
        == SectionTally{
            .section = "s0", .met = 1, .gaps = 1, .criticalGaps = 0, .notChecked = 1, .doesNotApply = 1});
    CHECK(verdictFor({{C, A, M, C}}, "gmgu").sections.front().criticalGaps == 1);
}

TEST_CASE("the index is exact where shares of thirds meet a half")
{
    // (1/3 + 1/3 + 1/3 + 1/8) / 4 = 0.28125: half up is 2813; shares rounded one by one would give 2812.
    const Severities sections{{M, M, M}, {M, M, M}, {M, M, M}, std::vector<Severity>(8, M)};
    CHECK(verdictFor(sections, "mggmggmggmggggggg").index == 2813);
}

TEST_CASE("reasons stand in the order of mending")
{
    const Severities sections{{M, C, A}, {C, C, M, A}};
    const Checklist checklist = plainChecklist(sections);
    std::vector<Judgement> judgements = judgementsFrom(checklist, "gguugug");
    judgements[1].reason->readyAt = at(24, 9); // warms up by itself
    // critical: i4 needs a hand, i1 mends itself, i3 not checked; major: i6 gap, i2 not checked; minor: i0
    // gap, i5.
    const std::vector<std::string> order{"i4", "i1", "i3", "i6", "i2", "i0", "i5"};
    CHECK(itemsOf(verdictOf(checklist, judgements).reasons) == order);
    judgements[2].reason->code = ReasonCode::StepsUnfinished;
    judgements[3].reason->code = ReasonCode::UsedSince;
    CHECK(itemsOf(verdictOf(checklist, judgements).reasons) == order);
}

TEST_CASE("equal reasons keep the order of the checklist")
{
    const std::vector<std::string> order{"i0", "i1", "i2", "i3"};
    CHECK(itemsOf(verdictFor({{C, C}, {C, C}}, "gggg").reasons) == order);
    CHECK(itemsOf(verdictFor({{M, M}, {M, M}}, "uuuu").reasons) == order);
}

TEST_CASE("a random round gets the verdict that counting gives")
{
    Dice dice(20261125);
    for (int i = 0; i < 3000; ++i) {
        const Severities sections = randomSections(dice);
        const std::string letters = randomLetters(sections, dice, dice.coin() ? "mmmmmmmmgnu" : "mmmmmmmmmn");
        CAPTURE(letters);
        const Oracle oracle(sections, letters);
        const Verdict verdict = verdictFor(sections, letters);
        REQUIRE(verdict.state == oracle.state());
        REQUIRE(verdict.met == oracle.met);
        REQUIRE(verdict.applicable == oracle.applicable);
        const long double mean
            = oracle.sections == 0 ? 0.0L : oracle.sumOfShares / oracle.sections * 10000.0L;
        REQUIRE(std::abs(mean - static_cast<long double>(verdict.index)) <= 0.5L + 1e-9L);
        const auto open
            = std::count_if(letters.begin(), letters.end(), [](char c) { return c == 'g' || c == 'u'; });
        REQUIRE(verdict.reasons.size() == static_cast<std::size_t>(open));
        REQUIRE(std::is_sorted(verdict.reasons.begin(), verdict.reasons.end(),
            [](const Reason& a, const Reason& b) { return a.severity < b.severity; }));
    }
}

TEST_CASE("answers are judged item by item and their letters follow the checklist")
{
    const Checklist checklist = sampleChecklist();
    const JudgeContext context{.reference = at(24, 8), .lastDay = date("2026-11-24"), .limits = {}};
    std::vector<Answer> answers = allMet();
    CHECK(outcomesOf(judgeAll(checklist, answers, context)) == "mmmmmmmmmm");
    answers[1] = DoesNotApply{};
    answers[2] = RunningSince{at(24, 7, 45)};
    answers[3] = StepsDone{"pp-", ""};
    answers[9] = NotChecked{};
    const auto judgements = judgeAll(checklist, answers, context);
    CHECK(outcomesOf(judgements) == "mngummmmmu");
    CHECK(verdictOf(checklist, judgements).state == Readiness::NotReady);
    answers.resize(4); // a round cut short: the rest was not looked at
    CHECK(outcomesOf(judgeAll(checklist, answers, context)) == "mnguuuuuuu");
}

TEST_CASE("every state of readiness has a code of its own that reads back")
{
    for (const Readiness state : {Readiness::NotReady, Readiness::ReadyWithGaps, Readiness::Ready})
        CHECK(readinessFromCode(codeName(state)) == state);
    CHECK_FALSE(readinessFromCode("almost").has_value());
}
