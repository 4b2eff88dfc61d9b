// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <span>
#include <string_view>

/** Do the last digits of readings look rounded? A reason to look, never a proof. */
namespace cradlepost::stats {

struct DigitPreference
{
    std::int64_t n = 0;
    double chiSquare = 0; ///< against equal shares
    int df = 0; ///< k - 1
    double p = 0;
    double v = 0; ///< size of the effect, sqrt(chi2/(n(k - 1))), 0..1; below 0.1 small, above 0.3 marked
                  ///< (common practice)
    std::size_t favourite = 0; ///< position of the most frequent digit, the first on a tie
};

/**
 * Counts of the k legal last digits (10, or 2 for a device that shows only .0 and .5). Undefined below 5 n/k,
 * that is fewer than five expected each; 2 <= k <= 1000, counts at least 0. Source: Pearson K (1900, from
 * memory) Philosophical Magazine 50:157-175; Cramer H (1946, from memory) Mathematical Methods of Statistics,
 * for V.
 */
Result<DigitPreference> digitPreference(std::span<const std::int64_t> counts);

/**
 * The last digit of a number as it was written ("36.70" gives 0): from the text, since 36.7 times 10 is
 * 367.00000000000006 in a double. Refuses what is not a plain decimal number.
 */
Result<int> lastDigit(std::string_view written);

}
