// SPDX-License-Identifier: MIT
#include "core/supply/birthcover.h"

#include "core/supply/codes.h"

namespace cradlepost {

namespace {

constexpr CodeTable<WarmPlace, 5> placeNames{{
    {WarmPlace::Ready, "ready"},
    {WarmPlace::Warming, "warming"},
    {WarmPlace::SwitchOn, "switch-on"},
    {WarmPlace::Late, "late"},
    {WarmPlace::None, "none"},
}};

/** A warmer and until when the babies given to it so far keep it. */
struct Place
{
    const WarmerStanding* warmer = nullptr;
    Instant warmAt; ///< if it stays on, or goes on now
    std::optional<Instant> takenUntil;
};

class Ward
{
public:
    Ward(std::span<const WarmerStanding> warmers, Instant now, const CoverRules& rules)
        : m_now(now)
        , m_rules(rules)
    {
        for (const WarmerStanding& warmer : warmers) {
            const Instant warmAt = warmer.onSince ? *warmer.onSince + rules.warmUp : now + rules.warmUp;
            m_places.push_back({.warmer = &warmer, .warmAt = warmAt, .takenUntil = std::nullopt});
        }
        std::stable_sort(m_places.begin(), m_places.end(), [](const Place& a, const Place& b) {
            const bool aOn = a.warmer->onSince.has_value();
            const bool bOn = b.warmer->onSince.has_value();
            return a.warmAt != b.warmAt ? a.warmAt < b.warmAt : aOn && !bOn;
        });
    }

    BabyPlace placeFor(Instant expected)
    {
        const Instant birth = std::max(expected, m_now);
        const auto free = std::find_if(m_places.begin(), m_places.end(),
            [&](const Place& place) { return !place.takenUntil || *place.takenUntil <= birth; });
        if (free == m_places.end())
            return {};
        free->takenUntil = birth + m_rules.occupied;
        return described(*free, expected);
    }

private:
    [[nodiscard]] BabyPlace described(const Place& place, Instant expected) const
    {
        const bool on = place.warmer->onSince.has_value();
        BabyPlace out{.device = place.warmer->device};
        if (on && place.warmAt <= m_now) {
            out.place = WarmPlace::Ready;
        } else if (place.warmAt > std::max(expected, m_now)) {
            out.place = WarmPlace::Late;
            out.readyAt = place.warmAt;
            if (!on)
                out.switchOnBy = expected - m_rules.warmUp;
        } else if (on) {
            out.place = WarmPlace::Warming;
            out.readyAt = place.warmAt;
        } else {
            out.place = WarmPlace::SwitchOn;
            out.switchOnBy = expected - m_rules.warmUp;
        }
        return out;
    }

    Instant m_now;
    CoverRules m_rules;
    std::vector<Place> m_places; ///< what is warm first stands first
};

}

const char* codeName(WarmPlace place) { return codeIn(placeNames, place); }

std::vector<BirthCover> coverBirths(const std::vector<ExpectedBirth>& births,
    std::span<const WarmerStanding> warmers, std::int64_t kits, Instant now, const CoverRules& rules)
{
    std::vector<ExpectedBirth> ordered = births;
    std::stable_sort(ordered.begin(), ordered.end(),
        [](const ExpectedBirth& a, const ExpectedBirth& b) { return a.expected < b.expected; });
    Ward ward(warmers, now, rules);
    std::vector<BirthCover> out;
    for (const ExpectedBirth& birth : ordered) {
        BirthCover cover{.birth = birth, .places = {}, .kit = kits > 0};
        --kits;
        for (int baby = 0; baby < birth.babies; ++baby)
            cover.places.push_back(ward.placeFor(birth.expected));
        out.push_back(std::move(cover));
    }
    return out;
}

}
