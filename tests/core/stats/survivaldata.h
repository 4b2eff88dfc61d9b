// SPDX-License-Identifier: MIT
#pragma once

#include "core/stats/survival.h"

#include <vector>

/** Published data for time to an event. */
namespace cradlepost::stats {

inline std::vector<Duration> durations(const std::vector<double>& times, const std::vector<int>& events)
{
    std::vector<Duration> list;
    for (std::size_t i = 0; i < times.size(); ++i)
        list.push_back({times[i], events[i] != 0});
    return list;
}

/** Remission weeks under treatment: Freireich EJ et al. (1963) Blood 21:699-716. */
inline std::vector<Duration> remissionTreated()
{
    return durations({6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35},
        {1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0});
}

/** The control group of the same trial; every remission ended. */
inline std::vector<Duration> remissionControl()
{
    return durations(
        {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23}, std::vector<int>(21, 1));
}

/** Miller RG (1997) Survival Analysis: acute myelogenous leukaemia. */
inline std::vector<Duration> leukaemiaMaintained()
{
    return durations({9, 13, 13, 18, 23, 28, 31, 34, 45, 48, 161}, {1, 1, 0, 1, 1, 0, 1, 1, 0, 1, 0});
}

inline std::vector<Duration> leukaemiaOther()
{
    return durations({5, 5, 8, 8, 12, 16, 23, 27, 30, 33, 43, 45}, {1, 1, 1, 1, 1, 0, 1, 1, 1, 1, 1, 1});
}

}
