// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace cradlepost {

/** The lower-case codes of one enumeration, as they stand in records. */
template <class E, std::size_t N> using CodeTable = std::array<std::pair<E, const char*>, N>;

/** The code of a value of the table; every value has one. */
template <class E, std::size_t N> const char* codeIn(const CodeTable<E, N>& table, E value)
{
    return std::find_if(table.begin(), table.end(), [&](const auto& row) {
        return row.first == value;
    })->second;
}

template <class E, std::size_t N>
std::optional<E> fromCodeIn(const CodeTable<E, N>& table, std::string_view code)
{
    const auto row
        = std::find_if(table.begin(), table.end(), [&](const auto& r) { return code == r.second; });
    return row == table.end() ? std::nullopt : std::optional(row->first);
}

}
