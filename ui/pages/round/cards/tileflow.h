// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

namespace cradlepost {

/** Children of one width side by side, in as many rows as the width asks for, the rows as even as can be. */
class TileFlow : public QWidget
{
    Q_OBJECT
public:
    explicit TileFlow(QWidget* parent = nullptr);

    void addTile(QWidget* tile);
    /** These and no others; those that were there before are the caller's to delete. */
    void setTiles(const std::vector<QWidget*>& tiles);
    /** Design pixels, grown with the text; a tile that needs more widens them all. */
    void setLeastWidth(double designPixels) { m_leastWidth = designPixels; }
    /** Tiles grow to fill the row; else they stay at their least width. */
    void setFilling(bool filling) { m_filling = filling; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Grid
    {
        int columns = 1;
        int tileWidth = 0;
        int gap = 0;
    };
    [[nodiscard]] int leastWidth() const;
    [[nodiscard]] Grid gridFor(int width) const;
    [[nodiscard]] int rowHeight(std::size_t first, const Grid& grid) const;
    void arrange();

    std::vector<QWidget*> m_tiles;
    double m_leastWidth = 0;
    bool m_filling = true;
};

}
