// SPDX-License-Identifier: MIT
#include "ui/theme/housecontrols.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <QPainter>
#include <QPainterPath>
#include <QStyleOption>
#include <QVariant>
#include <QWidget>

namespace cradlepost {

namespace {
bool has(const QStyleOption& option, QStyle::StateFlag flag) { return option.state.testFlag(flag); }

QColor blended(const QColor& base, const QColor& over, double share)
{
    const auto mix = [share](int a, int b) { return static_cast<int>(a + (b - a) * share); };
    return {mix(base.red(), over.red()), mix(base.green(), over.green()), mix(base.blue(), over.blue())};
}

QColor controlEdge(const QStyleOption& option, const Theme& theme)
{
    if (!has(option, QStyle::State_Enabled))
        return theme.roles.line;
    return has(option, QStyle::State_MouseOver) ? theme.roles.ink : theme.roles.edge;
}

void paintTick(QPainter& painter, const QRectF& box, const QColor& colour)
{
    QPainterPath tick;
    tick.moveTo(box.left() + box.width() * 0.24, box.top() + box.height() * 0.52);
    tick.lineTo(box.left() + box.width() * 0.43, box.top() + box.height() * 0.71);
    tick.lineTo(box.left() + box.width() * 0.77, box.top() + box.height() * 0.31);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, box.width() * 0.13, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(tick);
}
}

bool isPrimary(const QWidget* widget) { return widget && widget->property("primary").toBool(); }

void paintButtonPlate(
    QPainter& painter, const QStyleOption& option, const QWidget* widget, const Theme& theme)
{
    const Roles& r = theme.roles;
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool down = has(option, QStyle::State_Sunken) || has(option, QStyle::State_On);
    const bool primary = isPrimary(widget) && enabled;
    QColor fill = primary ? r.accent : r.sheet;
    if (enabled && (down || has(option, QStyle::State_MouseOver)))
        fill = primary ? blended(r.accent, r.ink, down ? 0.25 : 0.12) : r.accentWash;
    paintPlate(painter, option.rect, fill, primary ? QColor() : controlEdge(option, theme));
    if (!has(option, QStyle::State_HasFocus))
        return;
    // On the filled button the ring would vanish: a line of the sheet keeps it apart.
    if (primary) {
        const auto within = QRectF(option.rect).adjusted(3, 3, -3, -3);
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(r.onAccent, focusRingWidth));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(within, cornerRadius - 2, cornerRadius - 2);
        painter.restore();
    } else {
        paintFocusRing(painter, option.rect, theme);
    }
}

void paintToolPlate(QPainter& painter, const QStyleOption& option, const Theme& theme)
{
    const bool raised = !has(option, QStyle::State_AutoRaise);
    const bool lit = has(option, QStyle::State_MouseOver) || has(option, QStyle::State_On)
        || has(option, QStyle::State_Sunken);
    if (raised || (lit && has(option, QStyle::State_Enabled)))
        paintPlate(painter, option.rect, lit ? theme.roles.accentWash : theme.roles.sheet,
            raised ? controlEdge(option, theme) : QColor());
    if (has(option, QStyle::State_HasFocus))
        paintFocusRing(painter, option.rect, theme);
}

void paintFieldPlate(QPainter& painter, const QStyleOption& option, const Theme& theme)
{
    const bool enabled = has(option, QStyle::State_Enabled);
    paintPlate(
        painter, option.rect, enabled ? theme.roles.sheet : theme.roles.paper, controlEdge(option, theme), 4);
    if (has(option, QStyle::State_HasFocus))
        paintFocusRing(painter, option.rect, theme, 4);
}

void paintCheckBox(QPainter& painter, const QStyleOption& option, const Theme& theme)
{
    const Roles& r = theme.roles;
    const bool enabled = has(option, QStyle::State_Enabled);
    const bool on = has(option, QStyle::State_On);
    const bool partly = has(option, QStyle::State_NoChange);
    const bool filled = (on || partly) && enabled;
    paintPlate(
        painter, option.rect, filled ? r.accent : r.sheet, filled ? QColor() : controlEdge(option, theme), 3);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box(option.rect);
    if (on)
        paintTick(painter, box, enabled ? r.onAccent : r.inkFaint);
    else if (partly)
        painter.fillRect(QRectF(box.left() + box.width() * 0.25, box.center().y() - box.height() * 0.06,
                             box.width() * 0.5, box.height() * 0.12),
            enabled ? r.onAccent : r.inkFaint);
    painter.restore();
}

void paintRadioButton(QPainter& painter, const QStyleOption& option, const Theme& theme)
{
    const Roles& r = theme.roles;
    const bool enabled = has(option, QStyle::State_Enabled);
    const double radius = option.rect.width() / 2.0;
    const bool on = has(option, QStyle::State_On);
    paintPlate(painter, option.rect, r.sheet, on && enabled ? r.accent : controlEdge(option, theme), radius);
    if (on) {
        const double inset = option.rect.width() * 0.27;
        paintPlate(painter, QRectF(option.rect).adjusted(inset, inset, -inset, -inset),
            enabled ? r.accent : r.inkFaint, QColor(), radius);
    }
}

void paintChevron(QPainter& painter, const QRect& box, bool up, bool enabled, const Theme& theme)
{
    const double half = theme.px(4);
    const double rise = up ? -half / 2 : half / 2;
    const QPointF middle = QRectF(box).center();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor colour = enabled ? theme.roles.inkSoft : theme.roles.inkFaint;
    painter.setPen(QPen(colour, theme.px(1.6), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF(
        {middle + QPointF(-half, -rise), middle + QPointF(0, rise), middle + QPointF(half, -rise)}));
    painter.restore();
}

void paintComboBox(
    QPainter& painter, const QStyleOptionComboBox& option, const QRect& arrow, const Theme& theme)
{
    paintFieldPlate(painter, option, theme);
    paintChevron(painter, arrow, false, has(option, QStyle::State_Enabled), theme);
}

void paintSpinBox(QPainter& painter, const QStyleOptionSpinBox& option, const QStyle& style,
    const QWidget* widget, const Theme& theme)
{
    if (option.frame)
        paintFieldPlate(painter, option, theme);
    if (option.buttonSymbols == QAbstractSpinBox::NoButtons)
        return;
    const bool enabled = has(option, QStyle::State_Enabled);
    const auto part = [&](QStyle::SubControl which) {
        return style.subControlRect(QStyle::CC_SpinBox, &option, which, widget);
    };
    paintChevron(painter, part(QStyle::SC_SpinBoxUp), true,
        enabled && option.stepEnabled.testFlag(QAbstractSpinBox::StepUpEnabled), theme);
    paintChevron(painter, part(QStyle::SC_SpinBoxDown), false,
        enabled && option.stepEnabled.testFlag(QAbstractSpinBox::StepDownEnabled), theme);
}

void paintScrollThumb(
    QPainter& painter, const QStyleOptionSlider& option, const QRect& thumb, const Theme& theme)
{
    if (option.maximum <= option.minimum)
        return;
    const bool active = has(option, QStyle::State_MouseOver) || has(option, QStyle::State_Sunken);
    const QRectF bar = QRectF(thumb).adjusted(2, 2, -2, -2);
    const double radius = std::min(bar.width(), bar.height()) / 2.0;
    paintPlate(painter, bar, active ? theme.roles.inkSoft : theme.roles.edge, QColor(), radius);
}

void paintItemPlate(QPainter& painter, const QStyleOption& option, const Theme& theme)
{
    if (has(option, QStyle::State_Selected))
        painter.fillRect(option.rect, theme.roles.accentWash);
}

}
