// SPDX-License-Identifier: MIT
#include "core/stats/agreement.h"

#include "core/stats/check.h"
#include "core/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

namespace {

/** The table as shares, with its margins. */
struct Shares
{
    std::size_t q = 0;
    double n = 0;
    std::vector<double> cell;
    std::vector<double> row;
    std::vector<double> column;
    [[nodiscard]] double at(std::size_t i, std::size_t j) const { return cell[i * q + j]; }
};

Result<Shares> sharesOf(const AgreementTable& table)
{
    if (table.q < 2 || table.q > 1000)
        return wrong("agreement needs 2 to 1000 categories, not " + std::to_string(table.q));
    if (table.counts.size() != table.q * table.q)
        return wrong("a table of " + std::to_string(table.q) + " categories has "
            + std::to_string(table.q * table.q) + " counts, not " + std::to_string(table.counts.size()));
    std::int64_t n = 0;
    for (const auto count : table.counts) {
        if (count < 0 || count > maxCount || (n += count) > maxCount)
            return wrong("a count in the table is below 0 or too large");
    }
    if (n == 0)
        return undefined("nothing was judged, so there is no agreement");
    Shares s{.q = table.q, .n = static_cast<double>(n), .cell = {}, .row = {}, .column = {}};
    s.row.resize(table.q);
    s.column.resize(table.q);
    s.cell.reserve(table.counts.size());
    // Margins from whole counts, so that an empty or full one is exactly 0 or 1.
    for (std::size_t i = 0; i < table.q; ++i) {
        for (std::size_t j = 0; j < table.q; ++j) {
            const double count = static_cast<double>(table.counts[i * table.q + j]);
            s.cell.push_back(count / s.n);
            s.row[i] += count;
            s.column[j] += count;
        }
    }
    for (std::size_t i = 0; i < table.q; ++i) {
        s.row[i] /= s.n;
        s.column[i] /= s.n;
    }
    return s;
}

double weightOf(KappaWeights weights, std::size_t i, std::size_t j, std::size_t q)
{
    if (weights == KappaWeights::None)
        return i == j ? 1 : 0;
    const double distance = (static_cast<double>(i) - static_cast<double>(j)) / static_cast<double>(q - 1);
    return weights == KappaWeights::Linear ? 1 - std::abs(distance) : 1 - distance * distance;
}

/** Root of a variance; what rounding alone leaves (its square is of the order of 1e-32) is 0. */
double rootOf(double variance) { return variance <= 1e-28 ? 0 : std::sqrt(variance); }

void setInterval(Agreement& a, double level)
{
    if (a.se <= 0)
        return;
    const double halfWidth = normalWidth(level) * a.se;
    a.interval = Interval{.low = a.estimate - halfWidth, .high = a.estimate + halfWidth};
}

}

Result<Agreement> kappa(const AgreementTable& table, KappaWeights weights, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const auto shares = sharesOf(table);
    if (!shares)
        return tl::unexpected(shares.error());
    const auto& s = *shares;
    Agreement a;
    std::vector<double> rowMean(s.q); // mean weight of a row category against the second observer's shares
    std::vector<double> columnMean(s.q);
    for (std::size_t i = 0; i < s.q; ++i) {
        for (std::size_t j = 0; j < s.q; ++j) {
            const double w = weightOf(weights, i, j, s.q);
            a.observed += w * s.at(i, j);
            a.byChance += w * s.row[i] * s.column[j];
            rowMean[i] += w * s.column[j];
            columnMean[j] += w * s.row[i];
        }
    }
    const double room = 1 - a.byChance;
    if (room <= 1e-15)
        return undefined("both observers used one category only: agreement beyond chance cannot be told");
    a.estimate = (a.observed - a.byChance) / room;
    // The published forms subtract a squared mean; the spread about that mean is the same and keeps its
    // digits.
    const double centre = a.estimate - a.byChance * (1 - a.estimate);
    double spread = 0;
    double spreadIfNone = 0;
    for (std::size_t i = 0; i < s.q; ++i) {
        for (std::size_t j = 0; j < s.q; ++j) {
            const double w = weightOf(weights, i, j, s.q);
            const double mean = rowMean[i] + columnMean[j];
            const double term = w - mean * (1 - a.estimate) - centre;
            const double termIfNone = w - mean + a.byChance;
            spread += s.at(i, j) * term * term;
            spreadIfNone += s.row[i] * s.column[j] * termIfNone * termIfNone;
        }
    }
    const double scale = std::sqrt(s.n) * room;
    a.se = rootOf(spread) / scale;
    const double seIfNone = rootOf(spreadIfNone) / scale;
    a.seIfNone = seIfNone;
    if (seIfNone > 0)
        a.z = a.estimate / seIfNone;
    setInterval(a, level);
    return a;
}

Result<Agreement> ac1(const AgreementTable& table, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const auto shares = sharesOf(table);
    if (!shares)
        return tl::unexpected(shares.error());
    const auto& s = *shares;
    const double others = static_cast<double>(s.q - 1);
    Agreement a;
    std::vector<double> mean(s.q);
    for (std::size_t i = 0; i < s.q; ++i) {
        mean[i] = (s.row[i] + s.column[i]) / 2;
        a.observed += s.at(i, i);
        a.byChance += mean[i] * (1 - mean[i]) / others;
    }
    const double room = 1 - a.byChance;
    a.estimate = (a.observed - a.byChance) / room;
    const double centre = a.observed - 2 * (1 - a.estimate) * a.byChance;
    double spread = 0;
    for (std::size_t i = 0; i < s.q; ++i) {
        for (std::size_t j = 0; j < s.q; ++j) {
            const double term
                = (i == j ? 1 : 0) - 2 * (1 - a.estimate) * (1 - (mean[i] + mean[j]) / 2) / others - centre;
            spread += s.at(i, j) * term * term;
        }
    }
    a.se = rootOf(spread) / (std::sqrt(s.n) * room);
    setInterval(a, level);
    if (a.interval)
        a.interval->high = std::min(1.0, a.interval->high);
    return a;
}

Result<AdjustedKappa> adjustedKappa(const AgreementTable& table, double level)
{
    CRADLEPOST_TRY(checkLevel(level));
    const auto shares = sharesOf(table);
    if (!shares)
        return tl::unexpected(shares.error());
    const auto& s = *shares;
    const double q = static_cast<double>(s.q);
    AdjustedKappa result;
    auto& a = result.agreement;
    std::int64_t same = 0;
    for (std::size_t i = 0; i < s.q; ++i)
        same += table.counts[i * s.q + i];
    a.observed = static_cast<double>(same) / s.n;
    a.byChance = 1 / q;
    a.estimate = (q * a.observed - 1) / (q - 1);
    a.se = q / (q - 1) * std::sqrt(a.observed * (1 - a.observed) / s.n);
    setInterval(a, level);
    if (s.q == 2) {
        result.biasIndex = static_cast<double>(table.counts[1] - table.counts[2]) / s.n;
        result.prevalenceIndex = static_cast<double>(table.counts[0] - table.counts[3]) / s.n;
    }
    return result;
}

}
