// SPDX-License-Identifier: MIT
#include "ui/widgets/paintedlistaccessible.h"
#include "ui/widgets/paintedlist.h"

#include <QPointer>

namespace cradlepost {

namespace {
/// One item; it outlives neither its list nor, in what it answers, the item's index.
class PaintedItemAccessible : public QAccessibleInterface, public QAccessibleActionInterface
{
public:
    PaintedItemAccessible(PaintedList* list, int index)
        : m_list(list)
        , m_index(index)
    {
    }

    int index() const { return m_index; }

    bool isValid() const override { return m_list && m_index < m_list->itemCount(); }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override { return QAccessible::queryAccessibleInterface(m_list); }
    QAccessibleInterface* child(int /*index*/) const override { return nullptr; }
    QAccessibleInterface* childAt(int /*x*/, int /*y*/) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface* /*child*/) const override { return -1; }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    void setText(QAccessible::Text /*which*/, const QString& /*text*/) override { }

    QString text(QAccessible::Text which) const override
    {
        if (!isValid())
            return {};
        if (which == QAccessible::Name)
            return m_list->itemText(m_index);
        return which == QAccessible::Description ? m_list->itemToolTip(m_index) : QString();
    }

    QRect rect() const override
    {
        if (!isValid())
            return {};
        const QRect box = m_list->itemRect(m_index);
        return {m_list->mapToGlobal(box.topLeft()), box.size()};
    }

    QAccessible::State state() const override
    {
        QAccessible::State state;
        state.focusable = true;
        state.selectable = true;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        state.selected = m_list->isChosen(m_index);
        state.focused = m_list->hasFocus() && m_list->cursor() == m_index;
        state.invisible = m_list->itemRect(m_index).isEmpty();
        state.disabled = !m_list->isEnabled();
        return state;
    }

    void* interface_cast(QAccessible::InterfaceType type) override
    {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }

    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    QStringList keyBindingsForAction(const QString& /*name*/) const override { return {}; }

    void doAction(const QString& name) override
    {
        if (!isValid())
            return;
        if (name == pressAction())
            m_list->activate(m_index);
        else if (name == setFocusAction()) {
            m_list->setFocus();
            m_list->setCursorAt(m_index);
        }
    }

private:
    QPointer<PaintedList> m_list;
    int m_index;
};
}

QAccessibleInterface* paintedListAccessible(const QString& /*className*/, QObject* object)
{
    auto* list = qobject_cast<PaintedList*>(object);
    return list ? new PaintedListAccessible(list) : nullptr; // owned by QAccessible's cache
}

PaintedListAccessible::PaintedListAccessible(PaintedList* list)
    : QAccessibleWidget(list, QAccessible::List)
{
}

PaintedListAccessible::~PaintedListAccessible()
{
    for (const QAccessible::Id id : m_children) {
        if (id != 0)
            QAccessible::deleteAccessibleInterface(id);
    }
}

QString PaintedListAccessible::text(QAccessible::Text which) const
{
    if (which == QAccessible::Name && list().accessibleName().isEmpty())
        return list().listName();
    return QAccessibleWidget::text(which);
}

int PaintedListAccessible::childCount() const { return list().itemCount(); }

QAccessibleInterface* PaintedListAccessible::child(int index) const
{
    if (index < 0 || index >= childCount())
        return nullptr;
    const auto at = static_cast<std::size_t>(index);
    if (m_children.size() <= at)
        m_children.resize(at + 1, 0);
    if (m_children[at] == 0)
        m_children[at] = QAccessible::registerAccessibleInterface(new PaintedItemAccessible(&list(), index));
    return QAccessible::accessibleInterface(m_children[at]);
}

QAccessibleInterface* PaintedListAccessible::childAt(int x, int y) const
{
    return child(list().itemAt(list().mapFromGlobal(QPoint(x, y))));
}

QAccessibleInterface* PaintedListAccessible::focusChild() const
{
    return list().hasFocus() ? child(list().cursor()) : nullptr;
}

int PaintedListAccessible::indexOfChild(const QAccessibleInterface* child) const
{
    const auto* item = dynamic_cast<const PaintedItemAccessible*>(child);
    return item ? item->index() : -1;
}

PaintedList& PaintedListAccessible::list() const { return *static_cast<PaintedList*>(widget()); }

}
