// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

namespace cradlepost {

/** The walk that is being walked: every answer is kept on disk at once; when that fails, with the next one.
 */
class WalkInHand : public QObject
{
    Q_OBJECT
public:
    WalkInHand(Ward& ward, Walk walk, QObject* parent = nullptr);

    [[nodiscard]] const Walk& walk() const { return m_walk; }
    [[nodiscard]] const Checklist& checklist() const { return m_walk.checklist(); }
    [[nodiscard]] RoundKind kind() const { return m_walk.draft().kind; }
    [[nodiscard]] Judgement judged(std::size_t position) const
    {
        return m_walk.judged(position, m_ward.now());
    }
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
    std::optional<Error> m_trouble;
};

}
