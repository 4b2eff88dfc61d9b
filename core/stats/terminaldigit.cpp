// SPDX-License-Identifier: MIT
#include "core/stats/terminaldigit.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }

/** -?digits[(.|,)digits] */
bool isPlainDecimal(std::string_view text)
{
    if (!text.empty() && text.front() == '-')
        text.remove_prefix(1);
    const auto mark = text.find_first_of(".,");
    const auto whole = text.substr(0, mark);
    const auto part = mark == std::string_view::npos ? std::string_view("0") : text.substr(mark + 1);
    return !whole.empty() && !part.empty() && std::all_of(whole.begin(), whole.end(), isDigit)
        && std::all_of(part.begin(), part.end(), isDigit);
}

}

Result<DigitPreference> digitPreference(std::span<const std::int64_t> counts)
{
    const auto k = counts.size();
    if (k < 2 || k > 1000)
        return wrong("there are 2 to 1000 legal digits, not " + std::to_string(k));
    DigitPreference result{.df = static_cast<int>(k) - 1};
    for (std::size_t i = 0; i < k; ++i) {
        if (counts[i] < 0 || counts[i] > maxCount || (result.n += counts[i]) > maxCount)
            return wrong("row " + std::to_string(i + 1) + ": a count cannot be " + std::to_string(counts[i]));
        if (counts[i] > counts[result.favourite])
            result.favourite = i;
    }
    if (result.n < 5 * static_cast<std::int64_t>(k))
        return undefined(std::to_string(result.n) + " readings are too few for " + std::to_string(k)
            + " digits: at least " + std::to_string(5 * k) + " are needed");
    const double expected = static_cast<double>(result.n) / static_cast<double>(k);
    for (const auto count : counts) {
        const double gap = static_cast<double>(count) - expected;
        result.chiSquare += gap * gap / expected;
    }
    result.p = chiSquareUpper(result.chiSquare, result.df);
    result.v = std::sqrt(result.chiSquare / (static_cast<double>(result.n) * result.df));
    return result;
}

Result<int> lastDigit(std::string_view written)
{
    if (!isPlainDecimal(written))
        return wrong("'" + std::string(written) + "' is not a plain decimal number");
    return written.back() - '0';
}

}
