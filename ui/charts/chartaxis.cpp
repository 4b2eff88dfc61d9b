// SPDX-License-Identifier: MIT
#include "ui/charts/chartaxis.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {
double roundStep(double rough)
{
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 2.5, 5.0}) {
        if (factor * power >= rough * (1.0 - 1e-9))
            return factor * power;
    }
    return 10.0 * power;
}
}

ChartAxis evenAxis(
    const QString& title, double least, double most, int ticks, const std::function<QString(double)>& label)
{
    if (most <= least)
        most = least + std::max(1.0, std::abs(least) / 10.0);
    const double step = roundStep((most - least) / std::max(1, ticks - 1));
    const double first = std::floor(least / step + 1e-9);
    const double last = std::max(first + 1.0, std::ceil(most / step - 1e-9));
    ChartAxis axis{.title = title, .from = first * step, .to = last * step};
    for (double at = first; at <= last + 0.5; at += 1.0)
        axis.ticks.push_back({.at = at * step, .label = label(at * step)});
    return axis;
}

}
