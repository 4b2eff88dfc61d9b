// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <optional>
#include <span>
#include <vector>

namespace cradlepost::stats {

/** One gap: how long it lasted until it was mended, or how long it has been open (censored). */
struct Duration
{
    double time = 0; ///< any unit, at least 0; an event at 0 counts
    bool ended = false; ///< false: still open, censored at `time`
};

struct SurvivalStep
{
    double time = 0;
    std::int64_t atRisk = 0;
    std::int64_t events = 0;
    double survival = 0; ///< share that lasts longer than `time`
    std::optional<double> se; ///< Greenwood; none once survival is 0
    std::optional<Interval> interval; ///< log-log; none once survival is 0
};

struct SurvivalCurve
{
    std::vector<SurvivalStep> steps; ///< one per time with an event; survival is 1 before the first
    std::int64_t n = 0;
    std::int64_t events = 0;
    double lastTime = 0; ///< of event or censoring
    /** Smallest time with survival <= 0.5 (to 1e-8); none: not reached. */
    std::optional<double> median;
    /** The same read off the limits of the curve; an end that is not reached is missing. */
    std::optional<double> medianLow;
    std::optional<double> medianHigh;
};

/**
 * Product-limit curve S = prod (1 - d_i/n_i) with Greenwood's variance S^2 sum d/(n(n - d)) and log-log
 * limits S^exp(+-z se), se = sqrt(sum d/(n(n - d)))/|ln S|. At one time events come before censoring. Where S
 * stays at exactly 0.5 the median is the earlier time.
 *
 * Edges: no durations is Undefined; all censored gives a curve without steps and no median. Sources: Kaplan
 * EL, Meier P (1958, from memory) J Am Stat Assoc 53:457-481; Brookmeyer R, Crowley J (1982, from memory)
 * Biometrics 38:29-41 (median limits); Collett D, Modelling Survival Data in Medical Research (log-log
 * limits).
 */
Result<SurvivalCurve> kaplanMeier(std::span<const Duration> durations, double level = usualLevel);

struct RestrictedMean
{
    double mean = 0; ///< unit of the times
    double se = 0;
};

/**
 * Mean time within a horizon: the area under the curve from 0 to `horizon`, with variance sum over event
 * times of (area from there to the horizon)^2 d/(n(n - d)). Undefined when the horizon lies beyond the last
 * time while the curve is still above 0; horizon above 0. Source: Irwin JO (1949, from memory) J Hygiene
 * 47:188-189; Klein JP, Moeschberger ML (2003) Survival Analysis, 4.5.
 */
Result<RestrictedMean> restrictedMean(const SurvivalCurve& curve, double horizon);

}
