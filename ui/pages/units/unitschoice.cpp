// SPDX-License-Identifier: MIT
#include "ui/pages/units/unitschoice.h"

#include <QStringList>

namespace cradlepost {

namespace {
constexpr std::chrono::day firstOfMonth{1};
constexpr QLatin1String levelMember("level=");
}

ReviewSpan UnitsChoice::monthsUpTo(std::chrono::year_month last, int months)
{
    return {.from = (last - std::chrono::months(months - 1)) / firstOfMonth,
        .to = (last + std::chrono::months(1)) / firstOfMonth};
}

bool UnitsChoice::isLong() const
{
    return (span.from.year() / span.from.month()) + std::chrono::months(1)
        < (span.to.year() / span.to.month());
}

QString toText(const UnitsChoice& choice)
{
    const QString span = QString::fromStdString(toIso(choice.span.from)) + QLatin1Char('/')
        + QString::fromStdString(toIso(choice.span.to));
    return choice.level.empty()
        ? span
        : span + QLatin1Char(';') + levelMember + QString::fromStdString(choice.level);
}

std::optional<UnitsChoice> unitsChoiceFromText(const QString& text)
{
    const qsizetype end = text.indexOf(QLatin1Char(';'));
    const QStringList days = text.left(end < 0 ? text.size() : end).split(QLatin1Char('/'));
    if (days.size() != 2)
        return std::nullopt;
    const auto from = dateFromIso(days[0].toStdString());
    const auto to = dateFromIso(days[1].toStdString());
    if (!from || !to || *to <= *from || from->day() != firstOfMonth || to->day() != firstOfMonth)
        return std::nullopt;
    UnitsChoice choice{.span = {.from = *from, .to = *to}, .level = {}};
    if (end < 0)
        return choice;
    const QString rest = text.mid(end + 1);
    if (!rest.startsWith(levelMember))
        return std::nullopt;
    choice.level = rest.mid(levelMember.size()).toStdString();
    return choice;
}

}
