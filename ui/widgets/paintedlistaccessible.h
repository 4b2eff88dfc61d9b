// SPDX-License-Identifier: MIT
#pragma once

#include <QAccessible>
#include <QAccessibleWidget>

#include <vector>

namespace cradlepost {

class PaintedList;

/// Factory for QAccessible::installFactory: null for everything that is not a PaintedList.
QAccessibleInterface* paintedListAccessible(const QString& className, QObject* object);

/// What a screen reader sees of a PaintedList: a list with a child an item, made when it is asked for.
class PaintedListAccessible : public QAccessibleWidget
{
public:
    explicit PaintedListAccessible(PaintedList* list);
    ~PaintedListAccessible() override;

    QString text(QAccessible::Text which) const override;
    int childCount() const override;
    QAccessibleInterface* child(int index) const override;
    QAccessibleInterface* childAt(int x, int y) const override;
    QAccessibleInterface* focusChild() const override;
    int indexOfChild(const QAccessibleInterface* child) const override;

private:
    PaintedList& list() const;

    mutable std::vector<QAccessible::Id> m_children;
};

}
