// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/measureeditor.h"

#include "core/round/entry.h"

#include <QKeyEvent>

namespace cradlepost {

namespace {
constexpr int letters = 6;

ValueField* makeField(const Item& item)
{
    const bool below = std::get<MeasureRule>(item.rule).plausibleLow < Decimal{};
    return new ValueField(below ? QStringLiteral(".,-") : QStringLiteral(".,"), letters);
}
}

MeasureEditor::MeasureEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : FieldEditor(item, scene, makeField(item), parent)
{
}

Result<Answer> MeasureEditor::read() const
{
    return readMeasured(item(), value().typed()).map([](const Measured& m) { return Answer(m); });
}

QString MeasureEditor::refusal() const
{
    if (value().typed().empty())
        return tr("Type the reading, or − when there is none to read.");
    const auto number = Decimal::parse(value().typed());
    if (!number)
        return tr("%1 is not a number. Type it as the instrument shows it.").arg(value().text());
    return tr("%1 cannot be: only %2 to %3 %4 is possible. Read it again.")
        .arg(value().text(), qs(rule().plausibleLow.toString()), qs(rule().plausibleHigh.toString()),
            qs(rule().unit));
}

bool MeasureEditor::takeKey(const QKeyEvent& event)
{
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (!enter || event.isAutoRepeat() || value().typed() != "-")
        return false;
    Q_EMIT gapWanted();
    return true;
}

bool MeasureEditor::wants(const QString& text) const { return text == QLatin1String("-") && goesBelowZero(); }

QString MeasureEditor::keys() const { return goesBelowZero() ? tr("− alone, then Enter: gap.") : QString(); }

QString MeasureEditor::typedForm(const Answer& answer) const
{
    const auto* measured = std::get_if<Measured>(&answer);
    return measured != nullptr ? qs(measured->value.toString()) : QString();
}

QString MeasureEditor::company(const Answer& /*answer*/, const Judgement& /*judgement*/) const
{
    const LimitSet& set = limitsFor(item(), rule(), scene().limits);
    const QString unit = qs(rule().unit);
    if (set.low && set.high)
        //: %1 a unit, %2 and %3 limits
        return tr("%1 · %2 to %3").arg(unit, qs(set.low->toString()), qs(set.high->toString()));
    return set.low ? tr("%1 · at least %2").arg(unit, qs(set.low->toString()))
                   : tr("%1 · at most %2").arg(unit, qs(set.high->toString()));
}

}
