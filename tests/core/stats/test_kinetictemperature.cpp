// SPDX-License-Identifier: MIT
#include "core/stats/kinetictemperature.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>
#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

double even(const std::vector<double>& celsius)
{
    std::vector<StoreReading> readings;
    for (const double c : celsius)
        readings.push_back({c, 1});
    return *meanKineticTemperature(readings);
}

}

TEST_CASE("mean kinetic temperature equals the formula")
{
    // Haynes (1971); no published worked example with its data is known: formula in R 4.2.2 and Python 3.11.
    CHECK(even({25, 25, 25}) == near(25));
    CHECK(even({20, 30}) == near(26.25988692));
    CHECK(even({2, 8}) == near(5.536424509));
    CHECK(even({4, 4, 4, 4, 16}) == near(8.108857215));
    CHECK(even({5.1, 4.8, 5.6, 7.9, 9.4, 6.2, 5.0}) == near(6.449791214));
    CHECK(even({21.5, 23, 24.2, 27.8, 31.4, 26, 22.1}) == near(25.74473485));
    const std::vector<StoreReading> day{{5, 22}, {15, 2}};
    CHECK(*meanKineticTemperature(day) == near(6.462284944));
    CHECK(*meanKineticTemperature(day, 83.144 / 0.008314462618) == near(6.46227835));
    // What 273 instead of 273.15 as the offset of the kelvin would give.
    CHECK(*meanKineticTemperature(day) != near(6.463190496));
}

TEST_CASE("mean kinetic temperature lies between mean and maximum")
{
    Dice dice(1971);
    for (int i = 0; i < 500; ++i) {
        std::vector<double> celsius;
        double sum = 0;
        for (auto n = dice.whole(1, 40); n > 0; --n) {
            celsius.push_back(dice.share() * 60 - 20);
            sum += celsius.back();
        }
        const double mkt = even(celsius);
        CHECK(mkt >= sum / static_cast<double>(celsius.size()) - 1e-9);
        CHECK(mkt <= *std::max_element(celsius.begin(), celsius.end()));
    }
}

TEST_CASE("temperatures that cannot be are refused")
{
    CHECK(isUndefined(meanKineticTemperature({})));
    CHECK(isUndefined(meanKineticTemperature(std::vector<StoreReading>{{5, 0}})));
    CHECK(isRefused(meanKineticTemperature(std::vector<StoreReading>{{-274, 1}})));
    CHECK(isRefused(meanKineticTemperature(std::vector<StoreReading>{{none, 1}})));
    CHECK(isRefused(meanKineticTemperature(std::vector<StoreReading>{{5, -1}})));
    CHECK(isRefused(meanKineticTemperature(std::vector<StoreReading>{{5, 1e308}, {5, 1e308}})));
    CHECK(isRefused(meanKineticTemperature(std::vector<StoreReading>{{5, 1}}, 0)));
    // A reading without duration counts for nothing, however warm.
    CHECK(*meanKineticTemperature(std::vector<StoreReading>{{5, 1}, {90, 0}}) == near(5));
    CHECK(*meanKineticTemperature(std::vector<StoreReading>{{5, 1}, {900, 0}}, 1e6) == near(5));
    CHECK(*meanKineticTemperature(std::vector<StoreReading>{{-273, 1}, {900, 1e-9}}) <= 900);
}
