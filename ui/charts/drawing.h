// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartfigure.h"
#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

#include <memory>
#include <QRect>

namespace cradlepost {

/// Where a figure is drawn and in what clothes. Drawings lay out left to right; only painting mirrors.
struct Stage
{
    QSize size;
    const Theme& theme;
    Qt::LayoutDirection direction;
    const InkCache& texts;

    const InkText& ink(const QString& text, TextRole role = TextRole::Small,
        TextWeight weight = TextWeight::Regular, Qt::Alignment alignment = Qt::AlignLeft) const;
    int widthOf(const QString& text, TextRole role = TextRole::Small) const; ///< 0 when empty
    int heightOf(const QString& text, int width, TextRole role = TextRole::Small) const;
    int line() const; ///< height of one small line
};

/// One kind of figure as paint: the same code on screen, in a saved picture and in a report.
class Drawing
{
public:
    Drawing() = default;
    virtual ~Drawing() = default;
    Drawing(const Drawing&) = delete;
    Drawing& operator=(const Drawing&) = delete;

    /// The figure must outlive the drawing or the next call, and be of the kind it was made for.
    virtual void show(const ChartFigure& figure) = 0;

    virtual int itemCount() const = 0;
    virtual QString itemText(int index) const = 0;
    virtual int leastWidth(const Stage& stage) const = 0;
    virtual int heightFor(int width, const Stage& stage) const = 0;
    /// Left to right, in the order of the items.
    virtual std::vector<QRect> itemBoxes(const Stage& stage) const = 0;
    virtual void paint(QPainter& painter, const Stage& stage) = 0;
    /// Where an arrow leads to, left to right; the same index when nowhere.
    virtual int beside(int index, Qt::Key key) const;
};

/// A drawing of the figure F.
template <class F> class DrawingOf : public Drawing
{
public:
    void show(const ChartFigure& shown) final { m_figure = &std::get<F>(shown); }

protected:
    const F& figure() const { return *m_figure; }

private:
    const F* m_figure = nullptr;
};

/// A drawing for the kind of `figure`, showing it.
std::unique_ptr<Drawing> makeDrawing(const ChartFigure& figure);

/// What stands instead of a figure that is empty.
QString nothingToDraw();

}
