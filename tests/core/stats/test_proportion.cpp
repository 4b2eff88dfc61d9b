// SPDX-License-Identifier: MIT
#include "core/stats/proportion.h"

#include "core/stats/distributions.h"
#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

struct Row
{
    std::int64_t x, n;
    double wilsonLow, wilsonHigh, exactLow, exactHigh;
};

struct LevelRow
{
    std::int64_t x, n;
    double level, wilsonLow, wilsonHigh, exactLow, exactHigh;
};

}

TEST_CASE("score and exact intervals meet the published comparison of methods")
{
    // Newcombe RG (1998) Statistics in Medicine 17:857-872, Table I, methods 3 and 5; four decimals as
    // printed.
    const Row rows[] = {{81, 263, 0.2553, 0.3662, 0.2527, 0.3676}, {15, 148, 0.0624, 0.1605, 0.0578, 0.1617},
        {0, 20, 0.0000, 0.1611, 0.0000, 0.1684}, {1, 29, 0.0061, 0.1718, 0.0009, 0.1776}};
    for (const auto& row : rows) {
        CAPTURE(row.x);
        const auto w = wilson({row.x, row.n});
        const auto e = clopperPearson({row.x, row.n});
        REQUIRE(w);
        REQUIRE(e);
        CHECK(isPrinted(w->low, row.wilsonLow, 4));
        CHECK(isPrinted(w->high, row.wilsonHigh, 4));
        CHECK(isPrinted(e->low, row.exactLow, 4));
        CHECK(isPrinted(e->high, row.exactHigh, 4));
    }
}

TEST_CASE("score and exact intervals equal the reference over sizes and edges")
{
    // R 4.2.2 prop.test(correct = FALSE) and binom.test, x = 0 and x = n set exact.
    const Row rows[] = {
        {81, 263, 0.2552885199, 0.366209577, 0.2527367456, 0.3676219226},
        {15, 148, 0.06238639953, 0.1604872417, 0.05784401008, 0.1616504903},
        {0, 20, 0, 0.1611251581, 0, 0.168433471},
        {1, 29, 0.006113214293, 0.1717552188, 0.0008726468836, 0.1776442955},
        {0, 1, 0, 0.7934506856, 0, 0.975},
        {1, 1, 0.2065493144, 1, 0.025, 1},
        {0, 2, 0, 0.6576197725, 0, 0.841886117},
        {1, 2, 0.09453120573, 0.9054687943, 0.01257911709, 0.9874208829},
        {2, 2, 0.3423802275, 1, 0.158113883, 1},
        {0, 3, 0, 0.5614970318, 0, 0.7075982262},
        {3, 3, 0.4385029682, 1, 0.2924017738, 1},
        {5, 10, 0.2365930905, 0.7634069095, 0.1870860284, 0.8129139716},
        {10, 10, 0.7224672001, 1, 0.6915028922, 1},
        {19, 20, 0.7638688066, 0.9911185512, 0.7512672372, 0.9987349105},
        {29, 30, 0.8332960901, 0.9940914096, 0.8278305444, 0.9991564291},
        {45, 50, 0.7863976856, 0.9565242351, 0.7818646336, 0.9667249064},
        {1, 1000, 0.0001765463706, 0.005642558598, 2.531748749e-05, 0.00555892428},
        {999, 1000, 0.9943574414, 0.9998234536, 0.9944410757, 0.9999746825},
        {500000, 1000000, 0.4990200199, 0.5009799801, 0.4990195192, 0.5009804808},
    };
    for (const auto& row : rows) {
        CAPTURE(row.x);
        CAPTURE(row.n);
        const auto w = wilson({row.x, row.n});
        const auto e = clopperPearson({row.x, row.n});
        REQUIRE(w);
        REQUIRE(e);
        CHECK(w->low == near(row.wilsonLow));
        CHECK(w->high == near(row.wilsonHigh));
        CHECK(e->low == near(row.exactLow));
        CHECK(e->high == near(row.exactHigh));
    }
}

TEST_CASE("other levels than 95 % use the full normal quantile")
{
    // R 4.2.2 prop.test(correct = FALSE) and binom.test.
    const LevelRow rows[] = {
        {0, 12, 0.9, 0, 0.1839811947, 0, 0.2209221919},
        {0, 12, 0.99, 0, 0.3560468696, 0, 0.3569459166},
        {0, 12, 0.998, 0, 0.443143455, 0, 0.4376586748},
        {8, 10, 0.9, 0.5407928057, 0.9314420123, 0.4930986989, 0.9632285621},
        {8, 10, 0.99, 0.4008186965, 0.9598688475, 0.3517988337, 0.9891494906},
        {8, 10, 0.998, 0.3378114799, 0.9691011799, 0.281543382, 0.9952255407},
        {19, 19, 0.9, 0.8753524205, 1, 0.8541314967, 1},
        {19, 19, 0.99, 0.7411771655, 1, 0.7566467276, 1},
        {19, 19, 0.998, 0.6655099472, 1, 0.6951927962, 1},
    };
    for (const auto& row : rows) {
        CAPTURE(row.x);
        CAPTURE(row.level);
        const auto w = wilson({row.x, row.n}, row.level);
        const auto e = clopperPearson({row.x, row.n}, row.level);
        REQUIRE(w);
        REQUIRE(e);
        CHECK(w->low == near(row.wilsonLow));
        CHECK(w->high == near(row.wilsonHigh));
        CHECK(e->low == near(row.exactLow));
        CHECK(e->high == near(row.exactHigh));
    }
}

TEST_CASE("none and all put an end at exactly 0 and exactly 1")
{
    for (const std::int64_t n : {1, 2, 3, 7, 49, 1000, 123456}) {
        CAPTURE(n);
        CHECK(wilson({0, n})->low == 0.0);
        CHECK(wilson({n, n})->high == 1.0);
        CHECK(clopperPearson({0, n})->low == 0.0);
        CHECK(clopperPearson({n, n})->high == 1.0);
    }
}

TEST_CASE("the rule of three is the one-sided limit, not the two-sided one")
{
    // 1 - 0.05^(1/n) against 1 - 0.025^(1/n), closed forms.
    CHECK(*clopperPearsonUpper({0, 100}) == near(0.02951304961));
    CHECK(clopperPearson({0, 100})->high == near(0.03621669265));
    CHECK(*clopperPearsonUpper({7, 7}) == 1.0);
}

TEST_CASE("a proportion without observation or with an impossible count says so")
{
    CHECK(isUndefined(wilson({0, 0})));
    CHECK(isUndefined(clopperPearson({0, 0})));
    CHECK(isUndefined(clopperPearsonUpper({0, 0})));
    for (const Tally bad : {Tally{-1, 5}, Tally{6, 5}, Tally{0, -1}}) {
        CHECK(isRefused(wilson(bad)));
        CHECK(isRefused(clopperPearson(bad)));
        CHECK(isRefused(clopperPearsonUpper(bad)));
    }
    for (const double level : {0.0, 1.0, -0.5, 2.0, none}) {
        CHECK(isRefused(wilson({1, 2}, level)));
        CHECK(isRefused(clopperPearson({1, 2}, level)));
    }
}

TEST_CASE("the exact interval covers at least its level for every true share")
{
    // Exact coverage: the chance of all counts whose interval holds the true share.
    for (const std::int64_t n : {5, 12, 40}) {
        for (int step = 1; step < 40; ++step) {
            const double p = step / 40.0;
            const Binomial count{.n = n, .p = p};
            double exact = 0;
            for (std::int64_t x = 0; x <= n; ++x) {
                const auto e = *clopperPearson({x, n});
                exact += e.low <= p && p <= e.high ? count.pmf(x) : 0;
            }
            CAPTURE(n);
            CAPTURE(p);
            CHECK(exact >= 0.95 - 1e-12);
        }
    }
}

TEST_CASE("the score interval holds its level on average in simulation")
{
    Dice dice(1927);
    for (const double p : {0.1, 0.5, 0.85}) {
        int covered = 0;
        constexpr int rounds = 4000;
        for (int i = 0; i < rounds; ++i) {
            const auto w = *wilson({dice.events(60, p), 60});
            covered += w.low <= p && p <= w.high ? 1 : 0;
        }
        CAPTURE(p);
        // Three standard errors of the simulation and the ripple of a discrete count.
        CHECK(covered > rounds * 0.925);
        CHECK(covered < rounds * 0.975);
    }
}

TEST_CASE("an interval narrows with n, widens with the level and mirrors when events and others swap")
{
    Dice dice(7);
    for (int i = 0; i < 500; ++i) {
        const auto n = dice.whole(1, 400);
        const auto x = dice.whole(0, n);
        for (const auto method : {wilson, clopperPearson}) {
            const auto one = *method({x, n}, 0.95);
            const auto more = *method({10 * x, 10 * n}, 0.95);
            const auto wide = *method({x, n}, 0.99);
            const auto mirror = *method({n - x, n}, 0.95);
            const double p = static_cast<double>(x) / static_cast<double>(n);
            CHECK(more.high - more.low < one.high - one.low);
            CHECK(wide.low <= one.low);
            CHECK(wide.high >= one.high);
            CHECK(one.low <= p);
            CHECK(one.high >= p);
            CHECK(std::abs(mirror.low - (1 - one.high)) < 1e-12);
        }
    }
}
