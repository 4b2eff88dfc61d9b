// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/falsediscovery.h"
#include "core/stats/funnel.h"
#include "core/stats/standardise.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

DispersionModel modelOf(const std::string& word)
{
    if (word == "multiplicative")
        return DispersionModel::Multiplicative;
    return word == "additive" ? DispersionModel::Additive : DispersionModel::None;
}

Json nameOf(const std::vector<std::string>& names, std::size_t row)
{
    return names.empty() ? rowNumber(row) : Json(names[row]);
}

Result<Report> runFunnel(const Table& table, const Options& options)
{
    const auto rows = table.tallies();
    if (!rows)
        return tl::unexpected(rows.error());
    const auto f = funnel(*rows,
        {.target = options.maybe("target"),
            .model = modelOf(options.word("model")),
            .winsorise = options.number("winsorise")});
    if (!f)
        return tl::unexpected(f.error());
    const auto names = table.texts("unit");
    Json::Array units;
    for (const auto& u : f->units)
        units.emplace_back(
            Json::Object{{"unit", nameOf(names, u.row)}, {"row", rowNumber(u.row)}, {"share", u.share},
                {"z", u.z}, {"low95", u.inner.low}, {"high95", u.inner.high}, {"low998", u.outer.low},
                {"high998", u.outer.high}, {"p", u.p}, {"p_adjusted", u.pAdjusted}, {"side", u.side}});
    return Report{
        {{"target", f->target}, {"phi", f->phi}, {"phi_winsorised", f->phiWinsorised}, {"tau2", f->tau2},
            {"chi_square", f->chiSquare}, {"df", f->df}, {"p_overdispersion", f->pOverdispersion},
            {"model", dispersionName(f->applied)}, {"units", std::move(units)}}};
}

Result<Report> runAdjust(const Table& table, const Options& options)
{
    const auto p = table.gapped("p");
    const auto bh = benjaminiHochberg(p);
    const auto h = holm(p);
    const auto bf = bonferroni(p);
    if (!bh)
        return tl::unexpected(bh.error());
    const double q = options.number("q");
    Json::Array rows;
    for (std::size_t i = 0; i < p.size(); ++i)
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"p", maybe(p[i])},
            {"benjamini_hochberg", maybe((*bh)[i])}, {"holm", maybe((*h)[i])},
            {"bonferroni", maybe((*bf)[i])}, {"rejected", (*bh)[i] && *(*bh)[i] <= q}});
    return Report{{{"q", q}, {"rows", std::move(rows)}}};
}

Report standardised(const Standardised& s, double level)
{
    return {{{"level", level}, {"crude", s.crude}, {"adjusted", s.adjusted}, {"se", s.se},
        {"low", s.interval.low}, {"high", s.interval.high}}};
}

Result<Report> runDirectShare(const Table& table, const Options& options)
{
    const auto rows = table.tallies();
    if (!rows)
        return tl::unexpected(rows.error());
    const auto weights = table.numbers("weight");
    std::vector<ShareStratum> strata;
    for (std::size_t i = 0; i < rows->size(); ++i)
        strata.push_back({(*rows)[i], weights[i]});
    const double level = options.number("level");
    const auto s = directShare(strata, level);
    if (!s)
        return tl::unexpected(s.error());
    return standardised(*s, level);
}

Result<Report> runDirectRate(const Table& table, const Options& options)
{
    const auto events = table.counts("events");
    const auto exposure = table.numbers("exposure");
    const auto weights = table.numbers("weight");
    std::vector<RateStratum> strata;
    for (std::size_t i = 0; i < events.size(); ++i)
        strata.push_back({events[i], exposure[i], weights[i]});
    const double level = options.number("level");
    const auto s = directRate(strata, level);
    if (!s)
        return tl::unexpected(s.error());
    return standardised(*s, level);
}

Result<Report> runIndirect(const Table& table, const Options& options)
{
    const auto events = table.counts("events");
    const auto exposure = table.numbers("exposure");
    const auto rates = table.numbers("rate");
    std::int64_t observed = 0;
    std::vector<IndirectStratum> strata;
    for (std::size_t i = 0; i < events.size(); ++i) {
        observed = std::min<std::int64_t>(observed + events[i], std::int64_t{1} << 60);
        strata.push_back({exposure[i], rates[i]});
    }
    const double level = options.number("level");
    const auto r = indirectRatio(observed, strata, level);
    if (!r)
        return tl::unexpected(r.error());
    return Report{{{"level", level}, {"observed", observed}, {"expected", r->expected}, {"ratio", r->ratio},
        {"low", r->interval.low}, {"high", r->interval.high}}};
}

}

std::vector<Method> unitMethods()
{
    const ColumnSpec stratum{"stratum", ColumnKind::Text, "name of the stratum", true};
    const ColumnSpec weight{"weight", ColumnKind::NotNegative, "of the stratum in the standard"};
    const std::vector<FieldSpec> directFields{{"level", "level of the interval"},
        {"crude", "without standardisation"}, {"adjusted", "standardised figure"},
        {"se", "its standard error"}, {"low, high", "ends of its interval"}};
    return {
        {.name = "funnel",
            .summary = "Shares of units of different size against exact limits",
            .columns = {{"unit", ColumnKind::Text, "name of the unit", true},
                {"x", ColumnKind::Count, "number of events"},
                {"n", ColumnKind::Count, "number of observations; 0: no unit"}},
            .options
            = {numberOption("target", "share to compare with, instead of the overall one", "", 0, 1, true),
                choiceOption(
                    "model", "how over-dispersion widens the limits", {"none", "multiplicative", "additive"}),
                numberOption("winsorise", "share of z values pulled in at each end", "0.1", 0, 0.49)},
            .fields = {{"target", "share in the middle"},
                {"phi, phi_winsorised", "dispersion factor; 1 is chance"}, {"tau2", "variance between units"},
                {"chi_square, df, p_overdispersion", "test of over-dispersion, from phi as it is"},
                {"model", "what the limits use: none unless the wished model widens them"},
                {"units[].unit, units[].row, units[].share, units[].z",
                    "the unit, its share, its distance in sigma"},
                {"units[].low95, .high95, .low998, .high998", "limits"}, {"units[].p", "exact, two-sided"},
                {"units[].p_adjusted", "Benjamini-Hochberg over the units"},
                {"units[].side", "1 above the 99.8 % limits, -1 below, 0 within"}},
            .example = "unit,x,n\nNorth,12,80\nSouth,30,150\nEast,7,60\nWest,55,310\nHill,21,140\n",
            .run = runFunnel},
        {.name = "false-discovery",
            .summary = "P values adjusted for many tests at once",
            .columns = {{.name = "p",
                .kind = ColumnKind::Chance,
                .meaning = "one a test; empty: not done",
                .gaps = true}},
            .options = {numberOption("q", "false-discovery rate to hold", "0.05", 0, 1, true)},
            .fields = {{"q", "as given"}, {"rows[].row, rows[].p", "as given"},
                {"rows[].benjamini_hochberg, .holm, .bonferroni", "adjusted p values"},
                {"rows[].rejected", "benjamini_hochberg is at most q"}},
            .example = "p\n0.0001\n0.0004\n0.0019\n0.0095\n0.0201\n",
            .run = runAdjust},
        {.name = "direct-share",
            .summary = "Share standardised to a given mix of strata",
            .columns = {stratum, {"x", ColumnKind::Count, "number of events"},
                {"n", ColumnKind::Count, "number of observations"}, weight},
            .options = {levelOption()},
            .fields = directFields,
            .example = "stratum,x,n,weight\nday,180,200,50\nevening,95,110,30\nnight,40,60,20\n",
            .run = runDirectShare},
        {.name = "direct-rate",
            .summary = "Rate standardised to a given mix of strata (Fay-Feuer limits)",
            .columns = {stratum, {"events", ColumnKind::Count, "number of events"},
                {"exposure", ColumnKind::NotNegative, "time or items under watch"}, weight},
            .options = {levelOption()},
            .fields = directFields,
            .example
            = "events,exposure,weight\n107,230061,63986.6\n141,329449,186263.6\n60,114920,157302.2\n",
            .run = runDirectRate},
        {.name = "indirect",
            .summary = "Observed against expected from standard rates",
            .columns = {stratum, {"events", ColumnKind::Count, "observed events"},
                {"exposure", ColumnKind::NotNegative, "time or items under watch"},
                {"rate", ColumnKind::NotNegative, "events per unit of exposure in the standard"}},
            .options = {levelOption()},
            .fields
            = {{"level", "level of the interval"}, {"observed, expected, ratio", "counts and their ratio"},
                {"low, high", "exact ends of the interval of the ratio"}},
            .example = "events,exposure,rate\n12,400,0.02\n30,900,0.03\n",
            .run = runIndirect},
    };
}

}
