// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartaxis.h"

#include <optional>
#include <QPointF>

namespace cradlepost {

// What the curves are drawn from: values and words that others computed and worded. A `text` is the whole
// point in words, for hover and screen readers.

struct ControlLimits
{
    double centre = 0.0;
    std::optional<double> low; ///< none: the chart has no limit on that side
    std::optional<double> high;
};

struct ControlPoint
{
    QString label; ///< of the period on the axis, short: "5 Oct"
    std::optional<double> value; ///< none: no data, the line has a gap
    std::optional<ControlLimits> limits;
    int phase = 0; ///< centre line and limits break where it changes
    bool inSpan = true; ///< the span in view is drawn strong, what came before quiet
    bool signal = false; ///< more than chance explains: a filled diamond
    bool paper = false; ///< entered from paper: hollow
    QString text;
};

struct ControlSeries
{
    QString name; ///< "nights"; may be empty when there is one
    std::vector<ControlPoint> points; ///< a period each, the same periods in all series
};

/// A hairline where something began, before the point `before`.
struct ControlMark
{
    int before = 0;
    QString label;
};

struct ControlFigure
{
    enum class Arrangement { Together, Apart };

    std::vector<ControlSeries> series; ///< one or two, or more when apart
    ChartAxis values;
    QString periods; ///< title of the time axis; may be empty
    std::vector<ControlMark> marks;
    Arrangement arrangement = Arrangement::Together; ///< apart: a panel each on one scale
};

struct SurvivalStep
{
    double time = 0.0; ///< from here on ...
    double share = 1.0; ///< ... this share is left
    std::optional<double> low; ///< of the confidence band
    std::optional<double> high;
    QString text;
};

struct SurvivalCurve
{
    QString name;
    std::vector<SurvivalStep> steps; ///< by time; the curve starts at (0, 1) by itself
    double end = 0.0; ///< last time that anything was seen
    std::vector<double> censored; ///< times at which something was still open when last seen
    std::optional<double> median; ///< none when the curve does not reach one half
    QString medianLabel; ///< "half are mended by 13 h (9 to 18)"
    std::vector<QString> atRisk; ///< one a tick of the time axis
};

struct SurvivalFigure
{
    std::vector<SurvivalCurve> curves; ///< up to three, the worst first; told apart by dashes
    ChartAxis times;
    ChartAxis shares;
    QString atRiskTitle; ///< "still open"; with no row of numbers when empty
};

struct HistogramBar
{
    double from = 0.0;
    double to = 0.0;
    double count = 0.0;
    bool outside = false; ///< outside the limits
    QString text;
};

/// A line across the values: a limit or the mean.
struct HistogramGuide
{
    enum class Kind { Limit, Mean };

    double at = 0.0;
    Kind kind = Kind::Limit;
    QString label;
};

struct HistogramFigure
{
    std::vector<HistogramBar> bars;
    std::vector<HistogramGuide> guides; ///< two limits shade what lies between them
    ChartAxis values;
    ChartAxis counts;
};

struct FunnelPoint
{
    double n = 0.0;
    double value = 0.0;
    QString name; ///< written beside the point when there is room, and always when outside
    bool outside = false; ///< outside the outer limits: a filled diamond
    bool few = false; ///< too few to say: hollow
    QString text;
};

/// A pair of curves over n, as points by rising n.
struct FunnelLimit
{
    QString label; ///< "99.8%"
    bool outer = false; ///< the outer pair is drawn solid, the inner dashed
    std::vector<QPointF> low;
    std::vector<QPointF> high;
};

struct FunnelFigure
{
    std::vector<FunnelPoint> points;
    std::vector<FunnelLimit> limits;
    std::optional<double> centre;
    QString centreLabel;
    ChartAxis numbers;
    ChartAxis values;
};

}
