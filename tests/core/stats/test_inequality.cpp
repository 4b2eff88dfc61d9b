// SPDX-License-Identifier: MIT
#include "core/stats/inequality.h"

#include "tests/core/stats/near.h"

using namespace cradlepost;
using namespace cradlepost::stats;

using Values = std::vector<double>;

TEST_CASE("concentration meets the published example")
{
    // Example of the R package ineq: 0.4620911.
    const auto g = gini(Values{541, 1463, 2445, 3438, 4437, 5401, 6392, 8304, 11904, 22261});
    REQUIRE(g);
    CHECK(isPrinted(g->value, 0.4620911, 7));
    CHECK(g->value == near(0.4620911303));
    CHECK(*g->unbiased == near(0.5134345892));
    CHECK(gini(Values{10, 10, 0, 0, 0})->value == near(0.6));
    CHECK(gini(Values{7, 7, 7})->value == 0.0);
    CHECK(gini(Values{7})->value == 0.0);
    CHECK_FALSE(gini(Values{7})->unbiased);
    CHECK(gini(Values{1e150, 1e150, 0})->value == near(1.0 / 3));
    CHECK(isUndefined(gini({})));
    CHECK(isUndefined(gini(Values{0, 0})));
    CHECK(isRefused(gini(Values{-1, 2})));
    CHECK(isRefused(gini(Values{none})));
}

TEST_CASE("the vital few are the shortest list that carries the share")
{
    // Made data.
    const struct
    {
        const char* name;
        double count, cumulative;
        bool vital;
    } rows[] = {
        {"no bag-mask size 0", 31, 0.3444444444, true},
        {"suction fails", 22, 0.5888888889, true},
        {"warmer cold", 17, 0.7777777778, true},
        {"no vitamin K", 9, 0.8777777778, true},
        {"oxygen empty", 6, 0.9444444444, false},
        {"clock stopped", 3, 0.9777777778, false},
        {"no towels", 2, 1, false},
    };
    std::vector<Cause> causes;
    for (const auto& row : rows)
        causes.insert(causes.begin(), Cause{row.name, row.count});
    const auto ranked = pareto(causes);
    REQUIRE(ranked);
    for (std::size_t i = 0; i < causes.size(); ++i) {
        CHECK(causes[(*ranked)[i].row].name == rows[i].name);
        CHECK((*ranked)[i].cumulative == near(rows[i].cumulative));
        CHECK((*ranked)[i].vital == rows[i].vital);
    }
}

TEST_CASE("ties go by name and a share that is just reached ends the list")
{
    const auto ranked = pareto(std::vector<Cause>{{"b", 1}, {"a", 1}, {"c", 8}}, 0.9);
    CHECK((*ranked)[0].row == 2);
    CHECK((*ranked)[1].row == 1);
    CHECK((*ranked)[1].vital);
    CHECK_FALSE((*ranked)[2].vital);
    CHECK(pareto(std::vector<Cause>{{"a", 1}, {"b", 0}}, 1)->front().cumulative == near(1));
    CHECK(isUndefined(pareto({})));
    CHECK(isUndefined(pareto(std::vector<Cause>{{"a", 0}})));
    CHECK(isRefused(pareto(std::vector<Cause>{{"a", -1}})));
    CHECK(isRefused(pareto(std::vector<Cause>{{"a", none}})));
    CHECK(isRefused(pareto(std::vector<Cause>{{"a", 1e308}, {"b", 1e308}})));
    CHECK(isRefused(pareto(std::vector<Cause>{{"a", 1}}, 0)));
}
