// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

#include <QRect>
#include <QString>

class QPainter;

namespace cradlepost {

struct KeyHintColours
{
    QColor text;
    QColor key;
};

/// A text and the key that does it, small, behind it: "Met Enter"; laid out, and kept by who paints them.
struct KeyHintInk
{
    const InkText& text;
    const InkText& key;
};

QSize keyHintSize(const KeyHintInk& ink, const Theme& theme);

/// Centred in `box`, on one base line, mirrored when the layout is.
void paintKeyHint(QPainter& painter, const QRect& box, const KeyHintInk& ink, const KeyHintColours& colours,
    const Theme& theme, Qt::LayoutDirection direction);

}
