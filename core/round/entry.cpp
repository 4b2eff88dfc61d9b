// SPDX-License-Identifier: MIT
#include "core/round/entry.h"

#include <algorithm>
#include <charconv>

namespace cradlepost {

namespace {

using namespace std::chrono;

std::string_view trimmed(std::string_view text)
{
    const auto from = text.find_first_not_of(" \t");
    if (from == std::string_view::npos)
        return {};
    return text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

std::optional<int> digits(std::string_view text)
{
    int value = 0;
    const auto [end, ec] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || text.front() == '-' || ec != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return value;
}

Date lastOf(int y, int m)
{
    return year_month_day(year(y) / month(static_cast<unsigned>(m)) / last);
}

/** 2027-03-31, 2027-03 or 03/2027. */
std::optional<Date> expiryFrom(std::string_view text)
{
    if (const auto day = dateFromIso(text))
        return *day;
    const bool iso = text.size() == 7 && text[4] == '-';
    const bool printed = text.size() == 7 && text[2] == '/';
    if (!iso && !printed)
        return std::nullopt;
    const auto y = digits(iso ? text.substr(0, 4) : text.substr(3));
    const auto m = digits(iso ? text.substr(5) : text.substr(0, 2));
    if (!y || !m || *m < 1 || *m > 12 || *y < 2000 || *y > 2199)
        return std::nullopt;
    return lastOf(*y, *m);
}

Result<Lot> readLot(std::string_view text)
{
    const auto space = text.find(' ');
    const auto quantity = readPieces(trimmed(text.substr(0, space)));
    if (!quantity)
        return tl::unexpected(quantity.error());
    Lot lot {.quantity = *quantity, .expiry = std::nullopt, .number = {}};
    if (space == std::string_view::npos)
        return lot;
    const std::string_view rest = trimmed(text.substr(space + 1));
    lot.expiry = expiryFrom(rest);
    if (!lot.expiry)
        return fail(ErrorCode::InvalidArgument, "'" + std::string(rest) + "' is not an expiry date",
            "write it as 2027-03-31, 2027-03 or 03/2027");
    return lot;
}

}

Result<Measured> readMeasured(const Item& item, std::string_view text)
{
    const auto value = Decimal::parse(trimmed(text));
    if (!value)
        return tl::unexpected(value.error());
    if (auto allowed = checkAnswer(item, Measured {*value}); !allowed)
        return tl::unexpected(allowed.error());
    return Measured {*value};
}

Result<RunningSince> readSince(std::string_view text, Instant now, const TimeZone& zone)
{
    const std::string_view typed = trimmed(text);
    const auto colon = typed.find(':');
    std::optional<int> h;
    std::optional<int> m;
    if (colon != std::string_view::npos) {
        h = digits(typed.substr(0, colon));
        m = typed.size() - colon == 3 ? digits(typed.substr(colon + 1)) : std::nullopt;
    } else if (typed.size() == 3 || typed.size() == 4) {
        h = digits(typed.substr(0, typed.size() - 2));
        m = digits(typed.substr(typed.size() - 2));
    }
    if (!h || !m || *h > 23 || *m > 59)
        return fail(ErrorCode::InvalidArgument, "'" + std::string(text) + "' is not a clock time",
            "type it as 19:24 or 1924");
    LocalTime reading {zone.toLocal(now).date, hours(*h) + minutes(*m)};
    if (zone.toInstant(reading) > now)
        reading.date = addDays(reading.date, -1);
    const Instant first = zone.toInstant(reading);
    // When the clocks go back the wall shows an hour twice.
    const Instant again = first + hours(1);
    return RunningSince {again <= now && zone.toLocal(again) == reading ? again : first};
}

Result<Counted> readCounted(const Item& item, std::string_view text)
{
    Counted counted;
    for (std::string_view rest = text;;) {
        const auto comma = rest.find(',');
        auto lot = readLot(trimmed(rest.substr(0, comma)));
        if (!lot)
            return tl::unexpected(lot.error());
        counted.lots.push_back(std::move(*lot));
        if (comma == std::string_view::npos)
            break;
        rest.remove_prefix(comma + 1);
    }
    if (auto allowed = checkAnswer(item, counted); !allowed)
        return tl::unexpected(allowed.error());
    const auto* rule = std::get_if<CountRule>(&item.rule);
    const bool undated = std::any_of(
        counted.lots.begin(), counted.lots.end(), [](const Lot& l) { return l.quantity > 0 && !l.expiry; });
    if (rule != nullptr && rule->expires && undated)
        return fail(ErrorCode::InvalidArgument, "item '" + item.id + "': a lot has no expiry date",
            "type quantity and expiry, for example 6 03/2027");
    return counted;
}

std::string counted(const Counted& answer)
{
    std::string text;
    for (const Lot& lot : answer.lots) {
        text += (text.empty() ? "" : ", ") + std::to_string(lot.quantity);
        if (lot.expiry)
            text += " " + toIso(*lot.expiry);
    }
    return text;
}

Result<int> readPieces(std::string_view text)
{
    const auto n = digits(trimmed(text));
    if (!n || *n > 100000)
        return fail(ErrorCode::InvalidArgument, "'" + std::string(text) + "' is not a number of pieces",
            "type a whole number, 0 for none");
    return *n;
}

}
