// SPDX-License-Identifier: MIT
#include "ui/theme/houseparts.h"
#include "ui/theme/theme.h"

#include <algorithm>
#include <QStyleOption>

namespace cradlepost {

int comboArrowWidth(const Theme& theme) { return theme.px(28); }

int spinArrowWidth(const Theme& theme) { return theme.px(24); }

QRect comboBoxPart(const QStyleOptionComplex& option, bool arrow, const Theme& theme)
{
    const int width = comboArrowWidth(theme);
    if (arrow)
        return {option.rect.right() + 1 - width, option.rect.top(), width, option.rect.height()};
    return option.rect.adjusted(theme.space(Space::Close), 1, -width, -1);
}

QRect spinBoxPart(const QStyleOptionComplex& option, QStyle::SubControl part, const Theme& theme)
{
    const int width = spinArrowWidth(theme);
    const QRect box = option.rect;
    const QRect arrows(box.right() + 1 - width, box.top() + 1, width - 1, box.height() - 2);
    switch (part) {
    case QStyle::SC_SpinBoxUp:
        return arrows.adjusted(0, 0, 0, -arrows.height() / 2);
    case QStyle::SC_SpinBoxDown:
        return arrows.adjusted(0, arrows.height() / 2, 0, 0);
    case QStyle::SC_SpinBoxEditField:
        return box.adjusted(theme.space(Space::Close), 2, -width, -2);
    default:
        return box;
    }
}

QRect scrollBarPart(const QStyleOptionSlider& option, QStyle::SubControl part, const Theme& theme)
{
    const bool level = option.orientation == Qt::Horizontal;
    const QRect all = option.rect;
    const int length = level ? all.width() : all.height();
    const double range = static_cast<double>(option.maximum) - option.minimum;
    const double share = range <= 0 ? 1.0 : option.pageStep / (range + option.pageStep);
    const int thumb = std::clamp(static_cast<int>(length * share), std::min(theme.px(32), length), length);
    const int start = QStyle::sliderPositionFromValue(
        option.minimum, option.maximum, option.sliderPosition, length - thumb, option.upsideDown);
    const auto span = [&](int from, int size) {
        return level ? QRect(all.left() + from, all.top(), size, all.height())
                     : QRect(all.left(), all.top() + from, all.width(), size);
    };
    switch (part) {
    case QStyle::SC_ScrollBarGroove:
        return all;
    case QStyle::SC_ScrollBarSlider:
        return span(start, thumb);
    case QStyle::SC_ScrollBarSubPage:
        return span(0, start);
    case QStyle::SC_ScrollBarAddPage:
        return span(start + thumb, length - start - thumb);
    default:
        return {};
    }
}

}
