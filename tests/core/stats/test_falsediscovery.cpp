// SPDX-License-Identifier: MIT
#include "core/stats/falsediscovery.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <algorithm>

using namespace cradlepost;
using namespace cradlepost::stats;

using List = std::vector<std::optional<double>>;

TEST_CASE("adjusted p values meet the published example")
{
    // Benjamini & Hochberg (1995) J Royal Stat Soc B 57:289-300: 15 p values; at 0.05 the procedure rejects
    // the first four, Bonferroni the first three. Adjusted values: R 4.2.2 p.adjust.
    const struct
    {
        double p, bh, bonferroni, holm;
        bool rejected;
    } rows[] = {
        {0.0001, 0.0015, 0.0015, 0.0015, true},
        {0.0004, 0.003, 0.006, 0.0056, true},
        {0.0019, 0.0095, 0.0285, 0.0247, true},
        {0.0095, 0.035625, 0.1425, 0.114, true},
        {0.0201, 0.0603, 0.3015, 0.2211, false},
        {0.0278, 0.06385714286, 0.417, 0.278, false},
        {0.0298, 0.06385714286, 0.447, 0.278, false},
        {0.0344, 0.0645, 0.516, 0.278, false},
        {0.0459, 0.0765, 0.6885, 0.3213, false},
        {0.324, 0.486, 1, 1, false},
        {0.4262, 0.5811818182, 1, 1, false},
        {0.5719, 0.714875, 1, 1, false},
        {0.6528, 0.7532307692, 1, 1, false},
        {0.759, 0.8132142857, 1, 1, false},
        {1, 1, 1, 1, false},
    };
    List p;
    for (const auto& row : rows)
        p.emplace_back(row.p);
    const auto bh = benjaminiHochberg(p);
    const auto bf = bonferroni(p);
    const auto h = holm(p);
    int rejected = 0;
    int strict = 0;
    for (std::size_t i = 0; i < p.size(); ++i) {
        CHECK(*(*bh)[i] == near(rows[i].bh));
        CHECK(*(*bf)[i] == near(rows[i].bonferroni));
        CHECK(*(*h)[i] == near(rows[i].holm));
        CHECK((*(*bh)[i] <= 0.05) == rows[i].rejected);
        rejected += *(*bh)[i] <= 0.05 ? 1 : 0;
        strict += *(*bf)[i] <= 0.05 ? 1 : 0;
    }
    CHECK(rejected == 4);
    CHECK(strict == 3);
    // The procedure as the paper states it: the largest i with p(i) <= i q/m, here i = 4 with 0.0133.
    std::size_t last = 0;
    for (std::size_t i = 1; i <= p.size(); ++i) {
        if (*p[i - 1] <= 0.05 * static_cast<double>(i) / static_cast<double>(p.size()))
            last = i;
    }
    CHECK(last == 4);
}

TEST_CASE("ties keep one value, the order of the input comes back, a later p rescues an earlier one")
{
    // R 4.2.2 p.adjust(method = "BH").
    const double expected[]
        = {0.05333333333, 0.04, 0.05333333333, 0.04, 0.5714285714, 0.05333333333, 0.9, 0.05333333333};
    const auto bh = benjaminiHochberg(List{0.04, 0.01, 0.03, 0.01, 0.5, 0.03, 0.9, 0.04});
    for (std::size_t i = 0; i < std::size(expected); ++i)
        CHECK(*(*bh)[i] == near(expected[i]));
    const auto rescued = benjaminiHochberg(List{0.01, 0.04, 0.03, 0.035});
    for (const auto& p : *rescued)
        CHECK(*p == near(0.04));
}

TEST_CASE("a test that was not done does not count")
{
    const auto with = benjaminiHochberg(List{0.01, {}, 0.04});
    CHECK(*(*with)[0] == near(0.02));
    CHECK_FALSE((*with)[1]);
    CHECK(benjaminiHochberg({})->empty());
    CHECK(*(*bonferroni(List{{}, 0.0}))[1] == 0.0);
    for (const double bad : {-0.1, 1.1, none}) {
        CHECK(isRefused(benjaminiHochberg(List{bad})));
        CHECK(isRefused(bonferroni(List{bad})));
        CHECK(isRefused(holm(List{bad})));
    }
}

TEST_CASE("adjusting keeps the order, never lowers a p, and false discovery is never stricter than Holm")
{
    Dice dice(1995);
    for (int i = 0; i < 300; ++i) {
        List p;
        for (auto m = dice.whole(1, 30); m > 0; --m)
            p.emplace_back(dice.chance(0.3) ? dice.share() * 0.01 : dice.share());
        const auto bh = *benjaminiHochberg(p);
        const auto h = *holm(p);
        const auto bf = *bonferroni(p);
        for (std::size_t a = 0; a < p.size(); ++a) {
            CHECK(*bh[a] >= *p[a]);
            CHECK(*bh[a] <= *h[a] + 1e-15);
            CHECK(*h[a] <= *bf[a] + 1e-15);
            for (std::size_t b = 0; b < p.size(); ++b)
                CHECK((*p[a] > *p[b] || *bh[a] <= *bh[b]));
        }
    }
}
