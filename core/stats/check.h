// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"
#include "core/stats/tally.h"

#include <cmath>
#include <span>
#include <string>

namespace cradlepost::stats {

/** Largest count that every method takes: beyond 2^53 a double no longer holds each whole number. */
inline constexpr std::int64_t maxCount = std::int64_t{1} << 53;

/** The caller passed what it should not have. */
inline tl::unexpected<Error> wrong(std::string message, std::string hint = {})
{
    return fail(ErrorCode::InvalidArgument, std::move(message), std::move(hint));
}
/** The input is sound, but the figure does not exist for it. */
inline tl::unexpected<Error> undefined(std::string message)
{
    return fail(ErrorCode::Undefined, std::move(message));
}

/** Shortest text that reads back as the same number; for messages. */
std::string shortest(double value);

/** 0 <= x <= n <= maxCount. The predicates are for loops; the messages come from the checks. */
inline bool isSound(Tally tally) { return tally.x >= 0 && tally.x <= tally.n && tally.n <= maxCount; }

Result<void> checkLevel(double level);
Result<void> checkTally(Tally tally);
/** All of them sound; the message names the first faulty row, counted from 1. */
Result<void> checkTallies(std::span<const Tally> tallies);
/** `what` lies strictly between 0 and 1. */
Result<void> checkInside(double value, const char* what);
/** Largest size of a measured value: squares and differences of two of them still are numbers. */
inline constexpr double largestValue = 1e150;
inline bool isSensible(double value) { return std::abs(value) <= largestValue; }
/** An exposure (time, bed-days) is 0 or lies within these, so that rates and their spread are numbers. */
inline constexpr double leastExposure = 1e-100;
inline constexpr double largestExposure = 1e100;

/** Each a number within +-1e150. */
Result<void> checkFinite(std::span<const double> values, const char* what);
Result<void> checkFinite(double value, const char* what);
inline bool isExposure(double value)
{
    return value == 0 || (value >= leastExposure && value <= largestExposure);
}
/** Each in 0..1e150. */
Result<void> checkNotNegative(std::span<const double> values, const char* what);

}

/** Leaves the function with the error of a Result<void>. */
#define CRADLEPOST_TRY(expression)                                                                           \
    do {                                                                                                     \
        if (auto tried = (expression); !tried)                                                               \
            return tl::unexpected<::cradlepost::Error>(std::move(tried.error()));                            \
    } while (false)
