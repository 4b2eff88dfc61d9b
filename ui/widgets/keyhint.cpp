// SPDX-License-Identifier: MIT
#include "ui/widgets/keyhint.h"

#include <QPainter>
#include <QStyle>

namespace cradlepost {

namespace {
int gapBetween(const KeyHintInk& ink, const Theme& theme) { return ink.key.isEmpty() ? 0 : theme.px(5); }
}

QSize keyHintSize(const KeyHintInk& ink, const Theme& theme)
{
    const int key = ink.key.isEmpty() ? 0 : ink.key.naturalWidth();
    return {ink.text.naturalWidth() + gapBetween(ink, theme) + key, ink.text.height(1 << 20)};
}

void paintKeyHint(QPainter& painter, const QRect& box, const KeyHintInk& ink, const KeyHintColours& colours,
    const Theme& theme, Qt::LayoutDirection direction)
{
    const QRect row = QStyle::alignedRect(direction, Qt::AlignCenter, keyHintSize(ink, theme), box);
    const int textWidth = ink.text.naturalWidth();
    const QRect text(row.left(), row.top(), textWidth, row.height());
    painter.setPen(colours.text);
    ink.text.draw(painter, QStyle::visualRect(direction, row, text));
    if (ink.key.isEmpty())
        return;
    const int skip = textWidth + gapBetween(ink, theme);
    const QRect key(row.left() + skip, row.top() + ink.text.baseline() - ink.key.baseline(),
        ink.key.naturalWidth(), row.height());
    painter.setPen(colours.key);
    ink.key.draw(painter, QStyle::visualRect(direction, row, key));
}

}
