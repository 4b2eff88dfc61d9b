// SPDX-License-Identifier: MIT
#include "core/stats/terminaldigit.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

using Counts = std::vector<std::int64_t>;

TEST_CASE("digit preference equals the chi-square of the counts")
{
    // Last digits of 189 birth weights in grams, data birthwt of the R package MASS (Hosmer & Lemeshow 1989);
    // R 4.2.2 chisq.test.
    const auto weights = digitPreference(Counts{33, 19, 20, 17, 22, 19, 13, 23, 12, 11});
    REQUIRE(weights);
    CHECK(weights->n == 189);
    CHECK(weights->df == 9);
    CHECK(weights->chiSquare == near(19.83597884));
    CHECK(weights->p == near(0.01895206216));
    CHECK(weights->v == near(0.107987792));
    CHECK(weights->favourite == 0);
    // Made data: room temperatures to a tenth.
    const auto rooms = digitPreference(Counts{62, 14, 18, 15, 17, 58, 16, 13, 19, 8});
    CHECK(rooms->chiSquare == near(138.8333333));
    CHECK(rooms->p == near(1.796110619e-25));
    CHECK(rooms->v == near(0.253524538));
    // A device that shows only .0 and .5.
    const auto halves = digitPreference(Counts{31, 19});
    CHECK(halves->df == 1);
    CHECK(halves->chiSquare == near(2.88));
    CHECK(halves->p == near(0.08968602177));
    CHECK(halves->v == near(0.24));
}

TEST_CASE("too few readings are not tested")
{
    CHECK(isUndefined(digitPreference(Counts{5, 5, 5, 5, 5, 5, 5, 5, 5, 4})));
    CHECK(digitPreference(Counts{5, 5, 5, 5, 5, 5, 5, 5, 5, 5})->chiSquare == 0.0);
    CHECK(isUndefined(digitPreference(Counts{0, 0})));
    CHECK(isRefused(digitPreference(Counts{50})));
    CHECK(isRefused(digitPreference(Counts{50, -1})));
    CHECK(digitPreference(Counts{100, 0, 0, 0, 0, 0, 0, 0, 0, 0})->v == near(1));
}

TEST_CASE("the last digit is taken from the text as it was written")
{
    CHECK(*lastDigit("36.7") == 7);
    CHECK(*lastDigit("36.70") == 0);
    CHECK(*lastDigit("-4,5") == 5);
    CHECK(*lastDigit("28") == 8);
    for (const char* bad : {"", "-", "36.", ".5", "3 6", "1e3", "36.7C", "nan", "1.2.3"}) {
        CAPTURE(bad);
        CHECK(isRefused(lastDigit(bad)));
    }
}

TEST_CASE("even digits are called preferred about as often as the level says")
{
    Dice dice(10);
    int called = 0;
    constexpr int rounds = 3000;
    for (int i = 0; i < rounds; ++i) {
        Counts counts(10);
        for (int n = 0; n < 200; ++n)
            ++counts[static_cast<std::size_t>(dice.whole(0, 9))];
        called += digitPreference(counts)->p < 0.05 ? 1 : 0;
    }
    CHECK(called > rounds * 0.035);
    CHECK(called < rounds * 0.065);
}
