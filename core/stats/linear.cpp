// SPDX-License-Identifier: MIT
#include "core/stats/linear.h"

#include <algorithm>
#include <cmath>

namespace cradlepost::stats {

std::optional<std::vector<double>> solve(Matrix a, std::vector<double> b)
{
    const auto n = a.size;
    double largest = 0;
    for (const double cell : a.cells)
        largest = std::max(largest, std::abs(cell));
    for (std::size_t k = 0; k < n; ++k) {
        std::size_t pivot = k;
        for (std::size_t i = k + 1; i < n; ++i) {
            if (std::abs(a.at(i, k)) > std::abs(a.at(pivot, k)))
                pivot = i;
        }
        if (!(std::abs(a.at(pivot, k)) > largest * 1e-14))
            return std::nullopt;
        if (pivot != k) {
            for (std::size_t j = k; j < n; ++j)
                std::swap(a.at(pivot, j), a.at(k, j));
            std::swap(b[pivot], b[k]);
        }
        for (std::size_t i = k + 1; i < n; ++i) {
            const double factor = a.at(i, k) / a.at(k, k);
            if (factor == 0)
                continue;
            for (std::size_t j = k + 1; j < n; ++j)
                a.at(i, j) -= factor * a.at(k, j);
            b[i] -= factor * b[k];
        }
    }
    for (std::size_t k = n; k-- > 0;) {
        for (std::size_t j = k + 1; j < n; ++j)
            b[k] -= a.at(k, j) * b[j];
        b[k] /= a.at(k, k);
    }
    return b;
}

}
