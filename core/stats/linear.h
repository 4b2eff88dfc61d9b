// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

namespace cradlepost::stats {

/** Square matrix by rows. */
struct Matrix
{
    explicit Matrix(std::size_t n)
        : size(n)
        , cells(n * n, 0.0)
    {
    }
    double& at(std::size_t row, std::size_t column) { return cells[row * size + column]; }
    [[nodiscard]] double at(std::size_t row, std::size_t column) const { return cells[row * size + column]; }
    std::size_t size;
    std::vector<double> cells;
};

/** Solves a x = b by elimination with row exchange; nothing when `a` is singular. */
std::optional<std::vector<double>> solve(Matrix a, std::vector<double> b);

}
