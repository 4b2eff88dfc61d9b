// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <optional>
#include <span>
#include <vector>

/**
 * Agreement of two observers who put the same n things into q categories. No unit. Intervals are estimate +-
 * z se and are not cut, except that none of AC1 passes 1; an se of exactly 0 has no interval.
 *
 * Edges: an empty table is Undefined; q counts the categories of the form, also those that nobody used.
 */
namespace cradlepost::stats {

/** Counts by rows: first observer in rows, second in columns, q by q, q >= 2. */
struct AgreementTable
{
    std::size_t q = 0;
    std::vector<std::int64_t> counts;
};

struct Agreement
{
    double observed = 0; ///< share of (weighted) agreement
    double byChance = 0; ///< the same if both had judged at random with their own shares
    double estimate = 0;
    double se = 0;
    std::optional<Interval> interval;
    std::optional<double> seIfNone; ///< for testing an estimate of 0 (kappa only)
    std::optional<double> z; ///< estimate/seIfNone
};

enum class KappaWeights {
    None, ///< only the same category agrees
    Linear, ///< 1 - |i - j|/(q - 1)
    Quadratic, ///< 1 - ((i - j)/(q - 1))^2
};

/**
 * Kappa = (po - pe)/(1 - pe). Undefined when both observers used one and the same category throughout (pe =
 * 1). Sources: Cohen J (1960, from memory) Educational and Psychological Measurement 20:37-46; standard
 * errors of Fleiss JL, Cohen J, Everitt BS (1969) Psychological Bulletin 72:323-327.
 */
Result<Agreement> kappa(
    const AgreementTable& table, KappaWeights weights = KappaWeights::None, double level = usualLevel);

/**
 * First-order agreement coefficient: chance agreement sum pi_k(1 - pi_k)/(q - 1), pi_k the mean of both
 * shares. It does not fall when nearly everything is in one category. Source: Gwet KL (2008) British J
 * Mathematical and Statistical Psychology 61:29-48.
 */
Result<Agreement> ac1(const AgreementTable& table, double level = usualLevel);

struct AdjustedKappa
{
    Agreement agreement; ///< (q po - 1)/(q - 1)
    std::optional<double> biasIndex; ///< (b - c)/n, two categories only
    std::optional<double> prevalenceIndex; ///< (a - d)/n, two categories only
};

/** Prevalence- and bias-adjusted kappa. Source: Byrt T, Bishop J, Carlin JB (1993) J Clin Epidemiol
 * 46:423-429. */
Result<AdjustedKappa> adjustedKappa(const AgreementTable& table, double level = usualLevel);

}
