// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/boardview.h"
#include "core/store/handoverview.h"
#include "ui/text/timetext.h"

#include <QObject>

namespace cradlepost {

/**
 * What the pages of one unit share: the store, the clock, the language, who is in charge, and how the shift
 * stands. Pages ask it and listen to changed(); it decides nothing itself.
 */
class Ward : public QObject
{
    Q_OBJECT
public:
    Ward(Store& store, const Clock& clock, const Language& language, std::string unit, QObject* parent = nullptr);

    [[nodiscard]] Store& store() const { return m_store; }
    [[nodiscard]] const Language& language() const { return m_language; }
    [[nodiscard]] const std::string& unit() const { return m_unit; }
    [[nodiscard]] Instant now() const { return m_clock.now(); }
    /** The unit's zone; UTC until the unit is known. */
    [[nodiscard]] TimeText times() const;
    /** How the shift stands as last read; nothing before the first refresh or when it failed. */
    [[nodiscard]] const std::optional<ShiftView>& view() const { return m_view; }
    [[nodiscard]] const std::optional<Error>& fault() const { return m_fault; }

    /** Warmers and expected births, read with the shift. */
    [[nodiscard]] const BoardView& board() const { return m_board; }
    /** Who hears when of a gap that lasts, read with the shift. */
    [[nodiscard]] const std::vector<EscalationLevel>& escalation() const { return m_escalation; }
    /** What is due, first due first, read with the shift. */
    [[nodiscard]] const std::vector<Notice>& notices() const { return m_notices; }

    /** Reads the shift again and emits changed(). */
    void refresh();
    /** Another unit of the same database; refreshes. */
    void setUnit(const std::string& unit);

    /** Initials that go into records; empty until someone is chosen. */
    [[nodiscard]] const std::string& actor() const { return m_actor; }
    void setActor(const std::string& initials);

    /**
     * The draft of that kind that was left open, or a fresh one for the present shift. A re-check asks what is not
     * met now. Fails with AlreadyExists when the shift's round is done, with NotFound when there is nothing to
     * re-check or no checklist. A fresh draft is saved at once, so that it can be taken up after a crash.
     */
    Result<Walk> takeUp(RoundKind kind);
    /** Keeps the draft; durable when it returns. */
    Result<void> keep(const Walk& walk);
    /** Writes the record, drops the draft, refreshes. */
    Result<RecordId> finish(const Walk& walk);
    /** A recorded shift round opened to put its answers right. Fails when it is of another kind. */
    Result<Walk> takeUpAgain(const SavedRound& round) const;
    /** Records the answers of `walk` for `round`, with the reason. */
    Result<RecordId> putRight(const SavedRound& round, const Walk& walk, const std::string& reason);
    /** Drops the draft without a record. */
    Result<void> putAside(RoundKind kind);
    /**
     * A re-check of one item: the draft that asks it, or a fresh one that takes the place of a draft in which
     * nothing is answered yet. Fails as takeUp does, and with AlreadyExists when another re-check is in hand.
     */
    Result<Walk> takeUpOne(const std::string& item);
    Result<void> act(const GapAction& action);
    Result<void> switchWarmer(const std::string& device, bool on, Instant at);
    /** Puts a birth on the board. */
    Result<void> expectBirth(Instant expected, int babies, bool preterm);
    /** Takes it off the board. */
    Result<void> endBirth(const std::string& birth, BirthChange how);
    /** How a handover would read now; nothing before the first refresh. */
    [[nodiscard]] Result<HandoverView> handover() const;
    /** Signs the handover as the one in charge. */
    Result<void> giveHandover();
    /** Signs the one that was given last, as the one in charge. */
    Result<void> takeHandover();

Q_SIGNALS:
    void changed();
    void actorChanged();

private:
    Result<Draft> freshDraft(RoundKind kind, Checklist& checklist) const;
    Result<Draft> recheckDraft(std::vector<std::size_t> asked, Checklist& checklist) const;
    Result<Walk> walkOf(Draft draft, Checklist checklist);
    Result<void> named() const;
    void readBoard();
    Result<void> refreshed(Result<void> done);

    Store& m_store;
    const Clock& m_clock;
    const Language& m_language;
    std::string m_unit;
    std::string m_actor;
    std::optional<ShiftView> m_view;
    std::optional<Error> m_fault;
    BoardView m_board;
    std::vector<Notice> m_notices;
    std::vector<EscalationLevel> m_escalation;
};

}
