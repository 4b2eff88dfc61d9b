// SPDX-License-Identifier: MIT
#include "ui/pages/month/reviewchoice.h"

#include <QStringList>

namespace cradlepost {

namespace {

QString spanText(const ReviewSpan& span)
{
    return QString::fromStdString(toIso(span.from)) + QLatin1Char('/')
        + QString::fromStdString(toIso(span.to));
}

std::optional<ReviewSpan> spanFrom(const QString& text)
{
    const QStringList ends = text.split(QLatin1Char('/'));
    if (ends.size() != 2)
        return std::nullopt;
    const auto from = dateFromIso(ends[0].toStdString());
    const auto to = dateFromIso(ends[1].toStdString());
    if (!from || !to || *to <= *from)
        return std::nullopt;
    return ReviewSpan{.from = *from, .to = *to};
}

void addList(QStringList& parts, const char* name, const std::vector<std::string>& ids)
{
    if (ids.empty())
        return;
    QStringList words;
    for (const std::string& id : ids)
        words.append(QString::fromStdString(id));
    parts.append(QLatin1String(name) + QLatin1Char('=') + words.join(QLatin1Char(',')));
}

std::vector<std::string> listFrom(const QString& text)
{
    std::vector<std::string> ids;
    for (const QString& id : text.split(QLatin1Char(','), Qt::SkipEmptyParts))
        ids.push_back(id.toStdString());
    return ids;
}

}

bool ReviewChoice::isMonth() const
{
    return span == ReviewSpan::ofMonth(span.from.year() / span.from.month());
}

ReviewSpan ReviewChoice::monthBeside(int months) const
{
    return ReviewSpan::ofMonth(span.from.year() / span.from.month() + std::chrono::months(months));
}

QString toText(const ReviewChoice& choice)
{
    QStringList parts{spanText(choice.span)};
    addList(parts, "shifts", choice.filter.shifts);
    addList(parts, "sections", choice.filter.sections);
    addList(parts, "items", choice.filter.items);
    if (choice.against)
        parts.append(QStringLiteral("against=") + spanText(*choice.against));
    return parts.join(QLatin1Char(';'));
}

std::optional<ReviewChoice> choiceFromText(const QString& text)
{
    const QStringList parts = text.split(QLatin1Char(';'));
    const auto span = spanFrom(parts.value(0));
    if (!span)
        return std::nullopt;
    ReviewChoice choice{.span = *span};
    for (const QString& part : parts.mid(1)) {
        const QString name = part.section(QLatin1Char('='), 0, 0);
        const QString value = part.section(QLatin1Char('='), 1);
        if (name == QLatin1String("shifts"))
            choice.filter.shifts = listFrom(value);
        else if (name == QLatin1String("sections"))
            choice.filter.sections = listFrom(value);
        else if (name == QLatin1String("items"))
            choice.filter.items = listFrom(value);
        else if (name == QLatin1String("against"))
            choice.against = spanFrom(value);
        else
            return std::nullopt;
    }
    return choice;
}

}
