// SPDX-License-Identifier: MIT
#include "core/stats/agreement.h"

#include "tests/core/stats/near.h"
#include "tests/core/stats/random.h"

#include <cmath>

using namespace cradlepost;
using namespace cradlepost::stats;

namespace {

const AgreementTable abstractors{.q = 3, .counts = {13, 0, 0, 0, 20, 7, 0, 4, 56}};
const AgreementTable balanced{.q = 2, .counts = {40, 9, 6, 45}};
const AgreementTable lopsided{.q = 2, .counts = {80, 10, 5, 5}};
const AgreementTable couples{.q = 4, .counts = {7, 7, 2, 3, 2, 8, 3, 7, 1, 5, 4, 9, 2, 8, 9, 14}};
const AgreementTable unusedThird{.q = 3, .counts = {80, 10, 0, 5, 5, 0, 0, 0, 0}};
const AgreementTable oneSided{.q = 2, .counts = {29, 0, 1, 0}};

/** An optional number against a cell of a table; NaN stands for "has none". */
void checkCell(const std::optional<double>& value, double cell)
{
    CHECK(value.has_value() == !std::isnan(cell));
    if (value && !std::isnan(cell))
        CHECK(*value == near(cell));
}

}

TEST_CASE("agreement meets the published examples")
{
    // Gwet KL (2014) Handbook of Inter-Rater Reliability, data cont3x3abstractors of the R package irrCAC.
    CHECK(isPrinted(kappa(abstractors)->estimate, 0.7964094, 7));
    CHECK(isPrinted(kappa(abstractors)->se, 0.05891072, 8));
    CHECK(isPrinted(ac1(abstractors)->estimate, 0.8493305, 7));
    CHECK(isPrinted(ac1(abstractors)->se, 0.04321747, 8));
    CHECK(isPrinted(adjustedKappa(abstractors)->agreement.estimate, 0.835, 3));
    CHECK(isPrinted(adjustedKappa(abstractors)->agreement.se, 0.04693346, 8));
    // Feinstein AR, Cicchetti DV (1990) J Clin Epidemiol 43:543-549: the same observed agreement, two kappas.
    CHECK(isPrinted(kappa(balanced)->estimate, 0.70, 2));
    CHECK(isPrinted(kappa(lopsided)->estimate, 0.32, 2));
    CHECK(kappa(balanced)->observed == near(kappa(lopsided)->observed));
    // Agresti A, data SexualFun as printed by the R package vcd.
    CHECK(isPrinted(kappa(couples)->estimate, 0.1293, 4));
    CHECK(isPrinted(kappa(couples)->se, 0.06860, 5));
    CHECK(isPrinted(kappa(couples, KappaWeights::Linear)->estimate, 0.2374, 4));
    CHECK(isPrinted(kappa(couples, KappaWeights::Linear)->se, 0.07832, 5));
}

TEST_CASE("kappa, AC1 and adjusted kappa equal the formulas in every figure")
{
    // Equal to vcd 1.4-11 Kappa and statsmodels 0.13.5 cohens_kappa; AC1 after Gwet (2008).
    const AgreementTable* tables[] = {&abstractors, &balanced, &lopsided, &couples, &unusedThird, &oneSided};
    const double rows[][6] = {
        {100, 100, 100, 91, 100, 30},
        {0.89, 0.85, 0.85, 0.3626373626, 0.85, 0.9666666667},
        {0.4597, 0.5008, 0.78, 0.2679628064, 0.78, 0.9666666667},
        {0.7964094022, 0.6995192308, 0.3181818182, 0.129330254, 0.3181818182, 0},
        {0.05891071833, 0.0713936027, 0.1334565212, 0.06859853248, 0.1334565212, 0},
        {0.680946516, 0.5595903408, 0.05661184308, -0.005120399013, 0.05661184308, 0},
        {0.9118722884, 0.8394481208, 0.5797517933, 0.2637809071, 0.5797517933, 0},
        {0.07600602503, 0.09981925928, 0.09738311493, 0.06118346056, 0.09738311493, 0},
        {10.4782404, 7.007858361, 3.267320196, 2.113810707, 3.267320196, none},
        {0.269925, 0.49875, 0.21875, 0.2428651934, 0.109375, 0.03277777778},
        {0.8493305482, 0.7007481297, 0.808, 0.1581913395, 0.8315789474, 0.9655370477},
        {0.04321746752, 0.07135180336, 0.05212942024, 0.06712730604, 0.04243814566, 0.03501250978},
        {0.7646258684, 0.5609011649, 0.7058282138, 0.02662423727, 0.7484017103, 0.8969137895},
        {0.9340352281, 0.8405950945, 0.9101717862, 0.2897584417, 0.9147561844, 1},
        {0.835, 0.7, 0.7, 0.1501831502, 0.775, 0.9333333333},
        {0.04693346354, 0.07141428429, 0.07141428429, 0.06719664883, 0.05356071321, 0.06554613868},
        {none, 0.03, 0.05, none, none, -0.03333333333},
        {none, -0.05, 0.75, none, none, 0.9666666667},
    };
    for (std::size_t t = 0; t < 6; ++t) {
        CAPTURE(t);
        const auto cell = [&](std::size_t row) { return rows[row][t]; };
        const auto k = kappa(*tables[t]);
        const auto a = ac1(*tables[t]);
        const auto p = adjustedKappa(*tables[t]);
        REQUIRE(k);
        REQUIRE(a);
        REQUIRE(p);
        CHECK(k->observed == near(cell(1)));
        CHECK(k->byChance == near(cell(2)));
        CHECK(k->estimate == near(cell(3)));
        CHECK(k->se == near(cell(4)));
        CHECK(*k->seIfNone == near(cell(7)));
        checkCell(k->z, cell(8));
        if (cell(4) > 0) {
            CHECK(k->interval->low == near(cell(5), 1e-8));
            CHECK(k->interval->high == near(cell(6)));
        } else {
            CHECK_FALSE(k->interval);
        }
        CHECK(a->byChance == near(cell(9)));
        CHECK(a->estimate == near(cell(10)));
        CHECK(a->se == near(cell(11)));
        CHECK(a->interval->low == near(cell(12)));
        CHECK(a->interval->high == near(cell(13)));
        CHECK(p->agreement.estimate == near(cell(14)));
        CHECK(p->agreement.se == near(cell(15)));
        checkCell(p->biasIndex, cell(16));
        checkCell(p->prevalenceIndex, cell(17));
    }
}

TEST_CASE("weighted kappa equals the reference")
{
    // vcd 1.4-11: Kappa(weights = "Equal-Spacing") and "Fleiss-Cohen".
    const double three[][2] = {
        {0.945, 0.9725},
        {0.6499, 0.745},
        {0.842902028, 0.8921568627},
        {0.04787212159, 0.03535150758},
        {0.08154900951, 0.09991172574},
    };
    const double four[][2] = {
        {0.684981685, 0.8144078144},
        {0.5869258946, 0.7221484254},
        {0.2373806276, 0.3320455862},
        {0.07831633478, 0.09729752196},
        {0.07699031209, 0.1043493751},
    };
    const auto check = [](const AgreementTable& table, const double(&rows)[5][2]) {
        for (std::size_t w = 0; w < 2; ++w) {
            const auto k = kappa(table, w == 0 ? KappaWeights::Linear : KappaWeights::Quadratic);
            REQUIRE(k);
            CHECK(k->observed == near(rows[0][w]));
            CHECK(k->byChance == near(rows[1][w]));
            CHECK(k->estimate == near(rows[2][w]));
            CHECK(k->se == near(rows[3][w]));
            CHECK(*k->seIfNone == near(rows[4][w]));
        }
    };
    check(abstractors, three);
    check(couples, four);
}

TEST_CASE("with everything in one category kappa is not defined, the others are 1")
{
    const AgreementTable all{.q = 2, .counts = {30, 0, 0, 0}};
    CHECK(isUndefined(kappa(all)));
    CHECK(isUndefined(kappa(all, KappaWeights::Quadratic)));
    CHECK(ac1(all)->estimate == 1.0);
    CHECK_FALSE(ac1(all)->interval);
    CHECK(adjustedKappa(all)->agreement.estimate == 1.0);
    CHECK_FALSE(adjustedKappa(all)->agreement.interval);
}

TEST_CASE("tables that are no tables are refused")
{
    CHECK(isRefused(kappa({.q = 1, .counts = {4}})));
    CHECK(isRefused(kappa({.q = 2, .counts = {4, 1, 2}})));
    CHECK(isRefused(ac1({.q = 2, .counts = {4, -1, 2, 3}})));
    CHECK(isUndefined(ac1({.q = 2, .counts = {0, 0, 0, 0}})));
    CHECK(isUndefined(adjustedKappa({.q = 2, .counts = {0, 0, 0, 0}})));
    CHECK(isRefused(kappa(balanced, KappaWeights::None, 0)));
    CHECK(isRefused(ac1(balanced, 1)));
    CHECK(isRefused(adjustedKappa(balanced, none)));
}

TEST_CASE("agreement is the same when the observers swap, and weights change nothing for two categories")
{
    Dice dice(1960);
    for (int i = 0; i < 300; ++i) {
        const auto q = static_cast<std::size_t>(dice.whole(2, 5));
        AgreementTable table{.q = q, .counts = {}};
        for (std::size_t c = 0; c < q * q; ++c)
            table.counts.push_back(dice.whole(0, 20));
        auto swapped = table;
        for (std::size_t r = 0; r < q; ++r) {
            for (std::size_t c = 0; c < q; ++c)
                swapped.counts[c * q + r] = table.counts[r * q + c];
        }
        for (const auto weights : {KappaWeights::None, KappaWeights::Linear, KappaWeights::Quadratic}) {
            const auto there = kappa(table, weights);
            const auto back = kappa(swapped, weights);
            REQUIRE(there.has_value() == back.has_value());
            if (!there)
                continue;
            CHECK(std::abs(there->estimate - back->estimate) < 1e-12);
            CHECK(there->se == near(back->se, 1e-8));
            CHECK(there->estimate <= 1 + 1e-12);
            if (q == 2)
                CHECK(std::abs(there->estimate - kappa(table)->estimate) < 1e-12);
        }
        CHECK(ac1(table)->estimate == near(ac1(swapped)->estimate, 1e-10));
    }
}
