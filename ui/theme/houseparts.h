// SPDX-License-Identifier: MIT
#pragma once

#include <QStyle>

class QStyleOptionSlider;

namespace cradlepost {

struct Theme;

int comboArrowWidth(const Theme& theme);
int spinArrowWidth(const Theme& theme);

// Where the parts of Qt's composite controls are, left to right; HouseStyle mirrors them.
QRect comboBoxPart(const QStyleOptionComplex& option, bool arrow, const Theme& theme);
QRect spinBoxPart(const QStyleOptionComplex& option, QStyle::SubControl part, const Theme& theme);

/// No arrow buttons: the groove is the whole bar.
QRect scrollBarPart(const QStyleOptionSlider& option, QStyle::SubControl part, const Theme& theme);

}
