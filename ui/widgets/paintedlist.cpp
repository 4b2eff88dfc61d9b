// SPDX-License-Identifier: MIT
#include "ui/widgets/paintedlist.h"
#include "ui/theme/theme.h"
#include "ui/widgets/paintedlistaccessible.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QStyle>
#include <QToolTip>

namespace cradlepost {

PaintedList::PaintedList(QWidget* parent)
    : QWidget(parent)
{
    QAccessible::installFactory(paintedListAccessible);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
}

QString PaintedList::itemToolTip(int /*index*/) const { return {}; }

bool PaintedList::isChosen(int index) const { return index == m_cursor; }

QRect PaintedList::itemRect(int index) const
{
    if (m_boxes.empty())
        m_boxes = layOutItems();
    if (index < 0 || index >= static_cast<int>(m_boxes.size()))
        return {};
    const QRect box = m_boxes[static_cast<std::size_t>(index)];
    return box.isEmpty() ? QRect() : QStyle::visualRect(layoutDirection(), rect(), box);
}

const InkText& PaintedList::ink(
    const QString& text, TextRole role, TextWeight weight, Qt::Alignment alignment) const
{
    return m_ink.text(text, themeOf(*this).font(role, weight), layoutDirection(), alignment);
}

void PaintedList::forgetLayout() { m_boxes.clear(); }

void PaintedList::setCursorAt(int index)
{
    const int bounded = std::clamp(index, -1, itemCount() - 1);
    if (bounded == m_cursor)
        return;
    m_cursor = bounded;
    update();
    tellScreenReader();
    Q_EMIT cursorMoved(m_cursor);
}

int PaintedList::itemAt(const QPoint& position) const
{
    for (int i = 0; i < itemCount(); ++i) {
        if (itemRect(i).contains(position))
            return i;
    }
    return -1;
}

void PaintedList::activate(int index)
{
    if (index < 0 || index >= itemCount() || !isEnabled())
        return;
    setCursorAt(index);
    Q_EMIT activated(index);
}

int PaintedList::itemBeside(int index, Qt::Key key) const
{
    switch (key) {
    case Qt::Key_Up:
        return std::max(0, index - 1);
    case Qt::Key_Down:
        return std::min(itemCount() - 1, index + 1);
    default:
        return index;
    }
}

bool PaintedList::showsRingAt(int index) const { return hasFocus() && m_byKeyboard && index == m_cursor; }

void PaintedList::itemsChanged()
{
    m_hovered = -1;
    m_pressed = -1;
    m_ink.clear();
    forgetLayout();
    const int kept = std::clamp(m_cursor, itemCount() > 0 ? 0 : -1, itemCount() - 1);
    if (kept != m_cursor) {
        m_cursor = kept;
        Q_EMIT cursorMoved(m_cursor);
    }
    updateGeometry();
    update();
}

bool PaintedList::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int index = itemAt(help->pos());
        const QString text = index < 0 ? QString() : itemToolTip(index);
        if (text.isEmpty())
            QToolTip::hideText();
        else
            QToolTip::showText(help->globalPos(), text, this, itemRect(index));
        return true;
    }
    return QWidget::event(event);
}

void PaintedList::keyPressEvent(QKeyEvent* event)
{
    const auto key = static_cast<Qt::Key>(event->key());
    m_byKeyboard = true;
    update();
    switch (key) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Left:
    case Qt::Key_Right: {
        const int next = itemBeside(m_cursor, key);
        if (next == m_cursor) // at the edge the page may scroll
            return event->ignore();
        return setCursorAt(next);
    }
    case Qt::Key_Home:
        return setCursorAt(0);
    case Qt::Key_End:
        return setCursorAt(itemCount() - 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        return activate(m_cursor);
    default:
        QWidget::keyPressEvent(event);
    }
}

void PaintedList::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return QWidget::mousePressEvent(event);
    m_byKeyboard = false;
    m_pressed = itemAt(event->position().toPoint());
    update();
}

void PaintedList::mouseReleaseEvent(QMouseEvent* event)
{
    const int released = itemAt(event->position().toPoint());
    const int pressed = std::exchange(m_pressed, -1);
    if (event->button() == Qt::LeftButton && released >= 0 && released == pressed)
        activate(released);
}

void PaintedList::mouseMoveEvent(QMouseEvent* event) { hover(itemAt(event->position().toPoint())); }

void PaintedList::leaveEvent(QEvent* event)
{
    hover(-1);
    QWidget::leaveEvent(event);
}

void PaintedList::focusInEvent(QFocusEvent* event)
{
    const auto reason = event->reason();
    if (reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason || reason == Qt::ShortcutFocusReason)
        m_byKeyboard = true;
    else if (reason != Qt::MouseFocusReason) // set by the program: as the window was used last
        m_byKeyboard = window()->testAttribute(Qt::WA_KeyboardFocusChange);
    if (m_cursor < 0 && itemCount() > 0)
        setCursorAt(0);
    QWidget::focusInEvent(event);
    tellScreenReader();
}

void PaintedList::resizeEvent(QResizeEvent* event)
{
    m_boxes.clear();
    QWidget::resizeEvent(event);
}

void PaintedList::changeEvent(QEvent* event)
{
    const auto type = event->type();
    if (type == QEvent::StyleChange || type == QEvent::LayoutDirectionChange) {
        m_ink.clear();
        forgetLayout();
    }
    QWidget::changeEvent(event);
    if (type == QEvent::LanguageChange)
        itemsChanged();
}

void PaintedList::hover(int index)
{
    if (m_hovered == index)
        return;
    m_hovered = index;
    setCursor(index >= 0 ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void PaintedList::tellScreenReader()
{
    if (m_cursor < 0 || !hasFocus() || !QAccessible::isActive())
        return;
    QAccessibleEvent moved(this, QAccessible::Focus);
    moved.setChild(m_cursor);
    QAccessible::updateAccessibility(&moved);
}

}
