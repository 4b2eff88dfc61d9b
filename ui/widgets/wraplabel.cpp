// SPDX-License-Identifier: MIT
#include "ui/widgets/wraplabel.h"
#include "ui/theme/theme.h"

#include <QEvent>
#include <QPainter>

namespace cradlepost {

namespace {
/// Letters on a line that reads well; a longer text wraps there unless the layout gives it more room.
constexpr int readableLine = 60;

QColor toneColour(Tone tone, const Roles& roles)
{
    switch (tone) {
    case Tone::Ink:
        return roles.ink;
    case Tone::Soft:
        return roles.inkSoft;
    case Tone::Hint:
        return roles.inkHint;
    case Tone::Accent:
        return roles.accent;
    case Tone::Warning:
        return roles.warning;
    }
    return roles.ink;
}
}

WrapLabel::WrapLabel(const QString& text, TextRole role, QWidget* parent)
    : QWidget(parent)
    , m_role(role)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setText(text);
}

void WrapLabel::setText(const QString& text)
{
    if (m_text == text)
        return;
    m_text = text;
    m_ink.clear();
    setAccessibleName(plainText(text));
    updateGeometry();
    update();
}

void WrapLabel::setTone(Tone tone)
{
    m_tone = tone;
    update();
}

void WrapLabel::setWeight(TextWeight weight)
{
    m_weight = weight;
    updateGeometry();
    update();
}

void WrapLabel::setTextAlignment(Qt::Alignment alignment)
{
    m_alignment = alignment;
    update();
}

const InkText& WrapLabel::ink() const
{
    return m_ink.text(m_text, themeOf(*this).font(m_role, m_weight), layoutDirection(), m_alignment);
}

QSize WrapLabel::sizeHint() const
{
    const int width
        = std::min(ink().naturalWidth(), themeOf(*this).font(m_role).pixelSize() * readableLine / 2);
    return {width, ink().height(width)};
}

QSize WrapLabel::minimumSizeHint() const { return {ink().widestWord(), ink().height(ink().naturalWidth())}; }

int WrapLabel::heightForWidth(int width) const { return ink().height(width); }

void WrapLabel::paintEvent(QPaintEvent* /*event*/)
{
    const Roles& roles = themeOf(*this).roles;
    QPainter painter(this);
    painter.setPen(isEnabled() ? toneColour(m_tone, roles) : roles.inkFaint);
    ink().draw(painter, rect());
}

void WrapLabel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::LayoutDirectionChange)
        m_ink.clear();
    QWidget::changeEvent(event);
}

}
