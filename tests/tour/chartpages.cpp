// SPDX-License-Identifier: MIT
#include "tests/tour/chartpages.h"
#include "ui/charts/chartview.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"

#include <QVBoxLayout>

namespace cradlepost {

namespace {
ChartView* viewOf(const ChartContent& content, bool table = false)
{
    auto* view = new ChartView;
    view->setContent(content);
    view->showTable(table);
    return view;
}

ChartContent together(test::Wording wording)
{
    ChartContent content = test::sampleShiftControl(wording);
    auto& figure = std::get<ControlFigure>(content.figure);
    figure.arrangement = ControlFigure::Arrangement::Together;
    for (ControlSeries& series : figure.series) {
        for (ControlPoint& point : series.points)
            point.limits.reset();
    }
    return content;
}

std::vector<std::vector<ChartView*>> rowsOf(int page, test::Wording wording)
{
    using namespace test;
    if (page == 0)
        return {{viewOf(sampleCalendar(wording)), viewOf(sampleControl(wording))},
            {viewOf(sampleBars(wording)), viewOf(sampleSurvival(wording))}};
    if (page == 1)
        return {{viewOf(sampleShiftControl(wording)), viewOf(sampleHistogram(wording))},
            {viewOf(sampleMap(wording)), viewOf(sampleShares(wording))},
            {viewOf(together(wording)), viewOf(sampleControl(wording), true)}};
    return {{viewOf(sampleFunnel(wording)), viewOf(sampleMultiples(wording))},
        {viewOf(sampleBars(wording), true), viewOf({.title = QStringLiteral("Nothing to say yet")})}};
}
}

QWidget* chartPage(int page, test::Wording wording)
{
    auto* sheet = new QWidget;
    const Theme& theme = themeOf(*sheet);
    auto* column = new QVBoxLayout(sheet);
    const int wide = theme.space(Space::Wide);
    column->setContentsMargins(wide, wide, wide, wide);
    for (const auto& views : rowsOf(page, wording)) {
        auto* row = new FoldingRow;
        row->setSpacing(theme.space(Space::Near));
        row->addWidget(views[0], 3);
        row->addWidget(views[1], 4);
        column->addWidget(row);
    }
    column->addStretch();
    return sheet;
}

}
