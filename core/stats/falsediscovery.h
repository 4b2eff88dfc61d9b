// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
#include <vector>

namespace cradlepost::stats {

/**
 * P values adjusted for many units at once, in the order of the input; a missing p (a test that was not done)
 * stays missing and does not count. p outside [0, 1] is refused; an empty list gives an empty list.
 *
 * Benjamini-Hochberg: adjusted p_(i) = min over j >= i of (m/j) p_(j), at most 1; units with an adjusted p of
 * at most q hold a false-discovery rate of q. Source: Benjamini Y, Hochberg Y (1995) J Royal Stat Soc B
 * 57:289-300.
 */
Result<std::vector<std::optional<double>>> benjaminiHochberg(std::span<const std::optional<double>> p);
/** min(1, m p). */
Result<std::vector<std::optional<double>>> bonferroni(std::span<const std::optional<double>> p);
/** Step-down. Source: Holm S (1979, from memory) Scandinavian J Statistics 6:65-70. */
Result<std::vector<std::optional<double>>> holm(std::span<const std::optional<double>> p);

}
