// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <doctest/doctest.h>
#include <limits>
#include <optional>

namespace cradlepost::stats {

/** Equal to a relative 1e-9 (or as said), also for very small numbers; 0 must be met exactly. */
inline doctest::Approx near(double expected, double relative = 1e-9)
{
    return doctest::Approx(expected).epsilon(relative).scale(1e-290);
}

/** Equal to a printed value: to half a unit of its last digit. */
inline bool isPrinted(double value, double printed, int decimals)
{
    double unit = 1;
    for (int i = 0; i < decimals; ++i)
        unit /= 10;
    return value >= printed - unit * 0.5000001 && value <= printed + unit * 0.5000001;
}

/** Marks a cell of a table that has no value. */
inline constexpr double none = std::numeric_limits<double>::quiet_NaN();

template <class T> bool isUndefined(const Result<T>& result)
{
    return !result && result.error().code == ErrorCode::Undefined && !result.error().message.empty();
}

template <class T> bool isRefused(const Result<T>& result)
{
    return !result && result.error().code == ErrorCode::InvalidArgument && !result.error().message.empty();
}

}
