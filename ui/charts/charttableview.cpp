// SPDX-License-Identifier: MIT
#include "ui/charts/charttableview.h"
#include "ui/theme/theme.h"

#include <algorithm>
#include <QEvent>
#include <QHeaderView>

namespace cradlepost {

namespace {
constexpr int mostRows = 12;
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
    const int bar = horizontalHeader()->length() > width() ? themeOf(*this).px(12) : 0;
    return {horizontalHeader()->length(), height + bar + 2};
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
