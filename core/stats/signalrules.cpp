// SPDX-License-Identifier: MIT
#include "core/stats/signalrules.h"

#include "core/stats/check.h"

#include <algorithm>
#include <bit>
#include <cmath>

namespace cradlepost::stats {

namespace {

// Rounding in (plotted - centre)/sigma must not push a point over a line on which it lies.
constexpr double onTheLine = 1e-9;
constexpr int alternatingLength = 14;
constexpr int huggingLength = 15;
constexpr int mixtureLength = 8;
constexpr unsigned lastThree = 0b111;
constexpr unsigned lastFive = 0b11111;

int sideBeyond(double z, double line)
{
    if (z > line + onTheLine)
        return 1;
    return z < -line - onTheLine ? -1 : 0;
}

/** The last few points as bits, the latest the lowest: beyond a line above, and beyond it below. */
struct Window
{
    unsigned above = 0;
    unsigned below = 0;
    void add(int side, unsigned mask)
    {
        above = (above << 1U | (side > 0 ? 1U : 0U)) & mask;
        below = (below << 1U | (side < 0 ? 1U : 0U)) & mask;
    }
};

/** Walks the series once and keeps what each rule needs of the past. */
class Walk
{
public:
    Walk(std::span<const double> z, const RuleSet& rules)
        : m_z(z)
        , m_rules(rules)
    {
    }

    std::vector<Signal> run()
    {
        for (m_at = 0; m_at < m_z.size(); ++m_at) {
            step();
            judge();
        }
        return std::move(m_found);
    }

private:
    void step()
    {
        const double z = m_z[m_at];
        const int side = std::abs(z) <= 1e-12 ? 0 : (z > 0 ? 1 : -1);
        m_run = side != 0 && side == m_side ? m_run + 1 : (side != 0 ? 1 : 0);
        m_side = side;
        const bool inside = std::abs(z) < 1 - onTheLine;
        const int beyondOne = sideBeyond(z, 1);
        m_beyondOne.add(beyondOne, lastFive);
        m_beyondTwo.add(sideBeyond(z, 2), lastThree);
        m_inside = inside ? m_inside + 1 : 0;
        m_outside = beyondOne != 0 ? m_outside + 1 : 0;
        if (m_at == 0)
            return;
        const double rise = z - m_z[m_at - 1];
        const int direction = rise > 0 ? 1 : (rise < 0 ? -1 : 0);
        m_alternating
            = direction != 0 && direction == -m_direction ? m_alternating + 1 : (direction != 0 ? 1 : 0);
        m_steps = direction != 0 && direction == m_direction ? m_steps + 1 : (direction != 0 ? 1 : 0);
        m_direction = direction;
    }

    void judge()
    {
        if (m_rules.beyondLimit) {
            if (const int side = sideBeyond(m_z[m_at], m_rules.width); side != 0)
                add(SignalRule::BeyondLimit, m_at, side);
        }
        if (m_rules.twoOfThree)
            zone(SignalRule::TwoOfThree, m_beyondTwo, 2);
        if (m_rules.fourOfFive)
            zone(SignalRule::FourOfFive, m_beyondOne, 4);
        if (m_rules.runOnOneSide && m_run >= m_rules.runLength)
            add(SignalRule::RunOnOneSide, m_at + 1 - static_cast<std::size_t>(m_run), m_side);
        if (m_rules.trend && m_steps >= m_rules.trendLength - 1)
            add(SignalRule::Trend, m_at - static_cast<std::size_t>(m_steps), m_direction);
        if (m_rules.alternating && m_alternating >= alternatingLength - 1)
            add(SignalRule::Alternating, m_at - static_cast<std::size_t>(m_alternating), 0);
        if (m_rules.hugging && m_inside >= huggingLength)
            add(SignalRule::Hugging, m_at + 1 - static_cast<std::size_t>(m_inside), 0);
        if (m_rules.mixture && m_outside >= mixtureLength && bothSides())
            add(SignalRule::Mixture, m_at + 1 - static_cast<std::size_t>(mixtureLength), 0);
    }

    void zone(SignalRule rule, const Window& window, int needed)
    {
        const int side = (window.above & 1U) != 0 ? 1 : ((window.below & 1U) != 0 ? -1 : 0);
        const unsigned points = side > 0 ? window.above : window.below;
        if (side != 0 && std::popcount(points) >= needed)
            add(rule, m_at + 1 - static_cast<std::size_t>(std::bit_width(points)), side);
    }

    [[nodiscard]] bool bothSides() const
    {
        const auto last = m_z.subspan(m_at + 1 - mixtureLength, mixtureLength);
        const auto [low, high] = std::minmax_element(last.begin(), last.end());
        return *low < 0 && *high > 0;
    }

    void add(SignalRule rule, std::size_t from, int side)
    {
        m_found.push_back({.rule = rule, .at = m_at, .from = from, .side = side});
    }

    std::span<const double> m_z;
    const RuleSet& m_rules;
    std::vector<Signal> m_found;
    std::size_t m_at = 0;
    Window m_beyondOne;
    Window m_beyondTwo;
    int m_run = 0;
    int m_side = 0;
    int m_steps = 0;
    int m_direction = 0;
    int m_alternating = 0;
    int m_inside = 0;
    int m_outside = 0;
};

}

const char* ruleName(SignalRule rule)
{
    switch (rule) {
    case SignalRule::BeyondLimit:
        return "beyond-limit";
    case SignalRule::TwoOfThree:
        return "two-of-three";
    case SignalRule::FourOfFive:
        return "four-of-five";
    case SignalRule::RunOnOneSide:
        return "run-on-one-side";
    case SignalRule::Trend:
        return "trend";
    case SignalRule::Alternating:
        return "alternating";
    case SignalRule::Hugging:
        return "hugging";
    case SignalRule::Mixture:
        return "mixture";
    }
    return "";
}

Result<void> checkRules(const RuleSet& rules)
{
    if (rules.runLength < 2 || rules.trendLength < 3)
        return wrong("a run rule needs at least 2 points, a trend rule at least 3");
    if (!(rules.width > 0) || !std::isfinite(rules.width))
        return wrong("the width of the limits must be above 0 sigma, not " + shortest(rules.width));
    return {};
}

std::vector<Signal> findSignals(std::span<const double> z, const RuleSet& rules)
{
    return Walk(z, rules).run();
}

}
