// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/agreement.h"

#include <algorithm>
#include <utility>

namespace cradlepost::compute {

namespace {

using namespace stats;

constexpr std::size_t mostCategories = 100;

/** Position of a category; a new one is added unless the form's list was given. */
Result<std::size_t> place(std::vector<std::string>& categories, const std::string& name, const Table& table,
    std::size_t row, const std::string& column, bool fixed)
{
    const auto at = static_cast<std::size_t>(
        std::find(categories.begin(), categories.end(), name) - categories.begin());
    if (at < categories.size())
        return at;
    if (fixed)
        return table.fault(row, column, "'" + name + "' is not among --categories");
    if (categories.size() == mostCategories)
        return table.fault(row, column, "there are more than 100 categories");
    categories.push_back(name);
    return at;
}

/** Counts by pair of categories; `categories` grows with those that are met. */
Result<AgreementTable> countPairs(const Table& table, std::vector<std::string>& categories)
{
    const bool fixed = !categories.empty();
    const auto first = table.texts("first");
    const auto second = table.texts("second");
    auto counts = table.counts("count");
    if (counts.empty())
        counts.assign(table.size(), 1);
    std::vector<std::pair<std::size_t, std::size_t>> cells;
    for (std::size_t i = 0; i < table.size(); ++i) {
        const auto a = place(categories, first[i], table, i, "first", fixed);
        if (!a)
            return tl::unexpected(a.error());
        const auto b = place(categories, second[i], table, i, "second", fixed);
        if (!b)
            return tl::unexpected(b.error());
        cells.emplace_back(*a, *b);
    }
    AgreementTable pairs{.q = std::max<std::size_t>(2, categories.size()), .counts = {}};
    pairs.counts.assign(pairs.q * pairs.q, 0);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        auto& cell = pairs.counts[cells[i].first * pairs.q + cells[i].second];
        if (counts[i] > (std::int64_t{1} << 53) - cell)
            return table.fault(i, "count", "the counts are too large to be added");
        cell += counts[i];
    }
    return pairs;
}

Json figures(const Result<Agreement>& a)
{
    if (!a)
        return Json(Json::Object{{"estimate", Json()}, {"se", Json()}, {"low", Json()}, {"high", Json()},
            {"by_chance", Json()}, {"reason", a.error().message}});
    return Json(Json::Object{{"estimate", a->estimate}, {"se", a->se},
        {"low", a->interval ? Json(a->interval->low) : Json()},
        {"high", a->interval ? Json(a->interval->high) : Json()}, {"by_chance", a->byChance},
        {"reason", Json()}});
}

Result<Report> runKappa(const Table& table, const Options& options)
{
    auto categories = options.words("categories");
    const auto agreement = countPairs(table, categories);
    if (!agreement)
        return tl::unexpected(agreement.error());
    const double level = options.number("level");
    const auto weights = options.word("weights") == "linear" ? KappaWeights::Linear
        : options.word("weights") == "quadratic"             ? KappaWeights::Quadratic
                                                             : KappaWeights::None;
    const auto adjusted = adjustedKappa(*agreement, level);
    if (!adjusted)
        return tl::unexpected(adjusted.error());
    Json::Array names;
    for (const auto& name : categories)
        names.emplace_back(name);
    return Report{{{"level", level}, {"categories", std::move(names)},
        {"observed", adjusted->agreement.observed}, {"kappa", figures(kappa(*agreement, weights, level))},
        {"ac1", figures(ac1(*agreement, level))}, {"adjusted_kappa", figures(adjusted->agreement)},
        {"bias_index", maybe(adjusted->biasIndex)}, {"prevalence_index", maybe(adjusted->prevalenceIndex)}}};
}

}

std::vector<Method> agreementMethods()
{
    return {{.name = "kappa",
        .summary = "Agreement of two observers: kappa, AC1, prevalence- and bias-adjusted kappa",
        .columns = {{"first", ColumnKind::Text, "category by the first observer"},
            {"second", ColumnKind::Text, "category by the second observer"},
            {"count", ColumnKind::Count, "how many things were put so; 1 without this column", true}},
        .options = {levelOption(),
            {.name = "categories",
                .kind = OptionKind::Words,
                .meaning
                = "all categories of the form, in order; without it those seen, in order of appearance",
                .fallback = "",
                .choices = {}},
            choiceOption("weights", "of kappa for near agreement", {"none", "linear", "quadratic"})},
        .fields = {{"level", "level of the intervals"}, {"categories", "in order"},
            {"observed", "share of full agreement"},
            {"kappa, ac1, adjusted_kappa",
                "each with estimate, se, low, high, by_chance (agreement by chance) and, where "
                "there is no estimate, its reason"},
            {"bias_index, prevalence_index", "two categories only, else null"}},
        .example = "first,second,count\nmet,met,80\nmet,gap,10\ngap,met,5\ngap,gap,5\n",
        .run = runKappa}};
}

}
