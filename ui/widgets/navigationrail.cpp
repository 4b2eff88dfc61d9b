// SPDX-License-Identifier: MIT
#include "ui/widgets/navigationrail.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <QPainter>
#include <QShortcut>
#include <QStyle>

namespace cradlepost {

namespace {
QKeySequence placeKey(int key) { return {Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + key)}; }
}

NavigationRail::NavigationRail(QWidget* parent)
    : PaintedList(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    setObjectName(QStringLiteral("navigationRail"));
    connect(this, &PaintedList::activated, this, &NavigationRail::placeChosen);
}

void NavigationRail::setPlaces(const std::vector<RailPlace>& places)
{
    m_places = places;
    bindKeys();
    itemsChanged();
}

void NavigationRail::setPlace(int index)
{
    m_place = std::clamp(index, 0, std::max(0, itemCount() - 1));
    setCursorAt(m_place);
    update();
}

void NavigationRail::bindKeys()
{
    qDeleteAll(findChildren<QShortcut*>(Qt::FindDirectChildrenOnly));
    for (int i = 0; i < itemCount(); ++i) {
        auto* shortcut = new QShortcut(placeKey(m_places[static_cast<std::size_t>(i)].key), this);
        connect(shortcut, &QShortcut::activated, this, [this, i] { activate(i); });
    }
}

const QString& NavigationRail::name(int index) const
{
    return m_places[static_cast<std::size_t>(index)].name;
}

QString NavigationRail::hint(int index) const
{
    return placeKey(m_places[static_cast<std::size_t>(index)].key).toString(QKeySequence::NativeText);
}

QString NavigationRail::itemText(int index) const
{
    return index >= 0 && index < itemCount() ? name(index) + u", " + hint(index) : QString();
}

int NavigationRail::railWidth() const
{
    if (m_railWidth > 0)
        return m_railWidth;
    const Theme& theme = themeOf(*this);
    int widest = 0;
    int widestWord = 0;
    for (const RailPlace& place : m_places) {
        const InkText& text = nameText(place.name, true);
        widest = std::max(widest, text.naturalWidth());
        widestWord = std::max(widestWord, text.widestWord());
    }
    // Long names wrap before the rail eats the page; a single word is never broken.
    const int key = hintText(0).naturalWidth();
    const int text = std::max({widestWord, std::min(widest, theme.px(96)), key});
    m_railWidth = std::max(text + 2 * theme.space(Space::Near), theme.space(Space::Apart) * 7);
    return m_railWidth;
}

void NavigationRail::forgetLayout()
{
    m_railWidth = 0;
    PaintedList::forgetLayout();
}

int NavigationRail::nameHeight(int index) const
{
    const Theme& theme = themeOf(*this);
    return nameText(name(index), true).height(railWidth() - 2 * theme.space(Space::Near));
}

int NavigationRail::hintHeight() const { return itemCount() > 0 ? hintText(0).height(railWidth()) : 0; }

const InkText& NavigationRail::nameText(const QString& name, bool current) const
{
    const auto weight = current ? TextWeight::SemiBold : TextWeight::Regular;
    return ink(name, TextRole::Small, weight, Qt::AlignHCenter);
}

const InkText& NavigationRail::hintText(int index) const
{
    return ink(index < itemCount() ? hint(index) : QString(), TextRole::Small, TextWeight::Regular,
        Qt::AlignHCenter);
}

int NavigationRail::itemHeight(int index, const Density& density) const
{
    return nameHeight(index) + (density.hints ? hintHeight() : 0) + 2 * density.padding;
}

int NavigationRail::totalHeight(const Density& density) const
{
    int total = 0;
    for (int i = 0; i < itemCount(); ++i)
        total += itemHeight(i, density);
    return total;
}

/// Roomy when there is room; then less padding; then without the keys, which still work.
NavigationRail::Density NavigationRail::densityFor(int height) const
{
    const Theme& theme = themeOf(*this);
    const Density choices[] = {
        {.hints = true, .padding = theme.space(Space::Apart)},
        {.hints = true, .padding = theme.space(Space::Close)},
        {.hints = false, .padding = theme.space(Space::Near)},
        {.hints = false, .padding = theme.space(Space::Close)},
    };
    for (const Density& choice : choices) {
        if (totalHeight(choice) <= height)
            return choice;
    }
    return {.hints = false, .padding = theme.space(Space::Tight)};
}

std::vector<QRect> NavigationRail::layOutItems() const
{
    m_density = densityFor(height());
    std::vector<QRect> boxes;
    int top = 0;
    for (int i = 0; i < itemCount(); ++i) {
        boxes.emplace_back(0, top, width(), itemHeight(i, m_density));
        top += boxes.back().height();
    }
    return boxes;
}

QString NavigationRail::listName() const { return tr("Places"); }

QSize NavigationRail::sizeHint() const
{
    return {railWidth(), totalHeight({.hints = true, .padding = themeOf(*this).space(Space::Apart)})};
}

QSize NavigationRail::minimumSizeHint() const
{
    return {railWidth(), totalHeight({.hints = false, .padding = themeOf(*this).space(Space::Tight)})};
}

void NavigationRail::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.fillRect(rect(), themeOf(*this).roles.rail);
    for (int i = 0; i < itemCount(); ++i)
        paintPlace(painter, i, itemRect(i));
}

void NavigationRail::paintPlace(QPainter& painter, int index, const QRect& box) const
{
    const Theme& theme = themeOf(*this);
    const Roles& roles = theme.roles;
    const bool current = index == m_place;
    if (current) {
        painter.fillRect(box, roles.paper);
        const QRect bar(box.left(), box.top(), theme.space(Space::Tight), box.height());
        painter.fillRect(QStyle::visualRect(layoutDirection(), box, bar), roles.accent);
    }
    const int side = theme.space(Space::Near);
    QRect text = box.adjusted(side, m_density.padding, -side, 0);
    painter.setPen(current || isHovered(index) ? roles.ink : roles.inkSoft);
    text.setTop(text.top() + nameText(name(index), current).draw(painter, text));
    if (m_density.hints) {
        painter.setPen(roles.inkHint);
        hintText(index).draw(painter, text);
    }
    if (showsRingAt(index))
        paintFocusRing(painter, box.adjusted(2, 2, -2, -2), theme);
}

}
