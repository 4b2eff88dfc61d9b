// SPDX-License-Identifier: MIT
#include "core/stats/repeats.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>
#include <map>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

const std::map<std::string, std::vector<double>> chancesOf{{"fair coin", {0.5, 0.5}},
    {"5 equal values", std::vector<double>(5, 0.2)}, {"skew {.5,.3,.15,.05}", {0.5, 0.3, 0.15, 0.05}},
    {"10 equal values", std::vector<double>(10, 0.1)}};

std::vector<std::vector<double>> items(std::size_t count, double right)
{
    return std::vector<std::vector<double>>(count, {right, 1 - right});
}

}

TEST_CASE("the chance of a run of identical readings equals the exact chain")
{
    // Markov chain over value and run; twice computed, small cases by enumeration.
    const struct
    {
        const char* values;
        int n, length;
        double chance;
    } rows[] = {
        {"fair coin", 20, 5, 0.4584026337},
        {"fair coin", 30, 4, 0.8997932673},
        {"fair coin", 60, 6, 0.616047405},
        {"5 equal values", 20, 5, 0.02068748845},
        {"5 equal values", 30, 4, 0.1632152392},
        {"5 equal values", 60, 6, 0.01406315722},
        {"skew {.5,.3,.15,.05}", 20, 5, 0.2742620014},
        {"skew {.5,.3,.15,.05}", 30, 4, 0.7083918525},
        {"skew {.5,.3,.15,.05}", 60, 6, 0.3882393323},
        {"10 equal values", 20, 5, 0.001449455543},
        {"10 equal values", 30, 4, 0.0241753529},
        {"10 equal values", 60, 6, 0.0004959003444},
    };
    for (const auto& row : rows) {
        CAPTURE(row.values);
        CHECK(*identicalRunChance(chancesOf.at(row.values), row.n, row.length) == near(row.chance));
    }
    // By hand: 16 of 32 sequences of five tosses hold three alike.
    CHECK(*identicalRunChance(chancesOf.at("fair coin"), 5, 3) == near(0.5));
}

TEST_CASE("the chance of a run equals counting every sequence of small cases")
{
    const std::vector<double> chances{0.5, 0.3, 0.2};
    for (int n = 1; n <= 7; ++n) {
        for (int length = 2; length <= n; ++length) {
            double sum = 0;
            int total = 1;
            for (int i = 0; i < n; ++i)
                total *= 3;
            for (int code = 0; code < total; ++code) {
                double p = 1;
                int run = 0;
                int longest = 0;
                int before = -1;
                for (int i = 0, rest = code; i < n; ++i, rest /= 3) {
                    const int value = rest % 3;
                    p *= chances[static_cast<std::size_t>(value)];
                    run = value == before ? run + 1 : 1;
                    before = value;
                    longest = std::max(longest, run);
                }
                sum += longest >= length ? p : 0;
            }
            CAPTURE(n);
            CAPTURE(length);
            CHECK(*identicalRunChance(chances, n, length) == near(sum, 1e-11));
        }
    }
}

TEST_CASE("runs at the edges are certain or impossible")
{
    const std::vector<double> coin{0.5, 0.5};
    CHECK(*identicalRunChance(coin, 5, 1) == 1.0);
    CHECK(*identicalRunChance(coin, 5, 0) == 1.0);
    CHECK(*identicalRunChance(coin, 0, 0) == 0.0);
    CHECK(*identicalRunChance(coin, 5, 6) == 0.0);
    CHECK(*identicalRunChance(std::vector<double>{1.0}, 9, 9) == near(1));
    CHECK(isRefused(identicalRunChance(std::vector<double>{0.5, 0.4}, 5, 3)));
    CHECK(isRefused(identicalRunChance(std::vector<double>{1.5, -0.5}, 5, 3)));
    CHECK(isRefused(identicalRunChance({}, 5, 3)));
    CHECK(isRefused(identicalRunChance(coin, -1, 3)));
    CHECK(isRefused(identicalRunChance(coin, 100001, 3)));
    CHECK(longestIdenticalRun({}) == 0);
    CHECK(longestIdenticalRun(std::vector<std::string>{"26.1", "26.1", "26.2", "26.2", "26.2", "26.1"}) == 3);
}

TEST_CASE("equal rounds are judged against what the list gives by itself")
{
    // Formula of the repeat rate (Simpson 1949): a list that is nearly always right repeats itself.
    auto third = items(10, 0.9);
    third.push_back(std::vector<double>(8, 1.0 / 8));
    third.push_back(std::vector<double>(5, 0.2));
    const std::vector<std::vector<double>> lists[] = {items(20, 0.98), items(20, 0.80), third};
    const struct
    {
        std::int64_t rounds;
        double chance, expected, any;
    } rows[] = {
        {90, 0.4494277535, 1799.958153, 1},
        {90, 0.000446866969, 1.789702211, 0.832990104},
        {60, 0.003436200783, 6.082075387, 0.9977165673},
    };
    for (std::size_t i = 0; i < 3; ++i) {
        const auto q = sameRoundChance(lists[i]);
        REQUIRE(q);
        CHECK(*q == near(rows[i].chance));
        const auto r = repeatedRounds(rows[i].rounds, *q, 0);
        REQUIRE(r);
        CHECK(r->expected == near(rows[i].expected));
        CHECK(r->anyChance == near(rows[i].any));
        CHECK(r->chanceOfSeen == 1.0);
    }
    CHECK(repeatedRounds(90, *sameRoundChance(lists[1]), 1)->chanceOfSeen == near(0.832990104));
}

TEST_CASE("rounds that cannot be counted are refused")
{
    CHECK(isRefused(sameRoundChance({})));
    CHECK(isRefused(sameRoundChance(items(2, 1.5))));
    CHECK(isRefused(repeatedRounds(1, 0.5, 0)));
    CHECK(isRefused(repeatedRounds(10, 1.5, 0)));
    CHECK(isRefused(repeatedRounds(10, 0.5, 46)));
    CHECK(isRefused(repeatedRounds(10, 0.5, -1)));
    CHECK(equalPairs(std::vector<std::string>{"mmg", "mmm", "mmg", "mmg", "mmm"}) == 4);
    CHECK(equalPairs({}) == 0);
}

TEST_CASE("simulated honest rounds repeat as often as expected")
{
    Dice dice(103);
    double pairs = 0;
    constexpr int months = 400;
    for (int month = 0; month < months; ++month) {
        std::vector<std::string> rounds;
        for (int r = 0; r < 60; ++r) {
            std::string round;
            for (int item = 0; item < 12; ++item)
                round += dice.chance(0.85) ? 'm' : 'g';
            rounds.push_back(round);
        }
        pairs += static_cast<double>(equalPairs(rounds));
    }
    const auto expected = repeatedRounds(60, *sameRoundChance(items(12, 0.85)), 0)->expected;
    CHECK(pairs / months == doctest::Approx(expected).epsilon(0.05));
}
