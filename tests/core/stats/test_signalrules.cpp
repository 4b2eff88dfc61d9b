// SPDX-License-Identifier: MIT
#include "core/stats/signalrules.h"

#include "tests/core/stats/near.h"

#include <algorithm>
#include <set>
#include <string>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

using Series = std::vector<double>;
using Rows = std::vector<std::size_t>;

/** Positions flagged by one rule, from 1 as the handbooks count. */
Rows flagged(const Series& z, SignalRule rule, RuleSet rules = {})
{
    Rows rows;
    for (const auto& signal : findSignals(z, rules)) {
        if (signal.rule == rule)
            rows.push_back(signal.at + 1);
    }
    return rows;
}

}

// Rules of the Western Electric handbook (1956) and Nelson (1984); the three series are made, the flags were
// worked out by hand and twice by program.

TEST_CASE("the zone rules flag the point that completes the pattern")
{
    const Series z
        = {0.5, 2.2, -0.3, 2.4, 2.1, 0.2, -3.2, 0.1, 1.2, 1.5, 0.4, 1.3, 1.1, 0.9, 0.6, 0.2, 0.7, -0.1};
    CHECK(flagged(z, SignalRule::BeyondLimit) == Rows{7});
    CHECK(flagged(z, SignalRule::TwoOfThree) == Rows{4, 5});
    CHECK(flagged(z, SignalRule::FourOfFive) == Rows{13});
    CHECK(flagged(z, SignalRule::RunOnOneSide) == Rows{15, 16, 17});
    CHECK(flagged(z, SignalRule::Trend).empty());
}

TEST_CASE("a point on the centre ends a run and equal neighbours end a trend")
{
    const Series z = {-0.2, -0.5, -0.9, -1.1, -0.3, -0.4, -0.6, -0.1, -0.7, 0, -0.2, -0.3, 0.1, 0.2, 0.5, 0.9,
        1.4, 1.8, 1.8, 2.6};
    CHECK(flagged(z, SignalRule::BeyondLimit).empty());
    CHECK(flagged(z, SignalRule::TwoOfThree).empty());
    CHECK(flagged(z, SignalRule::FourOfFive) == Rows{20});
    CHECK(flagged(z, SignalRule::RunOnOneSide) == Rows{8, 9, 20});
    CHECK(flagged(z, SignalRule::Trend) == Rows{17, 18});
}

TEST_CASE("a point on the limit is no signal and a short first window may fire")
{
    const Series z = {2.5, 2.3, -2.1, 2.2, 3, 3.0001, -1.2, -1.4, -1.1, 0.8, -1.3, -1.6};
    CHECK(flagged(z, SignalRule::BeyondLimit) == Rows{6});
    CHECK(flagged(z, SignalRule::TwoOfThree) == Rows{2, 4, 5, 6});
    CHECK(flagged(z, SignalRule::FourOfFive) == Rows{5, 6, 11, 12});
    CHECK(flagged(z, SignalRule::RunOnOneSide).empty());
    CHECK(flagged(z, SignalRule::Trend).empty());
}

TEST_CASE("a signal says where its pattern began and on which side")
{
    const auto signals = findSignals(
        Series{0.5, 2.2, -0.3, 2.4, 2.1, 0.2, -3.2, 0.1, 1.2, 1.5, 0.4, 1.3, 1.1, 0.9, 0.6, 0.2, 0.7, -0.1},
        {});
    REQUIRE(!signals.empty());
    CHECK(signals.front() == Signal{.rule = SignalRule::TwoOfThree, .at = 3, .from = 1, .side = 1});
    const auto run = std::find_if(
        signals.begin(), signals.end(), [](const Signal& s) { return s.rule == SignalRule::RunOnOneSide; });
    REQUIRE(run != signals.end());
    CHECK(run->from == 7);
    CHECK(run->at == 14);
    const auto falling = findSignals(Series{0.6, 0.5, 0.4, 0.3, 0.2, 0.1}, {});
    REQUIRE(falling.size() == 1);
    CHECK(falling.front() == Signal{.rule = SignalRule::Trend, .at = 5, .from = 0, .side = -1});
}

TEST_CASE("each rule can be switched off and its length set")
{
    const Series z
        = {0.5, 2.2, -0.3, 2.4, 2.1, 0.2, -3.2, 0.1, 1.2, 1.5, 0.4, 1.3, 1.1, 0.9, 0.6, 0.2, 0.7, -0.1};
    RuleSet nine;
    nine.runLength = 9;
    CHECK(flagged(z, SignalRule::RunOnOneSide, nine) == Rows{16, 17});
    const RuleSet off{.beyondLimit = false,
        .twoOfThree = false,
        .fourOfFive = false,
        .runOnOneSide = false,
        .trend = false};
    CHECK(findSignals(z, off).empty());
    RuleSet only = off;
    only.beyondLimit = true;
    CHECK(findSignals(z, only).size() == 1);
}

TEST_CASE("alternation, hugging and mixture speak when they are asked")
{
    RuleSet rules;
    rules.alternating = rules.hugging = rules.mixture = true;
    Series saw;
    for (int i = 0; i < 14; ++i)
        saw.push_back(i % 2 == 0 ? 0.4 : -0.4);
    CHECK(flagged(saw, SignalRule::Alternating, rules) == Rows{14});
    CHECK(flagged(saw, SignalRule::Hugging, rules).empty());
    saw.push_back(0.3);
    CHECK(flagged(saw, SignalRule::Hugging, rules) == Rows{15});
    Series two{1.2, -1.3, 1.1, 1.4, -1.2, -1.5, 1.3, -1.1};
    CHECK(flagged(two, SignalRule::Mixture, rules) == Rows{8});
    CHECK(flagged(Series(8, 1.2), SignalRule::Mixture, rules).empty());
    CHECK(flagged(saw, SignalRule::Alternating).empty());
}

TEST_CASE("turning the series upside down keeps the signals and turns their side")
{
    Series z = {2.5, 2.3, -2.1, 2.2, 3, 3.0001, -1.2, -1.4, -1.1, 0.8, -1.3, -1.6};
    const auto up = findSignals(z, {});
    for (double& v : z)
        v = -v;
    auto down = findSignals(z, {});
    REQUIRE(down.size() == up.size());
    for (auto& signal : down)
        signal.side = -signal.side;
    CHECK(down == up);
}

TEST_CASE("rules with impossible lengths are refused and names are distinct")
{
    CHECK(isRefused(checkRules({.runLength = 1})));
    CHECK(isRefused(checkRules({.trendLength = 2})));
    CHECK(isRefused(checkRules({.width = 0})));
    CHECK(isRefused(checkRules({.width = none})));
    CHECK(checkRules({}));
    CHECK(findSignals({}, {}).empty());
    std::set<std::string> names;
    for (const auto rule :
        {SignalRule::BeyondLimit, SignalRule::TwoOfThree, SignalRule::FourOfFive, SignalRule::RunOnOneSide,
            SignalRule::Trend, SignalRule::Alternating, SignalRule::Hugging, SignalRule::Mixture})
        names.insert(ruleName(rule));
    CHECK(names.size() == 8);
    CHECK(names.count("two-of-three") == 1);
}
