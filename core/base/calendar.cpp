// SPDX-License-Identifier: MIT
#include "core/base/calendar.h"

#include <charconv>
#include <cstdio>
#include <QDateTime>
#include <QTimeZone>

namespace cradlepost {

namespace {
QTimeZone zoneOf(const std::string& name)
{
    // Looking a zone up reads a file; pages ask for the same one again and again.
    static thread_local std::pair<std::string, QTimeZone> last;
    if (last.first != name || !last.second.isValid())
        last = {name, name == "UTC" ? QTimeZone::utc() : QTimeZone(QByteArray::fromStdString(name))};
    return last.second;
}

bool number(std::string_view text, int& out)
{
    const auto [end, ec] = std::from_chars(text.data(), text.data() + text.size(), out);
    return ec == std::errc() && end == text.data() + text.size() && text.front() != '-';
}
}

std::string toIso(Date date)
{
    char text[32];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
        static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text;
}

Result<Date> dateFromIso(std::string_view text)
{
    int y = 0;
    int m = 0;
    int d = 0;
    if (text.size() == 10 && text[4] == '-' && text[7] == '-' && number(text.substr(0, 4), y)
        && number(text.substr(5, 2), m) && number(text.substr(8, 2), d)) {
        const Date date {std::chrono::year(y), std::chrono::month(static_cast<unsigned>(m)),
            std::chrono::day(static_cast<unsigned>(d))};
        if (date.ok())
            return date;
    }
    return fail(ErrorCode::InvalidArgument, "'" + std::string(text) + "' is not a day",
        "write year-month-day, for example 2026-11-24");
}

Result<TimeZone> TimeZone::named(std::string_view name)
{
    TimeZone zone {std::string(name)};
    if (name.empty() || !zoneOf(zone.m_name).isValid())
        return fail(ErrorCode::InvalidArgument, "time zone '" + zone.m_name + "' is not known to this computer",
            "use a name such as Asia/Kolkata, Africa/Nairobi or UTC");
    return zone;
}

LocalTime TimeZone::toLocal(Instant t) const
{
    using namespace std::chrono;
    const int offset = zoneOf(m_name).offsetFromUtc(QDateTime::fromMSecsSinceEpoch(toMs(t), Qt::UTC));
    const auto wall = floor<minutes>(t + seconds(offset));
    const auto day = floor<days>(wall);
    return {.date = day, .sinceMidnight = wall - day};
}

Instant TimeZone::toInstant(LocalTime local) const
{
    using namespace std::chrono;
    const QTimeZone zone = zoneOf(m_name);
    const auto offsetAt = [&](Instant t) {
        return seconds(zone.offsetFromUtc(QDateTime::fromMSecsSinceEpoch(toMs(t), Qt::UTC)));
    };
    const Instant wall = sys_days(local.date) + local.sinceMidnight;
    // Offsets on both sides of any change near by; the larger one gives the earlier moment.
    const seconds before = offsetAt(wall - hours(24));
    const seconds after = offsetAt(wall + hours(24));
    for (const seconds offset : {std::max(before, after), std::min(before, after)}) {
        if (offsetAt(wall - offset) == offset)
            return wall - offset;
    }
    return wall - before; // skipped by the change: the old offset moves it on
}

}
