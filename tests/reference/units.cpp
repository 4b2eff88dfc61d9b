// SPDX-License-Identifier: MIT
#include "core/stats/cochranarmitage.h"
#include "core/stats/falsediscovery.h"
#include "core/stats/funnel.h"
#include "core/stats/overdispersion.h"
#include "core/stats/standardise.h"
#include "tests/reference/sheet.h"

namespace cradlepost::reference {

using namespace stats;

namespace {

void limits(const std::filesystem::path& folder)
{
    Dice dice(20);
    Family family(folder, "funnellimit", {"target", "n", "tail", "x"});
    for (int i = 0; i < caseCount; ++i) {
        const auto t = anyTally(dice);
        const double target
            = dice.chance(0.1) ? 0.001 : (dice.chance(0.1) ? 0.999 : 0.01 + 0.98 * dice.share());
        static constexpr std::array<double, 6> tails{0.001, 0.025, 0.975, 0.999, 0.5, 0.05};
        const double tail = tails[static_cast<std::size_t>(dice.whole(0, 5))];
        family.begin({text(target), text(t.n), text(tail), text(t.x)});
        family.answer("limit", *funnelLimit(target, t.n, tail));
        family.answer("exact_p", *exactTwoSided(t, target));
    }
}

void funnels(const std::filesystem::path& folder)
{
    Dice dice(21);
    Family family(folder, "funnel", {"x", "n"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<Tally> tallies{{1, 7}};
        std::vector<std::int64_t> x{1};
        std::vector<std::int64_t> n{7};
        for (auto units = dice.whole(1, 60); units > 0; --units) {
            const auto size = dice.chance(0.1) ? dice.whole(1, 5) : dice.whole(5, 600);
            tallies.push_back({dice.events(size, 0.3 + 0.3 * dice.share()), size});
            x.push_back(tallies.back().x);
            n.push_back(size);
        }
        family.begin({series(x), series(n)});
        const auto f = *funnel(tallies, {.target = {}, .model = DispersionModel::Additive});
        family.answer("target", f.target);
        family.answer("phi", f.phi);
        family.answer("phi_winsorised", f.phiWinsorised);
        family.answer("tau2", f.tau2);
        family.answer("p_overdispersion", f.pOverdispersion);
        family.answer("p_adjusted_first", f.units.front().pAdjusted);
        family.answer("p_adjusted_last", f.units.back().pAdjusted);
        const auto m = *funnel(tallies, {.target = {}, .model = DispersionModel::Multiplicative});
        family.answer("high998_multiplicative",
            m.applied == DispersionModel::None ? std::nullopt : std::optional(m.units.back().outer.high));
        family.answer("high998_additive",
            f.applied == DispersionModel::None ? std::nullopt : std::optional(f.units.back().outer.high));
    }
}

void adjustments(const std::filesystem::path& folder)
{
    Dice dice(22);
    Family family(folder, "adjust", {"p"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<double> p;
        std::vector<std::optional<double>> list;
        for (auto m = dice.whole(1, 80); m > 0; --m) {
            p.push_back(dice.chance(0.1) ? 0 : (dice.chance(0.3) ? 1e-6 * dice.share() : dice.share()));
            if (p.size() > 1 && dice.chance(0.1))
                p.back() = p.front();
            list.emplace_back(p.back());
        }
        family.begin({series(p)});
        const auto bh = *benjaminiHochberg(list);
        const auto h = *holm(list);
        const auto bf = *bonferroni(list);
        const std::pair<const char*, std::size_t> places[]
            = {{"_first", 0}, {"_middle", p.size() / 2}, {"_last", p.size() - 1}};
        for (const auto& [place, at] : places) {
            family.answer(std::string("bh") + place, *bh[at]);
            family.answer(std::string("holm") + place, *h[at]);
            family.answer(std::string("bonferroni") + place, *bf[at]);
        }
    }
}

void effects(const std::filesystem::path& folder)
{
    Dice dice(23);
    Family family(folder, "randomeffects", {"estimates", "variances"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<double> y;
        std::vector<double> v;
        for (auto units = dice.whole(2, 30); units > 0; --units) {
            y.push_back(4 * dice.share() - 2);
            v.push_back(dice.chance(0.1) ? 1e-4 : 0.01 + 2 * dice.share());
        }
        family.begin({series(y), series(v)});
        const auto r = *randomEffects(y, v);
        family.answer("q", r.q);
        family.answer("tau2", r.tau2);
        family.answer("mean", r.mean);
        family.answer("se", r.se);
    }
}

void standards(const std::filesystem::path& folder)
{
    Dice dice(24);
    Family family(folder, "standardise", {"events", "exposure", "weight", "rate", "level"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<std::int64_t> events;
        std::vector<double> exposure;
        std::vector<double> weight;
        std::vector<double> rate;
        std::vector<RateStratum> direct;
        std::vector<ShareStratum> share;
        std::vector<IndirectStratum> indirect;
        std::int64_t observed = 0;
        for (auto strata = dice.whole(1, 12); strata > 0; --strata) {
            events.push_back(dice.chance(0.2) ? 0 : dice.whole(0, 400));
            exposure.push_back(static_cast<double>(events.back() + dice.whole(1, 100'000)));
            weight.push_back(1 + 1000 * dice.share());
            rate.push_back(1e-4 + 0.1 * dice.share());
            direct.push_back({events.back(), exposure.back(), weight.back()});
            share.push_back({{events.back(), static_cast<std::int64_t>(exposure.back())}, weight.back()});
            indirect.push_back({exposure.back(), rate.back()});
            observed += events.back();
        }
        const double level = anyLevel(dice);
        family.begin({series(events), series(exposure), series(weight), series(rate), text(level)});
        const auto d = *directRate(direct, level);
        family.answer("direct_rate", d.adjusted);
        family.answer("direct_low", d.interval.low);
        family.answer("direct_high", d.interval.high);
        const auto s = *directShare(share, level);
        family.answer("share", s.adjusted);
        family.answer("share_se", s.se);
        const auto r = *indirectRatio(observed, indirect, level);
        family.answer("ratio", r.ratio);
        family.answer("ratio_low", r.interval.low);
        family.answer("ratio_high", r.interval.high);
    }
}

void shareTrends(const std::filesystem::path& folder)
{
    Dice dice(25);
    Family family(folder, "sharetrend", {"x", "n", "score"});
    for (int i = 0; i < caseCount; ++i) {
        std::vector<std::int64_t> x;
        std::vector<std::int64_t> n;
        std::vector<double> score;
        std::vector<ScoredTally> groups;
        for (auto k = dice.whole(2, 12); k > 0; --k) {
            n.push_back(dice.whole(2, 300));
            x.push_back(dice.whole(x.empty() ? 1 : 0, n.back() - (x.empty() ? 1 : 0)));
            score.push_back(dice.chance(0.5) ? static_cast<double>(x.size())
                                             : 10 * dice.share() + static_cast<double>(x.size()));
            groups.push_back({{x.back(), n.back()}, score.back()});
        }
        family.begin({series(x), series(n), series(score)});
        const auto t = *cochranArmitage(groups);
        family.answer("chi2", t.chiSquare);
        family.answer("p", t.p);
    }
}

}

void writeUnits(const std::filesystem::path& folder)
{
    limits(folder);
    funnels(folder);
    adjustments(folder);
    effects(folder);
    standards(folder);
    shareTrends(folder);
}

}
