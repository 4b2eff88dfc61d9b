// SPDX-License-Identifier: MIT
#include "core/stats/runchart.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

using Values = std::vector<double>;

void checkRunChart(const RunChart& c, double centre, int total, int useful, int run, int runLimit,
    int crossings, int crossingsLimit, bool runTooLong, bool crossingsTooFew)
{
    CHECK(c.centre == near(centre));
    CHECK(c.total == total);
    CHECK(c.useful == useful);
    CHECK(c.longestRun == run);
    CHECK(c.longestRunLimit == runLimit);
    CHECK(c.crossings == crossings);
    CHECK(c.crossingsLimit == crossingsLimit);
    CHECK(c.runTooLong == runTooLong);
    CHECK(c.crossingsTooFew == crossingsTooFew);
    CHECK((c.verdict == RunVerdict::Shift) == (runTooLong || crossingsTooFew));
}

/** n useful points: half below and half above the centre, in turn. */
RunChart alternating(int n)
{
    Values values;
    for (int i = 0; i < n; ++i)
        values.push_back(i % 2 == 0 ? -1 : 1);
    return *runChart(values, 0.0);
}

}

TEST_CASE("limits of runs and crossings and their false alarms meet the published table")
{
    // Limits: critical values printed with the R package qicharts2, after Anhoej & Olesen (2014) PLoS ONE
    // 9(11):e113825. Chances: exact for fair tosses; joint counts as in Wentzel-Larsen & Anhoej (2019) PLoS
    // ONE 14(10):e0223233. Eight digits, so 1e-7.
    const struct
    {
        int n, run, crossings;
        double runSignal, crossingSignal, either;
    } rows[] = {
        {10, 6, 2, 0.0390625, 0.01953125, 0.044921875},
        {11, 6, 2, 0.046875, 0.010742188, 0.048828125},
        {12, 7, 3, 0.0234375, 0.032714844, 0.04296875},
        {13, 7, 3, 0.02734375, 0.019287109, 0.036621094},
        {14, 7, 4, 0.03125, 0.046142578, 0.060546875},
        {15, 7, 4, 0.03515625, 0.028686523, 0.050537109},
        {16, 7, 4, 0.039031982, 0.017578125, 0.046722412},
        {17, 7, 5, 0.042892456, 0.038406372, 0.064697266},
        {18, 7, 5, 0.046737671, 0.024520874, 0.058532715},
        {19, 7, 6, 0.050567627, 0.048126221, 0.078804016},
        {20, 7, 6, 0.054382324, 0.031784058, 0.070583344},
        {21, 7, 6, 0.058181763, 0.020694733, 0.067154884},
        {22, 7, 7, 0.061965942, 0.039176941, 0.082687378},
        {23, 8, 7, 0.031147003, 0.026239395, 0.048001289},
        {24, 8, 8, 0.033069611, 0.046569824, 0.066239834},
        {25, 8, 8, 0.034988403, 0.031957328, 0.056053758},
        {26, 8, 8, 0.036903381, 0.021642625, 0.049966991},
        {27, 8, 9, 0.03881456, 0.037759349, 0.064165771},
        {28, 8, 9, 0.040721945, 0.026119493, 0.056927912},
        {29, 8, 10, 0.042625546, 0.043579277, 0.07227372},
        {30, 8, 10, 0.04452537, 0.030714173, 0.063974412},
        {31, 8, 11, 0.046421424, 0.049368573, 0.080331129},
        {32, 8, 11, 0.048313715, 0.035377773, 0.071061106},
        {33, 8, 11, 0.05020225, 0.02505123, 0.065170678},
        {34, 8, 12, 0.052087039, 0.040071656, 0.078152137},
        {35, 8, 12, 0.053968087, 0.028806336, 0.07147544},
        {36, 8, 13, 0.055845402, 0.044765539, 0.085219467},
        {37, 8, 13, 0.057718992, 0.032622668, 0.07781062},
        {38, 8, 14, 0.059588864, 0.049435875, 0.092241392},
        {39, 8, 14, 0.061455025, 0.036475694, 0.084154251},
        {40, 8, 14, 0.063317484, 0.026625957, 0.078842137},
        {41, 8, 15, 0.065176246, 0.040345234, 0.090488292},
        {42, 8, 15, 0.06703132, 0.029791944, 0.084608941},
        {43, 8, 16, 0.068882712, 0.044214773, 0.096798042},
        {44, 8, 16, 0.070730431, 0.032997017, 0.090385362},
        {45, 8, 17, 0.072574483, 0.048070877, 0.10307161},
        {46, 9, 17, 0.036724182, 0.03622713, 0.063872496},
        {47, 9, 17, 0.037673263, 0.027038016, 0.057194852},
        {48, 9, 18, 0.03862141, 0.039470347, 0.068336903},
        {49, 9, 18, 0.039568623, 0.029731688, 0.061174831},
        {50, 9, 19, 0.040514902, 0.042716567, 0.072795896},
        {51, 9, 19, 0.041460249, 0.032454324, 0.065173379},
        {52, 9, 20, 0.042404664, 0.045957275, 0.077241468},
        {53, 9, 20, 0.04334815, 0.035197111, 0.06918233},
        {54, 9, 21, 0.044290705, 0.049185324, 0.081666919},
        {55, 9, 21, 0.045232332, 0.037952365, 0.073194567},
        {56, 9, 21, 0.046173031, 0.029032073, 0.066861378},
        {57, 9, 22, 0.047112803, 0.040713407, 0.077203919},
        {58, 9, 22, 0.048051649, 0.03136834, 0.070505004},
        {59, 9, 23, 0.048989571, 0.04347445, 0.08120505},
        {60, 9, 23, 0.049926568, 0.033722306, 0.074156633},
    };
    for (const auto& row : rows) {
        CAPTURE(row.n);
        const auto chart = alternating(row.n);
        CHECK(chart.longestRunLimit == row.run);
        CHECK(chart.crossingsLimit == row.crossings);
        const auto risk = runChartRisk(row.n);
        REQUIRE(risk);
        CHECK(risk->run == near(row.runSignal, 1e-7));
        CHECK(risk->crossings == near(row.crossingSignal, 1e-7));
        CHECK(risk->either == near(row.either, 1e-7));
    }
    for (const auto& [n, run] : {std::pair{61, 9}, {64, 9}, {90, 9}, {91, 10}, {100, 10}, {120, 10}})
        CHECK(alternating(n).longestRunLimit == run);
    CHECK(alternating(100).crossingsLimit == 41);
    CHECK(alternating(120).crossingsLimit == 51);
}

TEST_CASE("runs and crossings of four series are counted as by hand")
{
    // Flow rates of NIST/SEMATECH e-Handbook 6.3.2.2.
    checkRunChart(*runChart(Values{49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1}), 51.25, 10,
        10, 4, 6, 3, 2, false, false);
    // Counts of NIST/SEMATECH e-Handbook 6.3.3.2.
    checkRunChart(*runChart(Values{12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20,
                      18, 24, 15, 9, 12, 7, 13, 9, 6}),
        10.5, 30, 30, 6, 8, 13, 10, false, false);
    // Made data with ties on the median, which are dropped and do not break a run.
    checkRunChart(*runChart(Values{90, 92, 90, 88, 85, 90, 91, 93, 94, 95, 90, 96, 93, 92, 91, 90, 94, 89, 90,
                      87, 90, 92, 90, 88}),
        90, 24, 16, 9, 7, 5, 4, true, false);
    // Made data with a shift, centre frozen at the median of the first ten.
    checkRunChart(
        *runChart(
            Values{78, 82, 80, 79, 83, 77, 81, 80, 84, 76, 88, 86, 85, 87, 90, 80, 89, 86, 91, 88, 85}, 80.0),
        80, 21, 18, 10, 7, 7, 5, true, false);
}

TEST_CASE("a run or crossings that just reach the limit are no signal")
{
    // 10 useful points: limit 6. Six above, then four below: run of 6, one crossing (limit 2).
    const auto reached = runChart(Values{1, 1, 1, 1, 1, 1, -1, 1, -1, -1}, 0.0);
    CHECK(reached->longestRun == 6);
    CHECK_FALSE(reached->runTooLong);
    CHECK(reached->crossings == 3);
    CHECK(reached->verdict == RunVerdict::NoShift);
    const auto passed = runChart(Values{1, 1, 1, 1, 1, 1, 1, -1, 1, -1}, 0.0);
    CHECK(passed->runTooLong);
    const auto few = runChart(Values{1, 1, 1, 1, 1, -1, -1, -1, -1, -1}, 0.0);
    CHECK(few->crossingsTooFew);
}

TEST_CASE("too few useful points carry no verdict and none at all is said")
{
    CHECK(isUndefined(runChart(Values(8, 100.0))));
    CHECK(isUndefined(runChart({})));
    CHECK(isRefused(runChart(Values{1, none})));
    CHECK(isRefused(runChart(Values{1, 2}, none)));
    const auto few = runChart(Values{1, 1, 1, 1, 1, 1, 1, 1, 1}, 0.0);
    CHECK(few->verdict == RunVerdict::TooFew);
    CHECK_FALSE(few->runTooLong);
    CHECK_FALSE(few->crossingsTooFew);
    CHECK(isRefused(runChartRisk(9)));
    CHECK(isRefused(runChartRisk(401)));
    CHECK(runChartRisk(400));
}

TEST_CASE("false alarms in simulation are as often as worked out")
{
    Dice dice(24);
    int signals = 0;
    constexpr int rounds = 5000;
    for (int i = 0; i < rounds; ++i) {
        Values values;
        for (int k = 0; k < 24; ++k)
            values.push_back(dice.chance(0.5) ? 1 : -1);
        signals += runChart(values, 0.0)->verdict == RunVerdict::Shift ? 1 : 0;
    }
    const double share = static_cast<double>(signals) / rounds;
    CHECK(share == doctest::Approx(runChartRisk(24)->either).epsilon(0.2));
}
