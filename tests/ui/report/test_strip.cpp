// SPDX-License-Identifier: MIT
#include "ui/report/strip.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {
Strip aStrip(int height, int gap = 0) { return {.height = height, .gap = gap}; }

/// Which strips a page holds, by position; -1 for a repeated heading.
std::vector<int> onPage(const PageFlow& flow, std::size_t page, const std::vector<Strip>& strips)
{
    std::vector<int> found;
    for (const PlacedStrip& placed : flow.pages.at(page)) {
        const bool isOwn = placed.strip >= strips.data() && placed.strip < strips.data() + strips.size();
        found.push_back(isOwn ? static_cast<int>(placed.strip - strips.data()) : -1);
    }
    return found;
}
}

TEST_CASE("A flow of nothing is one empty page")
{
    const auto pages = flow({}, 100);
    REQUIRE(pages.pages.size() == 1);
    CHECK(pages.pages.front().empty());
}

TEST_CASE("Strips stand below one another, without white space at the top of a page")
{
    const std::vector<Strip> strips{aStrip(40, 10), aStrip(40, 10), aStrip(40, 10)};
    const auto pages = flow(strips, 100);
    REQUIRE(pages.pages.size() == 2);
    CHECK(pages.pages[0][0].top == 0);
    CHECK(pages.pages[0][1].top == 50);
    CHECK(pages.pages[1][0].top == 0);
    CHECK(pages.height == 140);
}

TEST_CASE("A title goes to the next page with what it belongs to")
{
    std::vector<Strip> strips{aStrip(60), aStrip(20), aStrip(30)};
    strips[1].keepsNext = true;
    const auto pages = flow(strips, 100);
    CHECK(onPage(pages, 0, strips) == std::vector<int>{0});
    CHECK(onPage(pages, 1, strips) == std::vector<int>{1, 2});
}

TEST_CASE("A heading is repeated where its rows go on")
{
    const auto heading = std::make_shared<const Strip>(aStrip(20));
    std::vector<Strip> strips{*heading};
    strips.front().keepsNext = true;
    for (int i = 0; i < 5; ++i) {
        strips.push_back(aStrip(30));
        strips.back().heading = heading;
    }
    const auto pages = flow(strips, 100);
    CHECK(onPage(pages, 0, strips) == std::vector<int>{0, 1, 2});
    CHECK(onPage(pages, 1, strips) == std::vector<int>{-1, 3, 4});
    CHECK(onPage(pages, 2, strips) == std::vector<int>{-1, 5});
    CHECK(pages.pages[1][1].top == 20);
}

TEST_CASE("A curve is drawn lower when that saves a page, and no lower than it may")
{
    std::vector<Strip> strips{aStrip(60), aStrip(50)};
    strips[1].least = 40;
    CHECK(flow(strips, 100).pages.size() == 1);
    CHECK(flow(strips, 100).pages[0][1].height == 40);
    CHECK(flow(strips, 99).pages.size() == 2);
    CHECK(flow(strips, 99).pages[1][0].height == 50);
}

TEST_CASE("What stays together but fits on no page is parted all the same, in order")
{
    std::vector<Strip> strips(4, aStrip(60));
    for (Strip& strip : strips)
        strip.keepsNext = true;
    const auto pages = flow(strips, 100);
    CHECK(pages.pages.size() == 4);
    for (std::size_t i = 0; i < pages.pages.size(); ++i)
        CHECK(onPage(pages, i, strips) == std::vector<int>{static_cast<int>(i)});
}
