// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/charttable.h"

#include <QAbstractTableModel>
#include <QTableView>

namespace cradlepost {

class ChartTableModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;

    void setTable(const ChartTable& table);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    bool isNumber(int column) const;

    ChartTable m_table;
};

/// The table behind a chart, in its place.
class ChartTableView : public QTableView
{
    Q_OBJECT
public:
    explicit ChartTableView(QWidget* parent = nullptr);

    void setTable(const ChartTable& table);

    QSize sizeHint() const override; ///< a dozen rows at most; the rest scrolls
    QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;

private:
    void fit();

    ChartTableModel* m_model;
};

}
