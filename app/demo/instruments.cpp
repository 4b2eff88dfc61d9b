// SPDX-License-Identifier: MIT
#include "app/demo/thing.h"
#include "core/round/judge.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace cradlepost::demo {

namespace {

/** How an instrument reads: about `mean` when all is well, elsewhere when it is not. */
struct Band
{
    double mean = 0;
    double wander = 0; ///< standard deviation of the slow part
    double noise = 0; ///< and of each look
    double step = 1; ///< as fine as it reads
    std::pair<double, double> low{}; ///< a fault moves it into one of these
    std::pair<double, double> high{};
    double lowShare = 0.5;
    double dead = 0; ///< share of faults in which it does not read at all
};

Band bandOf(const std::string& item, double middle)
{
    if (item == "room-temperature")
        return {.mean = middle,
            .wander = 0.36,
            .noise = 0.08,
            .step = 0.1,
            .low = {-3.4, -1.6},
            .high = {1.5, 2.6},
            .lowShare = 0.7,
            .dead = 0.06};
    if (item == "fridge-temperature")
        return {.mean = 4.6,
            .wander = 0.8,
            .noise = 0.3,
            .step = 0.1,
            .low = {-4.3, -3.2},
            .high = {4.2, 7.5},
            .lowShare = 0.3,
            .dead = 0.08};
    if (item == "suction-pressure")
        return {.mean = 91,
            .wander = 2.6,
            .noise = 1.2,
            .step = 1,
            .low = {-62, -22},
            .high = {16, 34},
            .lowShare = 0.85,
            .dead = 0.3};
    return {.mean = 0,
        .wander = 2.2,
        .noise = 1.4,
        .step = 5,
        .low = {-45, -18},
        .high = {18, 55},
        .lowShare = 0.4,
        .dead = 0.1};
}

/** Reads a value: AR(1) from shift to shift about a mean that the season moves. */
class Meter final : public Thing
{
public:
    Meter(Band band, const MeasureRule& rule, double halfDegrees)
        : m_band(band)
        , m_low(rule.plausibleLow.toDouble())
        , m_high(rule.plausibleHigh.toDouble())
        , m_halfDegrees(halfDegrees)
    {
    }

    void pass(Random& random, const Look&, double offset) override
    {
        constexpr double memory = 0.85;
        constexpr double fresh = 0.5268; // sqrt(1 - memory^2): keeps the spread as it is
        m_drift = memory * m_drift + random.bell(m_band.wander * fresh);
        m_offset = offset;
    }

    Answer seen(const Look&, Random& random) const override
    {
        if (isFaulty() && m_dead)
            return GapFound{GapReason::NotWorking};
        const double value
            = m_band.mean + m_drift + m_offset + (isFaulty() ? m_shift : 0.0) + random.bell(m_band.noise);
        double step = m_band.step;
        if (random.chance(m_halfDegrees))
            step *= 5; // to the half degree, or to the five
        const double read = std::clamp(std::round(value / step) * step, m_low, m_high);
        return Measured{Decimal{.thousandths = std::llround(read * 100) * 10}};
    }

protected:
    void failed(Random& random, Date, std::optional<int>) override
    {
        m_dead = random.chance(m_band.dead);
        const auto& [from, to] = random.chance(m_band.lowShare) ? m_band.low : m_band.high;
        m_shift = from + (to - from) * random.real();
    }

private:
    Band m_band;
    double m_low;
    double m_high;
    double m_halfDegrees;
    double m_drift = 0;
    double m_offset = 0;
    double m_shift = 0;
    bool m_dead = false;
};

/** On since a moment; people switch it off and on again. */
class Warmth final : public Thing
{
public:
    explicit Warmth(std::chrono::minutes needed)
        : m_needed(needed)
    {
    }

    void pass(Random& random, const Look& begin, double) override
    {
        if (m_since == Instant{} || random.chance(0.35))
            m_since = begin.at - std::chrono::minutes(random.between(35, 240));
    }

    Answer seen(const Look& look, Random&) const override
    {
        if (!isFaulty())
            return RunningSince{onTheMinute(std::min(m_since, look.at - m_needed - std::chrono::minutes(6)))};
        return m_dead ? Answer(GapFound{GapReason::NotWorking})
                      : Answer(RunningSince{onTheMinute(look.at - std::chrono::minutes(m_on))});
    }

protected:
    void failed(Random& random, Date, std::optional<int> which) override
    {
        m_dead = which.has_value() || random.chance(0.25);
        m_on = random.between(3, static_cast<int>(m_needed.count()) - 3);
    }

private:
    static Instant onTheMinute(Instant t) { return std::chrono::floor<std::chrono::minutes>(t); }

    std::chrono::minutes m_needed;
    Instant m_since{};
    int m_on = 0;
    bool m_dead = false;
};

/** Empties with use and is changed before it is too low, unless there is no full one. */
class Cylinder final : public Thing
{
public:
    Cylinder(CylinderSize size, Decimal flow, std::chrono::minutes needed, Random& random)
        : m_size(std::move(size))
        , m_flow(flow)
        , m_needed(needed.count())
    {
        change(random);
    }

    void pass(Random& random, const Look&, double) override
    {
        draw(random.chance(0.5) ? 0.01 * random.real() : 0, random);
    }
    void use(Random& random, Date) override
    {
        if (random.chance(0.3))
            draw(0.02 + 0.08 * random.real(), random);
    }
    Answer seen(const Look&, Random&) const override
    {
        return CylinderRead{.gauge = gauge(), .size = m_size.id, .flow = m_flow};
    }

protected:
    void failed(Random& random, Date, std::optional<int>) override
    {
        while (minutesLeft() >= m_needed)
            m_gauge *= 0.9 - 0.05 * random.real();
    }
    void mended(Random& random, Date) override { change(random); }

private:
    void change(Random& random) { m_gauge = m_size.fullPressure.toDouble() * (0.94 + 0.08 * random.real()); }
    [[nodiscard]] Decimal gauge() const
    {
        const double step = m_size.unit == "psi" ? 25 : 2; // as a gauge can be read
        return {.thousandths = std::llround(std::round(m_gauge / step) * step) * 1000};
    }
    [[nodiscard]] std::int64_t minutesLeft() const { return cylinderMinutes(m_size, gauge(), m_flow); }
    void draw(double share, Random& random)
    {
        m_gauge = std::max(0.0, m_gauge - share * m_size.fullPressure.toDouble());
        if (!isFaulty() && minutesLeft() < m_needed)
            change(random);
    }

    CylinderSize m_size;
    Decimal m_flow;
    std::int64_t m_needed;
    double m_gauge = 0;
};

}

std::unique_ptr<Thing> makeMeter(
    const Item& item, const MeasureRule& rule, const UnitPlan& plan, Random& random)
{
    const LimitSet& limits = limitsFor(item, rule, plan.limits);
    const double low = limits.low ? limits.low->toDouble() : 0;
    const double high = limits.high ? limits.high->toDouble() : low;
    Band band = bandOf(item.id, (low + high) / 2);
    band.mean += random.bell(band.wander / 4);
    return std::make_unique<Meter>(band, rule, plan.habits.halfDegrees);
}

std::unique_ptr<Thing> makeWarmth(const SinceRule& rule) { return std::make_unique<Warmth>(rule.minutes); }

std::unique_ptr<Thing> makeCylinder(const CylinderRule& rule, const UnitPlan& plan, Random& random)
{
    const auto size = std::find_if(
        rule.sizes.begin(), rule.sizes.end(), [&](const CylinderSize& s) { return s.id == plan.cylinder; });
    return std::make_unique<Cylinder>(
        size == rule.sizes.end() ? rule.sizes.front() : *size, rule.flow, rule.minutes, random);
}

}
