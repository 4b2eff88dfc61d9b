// SPDX-License-Identifier: MIT
#include "ui/widgets/keyhint.h"
#include "ui/widgets/inktext.h"

#include <QFontMetrics>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

QSize keyHintSize(const KeyHint& hint, const Theme& theme)
{
    const QFontMetrics text(theme.font(TextRole::Body));
    const QFontMetrics key(theme.font(TextRole::Small));
    const int gap = hint.key.isEmpty() ? 0 : theme.px(5);
    return {text.horizontalAdvance(hint.text) + gap + key.horizontalAdvance(hint.key), text.height()};
}

void paintKeyHint(QPainter& painter, const QRect& box, const KeyHint& hint, const KeyHintColours& colours,
    const Theme& theme, Qt::LayoutDirection direction)
{
    const QFont textFont = theme.font(TextRole::Body);
    const QFont keyFont = theme.font(TextRole::Small);
    const QSize size = keyHintSize(hint, theme);
    const QRect row = QStyle::alignedRect(direction, Qt::AlignCenter, size, box);
    const int baseline = row.top() + QFontMetrics(textFont).ascent();
    const int textWidth = QFontMetrics(textFont).horizontalAdvance(hint.text);
    const int keyWidth = QFontMetrics(keyFont).horizontalAdvance(hint.key);
    const bool mirrored = direction == Qt::RightToLeft;
    painter.setFont(textFont);
    painter.setPen(colours.text);
    painter.setLayoutDirection(textDirection(hint.text, direction));
    painter.drawText(mirrored ? row.right() + 1 - textWidth : row.left(), baseline, hint.text);
    painter.setFont(keyFont);
    painter.setPen(colours.key);
    painter.setLayoutDirection(textDirection(hint.key, direction));
    painter.drawText(mirrored ? row.left() : row.right() + 1 - keyWidth, baseline, hint.key);
}

}
