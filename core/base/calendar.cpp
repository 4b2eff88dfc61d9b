// SPDX-License-Identifier: MIT
#include "core/base/calendar.h"

#include "core/base/refusal.h"

#include <algorithm>
#include <charconv>
#include <QDateTime>
#include <QTimeZone>
#include <vector>

namespace cradlepost {

namespace {
QTimeZone zoneNamed(const std::string& name)
{
    return name == "UTC" ? QTimeZone::utc() : QTimeZone(QByteArray::fromStdString(name));
}

/**
 * The offsets of one zone, kept from change to change of the clock: asking Qt for each moment cost a quarter
 * of reading a month (measured).
 */
class ZoneOffsets
{
public:
    explicit ZoneOffsets(const std::string& name)
        : m_name(name)
        , m_zone(zoneNamed(name))
    {
    }

    [[nodiscard]] const std::string& name() const { return m_name; }
    [[nodiscard]] bool isKnown() const { return m_zone.isValid(); }

    std::chrono::seconds at(Instant t)
    {
        const auto holds = [t](const Stretch& stretch) { return stretch.from <= t && t < stretch.until; };
        if (m_last < m_stretches.size() && holds(m_stretches[m_last]))
            return m_stretches[m_last].offset;
        const auto found = std::find_if(m_stretches.begin(), m_stretches.end(), holds);
        m_last = static_cast<std::size_t>(found - m_stretches.begin());
        if (found == m_stretches.end())
            m_stretches.push_back(around(t));
        return m_stretches[m_last].offset;
    }

private:
    /** From one change of the clock to the next. */
    struct Stretch
    {
        Instant from;
        Instant until;
        std::chrono::seconds offset{0};
    };

    [[nodiscard]] std::chrono::seconds asked(Instant t) const
    {
        return std::chrono::seconds(m_zone.offsetFromUtc(QDateTime::fromMSecsSinceEpoch(toMs(t), Qt::UTC)));
    }

    [[nodiscard]] Stretch around(Instant t) const
    {
        using namespace std::chrono;
        Stretch stretch{.from = t, .until = t + milliseconds(1), .offset = asked(t)};
        const auto before
            = m_zone.previousTransition(QDateTime::fromMSecsSinceEpoch(toMs(stretch.until), Qt::UTC));
        const auto after = m_zone.nextTransition(QDateTime::fromMSecsSinceEpoch(toMs(t), Qt::UTC));
        // Zones without a change, and moments before the first or after the last known one, are asked each
        // time a year on: a year without a change at both ends and none told between them has none.
        const Instant from
            = before.atUtc.isValid() ? fromMs(before.atUtc.toMSecsSinceEpoch()) : t - days(366);
        const Instant until = after.atUtc.isValid() ? fromMs(after.atUtc.toMSecsSinceEpoch()) : t + days(366);
        if (from <= t && asked(from) == stretch.offset)
            stretch.from = from;
        if (t < until && asked(until - milliseconds(1)) == stretch.offset)
            stretch.until = until;
        return stretch;
    }

    std::string m_name;
    QTimeZone m_zone;
    std::vector<Stretch> m_stretches;
    std::size_t m_last = 0;
};

/** Looking a zone up reads a file; pages ask for the same one again and again. */
ZoneOffsets& offsetsOf(const std::string& name)
{
    static thread_local ZoneOffsets last("UTC");
    if (last.name() != name)
        last = ZoneOffsets(name);
    return last;
}

bool number(std::string_view text, int& out)
{
    const auto [end, ec] = std::from_chars(text.data(), text.data() + text.size(), out);
    return ec == std::errc() && end == text.data() + text.size() && text.front() != '-';
}
}

std::string toIso(Date date)
{
    std::string text = std::to_string(static_cast<int>(date.year()));
    if (text.size() < 4)
        text.insert(0, 4 - text.size(), '0');
    for (const unsigned part : {static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day())})
        text.append({'-', static_cast<char>('0' + part / 10), static_cast<char>('0' + part % 10)});
    return text;
}

Result<Date> dateFromIso(std::string_view text)
{
    int y = 0;
    int m = 0;
    int d = 0;
    if (text.size() == 10 && text[4] == '-' && text[7] == '-' && number(text.substr(0, 4), y)
        && number(text.substr(5, 2), m) && number(text.substr(8, 2), d)) {
        const Date date{std::chrono::year(y), std::chrono::month(static_cast<unsigned>(m)),
            std::chrono::day(static_cast<unsigned>(d))};
        if (date.ok())
            return date;
    }
    return fail(ErrorCode::InvalidArgument, "'" + std::string(text) + "' is not a day",
        "write year-month-day, for example 2026-11-24");
}

Result<TimeZone> TimeZone::named(std::string_view name)
{
    TimeZone zone{std::string(name)};
    if (name.empty() || !offsetsOf(zone.m_name).isKnown())
        return tl::unexpected(refused(refusal::timeZone, {zone.m_name},
            "time zone '" + zone.m_name + "' is not known to this computer",
            "use a name such as Asia/Kolkata, Africa/Nairobi or UTC"));
    return zone;
}

LocalTime TimeZone::toLocal(Instant t) const
{
    using namespace std::chrono;
    const auto wall = floor<minutes>(t + offsetsOf(m_name).at(t));
    const auto day = floor<days>(wall);
    return {.date = day, .sinceMidnight = wall - day};
}

Instant TimeZone::toInstant(LocalTime local) const
{
    using namespace std::chrono;
    ZoneOffsets& offsets = offsetsOf(m_name);
    const Instant wall = sys_days(local.date) + local.sinceMidnight;
    // Offsets on both sides of any change near by; the larger one gives the earlier moment.
    const seconds before = offsets.at(wall - hours(24));
    const seconds after = offsets.at(wall + hours(24));
    for (const seconds offset : {std::max(before, after), std::min(before, after)}) {
        if (offsets.at(wall - offset) == offset)
            return wall - offset;
    }
    return wall - before; // skipped by the change: the old offset moves it on
}

}
