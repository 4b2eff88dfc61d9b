// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <span>
#include <string>
#include <vector>

/** Readings and whole rounds that repeat themselves, against what chance gives. Reasons to look, never a
 * proof. */
namespace cradlepost::stats {

/**
 * Chance of at least one run of `length` or more equal successive values among n independent readings that
 * take value j with chance p_j; exact, by a Markov chain over (value, run so far). length <= 1 gives 1 (0 if
 * n is 0), length > n gives 0. Chances at least 0 that sum to 1 (to 1e-9); n at most 100000. Readings in a
 * closed room are not independent: take the chances from honest periods and read the result as a ranking.
 * Source: Feller W (1968, from memory) An Introduction to Probability Theory and Its Applications, vol. 1,
 * XIII.7.
 */
Result<double> identicalRunChance(std::span<const double> chances, int n, int length);

/** Longest run of equal neighbours; 0 for an empty list. */
int longestIdenticalRun(std::span<const std::string> readings);

/**
 * Chance that two independent rounds agree on every item: the product over items of sum_j p_ij^2. An item
 * that is always right has sum 1 and tells nothing, so free readings belong in it. Each item's chances as
 * above; at least one item. Source: the repeat rate of Simpson EH (1949, from memory) Nature 163:688.
 */
Result<double> sameRoundChance(std::span<const std::vector<double>> items);

struct RepeatedRounds
{
    double pairs = 0; ///< R(R - 1)/2
    double expected = 0; ///< equal pairs by chance
    double anyChance = 0; ///< of at least one equal pair, Poisson
    std::int64_t seen = 0; ///< equal pairs
    double chanceOfSeen = 0; ///< P(at least as many), Poisson
};

/** `rounds` from 2 to 1e8, chance in 0..1, `seen` in 0..pairs. */
Result<RepeatedRounds> repeatedRounds(std::int64_t rounds, double sameChance, std::int64_t seen);

/** Pairs of equal texts among rounds written in one canonical way. */
std::int64_t equalPairs(std::span<const std::string> rounds);

}
