// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/demand.h"
#include "core/stats/kinetictemperature.h"
#include "core/stats/transport.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

/** Demand of each row: Poisson where the size is empty or missing. */
std::vector<Demand> demandsOf(const Table& table)
{
    const auto means = table.numbers("mean");
    auto sizes = table.gapped("size");
    sizes.resize(means.size());
    std::vector<Demand> demands;
    for (std::size_t i = 0; i < means.size(); ++i)
        demands.push_back({.mean = means[i], .size = sizes[i]});
    return demands;
}

Result<Report> runStockOut(const Table& table, const Options&)
{
    const auto demands = demandsOf(table);
    const auto stock = table.counts("stock");
    Json::Array rows;
    for (std::size_t i = 0; i < demands.size(); ++i) {
        const auto o = outlook(demands[i], stock[i]);
        if (!o)
            return table.fault(i, "mean", o.error().message);
        rows.emplace_back(
            Json::Object{{"row", rowNumber(i)}, {"stock_out", o->stockOut}, {"at_most", o->atMost},
                {"exactly", o->exactly}, {"empty_shelf", o->emptyShelf}, {"unmet", o->unmet}});
    }
    return Report{{{"rows", std::move(rows)}}};
}

Result<Report> runReorder(const Table& table, const Options& options)
{
    const auto demands = demandsOf(table);
    const auto days = table.numbers("days");
    const double service = options.number("service");
    const auto model = options.word("model") == "independent-days" ? LeadTimeModel::IndependentDays
                                                                   : LeadTimeModel::RateDrawnOnce;
    Json::Array rows;
    for (std::size_t i = 0; i < demands.size(); ++i) {
        const auto point = reorderPoint(demands[i], days[i], model, service);
        if (!point)
            return table.fault(i, "mean", point.error().message);
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"expected", point->expected},
            {"reorder_point", point->level}, {"safety_stock", point->safety}});
    }
    return Report{{{"service", service}, {"rows", std::move(rows)}}};
}

Result<Report> runFit(const Table& table, const Options&)
{
    const auto fit = fitDemand(table.counts("count"));
    if (!fit)
        return tl::unexpected(fit.error());
    return Report{{{"mean", fit->mean}, {"variance", fit->variance}, {"ratio", fit->ratio},
        {"size", maybe(fit->size)}, {"chi_square", fit->chiSquare}, {"df", fit->df}, {"p", fit->p}}};
}

Result<Report> runTemperature(const Table& table, const Options& options)
{
    const auto celsius = table.numbers("celsius");
    auto durations = table.numbers("duration");
    if (durations.empty())
        durations.assign(celsius.size(), 1.0);
    std::vector<StoreReading> readings;
    double sum = 0;
    double weight = 0;
    for (std::size_t i = 0; i < celsius.size(); ++i) {
        readings.push_back({celsius[i], durations[i]});
        sum += celsius[i] * durations[i];
        weight += durations[i];
    }
    const double activation = options.number("activation");
    const auto mean = meanKineticTemperature(readings, activation);
    if (!mean)
        return tl::unexpected(mean.error());
    return Report{{{"activation", activation}, {"mkt", *mean}, {"mean", sum / weight},
        {"readings", whole(readings.size())}}};
}

/** Row of the needs, if there is exactly one. */
Result<std::size_t> needRow(const Table& table, const std::vector<std::string>& names)
{
    std::size_t row = names.size();
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] != "need")
            continue;
        if (row < names.size())
            return table.fault(i, "from", "there is a second row 'need'");
        row = i;
    }
    if (row == names.size())
        return table.fault(0, "from", "no row is called 'need'; it holds what each taker needs");
    return row;
}

struct TransportTable
{
    TransportProblem problem;
    std::vector<std::string> givers;
    std::vector<std::string> takers;
};

Result<TransportTable> readTransport(const Table& table)
{
    TransportTable t;
    std::vector<std::size_t> columns;
    for (std::size_t c = 0; c < table.csv().header.size(); ++c) {
        const auto& name = table.csv().header[c].text;
        if (name == "from" || name == "on_hand" || name == "keep")
            continue;
        t.takers.push_back(name);
        columns.push_back(c);
    }
    const auto names = table.texts("from");
    const auto need = needRow(table, names);
    if (!need)
        return tl::unexpected(need.error());
    const auto onHand = table.counts("on_hand");
    auto keep = table.counts("keep");
    keep.resize(table.size());
    t.problem.needs.assign(columns.size(), 0);
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i != *need) {
            t.givers.push_back(names[i]);
            t.problem.givers.push_back({.onHand = onHand[i], .keep = keep[i]});
        }
        for (std::size_t j = 0; j < columns.size(); ++j) {
            const auto& text = table.csv().rows[i][columns[j]].text;
            const auto pieces = readWhole(text);
            if ((!pieces && !text.empty()) || (pieces && *pieces < 0))
                return table.fault(i, t.takers[j], "'" + text + "' is not a whole number of at least 0");
            if (i == *need)
                t.problem.needs[j] = pieces.value_or(0);
            else
                t.problem.costs.push_back(pieces);
        }
    }
    return t;
}

Result<Report> runTransport(const Table& table, const Options&)
{
    const auto t = readTransport(table);
    if (!t)
        return tl::unexpected(t.error());
    const auto plan = transport(t->problem);
    if (!plan)
        return tl::unexpected(plan.error());
    Json::Array moves;
    for (const auto& m : plan->moves)
        moves.emplace_back(
            Json::Object{{"from", t->givers[m.from]}, {"to", t->takers[m.to]}, {"pieces", m.pieces}});
    Json::Array takers;
    for (std::size_t j = 0; j < t->takers.size(); ++j)
        takers.emplace_back(
            Json::Object{{"to", t->takers[j]}, {"need", t->problem.needs[j]}, {"unmet", plan->unmet[j]}});
    Json::Array givers;
    for (std::size_t i = 0; i < t->givers.size(); ++i)
        givers.emplace_back(Json::Object{{"from", t->givers[i]}, {"left", plan->left[i]}});
    return Report{{{"cost", plan->cost}, {"moved", plan->moved}, {"moves", std::move(moves)},
        {"takers", std::move(takers)}, {"givers", std::move(givers)}}};
}

}

std::vector<Method> stockMethods()
{
    const ColumnSpec mean{"mean", ColumnKind::NotNegative, "mean demand in the interval"};
    const ColumnSpec size{.name = "size",
        .kind = ColumnKind::Positive,
        .meaning = "size of the negative binomial; empty: Poisson",
        .optional = true,
        .gaps = true};
    return {
        {.name = "stock-out",
            .summary = "Chance that a stock does not last",
            .columns = {mean, size, {"stock", ColumnKind::Count, "pieces on hand"}},
            .options = {},
            .fields = {{"rows[].row", "row"}, {"rows[].stock_out", "P(demand > stock): somebody finds none"},
                {"rows[].at_most, rows[].exactly", "P(demand <= stock), P(demand = stock)"},
                {"rows[].empty_shelf", "P(demand >= stock): nothing is left at the end"},
                {"rows[].unmet", "mean demand that finds none"}},
            .example = "mean,size,stock\n3.4,,6\n3.4,1.7,6\n16.1,,24\n",
            .run = runStockOut},
        {.name = "reorder-point",
            .summary = "Stock at which to order for a service level",
            .columns = {{"mean", ColumnKind::NotNegative, "mean demand a day"}, size,
                {"days", ColumnKind::Positive, "lead time"}},
            .options = {{.name = "service",
                            .kind = OptionKind::Number,
                            .meaning = "chance of no stock-out in a cycle",
                            .fallback = "0.95",
                            .low = 0,
                            .high = 0.999999999,
                            .choices = {}},
                choiceOption("model", "how the daily rate varies over the lead time",
                    {"rate-drawn-once", "independent-days"})},
            .fields = {{"service", "as given"}, {"rows[].row", "row"},
                {"rows[].expected", "mean demand over the lead time"},
                {"rows[].reorder_point", "order when stock falls to this"},
                {"rows[].safety_stock", "reorder_point - expected; 0 when nothing is expected"}},
            .example = "mean,size,days\n2.3,,7\n2.3,4,7\n",
            .run = runReorder},
        {.name = "demand-fit",
            .summary = "Mean and spread of counts of equal intervals",
            .columns = {{"count", ColumnKind::Count, "one interval a row"}},
            .options = {},
            .fields = {{"mean, variance, ratio", "variance with n - 1; ratio variance/mean, 1 for Poisson"},
                {"size", "of the negative binomial, by moments; null when the spread is not above Poisson's"},
                {"chi_square, df, p", "index of dispersion test"}},
            .example = "count\n2\n5\n3\n0\n7\n4\n1\n9\n3\n2\n6\n4\n3\n8\n",
            .run = runFit},
        {.name = "mkt",
            .summary = "Mean kinetic temperature of a store",
            .columns = {{"celsius", ColumnKind::Number, "reading in degrees C"},
                {"duration", ColumnKind::NotNegative, "how long it stands for; alike without this column",
                    true}},
            .options = {numberOption("activation", "dH/R in kelvin", "10000", 1, 1e6)},
            .fields = {{"activation", "as given"}, {"mkt", "mean kinetic temperature in degrees C"},
                {"mean", "plain mean"}, {"readings", "how many"}},
            .example = "celsius,duration\n5,22\n15,2\n",
            .run = runTemperature},
        {.name = "transport",
            .summary = "Move stock between units at least cost, each giver keeping its own cover",
            .columns = {{"from", ColumnKind::Text, "name of the giver; the row 'need' holds the needs"},
                {.name = "on_hand", .kind = ColumnKind::Count, .meaning = "pieces there", .gaps = true},
                {.name = "keep",
                    .kind = ColumnKind::Count,
                    .meaning = "own cover that stays",
                    .optional = true,
                    .gaps = true}},
            .options = {},
            .fields = {{"cost, moved", "of all moves, and pieces moved"},
                {"moves[].from, .to, .pieces", "what to move"},
                {"takers[].to, .need, .unmet", "what could not be brought"},
                {"givers[].from, .left", "stock after the moves"}},
            .example
            = "from,on_hand,keep,North,South,East\nDepot,25,5,4,11,7\nHill,15,0,9,3,12\nneed,,,8,10,6\n",
            .run = runTransport,
            .openColumns = true},
    };
}

}
