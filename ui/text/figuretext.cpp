// SPDX-License-Identifier: MIT
#include "ui/text/figuretext.h"

#include <cmath>

namespace cradlepost {

namespace {
constexpr double minutesAnHour = 60.0;
constexpr double hoursADay = 24.0;
constexpr double fewDays = 3.0; // up to here hours say more
constexpr double tenDays = 10.0; // from here tenths of a day say nothing
}

QString FigureText::number(double value, int decimals) const
{
    // "-0" is what rounding leaves of a small loss.
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(value * scale) / scale;
    return m_language.locale().toString(rounded == 0.0 ? 0.0 : value, 'f', decimals);
}

QString FigureText::count(std::int64_t value) const
{
    return m_language.locale().toString(static_cast<qlonglong>(value));
}

QString FigureText::percent(double share, int decimals) const
{
    //: a share; %1 a number
    return tr("%1%").arg(number(100.0 * share, decimals));
}

QString FigureText::of(stats::Tally tally) const
{
    //: a count out of a count
    return tr("%1 of %2").arg(count(tally.x), count(tally.n));
}

QString FigureText::share(stats::Tally tally) const
{
    if (tally.n == 0)
        return tr("none seen");
    return QStringLiteral("%1 (%2)").arg(
        percent(static_cast<double>(tally.x) / static_cast<double>(tally.n)), of(tally));
}

QString FigureText::percents(const stats::Interval& interval) const
{
    //: an interval of a share, %1 and %2 numbers
    return tr("%1 to %2%").arg(number(100.0 * interval.low), number(100.0 * interval.high));
}

QString FigureText::share(const Share& share) const
{
    if (!share.interval)
        return this->share(share.tally);
    return QStringLiteral("%1 (%2; %3)")
        .arg(percent(*share.value()), of(share.tally), percents(*share.interval));
}

QString FigureText::hours(double hours) const
{
    if (hours < 1.0)
        return tr("%1 min").arg(number(hours * minutesAnHour));
    if (hours < fewDays * hoursADay)
        return tr("%1 h").arg(number(hours));
    const double days = hours / hoursADay;
    return tr("%1 days").arg(number(days, days < tenDays ? 1 : 0));
}

QString FigureText::list(const QStringList& parts) const
{
    if (parts.size() < 2)
        return parts.value(0);
    //: the end of a list: %1 all but the last, %2 the last
    return tr("%1 and %2")
        .arg(parts.first(parts.size() - 1).join(tr(", ", "between the parts of a list")), parts.last());
}

QString FigureText::chance(double p) const
{
    constexpr double least = 0.001;
    //: a p value smaller than can be told apart
    return p < least ? tr("below %1").arg(number(least, 3)) : number(p, 3);
}

QString FigureText::cannotSay(CannotSay why)
{
    switch (why) {
    case CannotSay::NoData:
        return tr("Nothing was seen.");
    case CannotSay::TooFew:
        return tr("Too few to say.");
    case CannotSay::NoSpread:
        return tr("All the same: nothing to compare with.");
    case CannotSay::NotApplicable:
        break;
    }
    return tr("Does not apply here.");
}

}
