// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <memory>
#include <QRect>
#include <vector>

class QPainter;

namespace cradlepost {

/// The least that is never parted between two pages: a paragraph, a chart with its title, a row of a table.
struct Strip
{
    int height = 0;
    int least = 0; ///< a chart can be drawn this low to save a page; 0: no lower than height
    int gap = 0; ///< white space above, none at the top of a page
    bool keepsNext = false; ///< never the last on its page: a title, the heading of a table
    int section = -1; ///< the section that begins here
    std::shared_ptr<const Strip> heading; ///< repeated when this comes first on a page
    std::function<void(QPainter&, const QRect&)> paint; ///< into a box of the body's width and this height
};

struct PlacedStrip
{
    const Strip* strip = nullptr;
    int top = 0; ///< from the top of the body
    int height = 0;
};

struct PageFlow
{
    std::vector<std::vector<PlacedStrip>> pages; ///< one at least
    int height = 0; ///< of all, were the page as long as it takes
};

/// Strips in order on as many pages as they take, each `pageHeight` high. The strips must outlive the flow. A
/// strip higher than a page has one to itself and is cut: those who make strips must not make such.
PageFlow flow(const std::vector<Strip>& strips, int pageHeight);

}
