// SPDX-License-Identifier: MIT
#include "core/base/shiftcalendar.h"

#include "core/base/refusal.h"

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <set>

namespace cradlepost {

using namespace std::chrono;

namespace {
constexpr minutes dayLength = hours(24);

bool digits(std::string_view text, int& out)
{
    const auto [end, ec] = std::from_chars(text.data(), text.data() + text.size(), out);
    return ec == std::errc() && end == text.data() + text.size() && out >= 0;
}
}

ShiftPattern ShiftPattern::twoByTwelve() { return {.starts = {{"day", hours(7)}, {"night", hours(19)}}}; }

ShiftPattern ShiftPattern::threeByEight()
{
    return {.starts = {{"morning", hours(7)}, {"evening", hours(15)}, {"night", hours(23)}}};
}

Result<void> ShiftPattern::check() const
{
    const auto bad = [](const std::string& what) {
        return tl::unexpected(refused(
            refusal::shiftOrder, {}, "shift pattern: " + what, "give one to four start times in order"));
    };
    if (starts.empty() || starts.size() > static_cast<std::size_t>(maxShiftsPerDay))
        return bad(std::to_string(starts.size()) + " shifts a day");
    std::set<std::string> codes;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        if (starts[i].at < minutes(0) || starts[i].at >= dayLength)
            return bad("shift " + std::to_string(i + 1) + " does not start within a day");
        if (i > 0 && starts[i].at <= starts[i - 1].at)
            return bad("shift " + std::to_string(i + 1) + " does not start after the one before it");
        if (starts[i].code.empty() || !codes.insert(starts[i].code).second)
            return bad("shift " + std::to_string(i + 1) + " has no name of its own");
    }
    return {};
}

Result<ShiftPattern> readPattern(std::string_view text)
{
    const auto bad = [](std::string_view part) {
        return tl::unexpected(
            refused(refusal::shiftText, {std::string(part)}, "'" + std::string(part) + "' is not a shift",
                "write start times and names, for example 07:00 day, 19:00 night"));
    };
    ShiftPattern pattern;
    for (std::string_view rest = text;;) {
        const auto comma = rest.find(',');
        std::string_view part = rest.substr(0, comma);
        part.remove_prefix(std::min(part.find_first_not_of(' '), part.size()));
        int h = 0;
        int m = 0;
        if (part.size() < 7 || part[2] != ':' || part[5] != ' ' || !digits(part.substr(0, 2), h)
            || !digits(part.substr(3, 2), m) || h > 23 || m > 59)
            return bad(part);
        std::string code(part.substr(6));
        code.erase(code.find_last_not_of(' ') + 1);
        pattern.starts.push_back({.code = std::move(code), .at = hours(h) + minutes(m)});
        if (comma == std::string_view::npos)
            break;
        rest.remove_prefix(comma + 1);
    }
    if (auto whole = pattern.check(); !whole)
        return tl::unexpected(whole.error());
    return pattern;
}

std::string patternText(const ShiftPattern& pattern)
{
    std::string text;
    for (const ShiftStart& start : pattern.starts) {
        char time[8];
        const auto at = static_cast<unsigned>(start.at.count()) % (24 * 60);
        std::snprintf(time, sizeof time, "%02u:%02u", at / 60, at % 60);
        text += (text.empty() ? "" : ", ") + std::string(time) + " " + start.code;
    }
    return text;
}

Slot slotOf(Date date, int shift)
{
    const Slot month = static_cast<Slot>(static_cast<int>(date.year())) * 12 + static_cast<unsigned>(date.month()) - 1;
    return month << 7 | static_cast<Slot>(static_cast<unsigned>(date.day())) << 2 | shift;
}

Date dateOfSlot(Slot slot)
{
    const Slot month = slot >> 7;
    return {year(static_cast<int>(month / 12)), std::chrono::month(static_cast<unsigned>(month % 12 + 1)),
        day(static_cast<unsigned>(slot >> 2 & 31))};
}

int shiftOfSlot(Slot slot) { return static_cast<int>(slot & 3); }

std::pair<Slot, Slot> slotsOfMonth(year_month month)
{
    const Slot index = static_cast<Slot>(static_cast<int>(month.year())) * 12 + static_cast<unsigned>(month.month()) - 1;
    return {index << 7, (index + 1) << 7};
}

Shift ShiftCalendar::shift(Date date, int index) const
{
    const auto& starts = m_pattern.starts;
    const auto i = static_cast<std::size_t>(index);
    const bool last = i + 1 == starts.size();
    return {.date = date,
        .index = index,
        .code = starts[i].code,
        .begins = m_zone.toInstant({date, starts[i].at}),
        .ends = m_zone.toInstant({last ? addDays(date, 1) : date, starts[last ? 0 : i + 1].at})};
}

Shift ShiftCalendar::shiftAt(Instant t) const
{
    const Date today = m_zone.toLocal(t).date;
    for (int back = 0; back <= 2; ++back) {
        for (int i = static_cast<int>(m_pattern.starts.size()) - 1; i >= 0; --i) {
            Shift candidate = shift(addDays(today, -back), i);
            if (candidate.begins <= t)
                return candidate;
        }
    }
    return shift(today, 0);
}

Shift ShiftCalendar::next(const Shift& current) const
{
    const bool last = static_cast<std::size_t>(current.index) + 1 == m_pattern.starts.size();
    return last ? shift(addDays(current.date, 1), 0) : shift(current.date, current.index + 1);
}

Shift ShiftCalendar::previous(const Shift& current) const
{
    return current.index == 0
        ? shift(addDays(current.date, -1), static_cast<int>(m_pattern.starts.size()) - 1)
        : shift(current.date, current.index - 1);
}

}
