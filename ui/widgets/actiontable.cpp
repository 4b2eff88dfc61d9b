// SPDX-License-Identifier: MIT
#include "ui/widgets/actiontable.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <cmath>
#include <numeric>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

namespace {
int sumOf(const std::array<int, 4>& widths) { return std::accumulate(widths.begin(), widths.end(), 0); }

/// Takes from each column, in proportion to what it has above its floor, until they fit into `room` or all
/// are at their floor.
std::array<int, 4> shrunk(std::array<int, 4> widths, const std::array<int, 4>& floor, int room)
{
    const int lacking = sumOf(widths) - room;
    const int givable = sumOf(widths) - sumOf(floor);
    if (lacking <= 0 || givable <= 0)
        return widths;
    const double share = std::min(1.0, static_cast<double>(lacking) / givable);
    for (std::size_t i = 0; i < widths.size(); ++i)
        widths[i] -= static_cast<int>(std::ceil(share * (widths[i] - floor[i])));
    return widths;
}
}

ActionTable::ActionTable(QWidget* parent)
    : PaintedList(parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(this, &PaintedList::activated, this, &ActionTable::rowActivated);
}

void ActionTable::setRows(const std::vector<ActionRow>& rows)
{
    if (rows == m_rows)
        return;
    m_rows = rows;
    itemsChanged();
}

void ActionTable::setHeaders(const QStringList& headers)
{
    if (headers == m_headers)
        return;
    m_headers = headers;
    itemsChanged();
}

void ActionTable::setEmptyText(const QString& text)
{
    m_emptyText = text;
    itemsChanged();
}

QString ActionTable::header(int column) const
{
    if (column < m_headers.size())
        return m_headers.at(column);
    switch (column) {
    case 0:
        return tr("What is missing");
    case 1:
        return tr("What to do");
    case 2:
        return tr("Who");
    default:
        return tr("By");
    }
}

QString ActionTable::listName() const { return tr("What to mend"); }

QString ActionTable::itemText(int index) const
{
    const ActionRow& row = m_rows[static_cast<std::size_t>(index)];
    QStringList parts{OutcomeMark::word(row.mark), row.title, row.subtitle, row.what};
    if (!row.who.isEmpty())
        parts.append(header(2) + u' ' + row.who);
    if (!row.by.isEmpty())
        parts.append(header(3) + u' ' + row.by);
    parts.append(row.byAside);
    parts.removeAll(QString());
    return plainText(parts.join(QStringLiteral(", ")));
}

int ActionTable::padding() const { return themeOf(*this).space(Space::Near); }

int ActionTable::markColumn() const
{
    return themeOf(*this).px(16) + padding() - themeOf(*this).space(Space::Tight);
}

std::vector<const InkText*> ActionTable::cellTexts(const ActionRow& row, int column) const
{
    std::vector<const InkText*> texts;
    const auto add = [&](const QString& text, TextRole role, TextWeight weight = TextWeight::Regular) {
        if (!text.isEmpty())
            texts.push_back(&ink(text, role, weight));
    };
    if (column == 0) {
        add(row.title, TextRole::Body, TextWeight::SemiBold);
        add(row.subtitle, TextRole::Small);
    } else if (column == 1) {
        add(row.what, TextRole::Body);
    } else if (column == 2) {
        add(row.who, TextRole::Body);
    } else if (!row.by.isEmpty()) {
        const QString bold = u"**" + row.by + u"**";
        // A time and its unit stay together; the line breaks between the two.
        const QString aside = QString(row.byAside).replace(u' ', QChar::Nbsp);
        add(aside.isEmpty() ? bold : QString(bold + u" · " + aside), TextRole::Body);
    } else {
        add(row.byAside, TextRole::Body);
    }
    return texts;
}

const InkText& ActionTable::headerText(int column) const
{
    return ink(header(column), TextRole::Small);
}

const InkText& ActionTable::emptyText() const { return ink(m_emptyText, TextRole::Body); }

/// What the columns would like and what they need, with padding. Independent of the width: asked once.
const ActionTable::Extent& ActionTable::extent() const
{
    if (m_extent)
        return *m_extent;
    Extent all;
    for (int column = 0; column < columns; ++column) {
        auto& natural = all.natural[static_cast<std::size_t>(column)];
        auto& least = all.least[static_cast<std::size_t>(column)];
        const auto widen = [&](const InkText& text) {
            natural = std::max(natural, text.naturalWidth() + 2 * padding());
            least = std::max(least, text.widestWord() + 2 * padding());
        };
        widen(headerText(column));
        for (const ActionRow& row : m_rows) {
            const auto texts = cellTexts(row, column);
            for (const InkText* text : texts)
                widen(*text);
            if (column == 0 && !texts.empty())
                all.name = std::max(all.name, texts.front()->naturalWidth() + 2 * padding());
        }
    }
    return m_extent.emplace(all);
}

/// Room to spare goes to the two columns of prose. What is lacking is first taken from them, as prose wraps
/// well and a name or a time does not; from the others only when prose is narrow.
ActionTable::Widths ActionTable::columnWidths(int width) const
{
    const auto& [natural, least, name] = extent();
    const int room = width - markColumn();
    const int spare = room - sumOf(natural);
    Widths widths = natural;
    if (spare >= 0) {
        widths[0] += spare / 3;
        widths[1] += spare / 3;
        widths[2] += spare / 6;
        widths[3] = room - widths[0] - widths[1] - widths[2];
        return widths;
    }
    Widths proseFloor = natural;
    // What is missing is scanned by its name, which wraps last; what is said under it, and what to do, read well over
    // two or three lines, but for a few words.
    const int fewWords = themeOf(*this).px(110);
    proseFloor[0] = std::max({least[0], std::min(name, natural[0] * 4 / 5), natural[0] * 2 / 5});
    proseFloor[1] = std::max({least[1], std::min(natural[1], fewWords), natural[1] * 2 / 5});
    return shrunk(shrunk(natural, proseFloor, room), least, room);
}

int ActionTable::cellHeight(const ActionRow& row, int column, int width) const
{
    int height = 0;
    for (const InkText* text : cellTexts(row, column))
        height += text->height(width - 2 * padding());
    return height;
}

int ActionTable::headerHeight(const Widths& widths) const
{
    int height = 0;
    for (int column = 0; column < columns; ++column) {
        height = std::max(
            height, headerText(column).height(widths[static_cast<std::size_t>(column)] - 2 * padding()));
    }
    return height + 2 * themeOf(*this).space(Space::Tight) + themeOf(*this).space(Space::Tight) / 2;
}

const ActionTable::Plan& ActionTable::plan(int width) const
{
    const auto known = m_plans.find(width);
    if (known != m_plans.end())
        return known->second;
    Plan& plan = m_plans[width];
    plan.columnWidths = columnWidths(width);
    plan.headerHeight = headerHeight(plan.columnWidths);
    for (const ActionRow& row : m_rows) {
        int height = themeOf(*this).px(16);
        for (int column = 0; column < columns; ++column)
            height = std::max(
                height, cellHeight(row, column, plan.columnWidths[static_cast<std::size_t>(column)]));
        plan.rowHeights.push_back(height + 2 * themeOf(*this).space(Space::Close) - 2);
    }
    return plan;
}

void ActionTable::forgetLayout()
{
    m_plans.clear();
    m_extent.reset();
    PaintedList::forgetLayout();
}

std::vector<QRect> ActionTable::layOutItems() const
{
    const Plan& here = plan(width());
    std::vector<QRect> boxes;
    int top = here.headerHeight;
    for (const int height : here.rowHeights) {
        boxes.emplace_back(0, top, width(), height);
        top += height;
    }
    return boxes;
}

int ActionTable::heightForWidth(int width) const
{
    const Plan& there = plan(width);
    if (m_rows.empty()) {
        return there.headerHeight + emptyText().height(width - 2 * padding()) + 2 * padding();
    }
    return there.headerHeight + std::accumulate(there.rowHeights.begin(), there.rowHeights.end(), 0) + 1;
}

QSize ActionTable::sizeHint() const
{
    const int width = markColumn() + sumOf(extent().natural);
    return {width, heightForWidth(width)};
}

QSize ActionTable::minimumSizeHint() const
{
    const int width = markColumn() + sumOf(extent().least);
    return {width, heightForWidth(std::max(width, markColumn() + sumOf(extent().natural)))};
}

QRect ActionTable::cellBox(const Plan& plan, int column, const QRect& row) const
{
    int left = markColumn();
    for (int i = 0; i < column; ++i)
        left += plan.columnWidths[static_cast<std::size_t>(i)];
    const QRect box(left + padding(), row.top(),
        plan.columnWidths[static_cast<std::size_t>(column)] - 2 * padding(), row.height());
    return QStyle::visualRect(layoutDirection(), rect(), box);
}

void ActionTable::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    const Plan here = plan(width());
    QPainter painter(this);
    paintPlate(painter, rect(), theme.roles.sheet, theme.roles.line, 4);
    paintHeader(painter, here);
    for (int i = 0; i < itemCount(); ++i)
        paintRow(painter, here, i);
    if (m_rows.empty()) {
        painter.setPen(theme.roles.inkSoft);
        emptyText().draw(painter, rect().adjusted(padding(), here.headerHeight + padding(), -padding(), 0));
    }
}

void ActionTable::paintHeader(QPainter& painter, const Plan& plan) const
{
    const Theme& theme = themeOf(*this);
    if (m_rows.empty())
        return;
    painter.setPen(theme.roles.inkHint);
    const QRect row(0, theme.space(Space::Tight) + 1, width(), plan.headerHeight);
    for (int column = 0; column < columns; ++column)
        headerText(column).draw(painter, cellBox(plan, column, row));
}

void ActionTable::paintRow(QPainter& painter, const Plan& plan, int index) const
{
    const Theme& theme = themeOf(*this);
    const Roles& roles = theme.roles;
    const QRect box = itemRect(index);
    const ActionRow& row = m_rows[static_cast<std::size_t>(index)];
    painter.fillRect(QRect(1, box.top(), width() - 2, 1), roles.line);
    if (isChosen(index) || isHovered(index))
        painter.fillRect(box.adjusted(1, 1, -1, 0), roles.accentWash);
    const int padTop = theme.space(Space::Close) - 1;
    const int line = QFontMetrics(theme.font(TextRole::Body)).height();
    const QRect mark(padding() - theme.space(Space::Tight) / 2,
        box.top() + padTop + (line - theme.px(16)) / 2, theme.px(16), theme.px(16));
    paintMark(painter, QStyle::visualRect(layoutDirection(), rect(), mark), row.mark, roles);
    for (int column = 0; column < columns; ++column) {
        QRect room = cellBox(plan, column, box).adjusted(0, padTop, 0, 0);
        painter.setPen(roles.ink);
        for (const InkText* text : cellTexts(row, column)) {
            room.setTop(room.top() + text->draw(painter, room));
            painter.setPen(roles.inkHint); // only the title's column has a second text
        }
    }
    if (showsRingAt(index))
        paintFocusRing(painter, box.adjusted(0, 1, 0, 0), theme, 4);
}

}
