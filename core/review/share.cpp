// SPDX-License-Identifier: MIT
#include "core/review/share.h"

#include "core/stats/proportion.h"

namespace cradlepost {

const char* codeName(CannotSay why)
{
    switch (why) {
    case CannotSay::NoData:
        return "no-data";
    case CannotSay::TooFew:
        return "too-few";
    case CannotSay::NoSpread:
        return "no-spread";
    case CannotSay::NotApplicable:
        break;
    }
    return "not-applicable";
}

std::optional<double> Share::value() const
{
    if (tally.n == 0)
        return std::nullopt;
    return static_cast<double>(tally.x) / static_cast<double>(tally.n);
}

Share shareOf(stats::Tally tally)
{
    Share share{.tally = tally};
    if (const auto interval = stats::wilson(tally))
        share.interval = *interval;
    return share;
}

}
