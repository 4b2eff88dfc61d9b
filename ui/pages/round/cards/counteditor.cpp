// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/counteditor.h"

#include "core/round/entry.h"

namespace cradlepost {

namespace {

constexpr int lettersByLot = 19;
constexpr int lettersPlain = 6;

ValueField* makeField(const Item& item)
{
    return std::get<CountRule>(item.rule).expires ? new ValueField(QStringLiteral(" ,-/"), lettersByLot)
                                                  : new ValueField({}, lettersPlain);
}

/** As on the pack: the month alone when its last day is meant. */
QString expiryTyped(Date date)
{
    if (date.day() != (date.year() / date.month() / std::chrono::last).day())
        return qs(toIso(date));
    return QStringLiteral("%1/%2")
        .arg(static_cast<unsigned>(date.month()), 2, 10, QLatin1Char('0'))
        .arg(static_cast<int>(date.year()));
}

}

CountEditor::CountEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : FieldEditor(item, scene, makeField(item), parent)
{
    if (rule().expires)
        value().setExample(tr("like 6 03/2027"));
}

Result<Answer> CountEditor::read() const
{
    return readCounted(item(), value().typed()).map([](const Counted& counted) { return Answer(counted); });
}

QString CountEditor::refusal() const
{
    if (value().typed().empty())
        return tr("Type how many there are, 0 for none.");
    if (rule().expires)
        return tr(
            "Type how many and their expiry, each lot after a comma: 6 03/2027, 4 12/2026. 0 for none.");
    return tr("%1 is not a number of pieces.").arg(value().text());
}

bool CountEditor::wants(const QString& text) const
{
    const bool within = !value().text().isEmpty() && !value().isMarked();
    return rule().expires && within && (text == QLatin1String("-") || text == QLatin1String("/"));
}

QString CountEditor::keys() const
{
    return rule().expires ? tr("How many, a blank, the expiry; the next lot after a comma.") : QString();
}

QString CountEditor::typedForm(const Answer& answer) const
{
    const auto* counted = std::get_if<Counted>(&answer);
    if (counted == nullptr)
        return {};
    QStringList lots;
    for (const Lot& lot : counted->lots) {
        const QString quantity = QString::number(lot.quantity);
        lots << (lot.expiry ? quantity + QLatin1Char(' ') + expiryTyped(*lot.expiry) : quantity);
    }
    return lots.join(QStringLiteral(", "));
}

QString CountEditor::company(const Answer& answer, const Judgement& /*judgement*/) const
{
    const auto* counted = std::get_if<Counted>(&answer);
    if (counted == nullptr || !rule().expires)
        return limits();
    //: %1 pieces that are not expired, %2 "at least 10"
    const QString usable = tr("%1 in date · %2").arg(usablePieces(*counted, scene().lastDay)).arg(limits());
    const QString gone = expired(*counted);
    return gone.isEmpty() ? usable : tr("%1, expired: %2").arg(usable, gone);
}

QString CountEditor::expired(const Counted& answer) const
{
    QStringList lots;
    for (const Lot& lot : answer.lots) {
        if (lot.quantity > 0 && lot.expiry && *lot.expiry < scene().lastDay)
            //: a lot: %1 pieces, %2 its expiry
            lots << tr("%1 of %2").arg(QString::number(lot.quantity), expiryTyped(*lot.expiry));
    }
    return lots.join(QStringLiteral(", "));
}

}
