// SPDX-License-Identifier: MIT
#include "ui/report/paper.h"

#include <cmath>

namespace cradlepost {

namespace {
constexpr double widthInches = 210.0 / 25.4; // ISO 216, A4
constexpr double heightInches = 297.0 / 25.4;
constexpr double marginInches = 16.0 / 25.4; // wider than any office printer's blind edge
constexpr int headHeight = 20;
constexpr int headGap = 24;
}

Theme paperTheme()
{
    Theme theme = makeTheme(Scheme::Light);
    for (QFont& font : theme.fonts)
        font.setHintingPreference(QFont::PreferNoHinting);
    return theme;
}

Paper::Paper(Qt::LayoutDirection direction, double unitsPerInch)
    : m_theme(paperTheme())
    , m_direction(direction)
    , m_unitsPerInch(unitsPerInch)
{
}

QSize Paper::size() const
{
    return {static_cast<int>(widthInches * m_unitsPerInch), static_cast<int>(heightInches * m_unitsPerInch)};
}

QRect Paper::body() const
{
    const int margin = static_cast<int>(std::lround(marginInches * m_unitsPerInch));
    const int outside = margin * 3 / 4 + headHeight + headGap;
    return QRect({}, size()).adjusted(margin, outside, -margin, -outside);
}

QRect Paper::head() const
{
    const QRect inner = body();
    return {inner.left(), inner.top() - headGap - headHeight, inner.width(), headHeight};
}

QRect Paper::foot() const
{
    const QRect inner = body();
    return {inner.left(), inner.bottom() + 1 + headGap, inner.width(), headHeight};
}

double Paper::toMillimetres(int units) const { return units / m_unitsPerInch * 25.4; }

const InkText& Paper::ink(
    const QString& text, TextRole role, TextWeight weight, Qt::Alignment alignment) const
{
    return m_texts.text(text, m_theme.font(role, weight), m_direction, alignment);
}

QRect Paper::seen(const QRect& box, const QRect& whole) const
{
    if (m_direction == Qt::LeftToRight)
        return box;
    return {whole.left() + whole.right() - box.right(), box.top(), box.width(), box.height()};
}

}
