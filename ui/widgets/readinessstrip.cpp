// SPDX-License-Identifier: MIT
#include "ui/widgets/readinessstrip.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"

#include <array>
#include <numeric>
#include <QPainter>
#include <QStyle>

namespace cradlepost {

namespace {
constexpr int mostCellWidth = 44; // wider, and a row no longer reads as one
constexpr double leastMarkBox = 13.0; // its disc is 8 px across

/// Each mark painted once and then stamped: a strip has hundreds of them.
class MarkStamps
{
public:
    MarkStamps(int side, double ratio, const Roles& roles)
        : m_side(side)
        , m_ratio(ratio)
        , m_roles(roles)
    {
    }

    void paint(QPainter& painter, const QRect& box, Mark mark)
    {
        QPixmap& stamp = m_stamps[static_cast<std::size_t>(mark)];
        if (stamp.isNull())
            stamp = markPixmap(mark, m_side, m_ratio, m_roles);
        painter.drawPixmap(box.center() - QPoint(m_side / 2, m_side / 2), stamp);
    }

private:
    int m_side;
    double m_ratio;
    const Roles& m_roles;
    std::array<QPixmap, std::size(allMarks)> m_stamps;
};
}

ReadinessStrip::ReadinessStrip(QWidget* parent)
    : PaintedList(parent)
{
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(this, &PaintedList::activated, this,
        [this](int index) { Q_EMIT cellChosen(index / columnCount(), index % columnCount()); });
}

void ReadinessStrip::setData(const StripData& strip)
{
    m_data = strip;
    m_columns = std::accumulate(strip.days.begin(), strip.days.end(), 0,
        [](int sum, const StripDay& day) { return sum + day.shifts; });
    setAccessibleDescription(strip.finding);
    itemsChanged();
    if (m_columns > 0 && cursor() < m_columns)
        setCursorAt(m_columns - 1); // the latest shift of the first section
}

int ReadinessStrip::shownDays() const
{
    return static_cast<int>(m_data.days.size()) - grid(width()).firstDay;
}

int ReadinessStrip::dayOfColumn(int column) const
{
    int day = 0;
    for (int end = 0; day < static_cast<int>(m_data.days.size()); ++day) {
        end += m_data.days[static_cast<std::size_t>(day)].shifts;
        if (column < end)
            break;
    }
    return day;
}

const StripCell& ReadinessStrip::cell(int index) const
{
    static const StripCell none;
    const auto row = static_cast<std::size_t>(index / columnCount());
    const auto column = static_cast<std::size_t>(index % columnCount());
    return row < m_data.cells.size() && column < m_data.cells[row].size() ? m_data.cells[row][column] : none;
}

QString ReadinessStrip::itemText(int index) const
{
    const auto day = static_cast<std::size_t>(dayOfColumn(index % columnCount()));
    return m_data.rows[static_cast<std::size_t>(index / columnCount())] + u", " + m_data.days.at(day).label
        + u", " + wordOf(cell(index));
}

QString ReadinessStrip::wordOf(const StripCell& cell) const
{
    if (!cell.mark)
        return tr("still to come");
    return cell.word.isEmpty() ? OutcomeMark::word(*cell.mark) : cell.word;
}

QString ReadinessStrip::itemToolTip(int index) const
{
    const StripCell& here = cell(index);
    const auto column = static_cast<std::size_t>(index % columnCount());
    if (!here.mark || column >= m_data.shifts.size())
        return {};
    return m_data.rows[static_cast<std::size_t>(index / columnCount())] + u" · " + m_data.shifts[column] + u" · "
        + wordOf(here);
}

int ReadinessStrip::widestRowName() const
{
    int widest = 0;
    for (const QString& row : m_data.rows)
        widest = std::max(widest, ink(row, TextRole::Small).naturalWidth());
    return widest;
}

int ReadinessStrip::leastDayWidth() const
{
    int widest = 0;
    for (const StripDay& day : m_data.days)
        widest = std::max(widest, ink(day.label, TextRole::Small).naturalWidth());
    return widest + themeOf(*this).space(Space::Close);
}

QString ReadinessStrip::title(int shown) const
{
    if (shown == static_cast<int>(m_data.days.size()))
        return m_data.finding;
    //: behind the title of the strip when not all of its days fit
    return m_data.finding + u' ' + tr("(the last %Ln day(s) shown)", nullptr, shown);
}

const InkText& ReadinessStrip::titleText(int shown) const
{
    return ink(title(shown), TextRole::Small, TextWeight::SemiBold);
}

int ReadinessStrip::lineHeight() const
{
    return m_data.rows.empty() ? 0 : ink(m_data.rows.front(), TextRole::Small).height(1 << 20);
}

const ReadinessStrip::Grid& ReadinessStrip::grid(int width) const
{
    const auto known = m_grids.find(width);
    return known != m_grids.end() ? known->second : m_grids.emplace(width, makeGrid(width)).first->second;
}

/// Drops the oldest days until the rest have room for their labels and for marks that can be told apart.
ReadinessStrip::Grid ReadinessStrip::makeGrid(int width) const
{
    const Theme& theme = themeOf(*this);
    const int line = lineHeight();
    Grid grid;
    grid.labelWidth = widestRowName() + theme.space(Space::Wide);
    const double room = std::max(1, width - grid.labelWidth);
    const double leastCell = leastMarkBox + 3.0;
    int columns = columnCount();
    const auto days = static_cast<int>(m_data.days.size());
    const auto fits
        = [&] { return columns * leastCell <= room && (days - grid.firstDay) * leastDayWidth() <= room; };
    while (grid.firstDay + 1 < days && !fits()) {
        const int dropped = m_data.days[static_cast<std::size_t>(grid.firstDay)].shifts;
        columns -= dropped;
        grid.firstColumn += dropped;
        ++grid.firstDay;
    }
    grid.cellWidth
        = columns > 0 ? std::min(room / columns, static_cast<double>(theme.px(mostCellWidth))) : 0.0;
    grid.markSide = std::clamp(grid.cellWidth - 3.0, leastMarkBox, static_cast<double>(theme.px(15)));
    grid.titleHeight = titleText(days - grid.firstDay).height(width);
    grid.cellsTop = grid.titleHeight + theme.space(Space::Close) + line + theme.space(Space::Tight);
    grid.rowHeight = std::max(line, static_cast<int>(grid.markSide)) + theme.space(Space::Tight);
    return grid;
}

QRectF ReadinessStrip::cellBox(const Grid& grid, int row, int column) const
{
    return {grid.labelWidth + (column - grid.firstColumn) * grid.cellWidth,
        static_cast<double>(grid.cellsTop + row * grid.rowHeight), grid.cellWidth,
        static_cast<double>(grid.rowHeight)};
}

std::vector<QRect> ReadinessStrip::layOutItems() const
{
    const Grid& here = grid(width());
    std::vector<QRect> boxes;
    boxes.reserve(static_cast<std::size_t>(itemCount()));
    for (int i = 0; i < itemCount(); ++i) {
        const int column = i % columnCount();
        boxes.push_back(
            column < here.firstColumn ? QRect() : cellBox(here, i / columnCount(), column).toRect());
    }
    return boxes;
}

void ReadinessStrip::forgetLayout()
{
    m_grids.clear();
    PaintedList::forgetLayout();
}

int ReadinessStrip::itemBeside(int index, Qt::Key key) const
{
    if (columnCount() == 0 || index < 0)
        return index;
    const int row = index / columnCount();
    const int column = index % columnCount();
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const int later = std::min(columnCount() - 1, column + 1);
    const int earlier = std::max(grid(width()).firstColumn, column - 1);
    switch (key) {
    case Qt::Key_Up:
        return row > 0 ? index - columnCount() : index;
    case Qt::Key_Down:
        return row + 1 < rowCount() ? index + columnCount() : index;
    case Qt::Key_Left:
        return row * columnCount() + (mirrored ? later : earlier);
    case Qt::Key_Right:
        return row * columnCount() + (mirrored ? earlier : later);
    default:
        return index;
    }
}

QSize ReadinessStrip::sizeHint() const
{
    const int width = widestRowName() + themeOf(*this).space(Space::Wide)
        + std::max(
            static_cast<int>(m_data.days.size()) * leastDayWidth(), columnCount() * themeOf(*this).px(20));
    return {width, heightForWidth(width)};
}

QSize ReadinessStrip::minimumSizeHint() const
{
    const int width = widestRowName() + themeOf(*this).space(Space::Wide) + 2 * leastDayWidth();
    return {width, heightForWidth(std::max(width, this->width()))};
}

int ReadinessStrip::heightForWidth(int width) const
{
    const Grid& there = grid(width);
    return there.cellsTop + rowCount() * there.rowHeight;
}

void ReadinessStrip::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    const Grid& here = grid(width());
    QPainter painter(this);
    painter.setPen(theme.roles.inkSoft);
    titleText(shownDays()).draw(painter, rect());
    paintDays(painter, here);
    paintRows(painter, here);
}

void ReadinessStrip::paintDays(QPainter& painter, const Grid& grid) const
{
    const Theme& theme = themeOf(*this);
    const int lineTop = grid.cellsTop;
    const int gridHeight = rowCount() * grid.rowHeight;
    const int textHeight = lineHeight();
    int column = grid.firstColumn;
    int taken = 0; // by the label before
    for (auto day = static_cast<std::size_t>(grid.firstDay); day < m_data.days.size(); ++day) {
        const QRectF first = cellBox(grid, 0, column);
        const int left = static_cast<int>(first.left());
        const QRect line(left, lineTop, 1, gridHeight);
        painter.fillRect(QStyle::visualRect(layoutDirection(), rect(), line), theme.roles.line);
        const InkText& text = ink(m_data.days[day].label, TextRole::Small);
        const int textWidth = text.naturalWidth();
        // The day that is on may have but one shift yet: its label ends at the edge then.
        const int start = std::min(left + theme.space(Space::Tight), width() - textWidth - 1);
        const QRect label(start, lineTop - textHeight - theme.space(Space::Tight), textWidth + 1, textHeight);
        painter.setPen(theme.roles.inkHint);
        if (start >= taken)
            text.draw(painter, QStyle::visualRect(layoutDirection(), rect(), label));
        taken = start + textWidth;
        column += m_data.days[day].shifts;
    }
}

void ReadinessStrip::paintRows(QPainter& painter, const Grid& grid) const
{
    const Theme& theme = themeOf(*this);
    MarkStamps stamps(static_cast<int>(grid.markSide), devicePixelRatioF(), theme.roles);
    for (int row = 0; row < rowCount(); ++row) {
        const QRect name(0, grid.cellsTop + row * grid.rowHeight, grid.labelWidth, grid.rowHeight);
        painter.setPen(theme.roles.ink);
        ink(m_data.rows[static_cast<std::size_t>(row)], TextRole::Small)
            .drawMiddle(painter, QStyle::visualRect(layoutDirection(), rect(), name));
        for (int column = grid.firstColumn; column < columnCount(); ++column) {
            const int index = row * columnCount() + column;
            const QRect box = itemRect(index);
            if (isHovered(index))
                painter.fillRect(box, theme.roles.accentWash);
            if (const auto mark = cell(index).mark)
                stamps.paint(painter, box, *mark);
            if (showsRingAt(index))
                paintFocusRing(painter, box.adjusted(1, 1, -1, -1), theme, 4);
        }
    }
}

}
