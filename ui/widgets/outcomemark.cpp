// SPDX-License-Identifier: MIT
#include "ui/widgets/outcomemark.h"
#include "ui/theme/theme.h"

#include <QEvent>
#include <QPainter>

namespace cradlepost {

namespace {
QRectF centred(const QRectF& box, double side)
{
    return {box.center().x() - side / 2.0, box.center().y() - side / 2.0, side, side};
}

void paintDisc(QPainter& painter, const QRectF& box, double side, const QColor& colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(centred(box, side * 0.62));
}

void paintDiamond(QPainter& painter, const QRectF& box, double side, const QColor& colour, bool filled)
{
    const double stroke = filled ? 0.0 : std::max(1.6, side * 0.12);
    const double reach = side / 2.0 - stroke * 0.7;
    const QPointF middle = box.center();
    painter.setPen(
        filled ? QPen(Qt::NoPen) : QPen(colour, stroke, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.setBrush(filled ? QBrush(colour) : QBrush(Qt::NoBrush));
    painter.drawPolygon(QPolygonF({middle + QPointF(0, -reach), middle + QPointF(reach, 0),
        middle + QPointF(0, reach), middle + QPointF(-reach, 0)}));
}

/// Eight dots; a dashed pen would start and end anywhere.
void paintDottedRing(QPainter& painter, const QRectF& box, double side, const QColor& colour)
{
    constexpr int dots = 8;
    const double dot = side * 0.13;
    const double radius = side * 0.31;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.save();
    painter.translate(box.center());
    for (int i = 0; i < dots; ++i) {
        painter.drawEllipse(QPointF(0, -radius), dot / 2.0, dot / 2.0);
        painter.rotate(360.0 / dots);
    }
    painter.restore();
}

void paintHalfDisc(QPainter& painter, const QRectF& box, double side, const QColor& colour)
{
    const QRectF disc = centred(box, side * 0.8).translated(0, side * 0.18);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPie(disc, 0, 180 * 16);
}

void paintBar(QPainter& painter, const QRectF& box, double side, const QColor& colour)
{
    const double width = side * 0.56;
    const double height = std::max(2.0, side * 0.15);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRect(QRectF(box.center().x() - width / 2.0, box.center().y() - height / 2.0, width, height));
}
}

void paintMark(QPainter& painter, const QRectF& box, Mark mark, const Roles& roles)
{
    const double side = std::min(box.width(), box.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    switch (mark) {
    case Mark::Met:
        paintDisc(painter, box, side, roles.accent);
        break;
    case Mark::GapCritical:
        paintDiamond(painter, box, side, roles.warning, true);
        break;
    case Mark::Gap:
        paintDiamond(painter, box, side, roles.warning, false);
        break;
    case Mark::DoesNotApply:
        paintBar(painter, box, side, roles.inkSoft);
        break;
    case Mark::NotChecked:
        paintDottedRing(painter, box, side, roles.inkHint);
        break;
    case Mark::Late:
        paintHalfDisc(painter, box, side, roles.amber);
        break;
    }
    painter.restore();
}

QPixmap markPixmap(Mark mark, int size, double ratio, const Roles& roles)
{
    QPixmap pixmap(QSize(size, size) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paintMark(painter, QRectF(0, 0, size, size), mark, roles);
    return pixmap;
}

QIcon markIcon(Mark mark, int size, const Roles& roles)
{
    QIcon icon;
    for (const double ratio : {1.0, 2.0})
        icon.addPixmap(markPixmap(mark, size, ratio, roles));
    return icon;
}

OutcomeMark::OutcomeMark(Mark mark, QWidget* parent)
    : QWidget(parent)
    , m_mark(mark)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    nameIt();
}

QString OutcomeMark::word(Mark mark)
{
    switch (mark) {
    case Mark::Met:
        return tr("Met");
    case Mark::GapCritical:
        return tr("Critical gap");
    case Mark::Gap:
        return tr("Gap");
    case Mark::DoesNotApply:
        return tr("Does not apply");
    case Mark::NotChecked:
        return tr("Not checked");
    case Mark::Late:
        return tr("Late");
    }
    return {};
}

void OutcomeMark::setMark(Mark mark)
{
    if (m_mark == mark)
        return;
    m_mark = mark;
    nameIt();
    update();
}

QSize OutcomeMark::sizeHint() const
{
    const int side = themeOf(*this).px(16);
    return {side, side};
}

void OutcomeMark::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    paintMark(painter, rect(), m_mark, themeOf(*this).roles);
}

void OutcomeMark::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        nameIt();
    QWidget::changeEvent(event);
}

void OutcomeMark::nameIt()
{
    setAccessibleName(word(m_mark));
    setToolTip(word(m_mark));
}

}
