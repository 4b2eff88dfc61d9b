// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/tileflow.h"

#include "ui/theme/theme.h"

#include <algorithm>
#include <QEvent>
#include <QStyle>

namespace cradlepost {

namespace {
int heightOf(const QWidget& tile, int width)
{
    const int height = tile.hasHeightForWidth() ? tile.heightForWidth(width) : tile.sizeHint().height();
    return std::max(height, tile.minimumSizeHint().height());
}
}

TileFlow::TileFlow(QWidget* parent)
    : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void TileFlow::addTile(QWidget* tile)
{
    tile->setParent(this);
    m_tiles.push_back(tile);
    updateGeometry();
}

void TileFlow::setTiles(const std::vector<QWidget*>& tiles)
{
    m_tiles.clear();
    for (QWidget* tile : tiles) {
        addTile(tile);
        tile->show();
    }
    arrange();
}

int TileFlow::leastWidth() const
{
    int width = themeOf(*this).px(m_leastWidth);
    for (const QWidget* tile : m_tiles)
        width = std::max(width, tile->minimumSizeHint().width());
    return width;
}

TileFlow::Grid TileFlow::gridFor(int width) const
{
    Grid grid{.columns = 1, .tileWidth = width, .gap = themeOf(*this).space(Space::Close)};
    const int count = std::max(1, static_cast<int>(m_tiles.size()));
    const int least = leastWidth();
    const int fit = std::clamp((width + grid.gap) / std::max(1, least + grid.gap), 1, count);
    const int rows = (count + fit - 1) / fit;
    grid.columns = (count + rows - 1) / rows;
    grid.tileWidth = (width - (grid.columns - 1) * grid.gap) / grid.columns;
    if (!m_filling)
        grid.tileWidth = std::min(grid.tileWidth, least);
    return grid;
}

int TileFlow::rowHeight(std::size_t first, const Grid& grid) const
{
    int height = 0;
    for (std::size_t i = first; i < std::min(m_tiles.size(), first + static_cast<std::size_t>(grid.columns));
         ++i)
        height = std::max(height, heightOf(*m_tiles[i], grid.tileWidth));
    return height;
}

int TileFlow::heightForWidth(int width) const
{
    const Grid grid = gridFor(width);
    int height = -grid.gap;
    for (std::size_t i = 0; i < m_tiles.size(); i += static_cast<std::size_t>(grid.columns))
        height += rowHeight(i, grid) + grid.gap;
    return std::max(0, height);
}

QSize TileFlow::sizeHint() const
{
    const int count = static_cast<int>(m_tiles.size());
    const int gap = themeOf(*this).space(Space::Close);
    const int width = count * leastWidth() + std::max(0, count - 1) * gap;
    return {width, heightForWidth(width)};
}

QSize TileFlow::minimumSizeHint() const
{
    const int width = leastWidth();
    int height = 0;
    for (const QWidget* tile : m_tiles)
        height = std::max(height, tile->minimumSizeHint().height());
    return {width, height};
}

void TileFlow::arrange()
{
    const Grid grid = gridFor(width());
    int top = 0;
    for (std::size_t i = 0; i < m_tiles.size(); i += static_cast<std::size_t>(grid.columns)) {
        const int height = rowHeight(i, grid);
        for (std::size_t j = i; j < std::min(m_tiles.size(), i + static_cast<std::size_t>(grid.columns));
             ++j) {
            const int column = static_cast<int>(j - i);
            const QRect box(column * (grid.tileWidth + grid.gap), top, grid.tileWidth, height);
            m_tiles[j]->setGeometry(QStyle::visualRect(layoutDirection(), rect(), box));
        }
        top += height + grid.gap;
    }
}

void TileFlow::resizeEvent(QResizeEvent* event)
{
    arrange();
    QWidget::resizeEvent(event);
}

bool TileFlow::event(QEvent* event)
{
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::LayoutDirectionChange) {
        updateGeometry();
        arrange();
    }
    return QWidget::event(event);
}

}
