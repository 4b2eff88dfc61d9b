// SPDX-License-Identifier: MIT
#include "core/stats/survival.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"
#include "tests/core/stats/survivaldata.h"

#include <algorithm>
#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

struct Step
{
    double time;
    std::int64_t atRisk, events;
    double survival, se, low, high;
};

void checkSteps(const SurvivalCurve& curve, std::span<const Step> steps)
{
    REQUIRE(curve.steps.size() == steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const auto& step = curve.steps[i];
        CAPTURE(steps[i].time);
        CHECK(step.time == steps[i].time);
        CHECK(step.atRisk == steps[i].atRisk);
        CHECK(step.events == steps[i].events);
        CHECK(step.survival == near(steps[i].survival));
        if (std::isnan(steps[i].se)) {
            CHECK_FALSE(step.se);
            CHECK_FALSE(step.interval);
            continue;
        }
        CHECK(*step.se == near(steps[i].se));
        CHECK(step.interval->low == near(steps[i].low));
        CHECK(step.interval->high == near(steps[i].high));
    }
}

}

// Steps below: R package survival 3.5-3, survfit(conf.type = "log-log").

TEST_CASE("the curve of the remission trial meets the textbooks")
{
    // Freireich EJ et al. (1963) Blood 21:699-716. Survival as printed by Cox DR, Oakes D (1984) p. 49,
    // standard errors by Klein & Moeschberger (2003) Table 4.1B.
    const double survival[] = {0.8571, 0.8067, 0.7529, 0.6902, 0.6275, 0.5378, 0.4482};
    const double errors[] = {0.076, 0.087, 0.096, 0.107, 0.114, 0.128, 0.135};
    const auto curve = kaplanMeier(remissionTreated());
    REQUIRE(curve);
    for (std::size_t i = 0; i < curve->steps.size(); ++i) {
        CHECK(isPrinted(curve->steps[i].survival, survival[i], 4));
        CHECK(isPrinted(*curve->steps[i].se, errors[i], 3));
    }
    const Step steps[] = {
        {6, 21, 3, 0.8571428571, 0.07636035483, 0.6197179553, 0.9515517476},
        {7, 17, 1, 0.8067226891, 0.08693528518, 0.5631465646, 0.9228090192},
        {10, 15, 1, 0.7529411765, 0.09634965299, 0.5031995108, 0.8893618352},
        {13, 12, 1, 0.6901960784, 0.1068147078, 0.4316102225, 0.8490659633},
        {16, 11, 1, 0.6274509804, 0.1140538653, 0.367510856, 0.8049121895},
        {22, 7, 1, 0.5378151261, 0.1282337517, 0.2677789368, 0.7467907176},
        {23, 6, 1, 0.4481792717, 0.1345914568, 0.188052006, 0.6801426285},
    };
    checkSteps(*curve, steps);
    CHECK(curve->n == 21);
    CHECK(curve->events == 9);
    CHECK(*curve->median == 23);
    CHECK(*curve->medianLow == 13);
    CHECK_FALSE(curve->medianHigh);
    CHECK(curve->lastTime == 35);
}

TEST_CASE("a curve that falls to 0 has no limits at its last step")
{
    const auto curve = kaplanMeier(remissionControl());
    const Step steps[] = {
        {1, 21, 2, 0.9047619048, 0.06405644849, 0.6700458822, 0.975294149},
        {2, 19, 2, 0.8095238095, 0.08568908675, 0.5689050599, 0.9238888286},
        {3, 17, 1, 0.7619047619, 0.09294286409, 0.5193914153, 0.8932571098},
        {4, 16, 2, 0.6666666667, 0.1028689, 0.4253504356, 0.8250440088},
        {5, 14, 2, 0.5714285714, 0.1079898494, 0.3379769539, 0.7492407099},
        {8, 12, 4, 0.380952381, 0.1059711696, 0.1830665488, 0.5777886777},
        {11, 8, 2, 0.2857142857, 0.09858079419, 0.1165613264, 0.481819648},
        {12, 6, 2, 0.1904761905, 0.08568908675, 0.05948170136, 0.3774348906},
        {15, 4, 1, 0.1428571429, 0.07636035483, 0.03565735519, 0.3211615747},
        {17, 3, 1, 0.09523809524, 0.06405644849, 0.01625926021, 0.261249982},
        {22, 2, 1, 0.04761904762, 0.04647143205, 0.003324463043, 0.1970449057},
        {23, 1, 1, 0, none, none, none},
    };
    checkSteps(*curve, steps);
    CHECK(*curve->median == 8);
    CHECK(*curve->medianLow == 4);
    CHECK(*curve->medianHigh == 11);
    const Step small[] = {
        {2, 5, 1, 0.8, 0.1788854382, 0.2038092633, 0.9691797889},
        {3, 4, 1, 0.6, 0.219089023, 0.125730183, 0.8817564074},
        {8, 1, 1, 0, none, none, none},
    };
    const auto made = kaplanMeier(durations({2, 3, 3, 5, 8}, {1, 1, 0, 0, 1}));
    checkSteps(*made, small);
    CHECK(*made->median == 8);
    CHECK(*made->medianLow == 2);
    CHECK_FALSE(made->medianHigh);
}

TEST_CASE("events come before censoring at one time")
{
    // Miller RG (1997) Survival Analysis: acute myelogenous leukaemia, data aml of the R package survival.
    const Step maintained[] = {
        {9, 11, 1, 0.9090909091, 0.0866784172, 0.5080802058, 0.9866738227},
        {13, 10, 1, 0.8181818182, 0.1162912998, 0.4474286147, 0.9511622286},
        {18, 8, 1, 0.7159090909, 0.1396649706, 0.3501903859, 0.8990239742},
        {23, 7, 1, 0.6136363636, 0.152632331, 0.26575204, 0.8352992433},
        {31, 5, 1, 0.4909090909, 0.1641932672, 0.1673309098, 0.7533997904},
        {34, 4, 1, 0.3681818182, 0.1626688858, 0.09282957494, 0.6570408324},
        {48, 2, 1, 0.1840909091, 0.1534927458, 0.01173848012, 0.5250148427},
    };
    const Step without[] = {
        {5, 12, 2, 0.8333333333, 0.1075828707, 0.4817149422, 0.9555093657},
        {8, 10, 2, 0.6666666667, 0.1360827635, 0.3370189325, 0.8597117991},
        {12, 8, 1, 0.5833333333, 0.1423187606, 0.2701389241, 0.8009401923},
        {23, 6, 1, 0.4861111111, 0.1481300626, 0.1918766196, 0.7296715698},
        {27, 5, 1, 0.3888888889, 0.1469861839, 0.1262720122, 0.6498174083},
        {30, 4, 1, 0.2916666667, 0.1387151691, 0.07240160891, 0.5608860527},
        {33, 3, 1, 0.1944444444, 0.1218745054, 0.03119864293, 0.4614294762},
        {43, 2, 1, 0.09722222222, 0.09186636497, 0.005746305696, 0.3489038611},
        {45, 1, 1, 0, none, none, none},
    };
    const auto first = kaplanMeier(leukaemiaMaintained());
    const auto second = kaplanMeier(leukaemiaOther());
    checkSteps(*first, maintained);
    checkSteps(*second, without);
    CHECK(*first->median == 31);
    CHECK(*first->medianLow == 13);
    CHECK_FALSE(first->medianHigh);
    CHECK(*second->median == 23);
    CHECK(*second->medianLow == 5);
    CHECK(*second->medianHigh == 33);
}

TEST_CASE("a plateau at one half gives the earlier time, and a median may not be reached")
{
    CHECK(*kaplanMeier(durations({1, 2, 3, 4}, {1, 1, 1, 1}))->median == 2);
    const auto open = kaplanMeier(durations({4, 6, 9, 12, 15}, {1, 1, 0, 0, 0}));
    CHECK(open->steps.back().survival == near(0.6));
    CHECK_FALSE(open->median);
    const auto censored = kaplanMeier(durations({4, 6}, {0, 0}));
    REQUIRE(censored);
    CHECK(censored->steps.empty());
    CHECK(censored->events == 0);
    CHECK_FALSE(censored->median);
    CHECK(censored->lastTime == 6);
    CHECK(kaplanMeier(durations({0, 5}, {1, 0}))->steps.front().time == 0);
}

TEST_CASE("the restricted mean is the area under the curve")
{
    // R package survival 3.5-3, survmean(fit, rmean = 35) and 20, remission trial.
    const auto curve = *kaplanMeier(remissionTreated());
    CHECK(restrictedMean(curve, 35)->mean == near(23.28739495798));
    CHECK(restrictedMean(curve, 35)->se == near(2.82746762337));
    CHECK(restrictedMean(curve, 20)->mean == near(16.11652661064));
    CHECK(restrictedMean(curve, 20)->se == near(1.25156019601));
    CHECK(isUndefined(restrictedMean(curve, 36)));
    CHECK(isRefused(restrictedMean(curve, 0)));
    CHECK(isRefused(restrictedMean(curve, none)));
    // Without censoring and a far horizon it is the plain mean.
    const auto control = *kaplanMeier(remissionControl());
    CHECK(restrictedMean(control, 100)->mean == near(182.0 / 21));
    const auto censored = *kaplanMeier(durations({4, 6}, {0, 0}));
    CHECK(restrictedMean(censored, 5)->mean == near(5));
    CHECK(restrictedMean(censored, 5)->se == 0.0);
}

TEST_CASE("a curve that cannot be drawn says why")
{
    CHECK(isUndefined(kaplanMeier({})));
    CHECK(isRefused(kaplanMeier(durations({-1}, {1}))));
    CHECK(isRefused(kaplanMeier(durations({none}, {1}))));
    CHECK(isRefused(kaplanMeier(durations({1}, {1}), 1)));
}

TEST_CASE("a curve never rises, keeps within its limits and does not care for the order of the rows")
{
    Dice dice(1958);
    for (int i = 0; i < 200; ++i) {
        std::vector<Duration> list;
        for (auto n = dice.whole(1, 60); n > 0; --n)
            list.push_back({static_cast<double>(dice.whole(0, 30)), dice.chance(0.7)});
        const auto curve = *kaplanMeier(list);
        double before = 1;
        for (const auto& step : curve.steps) {
            CHECK(step.survival < before);
            before = step.survival;
            if (step.interval) {
                CHECK(step.interval->low <= step.survival);
                CHECK(step.interval->high >= step.survival);
                CHECK(step.interval->low >= 0);
                CHECK(step.interval->high <= 1);
            }
        }
        std::vector<Duration> reversed(list.rbegin(), list.rend());
        CHECK(kaplanMeier(reversed)->steps.size() == curve.steps.size());
        if (!curve.steps.empty())
            CHECK(kaplanMeier(reversed)->steps.back().survival == curve.steps.back().survival);
    }
}

TEST_CASE("log-log limits hold their level in simulation with open gaps")
{
    Dice dice(2003);
    int covered = 0;
    int judged = 0;
    for (int i = 0; i < 2000; ++i) {
        std::vector<Duration> list;
        for (int n = 0; n < 50; ++n) {
            const double lasts = -std::log(1 - dice.share()) * 10;
            const double open = dice.share() * 40;
            list.push_back({std::min(lasts, open), lasts <= open});
        }
        const auto curve = *kaplanMeier(list);
        const SurvivalStep* at = nullptr;
        for (const auto& step : curve.steps) {
            if (step.time <= 7)
                at = &step;
        }
        if (at == nullptr || !at->interval)
            continue;
        ++judged;
        const double truth = std::exp(-0.7);
        covered += at->interval->low <= truth && truth <= at->interval->high ? 1 : 0;
    }
    CHECK(judged > 1990);
    CHECK(covered > 0.93 * judged);
    CHECK(covered < 0.975 * judged);
}
