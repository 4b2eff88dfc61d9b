// SPDX-License-Identifier: MIT
#include "core/stats/agreement.h"
#include "core/stats/lqas.h"
#include "core/stats/proportion.h"
#include "core/stats/rate.h"
#include "core/stats/twoproportions.h"
#include "tests/reference/sheet.h"

#include <algorithm>

namespace cradlepost::reference {

using namespace stats;

namespace {

void proportions(const std::filesystem::path& folder)
{
    Dice dice(1);
    Family family(folder, "proportion", {"x", "n", "level"});
    for (int i = 0; i < caseCount; ++i) {
        const auto t = anyTally(dice);
        const double level = anyLevel(dice);
        family.begin({text(t.x), text(t.n), text(level)});
        const auto w = *wilson(t, level);
        const auto e = *clopperPearson(t, level);
        family.answer("wilson_low", w.low);
        family.answer("wilson_high", w.high);
        family.answer("exact_low", e.low);
        family.answer("exact_high", e.high);
        family.answer("exact_upper", *clopperPearsonUpper(t, level));
    }
}

void twoProportions(const std::filesystem::path& folder)
{
    Dice dice(2);
    Family family(folder, "twoproportions", {"x1", "n1", "x2", "n2", "level"});
    for (int i = 0; i < caseCount; ++i) {
        auto a = anyTally(dice);
        auto b = anyTally(dice);
        // The reference walks the whole support for the exact test: keep that bearable.
        a = {std::min<std::int64_t>(a.x, 20'000 * a.x / a.n), std::min<std::int64_t>(a.n, 20'000)};
        b = {std::min<std::int64_t>(b.x, 20'000 * b.x / b.n), std::min<std::int64_t>(b.n, 20'000)};
        const double level = anyLevel(dice);
        family.begin({text(a.x), text(a.n), text(b.x), text(b.n), text(level)});
        const auto d = *newcombeDifference(a, b, level);
        family.answer("newcombe_low", d.interval.low);
        family.answer("newcombe_high", d.interval.high);
        const auto test = pooledTest(a, b);
        family.answer("pooled_chi2", test ? std::optional(test->chiSquare) : std::nullopt);
        family.answer("pooled_p", test ? std::optional(test->p) : std::nullopt);
        family.answer("fisher_p", fisherExact(a, b));
    }
}

void rates(const std::filesystem::path& folder)
{
    Dice dice(3);
    Family family(folder, "rate", {"x", "level"});
    for (int i = 0; i < caseCount; ++i) {
        const auto x
            = dice.chance(0.1) ? 0 : (dice.chance(0.2) ? dice.whole(1000, 1'000'000) : dice.whole(1, 200));
        const double level = anyLevel(dice);
        family.begin({text(std::int64_t{x}), text(level)});
        const auto g = *garwood(x, level);
        family.answer("garwood_low", g.low);
        family.answer("garwood_high", g.high);
    }
}

void sampling(const std::filesystem::path& folder)
{
    Dice dice(4);
    Family family(folder, "lqas", {"n", "d", "good", "poor", "lot"});
    for (int i = 0; i < caseCount; ++i) {
        LqasStandard s;
        s.poor = static_cast<double>(dice.whole(0, 18)) / 20;
        s.good = std::min(1.0, s.poor + static_cast<double>(dice.whole(1, 10)) / 20);
        const auto n = dice.chance(0.1) ? 1 : dice.whole(1, 120);
        if (dice.chance(0.5))
            s.lot = std::max<std::int64_t>(20, n + dice.whole(0, 3000));
        const auto d = dice.whole(0, n + 1);
        family.begin({text(n), text(d), text(s.good), text(s.poor), s.lot ? text(*s.lot) : "0"});
        const auto risks = *lqasRisks(s, n, d);
        family.answer("good_failed", risks.goodFailed);
        family.answer("poor_passed", risks.poorPassed);
    }
}

void plans(const std::filesystem::path& folder)
{
    Dice dice(6);
    Family family(folder, "lqasplan", {"good", "poor", "alpha", "beta"});
    static constexpr std::array<double, 4> risks{0.05, 0.1, 0.2, 0.01};
    for (int i = 0; i < caseCount; ++i) {
        const double poor = static_cast<double>(dice.whole(1, 16)) / 20;
        const double good = std::min(0.99, poor + static_cast<double>(dice.whole(2, 10)) / 20);
        const double alpha = risks[static_cast<std::size_t>(dice.whole(0, 3))];
        const double beta = risks[static_cast<std::size_t>(dice.whole(0, 3))];
        family.begin({text(good), text(poor), text(alpha), text(beta)});
        const auto plan = *planLqas({.good = good, .poor = poor, .lot = {}}, alpha, beta);
        family.answer("n", static_cast<double>(plan.rule.n));
        family.answer("d", static_cast<double>(plan.rule.d));
        family.answer("good_failed", plan.rule.risks.goodFailed);
        family.answer("poor_passed", plan.rule.risks.poorPassed);
    }
}

void agreement(const std::filesystem::path& folder)
{
    Dice dice(5);
    Family family(folder, "agreement", {"q", "counts"});
    for (int i = 0; i < caseCount; ++i) {
        AgreementTable table{.q = static_cast<std::size_t>(dice.whole(2, 6)), .counts = {}};
        const bool sparse = dice.chance(0.2);
        for (std::size_t r = 0; r < table.q; ++r) {
            for (std::size_t c = 0; c < table.q; ++c)
                table.counts.push_back(sparse && dice.chance(0.6) ? 0 : dice.whole(0, r == c ? 200 : 30));
        }
        table.counts[0] += 1; // never empty
        table.counts[1] += 1; // never one category throughout
        table.counts[table.q] += 1;
        family.begin({text(static_cast<std::int64_t>(table.q)), series(table.counts)});
        const std::pair<const char*, KappaWeights> kinds[] = {{"kappa", KappaWeights::None},
            {"linear", KappaWeights::Linear}, {"quadratic", KappaWeights::Quadratic}};
        for (const auto& [name, weights] : kinds) {
            const auto k = *kappa(table, weights);
            family.answer(name, k.estimate);
            family.answer(std::string(name) + "_se", k.se);
            family.answer(std::string(name) + "_se0", k.seIfNone);
        }
        const auto a = *ac1(table);
        family.answer("ac1", a.estimate);
        family.answer("ac1_se", a.se);
        const auto p = *adjustedKappa(table);
        family.answer("pabak", p.agreement.estimate);
        family.answer("pabak_se", p.agreement.se);
    }
}

}

void writeCounts(const std::filesystem::path& folder)
{
    proportions(folder);
    twoProportions(folder);
    rates(folder);
    sampling(folder);
    plans(folder);
    agreement(folder);
}

}
