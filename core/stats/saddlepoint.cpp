// SPDX-License-Identifier: MIT
#include "core/stats/saddlepoint.h"

#include <array>
#include <cmath>
#include <numbers>

namespace cradlepost::stats {

namespace {

/** ln n! minus Stirling's formula for it, n >= 1. */
double stirlingError(double n)
{
    // Computed to 60 digits and rounded.
    static constexpr std::array<double, 16> small{0, 0.08106146679532725822, 0.04134069595540929409,
        0.02767792568499833915, 0.02079067210376509311, 0.01664469118982119216, 0.01387612882307074800,
        0.01189670994589177010, 0.01041126526197209650, 0.00925546218271273292, 0.00833056343336287126,
        0.00757367548795184079, 0.00694284010720952987, 0.00640899418800420707, 0.00595137011275884774,
        0.00555473355196280137};
    if (n < 16)
        return small[static_cast<std::size_t>(n)];
    const double r = 1 / n;
    const double rr = r * r;
    return (1.0 / 12 - (1.0 / 360 - (1.0 / 1260 - (1.0 / 1680 - 1.0 / 1188 * rr) * rr) * rr) * rr) * r;
}

/** x ln(x/mean) + mean - x. */
double deviance(double x, double mean)
{
    const double away = x - mean;
    return std::abs(away) < 0.5 * mean ? x * std::log1p(away / mean) - away : x * std::log(x / mean) - away;
}

}

double Saddle::value() const { return std::exp(exponent) * std::sqrt(square); }

Saddle binomialSaddle(std::int64_t n, std::int64_t k, double p)
{
    const double size = static_cast<double>(n);
    if (k == 0)
        return {.exponent = size * std::log1p(-p)};
    if (k == n)
        return {.exponent = size * std::log(p)};
    const double x = static_cast<double>(k);
    const double y = static_cast<double>(n - k);
    return {.exponent = stirlingError(size) - stirlingError(x) - stirlingError(y) - deviance(x, size * p)
            - deviance(y, size * (1 - p)),
        .square = size / (2 * std::numbers::pi * x * y)};
}

Saddle poissonSaddle(std::int64_t k, double mean)
{
    if (k == 0)
        return {.exponent = -mean};
    const double x = static_cast<double>(k);
    return {.exponent = -stirlingError(x) - deviance(x, mean), .square = 1 / (2 * std::numbers::pi * x)};
}

}
