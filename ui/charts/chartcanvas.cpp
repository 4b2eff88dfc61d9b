// SPDX-License-Identifier: MIT
#include "ui/charts/chartcanvas.h"
#include "ui/charts/drawing.h"
#include "ui/theme/plate.h"

#include <algorithm>
#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

namespace cradlepost {

namespace {
constexpr int usualWidth = 420;
}

ChartCanvas::ChartCanvas(QWidget* parent)
    : PaintedList(parent)
    , m_drawing(makeDrawing(m_figure))
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

ChartCanvas::~ChartCanvas() = default;

void ChartCanvas::setFigure(const ChartFigure& figure)
{
    const bool sameKind = figure.index() == m_figure.index();
    m_figure = figure;
    if (sameKind)
        m_drawing->show(m_figure);
    else
        m_drawing = makeDrawing(m_figure);
    m_isEmpty = cradlepost::isEmpty(m_figure);
    m_texts.clear();
    itemsChanged();
}

void ChartCanvas::setEmptyText(const QString& text)
{
    m_emptyText = text;
    updateGeometry();
    update();
}

QString ChartCanvas::emptyText() const { return m_emptyText.isEmpty() ? nothingToDraw() : m_emptyText; }

Stage ChartCanvas::stage(const QSize& size) const
{
    return {size, themeOf(*this), layoutDirection(), m_texts};
}

int ChartCanvas::itemCount() const { return m_isEmpty ? 0 : m_drawing->itemCount(); }

QString ChartCanvas::listName() const { return tr("Chart"); }

QString ChartCanvas::itemText(int index) const
{
    return index >= 0 && index < itemCount() ? m_drawing->itemText(index) : QString();
}

QSize ChartCanvas::sizeHint() const
{
    const int width = std::max(minimumSizeHint().width(), themeOf(*this).px(usualWidth));
    return {width, heightForWidth(width)};
}

QSize ChartCanvas::minimumSizeHint() const
{
    const Stage empty = stage({});
    const int width
        = m_isEmpty ? empty.ink(emptyText(), TextRole::Body).widestWord() : m_drawing->leastWidth(empty);
    return {width, heightForWidth(1 << 12)};
}

int ChartCanvas::heightForWidth(int width) const
{
    const Stage flat = stage({width, 0});
    return m_isEmpty ? flat.heightOf(emptyText(), width, TextRole::Body) : m_drawing->heightFor(width, flat);
}

std::vector<QRect> ChartCanvas::layOutItems() const
{
    return m_isEmpty ? std::vector<QRect>() : m_drawing->itemBoxes(stage(size()));
}

int ChartCanvas::itemBeside(int index, Qt::Key key) const
{
    if (itemCount() == 0)
        return index;
    if (layoutDirection() == Qt::RightToLeft && (key == Qt::Key_Left || key == Qt::Key_Right))
        key = key == Qt::Key_Left ? Qt::Key_Right : Qt::Key_Left;
    return m_drawing->beside(std::max(0, index), key);
}

bool ChartCanvas::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) { // what hover says is the item's name already, not more of it
        const auto* help = static_cast<QHelpEvent*>(event);
        const int index = itemAt(help->pos());
        QToolTip::showText(help->globalPos(), itemText(index), this, itemRect(index));
        return true;
    }
    return PaintedList::event(event);
}

void ChartCanvas::keyPressEvent(QKeyEvent* event)
{
    const int before = cursor();
    PaintedList::keyPressEvent(event);
    if (cursor() != before)
        QToolTip::showText(mapToGlobal(itemRect(cursor()).bottomRight()), itemText(cursor()), this);
}

void ChartCanvas::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Stage whole = stage(size());
    if (m_isEmpty) {
        painter.setPen(whole.theme.roles.inkSoft);
        whole.ink(emptyText(), TextRole::Body).draw(painter, rect());
        if (hasFocus())
            paintFocusRing(painter, rect(), whole.theme);
        return;
    }
    m_drawing->paint(painter, whole);
    if (showsRingAt(cursor()))
        paintFocusRing(painter, itemRect(cursor()).adjusted(-2, -2, 2, 2), whole.theme);
}

void ChartCanvas::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::LayoutDirectionChange)
        m_texts.clear();
    PaintedList::changeEvent(event);
}

}
