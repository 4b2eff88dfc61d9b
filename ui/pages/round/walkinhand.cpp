// SPDX-License-Identifier: MIT
#include "ui/pages/round/walkinhand.h"

#include <algorithm>

namespace cradlepost {

WalkInHand::WalkInHand(Ward& ward, Walk walk, QObject* parent)
    : QObject(parent)
    , m_ward(ward)
    , m_walk(std::move(walk))
{
}

WalkInHand::WalkInHand(Ward& ward, Walk walk, SavedRound recorded, QObject* parent)
    : QObject(parent)
    , m_ward(ward)
    , m_walk(std::move(walk))
    , m_recorded(std::move(recorded))
{
}

bool WalkInHand::isOpen(std::size_t position) const
{
    return m_walk.isAsked(position) && judged(position).outcome == Outcome::NotChecked;
}

std::optional<std::size_t> WalkInHand::nextOpen(std::optional<std::size_t> position) const
{
    const auto open = m_walk.open();
    if (open.empty())
        return std::nullopt;
    if (!position)
        return open.front();
    const auto behind = std::upper_bound(open.begin(), open.end(), *position);
    return behind == open.end() ? open.front() : *behind;
}

std::optional<std::size_t> WalkInHand::firstChanged() const
{
    if (!m_recorded)
        return std::nullopt;
    const auto& now = m_walk.draft().answers;
    const auto found = std::mismatch(now.begin(), now.end(), m_recorded->round.answers.begin()).first;
    return found == now.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - now.begin()));
}

Result<void> WalkInHand::give(std::size_t position, const Answer& answer)
{
    auto given = m_walk.give(position, answer, reference());
    if (given && !m_recorded)
        keepAgain();
    return given;
}

void WalkInHand::keepAgain()
{
    const auto kept = m_ward.keep(m_walk);
    const bool was = m_trouble.has_value();
    m_trouble = kept ? std::nullopt : std::optional(kept.error());
    if (was || m_trouble)
        Q_EMIT troubleChanged();
    if (kept)
        Q_EMIT saved(m_ward.now());
}

}
