// SPDX-License-Identifier: MIT
#include "ui/widgets/wraplabel.h"
#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

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

QSize WrapLabel::sizeHint() const
{
    const QFont font = themeOf(*this).font(m_role, m_weight);
    const InkText ink(m_text, font, layoutDirection());
    const int width = std::min(ink.naturalWidth(), font.pixelSize() * readableLine / 2);
    return {width, ink.height(width)};
}

QSize WrapLabel::minimumSizeHint() const
{
    const InkText ink(m_text, themeOf(*this).font(m_role, m_weight), layoutDirection());
    return {ink.widestWord(), ink.height(ink.naturalWidth())};
}

int WrapLabel::heightForWidth(int width) const
{
    return InkText(m_text, themeOf(*this).font(m_role, m_weight), layoutDirection()).height(width);
}

void WrapLabel::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    QPainter painter(this);
    painter.setPen(isEnabled() ? toneColour(m_tone, theme.roles) : theme.roles.inkFaint);
    InkText(m_text, theme.font(m_role, m_weight), layoutDirection(), m_alignment).draw(painter, rect());
}

}
