// SPDX-License-Identifier: MIT
#include "ui/charts/charttableview.h"
#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

#include <algorithm>
#include <QEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

namespace cradlepost {

namespace {
constexpr int mostRows = 12;
constexpr double scrollBar = 14.0;
constexpr double leastWidth = 280.0;

/// Room around the words of a cell.
QSize padded(const QSize& size, const QWidget& widget)
{
    const Theme& theme = themeOf(widget);
    return size + QSize(2 * theme.space(Space::Close), theme.space(Space::Tight));
}

class CellDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// "27 of 88" keeps its order in a mirrored window.
    QString displayText(const QVariant& value, const QLocale& locale) const override
    {
        const QString text = QStyledItemDelegate::displayText(value, locale);
        const bool turns
            = QGuiApplication::isRightToLeft() && textDirection(text, Qt::RightToLeft) == Qt::LeftToRight;
        return turns ? QString(QChar(0x2066) % text % QChar(0x2069)) : text;
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        return padded(QStyledItemDelegate::sizeHint(option, index), *option.widget);
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        QStyleOptionViewItem inner = option;
        const int side = themeOf(*option.widget).space(Space::Close) / 2;
        inner.rect.adjust(side, 0, -side, 0);
        QStyledItemDelegate::paint(painter, inner, index);
    }
};

/// Heads in small print over a line, instead of the desktop's raised ones.
class TableHead : public QHeaderView
{
public:
    explicit TableHead(QWidget* parent)
        : QHeaderView(Qt::Horizontal, parent)
    {
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(viewport());
        painter.fillRect(viewport()->rect(), themeOf(*this).roles.sheet);
        for (int i = 0; i < count(); ++i)
            paintSection(&painter, {sectionViewportPosition(i), 0, sectionSize(i), height()}, i);
    }

    QSize sectionSizeFromContents(int section) const override
    {
        const QFontMetrics metrics(themeOf(*this).font(TextRole::Small, TextWeight::SemiBold));
        const QString text = model()->headerData(section, Qt::Horizontal).toString();
        return padded({metrics.horizontalAdvance(text) + 4, metrics.height()}, *this);
    }

    void paintSection(QPainter* painter, const QRect& rect, int section) const override
    {
        const Theme& theme = themeOf(*this);
        const int side = theme.space(Space::Close);
        const auto wish = model()->headerData(section, Qt::Horizontal, Qt::TextAlignmentRole).toInt();
        painter->setFont(theme.font(TextRole::Small, TextWeight::SemiBold));
        painter->setPen(theme.roles.inkSoft);
        painter->drawText(rect.adjusted(side, 0, -side, 0),
            static_cast<int>(QStyle::visualAlignment(layoutDirection(), Qt::Alignment(wish))),
            model()->headerData(section, Qt::Horizontal).toString());
        painter->setPen(theme.roles.line);
        painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    }
};
}

void ChartTableModel::setTable(const ChartTable& table)
{
    beginResetModel();
    m_table = table;
    endResetModel();
}

int ChartTableModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int ChartTableModel::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_table.headers.size());
}

bool ChartTableModel::isNumber(int column) const
{
    const auto at = static_cast<std::size_t>(column);
    return at < m_table.numbers.size() && m_table.numbers[at];
}

QVariant ChartTableModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == Qt::DisplayRole)
        return m_table.rows[static_cast<std::size_t>(index.row())].value(index.column());
    if (role == Qt::TextAlignmentRole)
        return int((isNumber(index.column()) ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
    return {};
}

QVariant ChartTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::DisplayRole)
        return m_table.headers.value(section);
    if (role == Qt::TextAlignmentRole)
        return int((isNumber(section) ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
    return {};
}

ChartTableView::ChartTableView(QWidget* parent)
    : QTableView(parent)
    , m_model(new ChartTableModel(this))
{
    setHorizontalHeader(new TableHead(this));
    setItemDelegate(new CellDelegate(this));
    setModel(m_model);
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(false); // Tab leads on, out of the table
    setWordWrap(true);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
}

void ChartTableView::setTable(const ChartTable& table)
{
    m_model->setTable(table);
    fit();
}

QSize ChartTableView::sizeHint() const
{
    const int rows = std::min(mostRows, m_model->rowCount());
    int height = horizontalHeader()->sizeHint().height();
    for (int row = 0; row < rows; ++row)
        height += rowHeight(row);
    return {horizontalHeader()->length(), height + themeOf(*this).px(scrollBar)};
}

QSize ChartTableView::minimumSizeHint() const
{
    const QSize wish = sizeHint();
    return {std::min(wish.width() + 2, themeOf(*this).px(leastWidth)), wish.height()};
}

void ChartTableView::changeEvent(QEvent* event)
{
    QTableView::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange)
        fit();
}

void ChartTableView::fit()
{
    updateGeometry();
    viewport()->update();
}

}
