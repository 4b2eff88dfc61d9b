// SPDX-License-Identifier: MIT
#include "core/stats/proportion.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <cmath>

namespace cradlepost::stats {

namespace {

Result<void> checkEstimable(Tally tally, double level)
{
    CRADLEPOST_TRY(checkTally(tally));
    CRADLEPOST_TRY(checkLevel(level));
    if (tally.n == 0)
        return undefined("nothing observed (n = 0), so there is no proportion");
    return {};
}

/** 1 - tail^(1/n) without cancellation. */
double upperAtNone(double tail, double n) { return -std::expm1(std::log(tail) / n); }

}

Result<Interval> wilson(Tally tally, double level)
{
    CRADLEPOST_TRY(checkEstimable(tally, level));
    const double n = static_cast<double>(tally.n);
    const double x = static_cast<double>(tally.x);
    const double z = normalWidth(level);
    const double zz = z * z;
    const double half = z * std::sqrt(x * ((n - x) / n) + zz / 4);
    Interval interval{.low = (x + zz / 2 - half) / (n + zz), .high = (x + zz / 2 + half) / (n + zz)};
    if (tally.x == 0)
        interval = {.low = 0, .high = zz / (n + zz)};
    if (tally.x == tally.n)
        interval = {.low = n / (n + zz), .high = 1};
    return interval;
}

Result<Interval> clopperPearson(Tally tally, double level)
{
    CRADLEPOST_TRY(checkEstimable(tally, level));
    const double n = static_cast<double>(tally.n);
    const double x = static_cast<double>(tally.x);
    const double tail = (1 - level) / 2;
    Interval interval;
    if (tally.x > 0)
        interval.low = tally.x == tally.n ? std::exp(std::log(tail) / n) : betaQuantile(tail, x, n - x + 1);
    if (tally.x == 0)
        interval.high = upperAtNone(tail, n);
    else
        interval.high = tally.x == tally.n ? 1 : betaUpperQuantile(tail, x + 1, n - x);
    return interval;
}

Result<double> clopperPearsonUpper(Tally tally, double level)
{
    CRADLEPOST_TRY(checkEstimable(tally, level));
    if (tally.x == tally.n)
        return 1.0;
    const double n = static_cast<double>(tally.n);
    const double x = static_cast<double>(tally.x);
    return tally.x == 0 ? upperAtNone(1 - level, n) : betaUpperQuantile(1 - level, x + 1, n - x);
}

}
