// SPDX-License-Identifier: MIT
#pragma once

#include "app/compute/options.h"
#include "app/compute/report.h"
#include "app/compute/table.h"

#include <string>
#include <vector>

namespace cradlepost::compute {

/** One member of the answer, as `--help` documents it; "points[].low" is the member of each element of a
 * list. */
struct FieldSpec
{
    std::string name;
    std::string meaning;
};

/** One method of the engine offered to a user's own table. */
struct Method
{
    std::string name;
    std::string summary; ///< one line
    std::vector<ColumnSpec> columns;
    std::vector<OptionSpec> options;
    std::vector<FieldSpec> fields;
    std::string example; ///< a table that the method takes
    Result<Report> (*run)(const Table& table, const Options& options) = nullptr;
    bool openColumns = false; ///< further columns have names of the user's own
};

/** The level of an interval, the same for all methods. */
inline OptionSpec levelOption()
{
    return {.name = "level",
        .kind = OptionKind::Number,
        .meaning = "two-sided level of the interval",
        .fallback = "0.95",
        .low = 0,
        .high = 1,
        .open = true,
        .choices = {}};
}

inline OptionSpec numberOption(
    std::string name, std::string meaning, std::string fallback, double low, double high, bool open = false)
{
    return {.name = std::move(name),
        .kind = OptionKind::Number,
        .meaning = std::move(meaning),
        .fallback = std::move(fallback),
        .low = low,
        .high = high,
        .open = open,
        .choices = {}};
}

inline OptionSpec wholeOption(
    std::string name, std::string meaning, std::string fallback, double low, double high)
{
    return {.name = std::move(name),
        .kind = OptionKind::Whole,
        .meaning = std::move(meaning),
        .fallback = std::move(fallback),
        .low = low,
        .high = high,
        .open = false,
        .choices = {}};
}

inline OptionSpec choiceOption(std::string name, std::string meaning, std::vector<std::string> choices)
{
    auto fallback = choices.front();
    return {.name = std::move(name),
        .kind = OptionKind::Choice,
        .meaning = std::move(meaning),
        .fallback = std::move(fallback),
        .low = 0,
        .high = 0,
        .open = false,
        .choices = std::move(choices)};
}

// One list for each family, in the order in which --help shows them.
std::vector<Method> shareMethods();
std::vector<Method> chartMethods();
std::vector<Method> changeMethods();
std::vector<Method> unitMethods();
std::vector<Method> durationMethods();
std::vector<Method> agreementMethods();
std::vector<Method> stockMethods();
std::vector<Method> samplingMethods();
std::vector<Method> trustMethods();
std::vector<Method> trendMethods();

}
