// SPDX-License-Identifier: MIT
#include "ui/charts/chartaxis.h"
#include "ui/charts/plotlabels.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("labels that would touch are left out evenly, counted from the first or from the last")
{
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 10; ++i)
        wishes.push_back({20 * i, 30});
    const auto first = spacedLabels(wishes, 0, 200, 5, false);
    CHECK(first == std::vector<int>{0, -1, -1, 45, -1, -1, 105, -1, -1, 165});
    const auto last = spacedLabels(wishes, 0, 200, 5, true);
    CHECK(last[9] == 165);
    CHECK(last[8] == -1);
    CHECK(last[7] == 125);
}

TEST_CASE("with room for one label only, the chosen end keeps its own")
{
    const std::vector<LabelWish> wishes{{0, 60}, {30, 60}, {60, 60}};
    CHECK(spacedLabels(wishes, 0, 60, 5, true) == std::vector<int>{-1, -1, 0});
    CHECK(spacedLabels(wishes, 0, 60, 5, false) == std::vector<int>{0, -1, -1});
    CHECK(spacedLabels({}, 0, 60, 5, false).empty());
}

TEST_CASE("names at the same height are moved apart and stay between top and bottom")
{
    std::vector<QRect> boxes{QRect(0, 95, 10, 20), QRect(0, 90, 10, 20), QRect(0, 0, 10, 20)};
    spreadColumn(boxes, 0, 110, 2);
    CHECK(boxes[0].top() == 90);
    CHECK(boxes[1].top() == 68);
    CHECK(boxes[2].top() == 0);
}

TEST_CASE("a box goes into the first row in which it touches nothing")
{
    const std::vector<RowedBox> placed{
        {QRect(0, 0, 50, 10), 0}, {QRect(60, 0, 50, 10), 0}, {QRect(40, 0, 20, 10), 1}};
    CHECK(freeRow(placed, QRect(200, 0, 20, 10), 4) == 0);
    CHECK(freeRow(placed, QRect(0, 0, 20, 10), 4) == 1);
    CHECK(freeRow(placed, QRect(45, 0, 20, 10), 4) == 2);
}

TEST_CASE("an axis covers its values and is labelled at round steps")
{
    const auto label = [](double value) { return QString::number(value); };
    struct Case
    {
        double least, most;
        int ticks;
        double from, to;
        std::size_t labels;
    };
    for (const Case& c : {Case{0.52, 0.97, 6, 0.5, 1.0, 6}, Case{0, 72, 7, 0, 80, 5},
             Case{23.2, 28.9, 7, 23, 29, 7}, Case{5, 5, 3, 5, 6, 3}, Case{-3, 3, 3, -5, 5, 3}}) {
        CAPTURE(c.least);
        CAPTURE(c.most);
        const ChartAxis axis = evenAxis({}, c.least, c.most, c.ticks, label);
        CHECK(axis.from == doctest::Approx(c.from));
        CHECK(axis.to == doctest::Approx(c.to));
        CHECK(axis.ticks.size() == c.labels);
        CHECK(axis.ticks.front().at == doctest::Approx(axis.from));
        CHECK(axis.ticks.back().at == doctest::Approx(axis.to));
    }
}
