// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <QString>
#include <vector>

namespace cradlepost {

struct AxisTick
{
    double at = 0.0;
    QString label; ///< in the reader's language, "80%"
};

/// One axis: what it measures, how far it reaches, where it is labelled. Labels that would touch are left
/// out when it is painted, never cut.
struct ChartAxis
{
    QString title; ///< with the unit; may be empty
    double from = 0.0;
    double to = 1.0;
    std::vector<AxisTick> ticks;
};

/// An axis that covers `least..most` with about `ticks` labels at round steps (1, 2, 2.5 or 5 times a power
/// of ten). `label` words a value. Ends widen to the next step.
ChartAxis evenAxis(
    const QString& title, double least, double most, int ticks, const std::function<QString(double)>& label);

}
