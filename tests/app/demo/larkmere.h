// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/demo.h"
#include "app/demo/story.h"
#include "tests/support/builders.h"

#include <algorithm>

using cradlepost::demo::Span;

/** 24 November 2026, 14:12 UTC: 19:42 in Larkmere, an evening shift. */
inline constexpr cradlepost::Instant writtenAt = std::chrono::sys_days(std::chrono::year(2026) / 11 / 24)
    + std::chrono::hours(14) + std::chrono::minutes(12);

/** The whole demo, written once for all tests, and plain counts of it. */
class Larkmere
{
public:
    static const Larkmere& whole();

    [[nodiscard]] const cradlepost::DemoWritten& written() const { return m_written; }
    [[nodiscard]] const cradlepost::Store& store() const { return *m_store; }
    [[nodiscard]] const cradlepost::demo::Stories& stories() const { return m_stories; }
    /** From the first day up to and with today. */
    [[nodiscard]] Span always() const;
    [[nodiscard]] static std::vector<std::string> units();

    [[nodiscard]] std::vector<cradlepost::RoundRow> rounds(const std::string& unit, Span span) const;
    [[nodiscard]] std::vector<cradlepost::RoundRow> shiftRounds(const std::string& unit, Span span) const;
    [[nodiscard]] std::vector<cradlepost::Reading> readings(
        const std::string& unit, const std::string& item, Span span) const;
    [[nodiscard]] double gapShare(const std::string& unit, const std::string& item) const;
    /** Minutes from the begin of its shift to the start of a round of the last 60 days, the middle one. */
    [[nodiscard]] double medianDelay(const std::string& unit) const;

private:
    Larkmere();

    cradlepost::test::TempDir m_folder;
    cradlepost::FixedClock m_clock;
    cradlepost::DemoWritten m_written;
    std::unique_ptr<cradlepost::Store> m_store;
    cradlepost::demo::Stories m_stories;
};

/** Mean readiness index, 0 to 1. */
double meanIndex(const std::vector<cradlepost::RoundRow>& rounds);
template <class T> double shareOf(const std::vector<T>& all, const auto& holds)
{
    if (all.empty())
        return -1;
    return static_cast<double>(std::count_if(all.begin(), all.end(), holds))
        / static_cast<double>(all.size());
}
