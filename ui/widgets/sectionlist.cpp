// SPDX-License-Identifier: MIT
#include "ui/widgets/sectionlist.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

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

const InkText& SectionList::nameText(int index, bool current) const
{
    const auto weight = current ? TextWeight::SemiBold : TextWeight::Regular;
    return ink(m_sections[static_cast<std::size_t>(index)].name, TextRole::Body, weight);
}

int SectionList::countWidth() const
{
    int widest = 0;
    for (const SectionEntry& entry : m_sections) { // as wide as it will be when all are answered
        const QString full = locale().toString(entry.total);
        widest = std::max(widest, ink(tr("%1 of %2").arg(full, full), TextRole::Small).naturalWidth());
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
    const InkText& name = nameText(index, false);
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
    int word = 0;
    int height = 0;
    for (int i = 0; i < itemCount(); ++i) {
        const InkText& name = nameText(i, true);
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
    painter.setPen(roles.ink);
    const QRect name(box.left() + side, box.top() + side, nameRoom(box.width()), box.height() - 2 * side);
    // Rows keep their height when the mark moves: a name that would need a line more stays in its weight.
    const bool heavier = current
        && nameText(index, true).height(name.width()) <= nameText(index, false).height(name.width());
    nameText(index, heavier).draw(painter, mirrored(name));
    painter.setPen(roles.inkHint);
    const QRect count(box.right() + 1 - side - countWidth(), name.top(), countWidth(),
        nameText(index, current).height(1 << 20));
    ink(progress(index), TextRole::Small, TextWeight::Regular, Qt::AlignRight)
        .drawMiddle(painter, mirrored(count));
    if (showsRingAt(index))
        paintFocusRing(painter, box, theme);
}

}
