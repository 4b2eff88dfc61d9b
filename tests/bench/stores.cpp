// SPDX-License-Identifier: MIT
// Figures of *Stores*: what the page reads, from five years of movements of one unit, 200 items.
#include "core/store/storesview.h"
#include "tests/support/builders.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <random>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

constexpr int items = 200;
constexpr int movementsEach = 100;
constexpr int wholeYears = 5;
constexpr char unit[] = "sorrel-hill";

std::string idOf(int item) { return "item-" + std::to_string(item); }

/** A receipt each fifth time, else a piece or two out; so that the book is never empty. */
std::vector<StockMovement> lifeOf(int item, Instant begin, std::mt19937& random)
{
    std::vector<StockMovement> movements;
    const auto apart = hours(24 * 365 * wholeYears / movementsEach);
    for (int i = 0; i < movementsEach; ++i) {
        const Instant at = begin + apart * i + minutes(random() % 600);
        if (i % 5 == 0)
            movements.push_back({.item = idOf(item),
                .at = at,
                .quantity = 10,
                .lot = "L" + std::to_string(i),
                .expiry = addDays(floor<days>(at), 1500)});
        else
            movements.push_back({.item = idOf(item),
                .kind = MovementKind::Issue,
                .at = at,
                .quantity = 1 + static_cast<std::int64_t>(random() % 2)});
    }
    return movements;
}

void fill(Store& store, FixedClock& clock)
{
    std::mt19937 random(1);
    const Instant begin = clock.now();
    clock.advance(hours(24 * 365 * wholeYears));
    for (int item = 0; item < items; ++item) {
        must(store.describeStockItem(unit,
            {.id = idOf(item),
                .name = "Item " + std::to_string(item),
                .at = begin,
                .levels = {.par = 20, .minimum = 8, .emergency = 4},
                .expires = true,
                .packSize = 10},
            "AB"));
        must(store.moveStock(unit, lifeOf(item, begin, random), "AB"));
    }
}

double processorMs() { return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

}

int main()
{
    const TempDir temp;
    FixedClock clock(sys_days(2021y / 11 / 24));
    const auto store = aStore(temp.file("stores.cradlepost"), clock);
    fill(*store, clock);
    const ShiftView shift = must(shiftView(*store, unit, clock.now()));
    std::vector<double> wall;
    std::vector<double> processor;
    std::size_t shelves = 0;
    for (int run = 0; run < 51; ++run) {
        const auto begin = steady_clock::now();
        const double before = processorMs();
        shelves = must(storesView(*store, shift, clock.now())).shelves.size();
        processor.push_back(processorMs() - before);
        wall.push_back(duration<double, std::milli>(steady_clock::now() - begin).count());
    }
    std::sort(wall.begin(), wall.end());
    std::sort(processor.begin(), processor.end());
    std::printf("stores: %zu items, %d movements, %d years: %.1f ms, processor %.1f ms\n", shelves,
        items * movementsEach, wholeYears, wall[25], processor[25]);
    std::printf("target 30 ms: %s\n", wall[25] <= 30 ? "met" : "MISSED");
    return 0;
}
