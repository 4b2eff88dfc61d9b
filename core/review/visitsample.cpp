// SPDX-License-Identifier: MIT
#include "core/review/visitsample.h"

namespace cradlepost {

std::optional<VisitSample> visitSample(const DistrictHistory& history, const DistrictOptions& options)
{
    if (history.lists.empty())
        return std::nullopt;
    const auto lot = static_cast<std::int64_t>(history.lists.back().checklist->itemCount());
    const auto plan = stats::planLqas({.good = options.sampleGood, .poor = options.samplePoor, .lot = lot},
        options.sampleRisk, options.sampleRisk);
    if (!plan)
        return std::nullopt;
    return VisitSample{
        .lot = lot, .rule = plan->rule, .good = options.sampleGood, .poor = options.samplePoor};
}

}
