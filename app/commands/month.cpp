// SPDX-License-Identifier: MIT
#include "app/commands/month.h"

namespace cradlepost {

std::optional<std::chrono::year_month> monthFrom(const std::string& text)
{
    const auto first = dateFromIso(text + "-01");
    return first ? std::optional(first->year() / first->month()) : std::nullopt;
}

std::optional<ReviewSpan> monthsFrom(const std::string& from, const std::string& to)
{
    const auto first = monthFrom(from);
    const auto last = to.empty() ? first : monthFrom(to);
    if (!first || !last || *last < *first)
        return std::nullopt;
    return ReviewSpan{.from = ReviewSpan::ofMonth(*first).from, .to = ReviewSpan::ofMonth(*last).to};
}

Error noSpan(const std::string& from, const std::string& to)
{
    return {ErrorCode::InvalidArgument, "--from '" + from + "' --to '" + to + "' is no span of months",
        "Write months as 2026-10, the earlier one first."};
}

}
