// SPDX-License-Identifier: MIT
#include "ui/charts/plotlabels.h"

#include <algorithm>
#include <numeric>

namespace cradlepost {

namespace {
/// Every `step`-th label, or nothing when two of them touch.
std::vector<int> everyNth(
    const std::vector<LabelWish>& wishes, int from, int to, int gap, std::size_t step, std::size_t offset)
{
    std::vector<int> lefts(wishes.size(), -1);
    int reached = from - gap;
    for (std::size_t i = offset; i < wishes.size(); i += step) {
        const LabelWish& wish = wishes[i];
        if (wish.width == 0)
            continue;
        const int left = std::max(from, std::min(wish.centre - wish.width / 2, to - wish.width));
        if (left < reached + gap)
            return {};
        lefts[i] = left;
        reached = left + wish.width;
    }
    return lefts;
}
}

std::vector<int> spacedLabels(const std::vector<LabelWish>& wishes, int from, int to, int gap, bool keepLast)
{
    const std::size_t count = wishes.size();
    for (std::size_t step = 1; step < count; ++step) {
        const std::size_t offset = keepLast ? (count - 1) % step : 0;
        auto lefts = everyNth(wishes, from, to, gap, step, offset);
        if (!lefts.empty())
            return lefts;
    }
    return count == 0 ? std::vector<int>() : everyNth(wishes, from, to, gap, count, keepLast ? count - 1 : 0);
}

void spreadColumn(std::vector<QRect>& boxes, int top, int bottom, int gap)
{
    std::vector<std::size_t> order(boxes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
        [&](std::size_t a, std::size_t b) { return boxes[a].center().y() < boxes[b].center().y(); });
    int reached = top - gap;
    for (const std::size_t i : order) {
        boxes[i].moveTop(std::max(boxes[i].top(), reached + gap));
        reached = boxes[i].top() + boxes[i].height();
    }
    int floor = bottom + gap;
    for (auto at = order.rbegin(); at != order.rend(); ++at) {
        QRect& box = boxes[*at];
        box.moveTop(std::min(box.top(), floor - gap - box.height()));
        floor = box.top();
    }
}

int freeRow(const std::vector<RowedBox>& placed, const QRect& box, int gap)
{
    for (int row = 0;; ++row) {
        const bool taken = std::any_of(placed.begin(), placed.end(), [&](const RowedBox& other) {
            return other.row == row && other.box.left() < box.right() + gap
                && box.left() < other.box.right() + gap;
        });
        if (!taken)
            return row;
    }
}

}
