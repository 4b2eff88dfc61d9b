// SPDX-License-Identifier: MIT
#include "core/stats/orderstats.h"

#include "tests/core/stats/near.h"

#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

using Values = std::vector<double>;

TEST_CASE("median, quantile and deviation are those of the textbook")
{
    CHECK(*median(Values{3, 1, 2}) == 2);
    CHECK(*median(Values{4, 1, 3, 2}) == 2.5);
    CHECK(*median(Values{7}) == 7);
    // Type 7 of Hyndman & Fan (1996): position (n - 1)p.
    CHECK(*quantile(Values{10, 20, 30, 40}, 0.1) == near(13));
    CHECK(*quantile(Values{40, 10, 30, 20}, 0.9) == near(37));
    CHECK(*quantile(Values{1, 2}, 0) == 1);
    CHECK(*quantile(Values{1, 2}, 1) == 2);
    CHECK(*medianDeviation(Values{1, 1, 2, 2, 4, 6, 9}) == 1);
    CHECK(*medianDeviation(Values{5, 5, 5, 9}) == 0);
}

TEST_CASE("order statistics of nothing, or of what is no number, say so")
{
    CHECK(isUndefined(median({})));
    CHECK(isUndefined(quantile({}, 0.5)));
    CHECK(isUndefined(medianDeviation({})));
    CHECK(isRefused(median(Values{1, none})));
    CHECK(isRefused(quantile(Values{1}, 1.5)));
    CHECK(isRefused(quantile(Values{1}, none)));
    CHECK(isRefused(medianDeviation(Values{none})));
}
