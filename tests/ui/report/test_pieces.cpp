// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/charts/samplecharts.h"
#include "ui/report/figurepieces.h"
#include "ui/report/tablecolumns.h"
#include "ui/report/textpieces.h"

#include <doctest/doctest.h>
#include <numeric>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
auto shorterThan(qsizetype length)
{
    return [length](const QString& text) { return text.size() <= length; };
}

QString joined(const std::vector<QString>& pieces)
{
    return std::accumulate(pieces.begin(), pieces.end(), QString());
}
}

TEST_CASE("A text that fits is one piece")
{
    CHECK(piecesOf(QStringLiteral("one two"), shorterThan(7)) == std::vector{QStringLiteral("one two")});
    CHECK(piecesOf({}, shorterThan(7)).size() == 1);
}

TEST_CASE("A longer text is cut between words, a longer word between letters, and nothing is lost")
{
    CHECK(piecesOf(QStringLiteral("one two three"), shorterThan(8))
        == std::vector{QStringLiteral("one two "), QStringLiteral("three")});
    const QString word(50, u'x');
    const auto pieces = piecesOf(word, shorterThan(20));
    CHECK(pieces.size() == 3);
    CHECK(joined(pieces) == word);
    const QString hindi = QStringLiteral("कि").repeated(20); // a letter and its mark
    for (const QString& piece : piecesOf(hindi, shorterThan(5)))
        CHECK(piece.size() % 2 == 0);
    CHECK(joined(piecesOf(hindi, shorterThan(5))) == hindi);
}

TEST_CASE("A text that never fits comes out whole in letters instead of running for ever")
{
    CHECK(joined(piecesOf(QStringLiteral("abc"), [](const QString&) { return false; }))
        == QStringLiteral("abc"));
}

TEST_CASE("Columns take what they ask for when there is room")
{
    const auto groups = columnGroups({{100, 50}, {60, 40}}, 300, 10);
    REQUIRE(groups.size() == 1);
    CHECK(groups[0].widths == std::vector<int>{100, 60});
}

TEST_CASE("Wide columns give way first, and none below its longest word")
{
    const auto groups = columnGroups({{400, 50}, {60, 40}, {80, 80}}, 300, 10);
    REQUIRE(groups.size() == 1);
    CHECK(groups[0].widths == std::vector<int>{140, 60, 80});
}

TEST_CASE("A table too wide for the page goes on with its first column again")
{
    const std::vector<ColumnWish> wishes(5, ColumnWish{100, 100});
    const auto groups = columnGroups(wishes, 330, 10);
    REQUIRE(groups.size() == 2);
    CHECK(groups[0].columns == std::vector<int>{0, 1, 2});
    CHECK(groups[1].columns == std::vector<int>{0, 3, 4});
    for (const ColumnGroup& group : groups)
        CHECK(std::accumulate(group.widths.begin(), group.widths.end(), 0) + 20 <= 330);
}

TEST_CASE("Columns of any wishes fit into the page")
{
    for (const int natural : {1, 90, 333, 5000}) {
        const std::vector<ColumnWish> wishes(9, ColumnWish{natural, natural});
        for (const ColumnGroup& group : columnGroups(wishes, 400, 12)) {
            const int gaps = 12 * (static_cast<int>(group.widths.size()) - 1);
            CHECK(std::accumulate(group.widths.begin(), group.widths.end(), gaps) <= 400);
        }
    }
}

TEST_CASE("A list is parted into as few pieces as fit and loses no row")
{
    BarsFigure bars;
    bars.items.resize(23);
    for (int i = 0; i < 23; ++i)
        bars.items[static_cast<std::size_t>(i)].name = QString::number(i);
    const auto pieces = figurePieces(
        bars, [](const ChartFigure& figure) { return std::get<BarsFigure>(figure).items.size() <= 10; });
    REQUIRE(pieces.size() == 3);
    int next = 0;
    for (const ChartFigure& piece : pieces) {
        for (const BarItem& item : std::get<BarsFigure>(piece).items)
            CHECK(item.name == QString::number(next++));
    }
    CHECK(next == 23);
}

TEST_CASE("A calendar is parted between weeks, a map with its cells, a curve not at all")
{
    const auto calendar = std::get<CalendarFigure>(sampleCalendar().figure);
    const auto halves = figurePieces(calendar, [&](const ChartFigure& figure) {
        return std::get<CalendarFigure>(figure).days.size() < calendar.days.size();
    });
    REQUIRE(halves.size() == 2);
    CHECK(std::get<CalendarFigure>(halves[1]).days.front().column == 0);
    const auto map = std::get<MapFigure>(sampleMap().figure);
    for (const ChartFigure& piece : figurePieces(
             map, [](const ChartFigure& figure) { return std::get<MapFigure>(figure).rows.size() <= 2; }))
        CHECK(std::get<MapFigure>(piece).rows.size() == std::get<MapFigure>(piece).cells.size());
    CHECK(figurePieces(sampleControl().figure, [](const ChartFigure&) { return false; }).size() == 1);
}
