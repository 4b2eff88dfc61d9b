// SPDX-License-Identifier: MIT
#pragma once

class QPainter;
class QRect;
class QStyleOption;
class QStyleOptionComboBox;
class QStyleOptionSlider;
class QStyleOptionSpinBox;
class QStyle;
class QWidget;

namespace cradlepost {

struct Theme;

bool isPrimary(const QWidget* widget);

// Each paints one control of Qt's in the house's manner; HouseStyle decides when.
void paintButtonPlate(
    QPainter& painter, const QStyleOption& option, const QWidget* widget, const Theme& theme);
void paintToolPlate(QPainter& painter, const QStyleOption& option, const Theme& theme);
void paintFieldPlate(QPainter& painter, const QStyleOption& option, const Theme& theme);
void paintCheckBox(QPainter& painter, const QStyleOption& option, const Theme& theme);
void paintRadioButton(QPainter& painter, const QStyleOption& option, const Theme& theme);
/// A small chevron that points down, or up.
void paintChevron(QPainter& painter, const QRect& box, bool up, bool enabled, const Theme& theme);
void paintComboBox(
    QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow, const Theme& theme);
void paintScrollThumb(
    QPainter& painter, const QStyleOptionSlider& option, const QRect& thumb, const Theme& theme);
void paintSpinBox(QPainter& painter, const QStyleOptionSpinBox& option, const QStyle& style,
    const QWidget* widget, const Theme& theme);
void paintItemPlate(QPainter& painter, const QStyleOption& option, const Theme& theme);

}
