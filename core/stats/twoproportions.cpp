// SPDX-License-Identifier: MIT
#include "core/stats/twoproportions.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"
#include "core/stats/proportion.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

double share(Tally t) { return static_cast<double>(t.x) / static_cast<double>(t.n); }

Result<void> checkBoth(Tally first, Tally second)
{
    CRADLEPOST_TRY(checkTally(first));
    CRADLEPOST_TRY(checkTally(second));
    if (first.n == 0 || second.n == 0)
        return undefined("nothing observed in one of the groups, so there is nothing to compare");
    return {};
}

/** Sum of the terms no larger than `cap`, walking from k towards `end` by recurrence. */
double tailBelow(const Hypergeometric& h, std::int64_t k, int step, double cap)
{
    const auto r = [](std::int64_t v) { return static_cast<double>(v); };
    double term = h.pmf(k);
    double sum = 0;
    const auto end = step > 0 ? h.most() : h.least();
    while (true) {
        if (term <= cap)
            sum += term;
        if (k == end || (term <= cap && term < sum * 1e-18))
            return sum;
        if (step > 0)
            term *= r(h.right - k) * r(h.sample - k) / (r(k + 1) * r(h.lot - h.right - h.sample + k + 1));
        else
            term *= r(k) * r(h.lot - h.right - h.sample + k) / (r(h.right - k + 1) * r(h.sample - k + 1));
        k += step;
    }
}

}

Result<Difference> newcombeDifference(Tally first, Tally second, double level)
{
    CRADLEPOST_TRY(checkBoth(first, second));
    const auto a = wilson(first, level);
    if (!a)
        return tl::unexpected(a.error());
    const auto b = wilson(second, level);
    if (!b)
        return tl::unexpected(b.error());
    const double p1 = share(first);
    const double p2 = share(second);
    const double d = p1 - p2;
    return Difference{.estimate = d,
        .interval = {.low = std::max(-1.0, d - std::hypot(p1 - a->low, b->high - p2)),
            .high = std::min(1.0, d + std::hypot(a->high - p1, p2 - b->low))}};
}

Result<ProportionTest> pooledTest(Tally first, Tally second)
{
    CRADLEPOST_TRY(checkBoth(first, second));
    const auto events = first.x + second.x;
    const auto all = first.n + second.n;
    if (events == 0 || events == all)
        return undefined("all or none of both groups are events, so the groups cannot be tested");
    const double pooled = static_cast<double>(events) / static_cast<double>(all);
    const double variance = pooled * (static_cast<double>(all - events) / static_cast<double>(all))
        * (1 / static_cast<double>(first.n) + 1 / static_cast<double>(second.n));
    const double z = (share(first) - share(second)) / std::sqrt(variance);
    return ProportionTest{.z = z, .chiSquare = z * z, .p = normalTwoSided(z)};
}

Result<double> fisherExact(Tally first, Tally second)
{
    CRADLEPOST_TRY(checkBoth(first, second));
    const Hypergeometric h{.lot = first.n + second.n, .right = first.x + second.x, .sample = first.n};
    const double cap = h.pmf(first.x) * (1 + 1e-7);
    const auto mode = std::clamp(static_cast<std::int64_t>((static_cast<double>(h.sample) + 1)
                                     * (static_cast<double>(h.right) + 1) / (static_cast<double>(h.lot) + 2)),
        h.least(), h.most());
    double p = tailBelow(h, mode, -1, cap);
    if (mode < h.most())
        p += tailBelow(h, mode + 1, +1, cap);
    return std::min(1.0, p);
}

}
