// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"

namespace cradlepost::test {

/** November 2026 of one unit with everything that an export has to hold: invented, and short. */
class BusyMonth
{
public:
    /** Rounds with gaps and readings outside, checks, a re-check, a spot check, a round put right, stock. */
    explicit BusyMonth(const std::string& file);

    const std::string unit = "sorrel-hill";
    const Date first = std::chrono::year(2026) / 11 / 1;
    const Date last = std::chrono::year(2026) / 11 / 10; ///< of its rounds
    FixedClock clock;
    std::unique_ptr<Store> store;
    Checklist checklist;
    RecordId amended; ///< the round that was put right

private:
    RecordId save(const RoundRecord& round, const std::string& actor = "AB");
    void addRounds();
    void addChecks();
    void addStock();
};

}
