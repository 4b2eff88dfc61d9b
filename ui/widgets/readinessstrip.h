// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/outcomemark.h"
#include "ui/widgets/paintedlist.h"

#include <map>
#include <optional>

namespace cradlepost {

struct StripDay
{
    QString label; ///< short: "11 Nov"
    int shifts = 3;
};

struct StripCell
{
    std::optional<Mark> mark; ///< none: the shift is still to come
    QString word; ///< for the mark, where its own does not say enough: "no round"
};

struct StripData
{
    QString finding; ///< the title: what was found
    std::vector<QString> rows; ///< sections, from the top
    std::vector<StripDay> days; ///< the oldest first
    std::vector<QString> shifts; ///< of the columns, over all days: "14 Nov, night", for tool tips
    std::vector<std::vector<StripCell>> cells; ///< [row][column]
};

/// Sections against the last shifts, a mark a cell. When the days do not fit, the latest are shown and
/// the strip says so. Arrows move from cell to cell, Enter chooses one.
class ReadinessStrip : public PaintedList
{
    Q_OBJECT
public:
    explicit ReadinessStrip(QWidget* parent = nullptr);

    void setData(const StripData& strip);
    int shownDays() const;

    int itemCount() const override { return rowCount() * columnCount(); }
    QString itemText(int index) const override;
    QString itemToolTip(int index) const override;
    QString listName() const override { return m_data.finding; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

Q_SIGNALS:
    void cellChosen(int row, int column);

protected:
    std::vector<QRect> layOutItems() const override;
    void forgetLayout() override;
    int itemBeside(int index, Qt::Key key) const override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// Where things are at one width, left to right.
    struct Grid
    {
        int titleHeight = 0;
        int labelWidth = 0; ///< of the rows' names
        int cellsTop = 0;
        int rowHeight = 0;
        int firstDay = 0;
        int firstColumn = 0;
        double cellWidth = 0.0;
        double markSide = 0.0;
    };

    int rowCount() const { return static_cast<int>(m_data.rows.size()); }
    int columnCount() const { return m_columns; }
    int dayOfColumn(int column) const;
    const StripCell& cell(int index) const;
    QString wordOf(const StripCell& cell) const;
    int widestRowName() const;
    int leastDayWidth() const;
    QString title(int shown) const;
    const InkText& titleText(int shown) const;
    int lineHeight() const;
    const Grid& grid(int width) const;
    Grid makeGrid(int width) const;
    QRectF cellBox(const Grid& grid, int row, int column) const;
    void paintDays(QPainter& painter, const Grid& grid) const;
    void paintRows(QPainter& painter, const Grid& grid) const;

    StripData m_data;
    int m_columns = 0;
    mutable std::map<int, Grid> m_grids; ///< by width: a layout asks for several, in turns
};

}
