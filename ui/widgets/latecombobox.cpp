// SPDX-License-Identifier: MIT
#include "ui/widgets/latecombobox.h"

#include <algorithm>
#include <QAbstractItemView>
#include <QEvent>
#include <QStyleOptionComboBox>

namespace cradlepost {

QSize LateComboBox::sizeHint() const
{
    const QFontMetrics metrics = fontMetrics();
    int width = 0;
    for (int i = 0; i < count(); ++i)
        width = std::max(width, entryWidth(itemText(i)));
    QStyleOptionComboBox option;
    initStyleOption(&option);
    return style()->sizeFromContents(QStyle::CT_ComboBox, &option, {width, metrics.height()}, this);
}

int LateComboBox::entryWidth(const QString& text) const
{
    const auto known = m_widths.constFind(text);
    if (known != m_widths.constEnd())
        return *known;
    return *m_widths.insert(text, fontMetrics().horizontalAdvance(text));
}

void LateComboBox::showPopup()
{
    if (!m_opened) {
        m_opened = true;
        view()->parentWidget()->setFont(font());
    }
    QComboBox::showPopup();
}

void LateComboBox::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        m_widths.clear();
    if (event->type() == QEvent::FontChange && !m_opened)
        QWidget::changeEvent(event);
    else
        QComboBox::changeEvent(event);
}

}
