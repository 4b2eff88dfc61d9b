// SPDX-License-Identifier: MIT
#include "ui/report/chartstrips.h"

#include "ui/report/figurepieces.h"
#include "ui/report/paper.h"
#include "ui/report/reporttext.h"

#include <algorithm>
#include <QPainter>

namespace cradlepost {

namespace {

constexpr double lowestCurve = 0.7; ///< a curve may be drawn this much lower to save a page

bool isCurve(const ChartFigure& figure)
{
    return std::holds_alternative<ControlFigure>(figure) || std::holds_alternative<SurvivalFigure>(figure)
        || std::holds_alternative<HistogramFigure>(figure) || std::holds_alternative<FunnelFigure>(figure);
}

/// Title, chart and small print below one another, `width` wide.
class ChartSheet
{
public:
    ChartSheet(const Paper& paper, const ChartContent& content, ChartFigure figure, QString title, int width)
        : m_paper(paper)
        , m_content(content)
        , m_figure(std::move(figure))
        , m_title(std::move(title))
        , m_width(width)
        , m_gap(paper.theme().space(Space::Near))
        , m_titleHeight(titleInk().height(width))
        , m_printHeight(printInk().height(width))
    {
        m_chartHeight = isEmpty(m_figure) ? emptyInk().height(width)
                                          : chartHeight(m_figure, width, paper.theme(), paper.direction());
    }

    int height() const { return around() + m_chartHeight; }
    int least() const
    {
        if (!isCurve(m_figure) || isEmpty(m_figure))
            return height();
        return around() + static_cast<int>(m_chartHeight * lowestCurve);
    }

    void paint(QPainter& painter, const QRect& box) const
    {
        const Roles& roles = m_paper.theme().roles;
        int top = box.top();
        painter.setPen(roles.ink);
        titleInk().draw(painter, {box.left(), top, m_width, m_titleHeight});
        top += m_titleHeight > 0 ? m_titleHeight + m_gap : 0;
        const int chart = isCurve(m_figure) ? box.height() - around() : m_chartHeight;
        if (isEmpty(m_figure)) {
            painter.setPen(roles.inkSoft);
            emptyInk().draw(painter, {box.left(), top, m_width, m_chartHeight});
        } else {
            paintChart(painter, QRectF(box.left(), top, m_width, std::min(chart, m_chartHeight)), m_figure,
                m_paper.theme(), m_paper.direction());
        }
        top += std::min(chart, m_chartHeight) + m_gap;
        painter.setPen(roles.inkHint);
        printInk().draw(painter, {box.left(), top, m_width, m_printHeight});
    }

private:
    const InkText& titleInk() const { return m_paper.ink(m_title, TextRole::Body, TextWeight::SemiBold); }
    const InkText& printInk() const { return m_paper.ink(m_content.smallPrint); }
    const InkText& emptyInk() const
    {
        return m_paper.ink(m_content.emptyText.isEmpty() ? ReportText::nothingToShow() : m_content.emptyText,
            TextRole::Body);
    }
    int around() const
    {
        return (m_titleHeight > 0 ? m_titleHeight + m_gap : 0)
            + (m_printHeight > 0 ? m_gap + m_printHeight : 0);
    }

    const Paper& m_paper;
    const ChartContent& m_content;
    ChartFigure m_figure;
    QString m_title;
    int m_width;
    int m_gap;
    int m_titleHeight;
    int m_printHeight;
    int m_chartHeight = 0;
};

int halfOf(const Paper& paper) { return (paper.body().width() - paper.theme().space(Space::Wide)) / 2; }

}

void appendChart(std::vector<Strip>& strips, const Paper& paper, const ChartContent& content)
{
    const QRect body = paper.body();
    const auto sheetOf = [&](const ChartFigure& figure, const QString& title) {
        return ChartSheet(paper, content, figure, title, body.width());
    };
    const QString further = ReportText::continued(content.title);
    const auto pieces = figurePieces(content.figure,
        [&](const ChartFigure& figure) { return sheetOf(figure, further).height() <= body.height(); });
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const ChartSheet sheet = sheetOf(pieces[i], i == 0 ? content.title : further);
        strips.push_back({.height = std::min(sheet.height(), body.height()),
            .least = sheet.least(),
            .gap = paper.theme().space(Space::Wide),
            .paint = [sheet](QPainter& painter, const QRect& box) { sheet.paint(painter, box); }});
    }
}

bool fitBeside(const Paper& paper, const ChartContent& one, const ChartContent& other)
{
    const auto fits = [&](const ChartContent& content) {
        return chartLeastWidth(content.figure, paper.theme(), paper.direction()) <= halfOf(paper)
            && ChartSheet(paper, content, content.figure, content.title, halfOf(paper)).height()
            <= paper.body().height();
    };
    return fits(one) && fits(other);
}

void appendChartsBeside(
    std::vector<Strip>& strips, const Paper& paper, const ChartContent& one, const ChartContent& other)
{
    const int half = halfOf(paper);
    const ChartSheet first(paper, one, one.figure, one.title, half);
    const ChartSheet second(paper, other, other.figure, other.title, half);
    strips.push_back({.height = std::max(first.height(), second.height()),
        .least = std::max(first.least(), second.least()),
        .gap = paper.theme().space(Space::Wide),
        .paint = [&paper, first, second, half](QPainter& painter, const QRect& box) {
            const auto at = [&](int left, const ChartSheet& sheet) {
                return paper.seen({left, box.top(), half, std::min(box.height(), sheet.height())}, box);
            };
            first.paint(painter, at(box.left(), first));
            second.paint(painter, at(box.right() + 1 - half, second));
        }});
}

}
