// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/pace.h"
#include "core/stats/repeats.h"
#include "core/stats/terminaldigit.h"

#include <algorithm>
#include <map>

namespace cradlepost::compute {

namespace {

using namespace stats;

Result<Report> runDigits(const Table& table, const Options& options)
{
    std::vector<std::string> digits = options.words("digits");
    std::vector<std::int64_t> counts(digits.size());
    const auto readings = table.texts("reading");
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const auto digit = lastDigit(readings[i]);
        if (!digit)
            return table.fault(i, "reading", digit.error().message);
        const auto at = std::find(digits.begin(), digits.end(), std::to_string(*digit));
        if (at == digits.end())
            return table.fault(
                i, "reading", "its last digit " + std::to_string(*digit) + " is not among --digits");
        ++counts[static_cast<std::size_t>(at - digits.begin())];
    }
    const auto d = digitPreference(counts);
    if (!d)
        return tl::unexpected(d.error());
    Json::Array rows;
    for (std::size_t i = 0; i < digits.size(); ++i)
        rows.emplace_back(Json::Object{{"digit", digits[i]}, {"count", counts[i]}});
    return Report{{{"n", d->n}, {"chi_square", d->chiSquare}, {"df", d->df}, {"p", d->p}, {"v", d->v},
        {"favourite", digits[d->favourite]}, {"digits", std::move(rows)}}};
}

/** Share of each value among the readings. */
std::vector<double> sharesOf(const std::vector<std::string>& readings)
{
    std::map<std::string_view, double> counts;
    for (const auto& reading : readings)
        counts[reading] += 1;
    std::vector<double> shares;
    for (const auto& [reading, count] : counts)
        shares.push_back(count / static_cast<double>(readings.size()));
    return shares;
}

Result<Report> runRuns(const Table& table, const Options& options)
{
    const auto readings = table.texts("reading");
    if (readings.size() > 100'000)
        return fail(ErrorCode::BadDocument,
            "line " + std::to_string(table.line(100'000)) + ": this method takes at most 100000 rows");
    const auto shares = sharesOf(readings);
    if (shares.size() > 1000)
        return fail(ErrorCode::BadDocument,
            "line " + std::to_string(table.line(0)) + ": there are more than 1000 different readings");
    const int longest = longestIdenticalRun(readings);
    const int length = options.has("length") ? static_cast<int>(options.whole("length")) : longest;
    const auto chance = identicalRunChance(shares, static_cast<int>(readings.size()), length);
    if (!chance)
        return tl::unexpected(chance.error());
    return Report{{{"n", whole(readings.size())}, {"values", whole(shares.size())}, {"longest_run", longest},
        {"length", length}, {"chance", *chance}}};
}

Result<Report> runRepeats(const Table& table, const Options&)
{
    const auto rounds = table.texts("round");
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        if (rounds[i].size() != rounds.front().size())
            return table.fault(i, "round",
                "it has " + std::to_string(rounds[i].size()) + " letters, the first has "
                    + std::to_string(rounds.front().size()));
    }
    std::vector<std::vector<double>> items;
    for (std::size_t k = 0; k < rounds.front().size(); ++k) {
        std::map<char, double> counts;
        for (const auto& round : rounds)
            counts[round[k]] += 1;
        auto& item = items.emplace_back();
        for (const auto& [letter, count] : counts)
            item.push_back(count / static_cast<double>(rounds.size()));
    }
    const auto chance = sameRoundChance(items);
    if (!chance)
        return tl::unexpected(chance.error());
    if (rounds.size() < 2)
        return fail(ErrorCode::Undefined, "a single round cannot repeat another");
    const auto r = repeatedRounds(static_cast<std::int64_t>(rounds.size()), *chance, equalPairs(rounds));
    if (!r)
        return tl::unexpected(r.error());
    return Report{{{"rounds", whole(rounds.size())}, {"same_chance", *chance}, {"equal_pairs", r->seen},
        {"expected_pairs", r->expected}, {"chance_of_any", r->anyChance},
        {"chance_of_as_many", r->chanceOfSeen}}};
}

Result<Report> runPace(const Table& table, const Options& options)
{
    const auto p = pace(table.numbers("seconds"), options.number("floor"));
    if (!p)
        return tl::unexpected(p.error());
    Json::Array rows;
    for (std::size_t i = 0; i < p->points.size(); ++i) {
        const auto& point = p->points[i];
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"seconds", point.seconds},
            {"z", maybe(point.z)}, {"below_floor", point.belowFloor}, {"too_fast", point.tooFast}});
    }
    return Report{
        {{"median_log", p->medianLog}, {"deviation_log", p->deviationLog}, {"rows", std::move(rows)}}};
}

}

std::vector<Method> trustMethods()
{
    std::string digits = "reading\n";
    for (int i = 0; i < 60; ++i)
        digits += std::to_string(24 + i % 4) + '.' + std::to_string(i % 3 == 0 ? 0 : (i * 7) % 10) + '\n';
    return {
        {.name = "digit-preference",
            .summary = "Last digits of readings against equal shares",
            .columns = {{"reading", ColumnKind::Text, "as it was written, for example 36.70"}},
            .options = {{.name = "digits",
                .kind = OptionKind::Words,
                .meaning = "last digits that the device can show",
                .fallback = "0,1,2,3,4,5,6,7,8,9",
                .choices = {}}},
            .fields
            = {{"n", "readings; at least five for each digit"}, {"chi_square, df, p", "test of equal shares"},
                {"v", "size of the effect, 0..1; below 0.1 small, above 0.3 marked"},
                {"favourite", "most frequent digit"}, {"digits[].digit, .count", "counts"}},
            .example = digits,
            .run = runDigits},
        {.name = "identical-runs",
            .summary = "Runs of identical readings against chance",
            .columns = {{"reading", ColumnKind::Text, "in order of time"}},
            .options
            = {wholeOption("length", "run to judge, instead of the longest one seen", "", 2, 100000)},
            .fields = {{"n, values", "readings, and different ones"}, {"longest_run", "of equal neighbours"},
                {"length", "run that is judged"},
                {"chance",
                    "of such a run or a longer one if readings were independent with the shares seen"}},
            .example = "reading\n26.1\n26.3\n26.3\n26.3\n26.3\n25.9\n26.4\n26.0\n",
            .run = runRuns},
        {.name = "repeated-rounds",
            .summary = "Whole rounds that equal each other against chance",
            .columns = {{"round", ColumnKind::Text, "one letter an item, the same items in all rows"}},
            .options = {},
            .fields = {{"rounds", "how many"},
                {"same_chance", "chance that two rounds are equal, from the shares seen"},
                {"equal_pairs, expected_pairs", "pairs of equal rounds, and how many chance gives"},
                {"chance_of_any, chance_of_as_many",
                    "of at least one equal pair, of at least as many as seen"}},
            .example = "round\nmmmgmmgm\nmmmmmmmm\nmgmmmmmm\nmmmgmmgm\nmmmmmgmm\n",
            .run = runRepeats},
        {.name = "pace",
            .summary = "Rounds entered faster than the others",
            .columns = {{"seconds", ColumnKind::NotNegative, "active time of the round"}},
            .options = {numberOption("floor", "least credible time in seconds; 0: none", "0", 0, 1e6)},
            .fields
            = {{"median_log, deviation_log", "of ln(seconds)"}, {"rows[].row, rows[].seconds", "as given"},
                {"rows[].z", "robust z of ln(seconds); null at 0 seconds or without spread"},
                {"rows[].below_floor, rows[].too_fast", "too_fast: below the floor, or z below -3"}},
            .example = "seconds\n412\n380\n455\n390\n520\n365\n401\n60\n433\n47\n398\n",
            .run = runPace},
    };
}

}
