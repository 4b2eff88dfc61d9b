// SPDX-License-Identifier: MIT
#include "core/stats/distributions.h"

#include "core/stats/specialfunctions.h"

#include <cmath>
#include <numbers>

namespace cradlepost::stats {

namespace {

/**
 * Wilson and Hilferty's cube as a start, then Halley's steps: each triples the digits, so the step after a
 * change of 1e-5 has nothing left to do. Returns 0 where that does not settle.
 */
double steppedGammaQuantile(double p, double shape, double z, bool upper)
{
    const double c = 1 / (9 * shape);
    const double root = 1 - c + z * std::sqrt(c);
    double x = shape * root * root * root;
    for (int step = 0; step < 4 && x > 0; ++step) {
        const double density = gammaDensity(shape, x);
        const double over = upper ? p - upperGamma(shape, x) : lowerGamma(shape, x) - p;
        const double newton = over / density;
        const double change = newton / (1 - 0.5 * newton * ((shape - 1) / x - 1));
        if (!(std::abs(change) < 0.5 * x))
            return 0;
        x -= change;
        if (std::abs(change) < 1e-5 * x)
            return x;
    }
    return 0;
}

/** From this shape on the cube is near enough, for tails that are not remote. */
constexpr double steadyShape = 2;
bool isSteady(double p, double shape) { return shape >= steadyShape && shape < 1e8 && p > 1e-8 && p < 0.5; }

}

double normalCdf(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }
double normalUpper(double z) { return 0.5 * std::erfc(z / std::numbers::sqrt2); }
double normalTwoSided(double z) { return std::erfc(std::abs(z) / std::numbers::sqrt2); }
double normalQuantile(double p) { return normalInverse(p); }
double normalWidth(double level) { return -normalQuantile((1 - level) / 2); }

double chiSquareUpper(double x, double df) { return upperGamma(df / 2, x / 2); }
double gammaQuantile(double p, double shape, double scale)
{
    const double x = isSteady(p, shape) ? steppedGammaQuantile(p, shape, normalQuantile(p), false) : 0;
    return scale * (x > 0 ? x : lowerGammaInverse(shape, p));
}
double gammaUpperQuantile(double p, double shape, double scale)
{
    const double x = isSteady(p, shape) ? steppedGammaQuantile(p, shape, -normalQuantile(p), true) : 0;
    return scale * (x > 0 ? x : upperGammaInverse(shape, p));
}
double betaQuantile(double p, double a, double b) { return lowerBetaInverse(a, b, p); }
double betaUpperQuantile(double p, double a, double b) { return upperBetaInverse(a, b, p); }

}
