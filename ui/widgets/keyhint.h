// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"

#include <QRect>
#include <QString>

class QPainter;

namespace cradlepost {

/// A text with the key that does it, small, behind it: "Met Enter".
struct KeyHint
{
    QString text;
    QString key; ///< empty: the text stands alone
};

struct KeyHintColours
{
    QColor text;
    QColor key;
};

QSize keyHintSize(const KeyHint& hint, const Theme& theme);

/// Centred in `box`, on one base line, mirrored when the layout is.
void paintKeyHint(QPainter& painter, const QRect& box, const KeyHint& hint, const KeyHintColours& colours,
    const Theme& theme, Qt::LayoutDirection direction);

}
