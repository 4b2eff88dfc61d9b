// SPDX-License-Identifier: MIT
#include "core/stats/cochranarmitage.h"

#include "tests/core/stats/near.h"

#include <vector>

using namespace cradlepost;
using namespace cradlepost::stats;

using Groups = std::vector<ScoredTally>;

namespace {

const Groups smokers{{{83, 86}, 1}, {{90, 93}, 2}, {{129, 136}, 3}, {{70, 82}, 4}};
const Groups malformation{{{48, 17114}, 0}, {{38, 14502}, 0.5}, {{5, 793}, 1.5}, {{1, 127}, 4}, {{1, 38}, 7}};
const Groups made{{{2, 40}, 1}, {{4, 42}, 2}, {{3, 38}, 3}, {{7, 45}, 4}, {{9, 41}, 5}};

}

TEST_CASE("a trend of shares meets the published examples")
{
    // Fleiss (1981), smokers among patients, as printed with R's prop.trend.test: 8.2249, p 0.004132.
    CHECK(isPrinted(cochranArmitage(smokers)->chiSquare, 8.2249, 4));
    CHECK(isPrinted(cochranArmitage(smokers)->p, 0.004132, 6));
    // Agresti A, Categorical Data Analysis: malformation by mother's alcohol, z 2.563; M^2 = 6.5699 is
    // Mantel's variant.
    CHECK(isPrinted(cochranArmitage(malformation)->z, 2.563, 3));
    const double n = 17114 + 14502 + 793 + 127 + 38;
    CHECK(isPrinted(cochranArmitage(malformation)->chiSquare * (n - 1) / n, 6.5699, 4));
    CHECK(cochranArmitage(malformation)->chiSquare * (n - 1) / n == near(6.569932246));
    const Groups* data[] = {&smokers, &malformation, &made};
    const double rows[][3] = {
        {-2.867912531, 2.563227252, 2.476651994},
        {8.224922285, 6.570133945, 6.133805101},
        {0.004131897478, 0.01037041457, 0.0132621143},
    };
    for (std::size_t t = 0; t < 3; ++t) {
        const auto r = cochranArmitage(*data[t]);
        REQUIRE(r);
        CHECK(r->z == near(rows[0][t]));
        CHECK(r->chiSquare == near(rows[1][t]));
        CHECK(r->p == near(rows[2][t]));
    }
}

TEST_CASE("scores may be moved and stretched")
{
    Groups other = made;
    for (auto& group : other)
        group.score = group.score * 12 + 2020;
    CHECK(cochranArmitage(other)->z == near(cochranArmitage(made)->z, 1e-8));
    for (auto& group : other)
        group.score = -group.score;
    CHECK(cochranArmitage(other)->z == near(-cochranArmitage(made)->z, 1e-8));
}

TEST_CASE("a trend of shares that cannot be told says why")
{
    CHECK(isUndefined(cochranArmitage({})));
    CHECK(isUndefined(cochranArmitage(Groups{{{0, 0}, 1}})));
    CHECK(isUndefined(cochranArmitage(Groups{{{0, 5}, 1}, {{0, 5}, 2}})));
    CHECK(isUndefined(cochranArmitage(Groups{{{5, 5}, 1}, {{5, 5}, 2}})));
    CHECK(isUndefined(cochranArmitage(Groups{{{1, 5}, 3}, {{2, 5}, 3}})));
    CHECK(isUndefined(cochranArmitage(Groups{{{1, 5}, 0.1}, {{2, 5}, 0.1}, {{3, 7}, 0.1}})));
    CHECK(isUndefined(cochranArmitage(Groups{{{1, 5}, 1}, {{0, 0}, 2}})));
    CHECK(isRefused(cochranArmitage(Groups{{{6, 5}, 1}})));
    CHECK(isRefused(cochranArmitage(Groups{{{1, 5}, none}})));
}
