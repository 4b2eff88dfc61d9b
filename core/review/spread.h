// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/tally.h"

#include <cstddef>
#include <span>

namespace cradlepost {

/** The items of one round, in the group that it belongs to. */
struct GroupedTally
{
    std::size_t group = 0;
    stats::Tally tally;
};

/** How much wider rounds of a group spread than independent items would. */
struct Spread
{
    /**
     * Pearson's chi-square of rounds about the share of their group over its degrees of freedom, at least 1.
     * McCullagh P, Nelder JA (1989) Generalized Linear Models, 2nd ed., 4.5.
     */
    double dispersion = 1;
    /**
     * By how much the variance of a mean grows since neighbouring rounds are alike: (1 + r)/(1 - r) with r
     * the correlation of successive residuals, between 0 and 0.95. Bayley GV, Hammersley JM (1946) J Royal
     * Stat Soc Suppl 8:184-197, for a first-order autoregression.
     */
    double carryOver = 1;
};

/** `rounds` in order of time; groups count from 0. Groups that met all or none of their items do not count.
 */
Spread spreadOf(std::span<const GroupedTally> rounds);

}
