// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/pencil.h"

#include <QMargins>

namespace cradlepost {

/// A hairline across the plot with words at its head.
struct PlotFlag
{
    double at = 0.0;
    QString label;
    Qt::PenStyle style = Qt::SolidLine;
};

/// A row of numbers below the axis, one a tick.
struct PlotRow
{
    QString name;
    std::vector<QString> numbers;
    bool hasSample = false; ///< room is left before the name, for the look of what it names
};

/// What has to be read around a plot.
struct PlotSurround
{
    ChartAxis across;
    ChartAxis up;
    std::vector<PlotFlag> flags;
    std::vector<QString> endNames; ///< of the curves, written beside their ends
    bool keepLastLabel = false; ///< labels across are thinned towards the last one instead of the first
    bool hidesAcross = false; ///< a panel above another one that has the labels
    QString rowsTitle;
    std::vector<PlotRow> rows;
};

struct PlacedText
{
    QRect box; ///< left to right
    QString text;
    std::size_t index = 0; ///< of the tick, flag or curve
};

/// The room around a plot and the words in it, laid out left to right. Nothing is cut: labels that would
/// touch are left out, names wrap.
class PlotFrame
{
public:
    PlotFrame(const Stage& stage, const QRect& room, PlotSurround surround);

    /// What stands around a plot when there is `width` for both.
    static QMargins marginsOf(const Stage& stage, int width, const PlotSurround& surround);
    static int leastWidth(const Stage& stage, const PlotSurround& surround);

    const QRectF& plot() const { return m_plot; }
    QPointF at(double x, double y) const;
    double markRoom() const; ///< for marks that reach over the plot's edge

    const std::vector<PlacedText>& acrossLabels() const { return m_acrossLabels; }
    const std::vector<PlacedText>& upLabels() const { return m_upLabels; }
    const std::vector<PlacedText>& flagLabels() const { return m_flagLabels; }
    /// Before the names of the rows, where they have a sample; one a row.
    std::vector<QRect> sampleBoxes() const;
    /// Names at the heights at which the curves end, moved apart.
    std::vector<PlacedText> endNames(const std::vector<double>& values) const;

    void paint(const Pencil& pencil) const; ///< grid, labels, rows: what lies behind the curves
    void paintFlags(const Pencil& pencil) const; ///< behind curves, over bars
    void paintEndNames(const Pencil& pencil, const std::vector<double>& values) const;

private:
    void placeAcross();
    void placeUp();
    void paintRows(const Pencil& pencil) const;
    int rowsTop() const;

    const Stage& m_stage;
    QRect m_room;
    PlotSurround m_around;
    QRectF m_plot;
    std::vector<PlacedText> m_acrossLabels;
    std::vector<PlacedText> m_upLabels;
    std::vector<PlacedText> m_flagLabels;
};

}
