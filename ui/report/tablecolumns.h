// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

namespace cradlepost {

/// What a column asks for.
struct ColumnWish
{
    int natural = 0; ///< nothing wraps
    int least = 0; ///< no word and no figure is broken
};

/// Columns of a table that stand beside each other, by position, and how wide each is, without the gaps.
struct ColumnGroup
{
    std::vector<int> columns;
    std::vector<int> widths;
};

/// Columns side by side within `width`, `gap` between two. Where their least widths do not fit, they go on in
/// further groups, each with the first column again. A column wider than the page is narrowed and its words
/// broken.
std::vector<ColumnGroup> columnGroups(const std::vector<ColumnWish>& wishes, int width, int gap);

}
