// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/valuefield.h"

#include "ui/theme/theme.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyleOption>

namespace cradlepost {

ValueField::ValueField(const QString& allowed, int letters, QWidget* parent)
    : QLineEdit(parent)
    , m_allowed(allowed)
    , m_letters(letters)
{
    setFont(themeOf(*this).font(TextRole::Lead, TextWeight::SemiBold));
    setAlignment(Qt::AlignCenter);
    setLayoutDirection(Qt::LeftToRight); // numbers and dates keep their order in a mirrored window
    setInputMethodHints(Qt::ImhPreferNumbers);
    setContextMenuPolicy(Qt::NoContextMenu);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize ValueField::sizeHint() const
{
    const Theme& theme = themeOf(*this);
    const QFontMetrics metrics(font());
    return {metrics.horizontalAdvance(QString(m_letters, QLatin1Char('0'))) + 2 * theme.space(Space::Near),
        metrics.height() + 2 * theme.space(Space::Near) - theme.space(Space::Tight)};
}

QString ValueField::accepted(const QString& text) const
{
    constexpr char16_t arabicPoint = u'\u066B';
    QString kept;
    for (const QChar c : text) {
        if (c.isDigit())
            kept += QChar(u'0' + c.digitValue());
        else if (c == arabicPoint && m_allowed.contains(u'.'))
            kept += u'.';
        else if (m_allowed.contains(c) || m_allowed.contains(c.toUpper()))
            kept += c;
    }
    return kept;
}

void ValueField::keyPressEvent(QKeyEvent* event)
{
    const QString text = event->text();
    const bool character = !text.isEmpty() && text.at(0).isPrint()
        && (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier))
            == Qt::NoModifier;
    if (!character)
        return QLineEdit::keyPressEvent(event);
    event->accept();
    if (const QString kept = accepted(text); !kept.isEmpty())
        insert(kept);
}

QString ValueField::hint() const
{
    if (!text().isEmpty())
        return {};
    return m_emptyMeans.isEmpty() && hasFocus() ? m_example : m_emptyMeans;
}

/** Qt shows no placeholder in the middle of a field that has the keyboard. */
void ValueField::paintEvent(QPaintEvent* event)
{
    QLineEdit::paintEvent(event);
    const QString hint = this->hint();
    if (hint.isEmpty())
        return;
    QPainter painter(this);
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(rect(), Qt::AlignCenter, hint);
}

void ValueField::initStyleOption(QStyleOptionFrame* option) const
{
    QLineEdit::initStyleOption(option);
    if (!m_ring)
        option->state.setFlag(QStyle::State_HasFocus, false);
}

}
