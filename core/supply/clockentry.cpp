// SPDX-License-Identifier: MIT
#include "core/supply/clockentry.h"

#include <algorithm>
#include <optional>

namespace cradlepost {

namespace {

std::optional<std::chrono::minutes> clockTime(std::string_view text)
{
    std::string digits(text);
    if (const auto colon = digits.find(':'); colon != std::string::npos) {
        if (digits.size() - colon != 3)
            return std::nullopt;
        digits.erase(colon, 1);
    }
    const bool numbers
        = std::all_of(digits.begin(), digits.end(), [](char c) { return '0' <= c && c <= '9'; });
    if (!numbers || digits.size() < 3 || digits.size() > 4)
        return std::nullopt;
    const int value = std::stoi(digits);
    if (value / 100 > 23 || value % 100 > 59)
        return std::nullopt;
    return std::chrono::hours(value / 100) + std::chrono::minutes(value % 100);
}

tl::unexpected<Error> noTime(std::string_view text)
{
    return fail(ErrorCode::InvalidArgument, "'" + std::string(text) + "' is no time of day",
        "Write it as 16:30 or 1630.");
}

}

Result<Instant> readPast(std::string_view text, Instant now, const TimeZone& zone)
{
    if (text.empty())
        return now;
    const auto time = clockTime(text);
    if (!time)
        return noTime(text);
    const Date today = zone.toLocal(now).date;
    const Instant at = zone.toInstant({.date = today, .sinceMidnight = *time});
    return at <= now ? at : zone.toInstant({.date = addDays(today, -1), .sinceMidnight = *time});
}

Result<Instant> readComing(std::string_view text, Instant now, const TimeZone& zone)
{
    const auto time = clockTime(text);
    if (!time)
        return noTime(text);
    const Instant from = now - std::chrono::hours(1);
    const Date day = zone.toLocal(from).date;
    const Instant at = zone.toInstant({.date = day, .sinceMidnight = *time});
    return at >= from ? at : zone.toInstant({.date = addDays(day, 1), .sinceMidnight = *time});
}

}
