// SPDX-License-Identifier: MIT
#include "core/supply/coldchain.h"

#include "core/supply/codes.h"

#include "core/stats/check.h"
#include "core/stats/kinetictemperature.h"

namespace cradlepost {

namespace {

using std::chrono::minutes;

constexpr CodeTable<ExcursionKind, 3> kindNames{{
    {ExcursionKind::TooWarm, "too-warm"},
    {ExcursionKind::TooCold, "too-cold"},
    {ExcursionKind::Frost, "frost"},
}};
constexpr CodeTable<AlarmState, 3> alarmNames{{
    {AlarmState::None, "none"},
    {AlarmState::Possible, "possible"},
    {AlarmState::Reached, "reached"},
}};
constexpr CodeTable<ColdChainAdvice, 3> adviceNames{{
    {ColdChainAdvice::None, "none"},
    {ColdChainAdvice::CheckAgain, "check-again"},
    {ColdChainAdvice::HoldAndAsk, "hold-and-ask"},
}};

std::vector<FridgeReading> ofFridge(
    std::vector<FridgeReading> readings, const std::string& fridge, Instant until)
{
    std::erase_if(readings, [&](const FridgeReading& r) { return r.fridge != fridge || r.at > until; });
    std::stable_sort(readings.begin(), readings.end(),
        [](const FridgeReading& a, const FridgeReading& b) { return a.at < b.at; });
    return readings;
}

/** Follows one kind of excursion through the readings. */
class Watch
{
public:
    Watch(ExcursionKind kind, const ColdChainRules& rules)
        : m_kind(kind)
        , m_rules(rules)
    {
    }

    void read(const FridgeReading& reading)
    {
        const Decimal kept = extreme(reading);
        if (isOutside(reading.celsius))
            outside(reading, kept);
        else
            inside(reading, kept);
        m_previous = reading.at;
    }

    std::vector<Excursion> finish(Instant now)
    {
        if (m_running)
            m_found.back().notAfter = now;
        for (Excursion& one : m_found)
            one.alarm = alarmOf(one);
        return std::move(m_found);
    }

private:
    [[nodiscard]] bool isWarm() const { return m_kind == ExcursionKind::TooWarm; }
    [[nodiscard]] bool isOutside(Decimal celsius) const
    {
        if (isWarm())
            return celsius > m_rules.high;
        return m_kind == ExcursionKind::Frost ? celsius <= m_rules.frost : celsius < m_rules.low;
    }
    [[nodiscard]] Decimal extreme(const FridgeReading& reading) const
    {
        return (isWarm() ? reading.highest : reading.lowest).value_or(reading.celsius);
    }
    [[nodiscard]] Decimal worse(Decimal a, Decimal b) const
    {
        return isWarm() ? std::max(a, b) : std::min(a, b);
    }

    void outside(const FridgeReading& reading, Decimal kept)
    {
        if (!m_running)
            begin(reading, kept);
        m_running = true;
        m_found.back().last = reading.at;
        m_found.back().worst = worse(m_found.back().worst, kept);
    }

    void inside(const FridgeReading& reading, Decimal kept)
    {
        // An extreme kept since the last look belongs to the excursion that was running then, if one was.
        if (!m_running && isOutside(kept))
            begin(reading, kept);
        else if (!m_running)
            return;
        else
            m_found.back().worst = worse(m_found.back().worst, kept);
        m_found.back().notAfter = reading.at;
        m_found.back().open = false;
        m_running = false;
    }

    void begin(const FridgeReading& reading, Decimal kept)
    {
        m_found.push_back({.kind = m_kind,
            .first = reading.at,
            .last = reading.at,
            .notBefore = m_previous,
            .notAfter = reading.at,
            .worst = kept});
    }

    [[nodiscard]] AlarmState alarmOf(const Excursion& one) const
    {
        if (m_kind == ExcursionKind::TooCold)
            return AlarmState::None;
        const minutes limit = isWarm() ? m_rules.heatFor : m_rules.frostFor;
        if (one.atLeast() >= limit)
            return AlarmState::Reached;
        const auto atMost = one.atMost();
        return !atMost || *atMost >= limit ? AlarmState::Possible : AlarmState::None;
    }

    ExcursionKind m_kind;
    const ColdChainRules& m_rules;
    std::vector<Excursion> m_found;
    std::optional<Instant> m_previous; ///< the reading before
    bool m_running = false;
};

std::optional<minutes> both(std::optional<minutes> a, std::optional<minutes> b)
{
    return a && b ? std::optional(*a + *b) : std::nullopt;
}

}

const char* codeName(ExcursionKind kind) { return codeIn(kindNames, kind); }
const char* codeName(AlarmState state) { return codeIn(alarmNames, state); }
const char* codeName(ColdChainAdvice advice) { return codeIn(adviceNames, advice); }

minutes Excursion::atLeast() const { return std::chrono::floor<minutes>(last - first); }

std::optional<minutes> Excursion::atMost() const
{
    return notBefore ? std::optional(std::chrono::ceil<minutes>(notAfter - *notBefore)) : std::nullopt;
}

std::vector<Excursion> excursionsOf(
    std::vector<FridgeReading> readings, const std::string& fridge, Instant now, const ColdChainRules& rules)
{
    const auto own = ofFridge(std::move(readings), fridge, now);
    std::vector<Excursion> all;
    for (const ExcursionKind kind : {ExcursionKind::TooWarm, ExcursionKind::TooCold, ExcursionKind::Frost}) {
        Watch watch(kind, rules);
        for (const FridgeReading& reading : own)
            watch.read(reading);
        const auto found = watch.finish(now);
        all.insert(all.end(), found.begin(), found.end());
    }
    std::stable_sort(
        all.begin(), all.end(), [](const Excursion& a, const Excursion& b) { return a.first < b.first; });
    return all;
}

OutsideTime outsideTime(const std::vector<Excursion>& excursions)
{
    OutsideTime out;
    for (const Excursion& one : excursions) {
        if (one.kind == ExcursionKind::TooWarm) {
            out.warmAtLeast += one.atLeast();
            out.warmAtMost = both(out.warmAtMost, one.atMost());
        } else if (one.kind == ExcursionKind::TooCold) {
            out.coldAtLeast += one.atLeast();
            out.coldAtMost = both(out.coldAtMost, one.atMost());
        }
    }
    return out;
}

Result<KineticTemperature> kineticTemperature(
    std::vector<FridgeReading> readings, const std::string& fridge, Instant from, Instant to, minutes longest)
{
    if (from >= to)
        return stats::wrong("kinetic temperature: the stretch ends before it begins");
    const auto own = ofFridge(std::move(readings), fridge, to);
    std::vector<stats::StoreReading> weighted;
    double covered = 0;
    for (std::size_t i = 0; i < own.size(); ++i) {
        const Instant next = i + 1 < own.size() ? own[i + 1].at : to;
        const Instant ends = std::min({next, to, own[i].at + longest});
        const auto stands = (ends - std::max(own[i].at, from)).count();
        if (stands <= 0)
            continue;
        weighted.push_back({.celsius = own[i].celsius.toDouble(), .weight = static_cast<double>(stands)});
        covered += static_cast<double>(stands);
    }
    const auto celsius = stats::meanKineticTemperature(weighted);
    if (!celsius)
        return tl::unexpected(celsius.error());
    return KineticTemperature{
        .celsius = *celsius, .covered = covered / static_cast<double>((to - from).count())};
}

ColdChainVerdict verdictOf(const std::vector<Excursion>& excursions)
{
    ColdChainVerdict verdict;
    for (const Excursion& one : excursions) {
        const bool alarm = one.alarm != AlarmState::None;
        verdict.advice
            = std::max(verdict.advice, alarm ? ColdChainAdvice::HoldAndAsk : ColdChainAdvice::CheckAgain);
        verdict.frost = verdict.frost || (one.kind == ExcursionKind::Frost && alarm);
    }
    return verdict;
}

}
