// SPDX-License-Identifier: MIT
#include "ui/report/tablestrips.h"

#include "ui/report/paper.h"
#include "ui/report/tablecolumns.h"
#include "ui/report/textpieces.h"
#include "ui/report/textstrips.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {

constexpr int columnGap = 14;
constexpr int rowPadding = 4;
constexpr int densePadding = 3; ///< on a page that has to hold all
constexpr double hairline = 0.75;

/// Stars of a cell are its own, they set nothing bold.
QString literal(const QString& cell)
{
    return QString(cell).replace(QLatin1String("**"), QString(u'*' % QChar(0x2060) % u'*'));
}

/// One group of a table's columns being set.
class TableSetting
{
public:
    TableSetting(const Paper& paper, const ChartTable& table, ColumnGroup group)
        : m_paper(paper)
        , m_group(std::move(group))
    {
        for (const int column : m_group.columns) {
            const auto at = static_cast<std::size_t>(column);
            m_trailing.push_back(at < table.numbers.size() && table.numbers[at]);
        }
    }

    Strip heading(const ChartTable& table) const
    {
        Strip strip = row(cellsOf(table.headers), TextWeight::SemiBold, &Roles::inkSoft, &Roles::edge);
        strip.keepsNext = true;
        return strip;
    }

    void appendRows(std::vector<Strip>& strips, const ChartTable& table, const Strip& heading) const
    {
        const auto shared = std::make_shared<const Strip>(heading);
        const std::size_t first = strips.size();
        for (const QStringList& cells : table.rows) {
            for (const QStringList& part : fitted(cellsOf(cells), heading.height)) {
                strips.push_back(row(part, TextWeight::Regular, &Roles::ink, &Roles::line));
                strips.back().heading = shared;
            }
        }
        // No row stands alone: neither under the heading nor at the end on a page of its own.
        if (strips.size() - first > 1) {
            strips[first].keepsNext = true;
            strips[strips.size() - 2].keepsNext = true;
        }
    }

private:
    QStringList cellsOf(const QStringList& all) const
    {
        QStringList cells;
        for (const int column : m_group.columns)
            cells.append(literal(all.value(column)));
        return cells;
    }

    const InkText& ink(const QString& cell, std::size_t column, TextWeight weight) const
    {
        return m_paper.ink(
            cell, TextRole::Small, weight, m_trailing[column] ? Qt::AlignRight : Qt::AlignLeft);
    }

    int padding() const { return m_paper.isDense() ? densePadding : rowPadding; }

    int heightOf(const QStringList& cells, TextWeight weight) const
    {
        int height = 0;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const auto column = static_cast<std::size_t>(i);
            height = std::max(height, ink(cells.at(i), column, weight).height(m_group.widths[column]));
        }
        return height + 2 * padding();
    }

    /// The row, or several when it is higher than a page below the heading.
    std::vector<QStringList> fitted(const QStringList& cells, int heading) const
    {
        const int room = m_paper.body().height() - heading;
        if (heightOf(cells, TextWeight::Regular) <= room)
            return {cells};
        std::vector<QStringList> rows;
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const auto column = static_cast<std::size_t>(i);
            const auto fits = [&](const QString& text) {
                return ink(text, column, TextWeight::Regular).height(m_group.widths[column])
                    <= room / 2 - 2 * padding();
            };
            const auto pieces = piecesOf(cells.at(i), fits);
            while (rows.size() < pieces.size())
                rows.emplace_back(QStringList(QList<QString>(cells.size())));
            for (std::size_t piece = 0; piece < pieces.size(); ++piece)
                rows[piece][i] = pieces[piece];
        }
        return rows;
    }

    Strip row(const QStringList& cells, TextWeight weight, QColor Roles::*colour, QColor Roles::*line) const
    {
        return {.height = heightOf(cells, weight),
            .paint = [setting = *this, cells, weight, colour, line](QPainter& painter, const QRect& box) {
                setting.paintRow(painter, box, cells, weight, colour, line);
            }};
    }

    void paintRow(QPainter& painter, const QRect& box, const QStringList& cells, TextWeight weight,
        QColor Roles::*colour, QColor Roles::*line) const
    {
        const Roles& roles = m_paper.theme().roles;
        int left = box.left();
        painter.setPen(roles.*colour);
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const auto column = static_cast<std::size_t>(i);
            const QRect cell(left, box.top() + padding(), m_group.widths[column], box.height() - padding());
            ink(cells.at(i), column, weight).draw(painter, m_paper.seen(cell, box));
            left += m_group.widths[column] + columnGap;
        }
        const QRect rule
            = m_paper.seen(QRect(box.left(), box.bottom(), left - columnGap - box.left(), 1), box);
        painter.fillRect(
            QRectF(rule.left(), box.bottom() + 1 - hairline, rule.width(), hairline), roles.*line);
    }

    const Paper& m_paper;
    ColumnGroup m_group;
    std::vector<bool> m_trailing;
};

ColumnWish wishOf(const Paper& paper, const ChartTable& table, int column)
{
    const InkText& title
        = paper.ink(literal(table.headers.at(column)), TextRole::Small, TextWeight::SemiBold);
    ColumnWish wish{.natural = title.naturalWidth(), .least = title.widestWord()};
    const auto at = static_cast<std::size_t>(column);
    // Qt would break "6.736%" behind its point.
    const bool isFigure = at < table.numbers.size() && table.numbers[at];
    for (const QStringList& row : table.rows) {
        const InkText& cell = paper.ink(literal(row.value(column)));
        wish.natural = std::max(wish.natural, cell.naturalWidth());
        wish.least = std::max(wish.least, isFigure ? cell.naturalWidth() : cell.widestWord());
    }
    return wish;
}

}

void appendTable(
    std::vector<Strip>& strips, const Paper& paper, const QString& title, const ChartTable& table)
{
    if (table.headers.isEmpty())
        return;
    appendText(strips, paper, title,
        {.weight = TextWeight::SemiBold, .gap = paper.theme().space(Space::Wide), .keepsNext = true});
    std::vector<ColumnWish> wishes;
    for (int i = 0; i < table.headers.size(); ++i)
        wishes.push_back(wishOf(paper, table, i));
    for (const ColumnGroup& group : columnGroups(wishes, paper.body().width(), columnGap)) {
        const TableSetting setting(paper, table, group);
        Strip heading = setting.heading(table);
        heading.gap = paper.theme().space(Space::Close);
        heading.keepsNext = !table.rows.empty();
        strips.push_back(heading);
        setting.appendRows(strips, table, heading);
    }
}

}
