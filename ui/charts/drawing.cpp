// SPDX-License-Identifier: MIT
#include "ui/charts/drawing.h"
#include "ui/charts/barsdrawing.h"
#include "ui/charts/calendardrawing.h"
#include "ui/charts/controldrawing.h"
#include "ui/charts/funneldrawing.h"
#include "ui/charts/histogramdrawing.h"
#include "ui/charts/mapdrawing.h"
#include "ui/charts/multiplesdrawing.h"
#include "ui/charts/sharesdrawing.h"
#include "ui/charts/survivaldrawing.h"

#include <algorithm>
#include <QCoreApplication>
#include <QFontMetrics>

namespace cradlepost {

const InkText& Stage::ink(
    const QString& text, TextRole role, TextWeight weight, Qt::Alignment alignment) const
{
    return texts.text(text, theme.font(role, weight), direction, alignment);
}

int Stage::widthOf(const QString& text, TextRole role) const
{
    return text.isEmpty() ? 0 : ink(text, role).naturalWidth();
}

int Stage::heightOf(const QString& text, int width, TextRole role) const
{
    return text.isEmpty() ? 0 : ink(text, role).height(std::max(1, width));
}

int Stage::line() const { return QFontMetrics(theme.font(TextRole::Small)).height(); }

int Drawing::beside(int index, Qt::Key key) const
{
    if (key == Qt::Key_Left || key == Qt::Key_Up)
        return std::max(0, index - 1);
    if (key == Qt::Key_Right || key == Qt::Key_Down)
        return std::min(itemCount() - 1, index + 1);
    return index;
}

namespace {
struct Maker
{
    std::unique_ptr<Drawing> operator()(const ControlFigure& /*f*/) const
    {
        return std::make_unique<ControlDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const SurvivalFigure& /*f*/) const
    {
        return std::make_unique<SurvivalDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const HistogramFigure& /*f*/) const
    {
        return std::make_unique<HistogramDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const FunnelFigure& /*f*/) const
    {
        return std::make_unique<FunnelDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const BarsFigure& /*f*/) const
    {
        return std::make_unique<BarsDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const ShareRowsFigure& /*f*/) const
    {
        return std::make_unique<SharesDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const CalendarFigure& /*f*/) const
    {
        return std::make_unique<CalendarDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const MapFigure& /*f*/) const
    {
        return std::make_unique<MapDrawing>();
    }
    std::unique_ptr<Drawing> operator()(const SmallMultiplesFigure& /*f*/) const
    {
        return std::make_unique<MultiplesDrawing>();
    }
};
}

std::unique_ptr<Drawing> makeDrawing(const ChartFigure& figure)
{
    auto drawing = std::visit(Maker(), figure);
    drawing->show(figure);
    return drawing;
}

QString nothingToDraw() { return QCoreApplication::translate("Drawing", "There is nothing to draw yet."); }

}
