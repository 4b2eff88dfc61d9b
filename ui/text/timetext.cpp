// SPDX-License-Identifier: MIT
#include "ui/text/timetext.h"

#include <cstdlib>
#include <QDate>
#include <QTime>

namespace cradlepost {

namespace {
QDate qDate(Date date)
{
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
        static_cast<int>(static_cast<unsigned>(date.day()))};
}
}

QString TimeText::clock(Instant t) const
{
    const auto since = m_zone.toLocal(t).sinceMidnight;
    return QTime(0, 0).addSecs(static_cast<int>(since.count()) * 60).toString(QStringLiteral("HH:mm"));
}

QString TimeText::moment(Instant t, Instant now) const
{
    const Date date = m_zone.toLocal(t).date;
    const int away = daysBetween(m_zone.toLocal(now).date, date);
    if (away == 0)
        return clock(t);
    const QString form = std::abs(away) < 7 ? QStringLiteral("ddd") : QStringLiteral("d MMM");
    return m_language.locale().toString(qDate(date), form) + QLatin1Char(' ') + clock(t);
}

QString TimeText::day(Date date) const { return m_language.locale().toString(qDate(date), QStringLiteral("d MMM")); }

QString TimeText::weekday(Date date) const
{
    return m_language.locale().toString(qDate(date), QStringLiteral("ddd d MMM"));
}

QString TimeText::shiftName(const std::string& code)
{
    if (code == "day")
        return tr("Day");
    if (code == "night")
        return tr("Night");
    if (code == "morning")
        return tr("Morning");
    if (code == "evening")
        return tr("Evening");
    return qs(code);
}

QString TimeText::shift(const Shift& shift) const
{
    //: %1 name of the shift, %2 day, %3 and %4 clock times
    return tr("%1, %2 · %3 to %4").arg(shiftName(shift.code), weekday(shift.date), clock(shift.begins), clock(shift.ends));
}

QString TimeText::span(std::chrono::milliseconds length)
{
    using namespace std::chrono;
    const auto min = std::max<std::int64_t>(floor<minutes>(length).count(), 0);
    if (min < 120)
        return tr("%n min", "a length of time", static_cast<int>(min));
    if (min < 48 * 60)
        return tr("%n h", "a length of time in hours", static_cast<int>(min / 60));
    return tr("%n day(s)", "a length of time", static_cast<int>(min / (24 * 60)));
}

}
