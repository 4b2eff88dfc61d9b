// SPDX-License-Identifier: MIT
#include "ui/widgets/sectionlist.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

#include <QLocale>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

SectionList::SectionList(QWidget* parent)
    : PaintedList(parent)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    connect(this, &PaintedList::cursorMoved, this, &SectionList::sectionChosen);
}

void SectionList::setSections(const std::vector<SectionEntry>& sections)
{
    m_sections = sections;
    itemsChanged();
}

void SectionList::setProgress(int index, int done)
{
    if (index < 0 || index >= itemCount())
        return;
    m_sections[static_cast<std::size_t>(index)].done = done;
    update(itemRect(index));
}

QString SectionList::progress(int index) const
{
    const SectionEntry& entry = m_sections[static_cast<std::size_t>(index)];
    //: how many of a section's items were answered
    return tr("%1 of %2").arg(locale().toString(entry.done), locale().toString(entry.total));
}

QString SectionList::itemText(int index) const
{
    return m_sections[static_cast<std::size_t>(index)].name + u", " + progress(index);
}

int SectionList::countWidth() const
{
    const QFontMetrics small(themeOf(*this).font(TextRole::Small));
    int widest = 0;
    for (const SectionEntry& entry : m_sections) { // as wide as it will be when all are answered
        const QString full = locale().toString(entry.total);
        widest = std::max(widest, small.horizontalAdvance(tr("%1 of %2").arg(full, full)));
    }
    return widest;
}

int SectionList::nameRoom(int width) const
{
    const Theme& theme = themeOf(*this);
    return width - countWidth() - 3 * theme.space(Space::Near);
}

int SectionList::rowHeight(int index, int width) const
{
    const Theme& theme = themeOf(*this);
    const InkText name(m_sections[static_cast<std::size_t>(index)].name,
        theme.font(TextRole::Body, TextWeight::SemiBold), layoutDirection());
    return name.height(nameRoom(width)) + 2 * theme.space(Space::Near);
}

std::vector<QRect> SectionList::layOutItems() const
{
    std::vector<QRect> boxes;
    int top = 0;
    for (int i = 0; i < itemCount(); ++i) {
        boxes.emplace_back(0, top, width(), rowHeight(i, width()));
        top += boxes.back().height();
    }
    return boxes;
}

QString SectionList::listName() const { return tr("Sections"); }

QSize SectionList::sizeHint() const
{
    const Theme& theme = themeOf(*this);
    const int width = std::max(minimumSizeHint().width(), theme.px(250));
    int height = 0;
    for (int i = 0; i < itemCount(); ++i)
        height += rowHeight(i, width);
    return {width, height};
}

QSize SectionList::minimumSizeHint() const
{
    const Theme& theme = themeOf(*this);
    const QFont font = theme.font(TextRole::Body, TextWeight::SemiBold);
    int word = 0;
    int height = 0;
    for (const SectionEntry& entry : m_sections) {
        const InkText name(entry.name, font, layoutDirection());
        word = std::max(word, name.widestWord());
        height += name.height(name.naturalWidth()) + 2 * theme.space(Space::Near);
    }
    return {word + countWidth() + 3 * theme.space(Space::Near), height};
}

void SectionList::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    for (int i = 0; i < itemCount(); ++i)
        paintRow(painter, i, itemRect(i));
}

void SectionList::paintRow(QPainter& painter, int index, const QRect& box) const
{
    const Theme& theme = themeOf(*this);
    const Roles& roles = theme.roles;
    const bool current = index == cursor();
    const auto mirrored = [&](const QRect& part) { return QStyle::visualRect(layoutDirection(), box, part); };
    if (current) {
        painter.fillRect(box, roles.sheet);
        painter.fillRect(
            mirrored(QRect(box.left(), box.top(), theme.space(Space::Tight), box.height())), roles.accent);
    } else if (isHovered(index)) {
        painter.fillRect(box, roles.accentWash);
    }
    const int side = theme.space(Space::Near);
    const QFont font = theme.font(TextRole::Body, current ? TextWeight::SemiBold : TextWeight::Regular);
    painter.setPen(roles.ink);
    const QRect name(box.left() + side, box.top() + side, nameRoom(box.width()), box.height() - 2 * side);
    InkText(m_sections[static_cast<std::size_t>(index)].name, font, layoutDirection())
        .draw(painter, mirrored(name));
    painter.setFont(theme.font(TextRole::Small));
    painter.setPen(roles.inkHint);
    const QRect count(
        box.right() + 1 - side - countWidth(), name.top(), countWidth(), QFontMetrics(font).height());
    drawLine(painter, mirrored(count), Qt::AlignRight | Qt::AlignVCenter, progress(index), layoutDirection());
    if (showsRingAt(index))
        paintFocusRing(painter, box, theme);
}

}
