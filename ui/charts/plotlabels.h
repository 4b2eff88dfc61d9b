// SPDX-License-Identifier: MIT
#pragma once

#include <QRect>
#include <vector>

namespace cradlepost {

struct LabelWish
{
    int centre = 0;
    int width = 0; ///< 0: nothing to write
};

/// Which labels of a row can be written between `from` and `to` with `gap` between any two: every k-th, with
/// the least k, counted from the first or from the last one. Those near an end are moved inside. The
/// left edge of each kept label, in order; -1 for those left out.
std::vector<int> spacedLabels(const std::vector<LabelWish>& wishes, int from, int to, int gap, bool keepLast);

/// Moves boxes of a column, given in any order, apart by `gap` and keeps them between `top` and `bottom` as
/// far as they fit.
void spreadColumn(std::vector<QRect>& boxes, int top, int bottom, int gap);

/// The least row, from 0, in which `box` touches none of those already `placed` there.
struct RowedBox
{
    QRect box;
    int row = 0;
};
int freeRow(const std::vector<RowedBox>& placed, const QRect& box, int gap);

}
