// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

namespace cradlepost {

/**
 * The walk that is being walked: every answer is kept on disk at once; when that fails, with the next one. A
 * recorded round that is put right is only held: nothing counts before its reason is given.
 */
class WalkInHand : public QObject
{
    Q_OBJECT
public:
    WalkInHand(Ward& ward, Walk walk, QObject* parent = nullptr);

    /** A recorded round that is put right: judged as at its own end. */
    WalkInHand(Ward& ward, Walk walk, SavedRound recorded, QObject* parent = nullptr);

    [[nodiscard]] const Walk& walk() const { return m_walk; }
    [[nodiscard]] const Checklist& checklist() const { return m_walk.checklist(); }
    [[nodiscard]] RoundKind kind() const { return m_walk.draft().kind; }
    [[nodiscard]] Judgement judged(std::size_t position) const
    {
        return m_walk.judged(position, reference());
    }
    /** The moment at which the answers are judged. */
    [[nodiscard]] Instant reference() const { return m_recorded ? m_recorded->round.finished : m_ward.now(); }
    /** The round as it counts now, when it is being put right. */
    [[nodiscard]] const std::optional<SavedRound>& recorded() const { return m_recorded; }
    /** The first item whose answer is another than the recorded one. */
    [[nodiscard]] std::optional<std::size_t> firstChanged() const;
    [[nodiscard]] bool hasChanged() const { return firstChanged().has_value(); }
    [[nodiscard]] bool isOpen(std::size_t position) const;
    /** The next open item behind `position`, round the end if need be; nothing when none is open. */
    [[nodiscard]] std::optional<std::size_t> nextOpen(std::optional<std::size_t> position) const;

    /** Fails only when the answer itself is refused. That the disk refuses is trouble(): the answer is held.
     */
    Result<void> give(std::size_t position, const Answer& answer);
    void keepAgain();
    /** Why the last answers are in memory only. */
    [[nodiscard]] const std::optional<Error>& trouble() const { return m_trouble; }

Q_SIGNALS:
    void saved(cradlepost::Instant at);
    void troubleChanged();

private:
    Ward& m_ward;
    Walk m_walk;
    std::optional<SavedRound> m_recorded;
    std::optional<Error> m_trouble;
};

}
