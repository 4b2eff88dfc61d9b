// SPDX-License-Identifier: MIT
#include "ui/widgets/choicebutton.h"
#include "ui/theme/plate.h"
#include "ui/widgets/keyhint.h"

#include <QEvent>
#include <QPainter>

namespace cradlepost {

ChoiceButton::ChoiceButton(const QString& text, const QString& keyHint, QWidget* parent)
    : QAbstractButton(parent)
    , m_keyHint(keyHint)
{
    setText(text);
    setCheckable(true);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleDescription(keyHint);
}

void ChoiceButton::setKeyHint(const QString& keyHint)
{
    m_keyHint = keyHint;
    setAccessibleDescription(keyHint);
    updateGeometry();
    update();
}

QSize ChoiceButton::sizeHint() const
{
    const Theme& theme = themeOf(*this);
    return keyHintSize(label(), theme) + QSize(2 * theme.space(Space::Apart), 2 * theme.space(Space::Near));
}

void ChoiceButton::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    const Roles& roles = theme.roles;
    const bool lit = isEnabled() && (underMouse() || isDown());
    QPainter painter(this);
    KeyHintColours colours{roles.ink, roles.inkHint};
    if (!isEnabled()) {
        paintPlate(painter, rect(), isChecked() ? roles.line : roles.sheet, roles.line);
        colours = {roles.inkFaint, roles.inkFaint};
    } else if (isChecked()) {
        // Drawn smaller when the ring is around it: teal beside ink alone would not be seen.
        const int inset = hasFocus() ? 4 : 0;
        paintPlate(painter, rect().adjusted(inset, inset, -inset, -inset), roles.chosen, QColor(),
            cornerRadius - inset / 2.0);
        colours = {roles.onChosen, roles.onChosenSoft};
    } else {
        paintPlate(painter, rect(), lit ? roles.accentWash : roles.sheet, lit ? roles.ink : roles.edge);
    }
    paintKeyHint(painter, rect(), label(), colours, theme, layoutDirection());
    if (hasFocus())
        paintFocusRing(painter, rect(), theme);
}

KeyHintInk ChoiceButton::label() const
{
    const Theme& theme = themeOf(*this);
    return {m_ink.text(text(), theme.font(TextRole::Body), layoutDirection()),
        m_ink.text(m_keyHint, theme.font(TextRole::Small), layoutDirection())};
}

void ChoiceButton::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::LayoutDirectionChange)
        m_ink.clear();
    QAbstractButton::changeEvent(event);
}

}
