// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/base/result.h"
#include "core/stats/tally.h"
#include "tests/core/stats/random.h"

#include <array>
#include <charconv>
#include <filesystem>
#include <fstream>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cradlepost::reference {

using stats::Dice;

/** How many random cases each family has. */
inline constexpr int caseCount = 2000;

inline std::string text(double value)
{
    std::array<char, 32> buffer{};
    return {buffer.data(), std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr};
}
inline std::string text(std::int64_t value) { return std::to_string(value); }

/** A series in one cell, parted by blanks; a gap is NA. */
template <class Values> std::string series(const Values& values)
{
    std::string out;
    for (const auto& value : values)
        out += (out.empty() ? "" : " ") + text(value);
    return out;
}

/**
 * One family: its cases go to cases/FAMILY.csv for R and Python, the engine's answers to engine/FAMILY.csv as
 * case,field,value. An answer that does not exist is an empty value.
 */
class Family
{
public:
    Family(const std::filesystem::path& folder, const std::string& name, std::vector<std::string> columns)
    {
        std::filesystem::create_directories(folder / "cases");
        std::filesystem::create_directories(folder / "engine");
        m_cases.open(folder / "cases" / (name + ".csv"), std::ios::binary);
        m_answers.open(folder / "engine" / (name + ".csv"), std::ios::binary);
        columns.insert(columns.begin(), "case");
        line(m_cases, columns);
        line(m_answers, {"case", "field", "value"});
    }

    void begin(std::vector<std::string> inputs)
    {
        ++m_case;
        inputs.insert(inputs.begin(), std::to_string(m_case));
        line(m_cases, inputs);
    }
    void answer(const std::string& field, double value)
    {
        line(m_answers, {std::to_string(m_case), field, text(value)});
    }
    void answer(const std::string& field, std::optional<double> value)
    {
        line(m_answers, {std::to_string(m_case), field, value ? text(*value) : std::string()});
    }
    void answer(const std::string& field, const Result<double>& value)
    {
        answer(field, value ? std::optional(*value) : std::nullopt);
    }
    [[nodiscard]] bool good() const { return m_cases.good() && m_answers.good(); }

private:
    static void line(std::ofstream& out, const std::vector<std::string>& fields)
    {
        std::string written;
        appendCsvLine(written, fields);
        out << written;
    }
    std::ofstream m_cases;
    std::ofstream m_answers;
    int m_case = 0;
};

/** n from tiny to a million, x at its ends more often than chance would have it. */
inline stats::Tally anyTally(Dice& dice)
{
    static constexpr std::array<std::int64_t, 9> odd{1, 2, 3, 5, 10, 1000, 10'000, 1'000'000, 50};
    const auto n = dice.chance(0.3) ? odd[static_cast<std::size_t>(dice.whole(0, 8))] : dice.whole(1, 400);
    const auto x = dice.chance(0.15) ? 0 : (dice.chance(0.15) ? n : dice.whole(0, n));
    return {x, n};
}

inline double anyLevel(Dice& dice)
{
    static constexpr std::array<double, 6> levels{0.95, 0.9, 0.99, 0.998, 0.5, 0.999999};
    return levels[static_cast<std::size_t>(dice.whole(0, 5))];
}

// Each writes the families of one subject.
void writeCounts(const std::filesystem::path& folder);
void writeCharts(const std::filesystem::path& folder);
void writeUnits(const std::filesystem::path& folder);
void writeDurations(const std::filesystem::path& folder);
void writeStock(const std::filesystem::path& folder);
void writeTrends(const std::filesystem::path& folder);

}
