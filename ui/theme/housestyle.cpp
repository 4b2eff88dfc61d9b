// SPDX-License-Identifier: MIT
#include "ui/theme/housestyle.h"
#include "ui/theme/housecontrols.h"
#include "ui/theme/houseparts.h"
#include "ui/theme/plate.h"

#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

namespace cradlepost {

namespace {
/// How much wider the label of the primary button, which is semibold, is than what Qt measured.
int semiboldSurplus(const QStyleOption* option, const QWidget* widget)
{
    const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
    if (!button || !isPrimary(widget))
        return 0;
    QFont font = widget->font();
    font.setWeight(QFont::DemiBold);
    return std::max(0,
        QFontMetrics(font).horizontalAdvance(button->text)
            - button->fontMetrics.horizontalAdvance(button->text));
}
}

HouseStyle::HouseStyle(const Theme& theme)
    : QProxyStyle(QStringLiteral("Fusion"))
    , m_theme(theme)
{
}

QPalette HouseStyle::standardPalette() const { return paletteOf(m_theme); }

int HouseStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const
{
    switch (metric) {
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
    case PM_ButtonDefaultIndicator:
        return 0;
    case PM_DefaultFrameWidth:
    case PM_ComboBoxFrameWidth:
    case PM_SpinBoxFrameWidth:
        return 1;
    case PM_ScrollBarExtent:
        return m_theme.px(10);
    case PM_ScrollBarSliderMin:
        return m_theme.px(32);
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return m_theme.px(18);
    case PM_CheckBoxLabelSpacing:
    case PM_RadioButtonLabelSpacing:
        return m_theme.space(Space::Close);
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
        return m_theme.space(Space::Near);
    case PM_LayoutLeftMargin:
    case PM_LayoutRightMargin:
    case PM_LayoutTopMargin:
    case PM_LayoutBottomMargin:
        return m_theme.space(Space::Apart);
    case PM_ToolTipLabelFrameWidth:
        return m_theme.space(Space::Close);
    default:
        return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

int HouseStyle::styleHint(
    StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* returnData) const
{
    switch (hint) {
    case SH_Widget_Animation_Duration:
    case SH_EtchDisabledText:
    case SH_DitherDisabledText:
    case SH_DialogButtonBox_ButtonsHaveIcons:
    case SH_ComboBox_Popup:
    case SH_ScrollBar_Transient:
    case SH_ToolTip_FallAsleepDelay:
        return 0;
    case SH_ItemView_ShowDecorationSelected:
        return 1;
    default:
        return QProxyStyle::styleHint(hint, option, widget, returnData);
    }
}

QSize HouseStyle::sizeFromContents(
    ContentsType type, const QStyleOption* option, const QSize& size, const QWidget* widget) const
{
    QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
    const int control = option ? option->fontMetrics.height() + 2 * m_theme.space(Space::Close) : 0;
    if (type == CT_PushButton) {
        result.setWidth(size.width() + semiboldSurplus(option, widget) + 2 * m_theme.space(Space::Apart));
        result.setHeight(std::max(size.height(), control + m_theme.space(Space::Tight)));
    } else if (type == CT_LineEdit || type == CT_ComboBox || type == CT_SpinBox) {
        result.setHeight(std::max(size.height(), control));
        if (type == CT_ComboBox)
            result.setWidth(size.width() + comboArrowWidth(m_theme) + 2 * m_theme.space(Space::Close));
        if (type == CT_SpinBox)
            result.setWidth(size.width() + spinArrowWidth(m_theme) + 2 * m_theme.space(Space::Close));
    } else if (type == CT_ItemViewItem) {
        result.setHeight(std::max(result.height(), control - m_theme.space(Space::Tight)));
    }
    return result;
}

QRect HouseStyle::subControlRect(
    ComplexControl control, const QStyleOptionComplex* option, SubControl part, const QWidget* widget) const
{
    QRect box;
    switch (control) {
    case CC_ComboBox:
        if (part != SC_ComboBoxArrow && part != SC_ComboBoxEditField)
            return QProxyStyle::subControlRect(control, option, part, widget);
        box = comboBoxPart(*option, part == SC_ComboBoxArrow, m_theme);
        break;
    case CC_SpinBox:
        box = spinBoxPart(*option, part, m_theme);
        break;
    case CC_ScrollBar:
        if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option))
            box = scrollBarPart(*bar, part, m_theme);
        break;
    default:
        return QProxyStyle::subControlRect(control, option, part, widget);
    }
    return visualRect(option->direction, option->rect, box);
}

QRect HouseStyle::subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const
{
    const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
    if (element == SE_LineEditContents && frame && frame->lineWidth > 0) {
        const int side = m_theme.space(Space::Close);
        return option->rect.adjusted(side, 1, -side, -1);
    }
    return QProxyStyle::subElementRect(element, option, widget);
}

void HouseStyle::drawPrimitive(
    PrimitiveElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const
{
    switch (element) {
    case PE_PanelButtonCommand:
        return paintButtonPlate(*painter, *option, widget, m_theme);
    case PE_PanelButtonTool:
        return paintToolPlate(*painter, *option, m_theme);
    case PE_PanelLineEdit:
    case PE_FrameLineEdit:
        if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
            !frame || frame->lineWidth > 0)
            paintFieldPlate(*painter, *option, m_theme);
        return;
    case PE_IndicatorCheckBox:
    case PE_IndicatorItemViewItemCheck:
        return paintCheckBox(*painter, *option, m_theme);
    case PE_IndicatorRadioButton:
        return paintRadioButton(*painter, *option, m_theme);
    case PE_FrameFocusRect:
        return paintFocusRing(*painter, option->rect, m_theme, 3);
    case PE_PanelItemViewItem:
    case PE_PanelItemViewRow:
        return paintItemPlate(*painter, *option, m_theme);
    case PE_PanelTipLabel:
        return paintPlate(*painter, option->rect, m_theme.roles.sheet, m_theme.roles.edge, 0);
    case PE_FrameDefaultButton:
    case PE_FrameButtonTool:
    case PE_PanelScrollAreaCorner:
        return;
    default:
        return QProxyStyle::drawPrimitive(element, option, painter, widget);
    }
}

void HouseStyle::drawControl(
    ControlElement element, const QStyleOption* option, QPainter* painter, const QWidget* widget) const
{
    const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
    if (element == CE_PushButton && button) {
        // Fusion would draw its own dotted focus on top; the plate has drawn the ring.
        proxy()->drawPrimitive(PE_PanelButtonCommand, option, painter, widget);
        proxy()->drawControl(CE_PushButtonLabel, option, painter, widget);
        return;
    }
    if (element == CE_PushButtonLabel && button && isPrimary(widget)
        && button->state.testFlag(State_Enabled)) {
        QStyleOptionButton filled(*button);
        filled.palette.setColor(QPalette::ButtonText, m_theme.roles.onAccent);
        painter->save();
        QFont font = painter->font();
        font.setWeight(QFont::DemiBold);
        painter->setFont(font);
        QProxyStyle::drawControl(element, &filled, painter, widget);
        painter->restore();
        return;
    }
    if (element == CE_ItemViewItem) {
        if (const auto* item = qstyleoption_cast<const QStyleOptionViewItem*>(option)) {
            QStyleOptionViewItem plain(*item); // selected rows keep their ink: the wash is light
            plain.palette.setColor(QPalette::HighlightedText, m_theme.roles.ink);
            QProxyStyle::drawControl(element, &plain, painter, widget);
            return;
        }
    }
    QProxyStyle::drawControl(element, option, painter, widget);
}

void HouseStyle::drawComplexControl(
    ComplexControl control, const QStyleOptionComplex* option, QPainter* painter, const QWidget* widget) const
{
    if (const auto* box = qstyleoption_cast<const QStyleOptionComboBox*>(option);
        control == CC_ComboBox && box) {
        paintComboBox(
            *painter, *box, proxy()->subControlRect(control, option, SC_ComboBoxArrow, widget), m_theme);
        return;
    }
    if (const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
        control == CC_ScrollBar && bar) {
        paintScrollThumb(
            *painter, *bar, proxy()->subControlRect(control, option, SC_ScrollBarSlider, widget), m_theme);
        return;
    }
    if (const auto* box = qstyleoption_cast<const QStyleOptionSpinBox*>(option);
        control == CC_SpinBox && box) {
        paintSpinBox(*painter, *box, *proxy(), widget, m_theme);
        return;
    }
    QProxyStyle::drawComplexControl(control, option, painter, widget);
}

}
