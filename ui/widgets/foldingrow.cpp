// SPDX-License-Identifier: MIT
#include "ui/widgets/foldingrow.h"
#include "ui/theme/theme.h"

#include <QBoxLayout>
#include <QEvent>

namespace cradlepost {

FoldingRow::FoldingRow(QWidget* parent)
    : QWidget(parent)
    , m_row(new QBoxLayout(QBoxLayout::LeftToRight, this))
{
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSizeConstraint(QLayout::SetNoConstraint); // or the unfolded row would set the least width
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
}

void FoldingRow::addWidget(QWidget* widget, int stretch, Qt::Alignment alignment)
{
    m_row->addWidget(widget, stretch, alignment);
    fold();
}

void FoldingRow::setSpacing(int pixels) { m_row->setSpacing(pixels); }

bool FoldingRow::isFolded() const { return m_row->direction() == QBoxLayout::TopToBottom; }

QSize FoldingRow::sizeHint() const
{
    int width = -m_row->spacing();
    int height = 0;
    for (int i = 0; i < m_row->count(); ++i) {
        const QSize hint = m_row->itemAt(i)->sizeHint();
        width += hint.width() + m_row->spacing();
        height = std::max(height, hint.height());
    }
    return {width, std::max(height, foldedHeight())};
}

int FoldingRow::foldedHeight() const
{
    if (!isFolded())
        return 0;
    int height = -m_row->spacing();
    for (int i = 0; i < m_row->count(); ++i) {
        if (!m_row->itemAt(i)->isEmpty())
            height += m_row->itemAt(i)->sizeHint().height() + m_row->spacing();
    }
    return height;
}

QSize FoldingRow::minimumSizeHint() const
{
    QSize least;
    for (int i = 0; i < m_row->count(); ++i)
        least = least.expandedTo(m_row->itemAt(i)->minimumSize());
    return {least.width(), std::max(least.height(), foldedHeight())};
}

/// Rows in it stay whole as long as this one can fold instead.
int FoldingRow::unfoldedWidth() const
{
    int width = -m_row->spacing();
    for (int i = 0; i < m_row->count(); ++i) {
        QLayoutItem& item = *m_row->itemAt(i);
        const auto* row = item.isEmpty() ? nullptr : qobject_cast<const FoldingRow*>(item.widget());
        width += m_row->spacing() + (row != nullptr ? row->sizeHint().width() : item.minimumSize().width());
    }
    return width;
}

bool FoldingRow::foldsAt(int width) const { return unfoldedWidth() > width; }

bool FoldingRow::hasHeightForWidth() const { return m_row->hasHeightForWidth(); }

int FoldingRow::heightForWidth(int width) const
{
    const auto itemHeight = [](const QLayoutItem& item, int room) {
        return item.hasHeightForWidth() ? item.heightForWidth(room) : item.sizeHint().height();
    };
    if (foldsAt(width)) {
        int height = -m_row->spacing();
        for (int i = 0; i < m_row->count(); ++i)
            height += itemHeight(*m_row->itemAt(i), width) + m_row->spacing();
        return height;
    }
    // The layout shares a row out as it always does; ask it only in that direction.
    if (!isFolded())
        return std::max(m_row->heightForWidth(width), m_row->minimumSize().height());
    int height = 0;
    for (int i = 0; i < m_row->count(); ++i)
        height = std::max(height, itemHeight(*m_row->itemAt(i), width / std::max(1, m_row->count())));
    return height;
}

void FoldingRow::fold()
{
    // A layout above asks this one's layout for the height, which knows none unless a child wraps.
    if (QSizePolicy policy = sizePolicy(); policy.hasHeightForWidth() != m_row->hasHeightForWidth()) {
        policy.setHeightForWidth(m_row->hasHeightForWidth());
        setSizePolicy(policy);
    }
    const auto direction = foldsAt(width()) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
    if (m_row->direction() == direction)
        return;
    m_row->setDirection(direction);
    updateGeometry();
}

void FoldingRow::resizeEvent(QResizeEvent* event)
{
    fold();
    QWidget::resizeEvent(event);
}

bool FoldingRow::event(QEvent* event)
{
    if (event->type() == QEvent::LayoutRequest) {
        fold(); // a child's text has grown
        updateGeometry(); // the layout has no constraint of its own that would tell the page
    }
    return QWidget::event(event);
}

}
