// SPDX-License-Identifier: MIT
#include "core/stats/specialfunctions.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>

namespace cradlepost::stats {

namespace {

namespace bm = boost::math;
// The callers have checked; nothing here may throw.
using Quiet = bm::policies::policy<bm::policies::domain_error<bm::policies::ignore_error>,
    bm::policies::pole_error<bm::policies::ignore_error>,
    bm::policies::overflow_error<bm::policies::ignore_error>,
    bm::policies::evaluation_error<bm::policies::ignore_error>,
    bm::policies::rounding_error<bm::policies::ignore_error>,
    bm::policies::promote_double<false>>; // long double would cost five times as much for digits below 1e-12
const Quiet quiet;
// Where a double runs out of exponent on the way, the slower form still has digits.
using Wide = bm::policies::normalise<Quiet, bm::policies::promote_double<true>>::type;
const Wide wide;
constexpr double tiny = 1e-200;

}

double lowerBeta(double a, double b, double x)
{
    const double value = bm::ibeta(a, b, x, quiet);
    return value > tiny ? value : bm::ibeta(a, b, x, wide);
}
double upperBeta(double a, double b, double x)
{
    const double value = bm::ibetac(a, b, x, quiet);
    return value > tiny ? value : bm::ibetac(a, b, x, wide);
}
double betaDensity(double a, double b, double x)
{
    const double value = bm::ibeta_derivative(a, b, x, quiet);
    return value > tiny ? value : bm::ibeta_derivative(a, b, x, wide);
}
double gammaDensity(double shape, double x)
{
    const double value = bm::gamma_p_derivative(shape, x, quiet);
    return value > tiny ? value : bm::gamma_p_derivative(shape, x, wide);
}
double lowerGamma(double shape, double x)
{
    const double value = bm::gamma_p(shape, x, quiet);
    return value > tiny ? value : bm::gamma_p(shape, x, wide);
}
double upperGamma(double shape, double x)
{
    const double value = bm::gamma_q(shape, x, quiet);
    return value > tiny ? value : bm::gamma_q(shape, x, wide);
}

double lowerBetaInverse(double a, double b, double p) { return bm::ibeta_inv(a, b, p, quiet); }
double upperBetaInverse(double a, double b, double p) { return bm::ibetac_inv(a, b, p, quiet); }
double lowerGammaInverse(double shape, double p) { return bm::gamma_p_inv(shape, p, quiet); }
double upperGammaInverse(double shape, double p) { return bm::gamma_q_inv(shape, p, quiet); }
double normalInverse(double p) { return bm::quantile(bm::normal_distribution<double, Quiet>(), p); }

}
