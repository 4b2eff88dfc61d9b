// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace cradlepost::test {

// Changing a database behind the program's back.

std::vector<std::string> columnsOf(const std::string& path, const std::string& table);
/** Runs SQL with the triggers of the ledger off and on again; checks and foreign keys are off. */
void withoutTriggers(const std::string& path, const std::string& sql);
/** Changes one byte of the column (or the number by one) in a random row; says what it was. */
std::string changeValue(
    const std::string& path, const std::string& table, const std::string& column, std::mt19937& random);

/** A row as it lies in the file. */
struct Cell
{
    std::string table;
    std::int64_t from = 0; ///< offset in the file
    std::int64_t size = 0; ///< without what lies on overflow pages
};
/** All rows of the ledger and of the projections, on the leaf pages of their tables. */
std::vector<Cell> cellsOf(const std::string& path);
void turnBit(const std::string& path, std::int64_t at, int bit);

}
