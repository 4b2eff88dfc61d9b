// SPDX-License-Identifier: MIT
#include "ui/widgets/findingslist.h"

#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <algorithm>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

FindingsList::FindingsList(QWidget* parent)
    : PaintedList(parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FindingsList::setRows(const std::vector<FindingRow>& rows)
{
    m_rows = rows;
    itemsChanged();
    updateGeometry();
}

QString FindingsList::listName() const { return tr("What was found"); }

QString FindingsList::itemText(int index) const
{
    const FindingRow& row = m_rows[static_cast<std::size_t>(index)];
    return row.question ? tr("To ask: %1").arg(row.text) : row.text;
}

const InkText& FindingsList::textOf(int index) const
{
    return ink(m_rows[static_cast<std::size_t>(index)].text, TextRole::Lead);
}

int FindingsList::markRoom() const { return themeOf(*this).px(20); }

int FindingsList::rowHeight(int index, int width) const
{
    return textOf(index).height(width - markRoom()) + themeOf(*this).space(Space::Tight);
}

int FindingsList::heightForWidth(int width) const
{
    int height = 0;
    for (int i = 0; i < itemCount(); ++i)
        height += rowHeight(i, width);
    return height;
}

QSize FindingsList::sizeHint() const
{
    const int width = themeOf(*this).px(600);
    return {width, heightForWidth(width)};
}

QSize FindingsList::minimumSizeHint() const
{
    int width = themeOf(*this).px(120);
    for (int i = 0; i < itemCount(); ++i)
        width = std::max(width, textOf(i).widestWord() + markRoom());
    return {width, heightForWidth(std::max(width, this->width()))};
}

std::vector<QRect> FindingsList::layOutItems() const
{
    std::vector<QRect> boxes;
    int top = 0;
    for (int i = 0; i < itemCount(); ++i) {
        const int height = rowHeight(i, width());
        boxes.emplace_back(0, top, width(), height);
        top += height;
    }
    return boxes;
}

void FindingsList::paintMark(QPainter& painter, const QRect& box, bool question) const
{
    const Theme& theme = themeOf(*this);
    painter.setPen(theme.roles.accent);
    if (question) {
        ink(QStringLiteral("?"), TextRole::Lead, TextWeight::SemiBold).draw(painter, box);
        return;
    }
    const double radius = theme.px(3);
    painter.setBrush(theme.roles.accent);
    const double middle = box.top() + ink(QStringLiteral("x"), TextRole::Lead).height(width()) / 2.0;
    painter.drawEllipse(QPointF(box.center().x() - radius, middle), radius, radius);
    painter.setBrush(Qt::NoBrush);
}

void FindingsList::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int i = 0; i < itemCount(); ++i) {
        const QRect box = itemRect(i);
        const FindingRow& row = m_rows[static_cast<std::size_t>(i)];
        const QRect logical(0, box.top(), markRoom(), box.height());
        const QRect mark = QStyle::visualRect(layoutDirection(), rect(), logical);
        paintMark(painter, mark, row.question);
        painter.setPen(isHovered(i) || showsRingAt(i) ? theme.roles.accent : theme.roles.ink);
        const QRect room = QStyle::visualRect(
            layoutDirection(), rect(), QRect(markRoom(), box.top(), width() - markRoom(), box.height()));
        textOf(i).draw(painter, room);
        if (showsRingAt(i))
            paintFocusRing(painter, box, theme);
    }
}

}
