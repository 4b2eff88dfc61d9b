// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/type.h"
#include "ui/widgets/inktext.h"

#include <QWidget>

#include <vector>

namespace cradlepost {

/// Items painted in one widget instead of a widget each: cheap to open, and still one keyboard cursor,
/// one tool tip and one accessible child an item. What an item looks like is the derived class's matter.
class PaintedList : public QWidget
{
    Q_OBJECT
public:
    explicit PaintedList(QWidget* parent = nullptr);

    virtual int itemCount() const = 0;
    /// What the list is called when its page gave it no accessible name.
    virtual QString listName() const = 0;
    /// The whole item in words, for screen readers.
    virtual QString itemText(int index) const = 0;
    virtual QString itemToolTip(int index) const;
    /// The item that the page shows, as opposed to the one the keyboard is at.
    virtual bool isChosen(int index) const;

    /// In widget coordinates, mirrored already; empty when the item is not shown.
    QRect itemRect(int index) const;
    int cursor() const { return m_cursor; } ///< -1 when there is no item
    void setCursorAt(int index);
    int itemAt(const QPoint& position) const; ///< -1 beside every item
    void activate(int index);

Q_SIGNALS:
    void cursorMoved(int index);
    void activated(int index);

protected:
    /// The items' boxes for the present size, left to right, in the order of the items; asked for once
    /// until the size or the items change.
    virtual std::vector<QRect> layOutItems() const = 0;

    /// The items, their letters or their direction changed: sizes that were kept hold no longer.
    virtual void forgetLayout();

    /// Where an arrow leads to from an item; the same index when nowhere.
    virtual int itemBeside(int index, Qt::Key key) const;

    const InkText& ink(const QString& text, TextRole role, TextWeight weight = TextWeight::Regular,
        Qt::Alignment alignment = Qt::AlignLeft) const;
    bool showsRingAt(int index) const;
    bool isHovered(int index) const { return m_hovered == index; }

    /// To be called when items were exchanged.
    void itemsChanged();

    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void hover(int index);
    void tellScreenReader();

    InkCache m_ink;
    mutable std::vector<QRect> m_boxes;
    int m_cursor = -1;
    int m_hovered = -1;
    int m_pressed = -1;
    bool m_byKeyboard = false;
};

}
