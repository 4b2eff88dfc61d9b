// SPDX-License-Identifier: MIT
#include "core/stats/overdispersion.h"

#include "tests/core/stats/near.h"

#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

using Values = std::vector<double>;

TEST_CASE("variance between units meets the published meta-analysis")
{
    // 13 BCG trials, log risk ratios (Colditz GA et al. (1994) JAMA 271:698-702; data dat.bcg of the R
    // package metafor). Published with it: tau^2 0.3088, mean -0.7141, SE 0.1787, Q 152.2330, I^2 92.12 %.
    const Values tpos = {4, 6, 3, 62, 33, 180, 8, 505, 29, 17, 186, 5, 27};
    const Values tneg = {119, 300, 228, 13536, 5036, 1361, 2537, 87886, 7470, 1699, 50448, 2493, 16886};
    const Values cpos = {11, 29, 11, 248, 47, 372, 10, 499, 45, 65, 141, 3, 29};
    const Values cneg = {128, 274, 209, 12619, 5761, 1079, 619, 87892, 7232, 1600, 27197, 2338, 17825};
    Values y;
    Values v;
    for (std::size_t i = 0; i < tpos.size(); ++i) {
        y.push_back(std::log(tpos[i] / (tpos[i] + tneg[i]) / (cpos[i] / (cpos[i] + cneg[i]))));
        v.push_back(1 / tpos[i] - 1 / (tpos[i] + tneg[i]) + 1 / cpos[i] - 1 / (cpos[i] + cneg[i]));
    }
    const auto r = randomEffects(y, v);
    REQUIRE(r);
    CHECK(isPrinted(r->tau2, 0.3088, 4));
    CHECK(isPrinted(r->mean, -0.7141, 4));
    CHECK(isPrinted(r->se, 0.1787, 4));
    CHECK(isPrinted(r->q, 152.2330, 4));
    CHECK(isPrinted(r->i2, 92.12, 2));
    // metafor 3.8-1 rma(yi, vi, method = "DL").
    CHECK(r->fixedMean == near(-0.4302851637));
    CHECK(r->q == near(152.2330081));
    CHECK(r->tau2 == near(0.3087602629));
    CHECK(r->mean == near(-0.7141172221));
    CHECK(r->se == near(0.1787420895));
    CHECK(r->i2 == near(92.11734685));
    CHECK(r->h2 == near(12.68608401));
    CHECK(r->interval.low == near(-1.06444528));
    CHECK(r->interval.high == near(-0.3637891641));
}

TEST_CASE("winsorising pulls in and does not delete")
{
    const auto pulled = winsorised(Values{-10, 1, 2, 3, 4, 5, 6, 7, 8, 9, 30}, 0.1);
    REQUIRE(pulled);
    CHECK(pulled->size() == 11);
    CHECK(pulled->front() == near(1));
    CHECK(pulled->back() == near(9));
    CHECK((*pulled)[5] == 5);
    CHECK(*winsorised(Values{3, 1, 2}, 0) == Values{3, 1, 2});
    CHECK(isUndefined(winsorised({})));
    CHECK(isRefused(winsorised(Values{1}, 0.5)));
}

TEST_CASE("spread between units needs units")
{
    CHECK(isUndefined(dispersionFactor({})));
    CHECK(*dispersionFactor(Values{1, -1, 2}) == near(2));
    CHECK(isUndefined(betweenVariance(2, Values{1})));
    CHECK(*betweenVariance(0.5, Values{1, 1, 1}) == 0.0);
    CHECK(isRefused(betweenVariance(-1, Values{1, 1})));
    CHECK(isRefused(betweenVariance(2, Values{1, 0})));
    CHECK(isRefused(randomEffects(Values{1, 2}, Values{1})));
    CHECK(isRefused(randomEffects(Values{1, 2}, Values{1, 1}, 1)));
    CHECK(isRefused(randomEffects(Values{1, none}, Values{1, 1})));
    CHECK(randomEffects(Values{1, 1}, Values{1, 2})->i2 == 0.0);
    CHECK(isRefused(dispersionFactor(Values{none})));
}
