// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"

namespace cradlepost::bench {

inline const Date districtLastDay = std::chrono::year(2026) / 10 / 31;
inline constexpr int districtDays = 3 * 365; ///< up to and with the last day

enum class FillWay {
    Ledger, ///< each round signed and saved, as by a station
    Projections, ///< as a replay of the ledger writes them, without records: quicker, and `verify` would fail
};

/**
 * Writes an invented district into a place of its own: `units` units of three levels, each with about three
 * rounds a day over three years, gaps that last some shifts, late and left-out rounds, and ways to its
 * neighbours; `shelves`: with the book of a shelf of six items over the same years. The same in every run.
 * Gives how many rounds there are.
 */
std::int64_t fillDistrict(const std::string& address, int units, FillWay way, bool shelves);

}
