// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/handoverview.h"
#include "ui/text/boardtext.h"
#include "ui/text/reasontext.h"

#include <array>
#include <QStringList>

namespace cradlepost {

/** An open gap in words. */
struct HandoverGapWords
{
    QString what; ///< the item, and that it is critical
    QString why; ///< may be empty
    QString who;
    QString by; ///< when it is due, and that it is late
};

/** One part of a handover: a title, the open gaps, and short lines; ** marks what is printed bold. */
struct HandoverPart
{
    QString title;
    QStringList lines;
    std::vector<HandoverGapWords> gaps = {};

    /** Everything in lines, the gaps first. */
    [[nodiscard]] QStringList allLines() const;
};

/** A handover in words, for the window and for paper. */
struct HandoverWords
{
    QString unit;
    QString shift; ///< "Night, Tue 24 Nov · 19:00 to 07:00"
    QString answer;
    QString company; ///< counts and times beside it
    HandoverPart changes; ///< since the handover before
    std::array<HandoverPart, 4> parts; ///< situation, background, assessment, recommendation
    QString given; ///< who gave it and when; empty: not yet
    QString taken;
};

/** Turns a handover into words, in the order situation, background, assessment, recommendation (SBAR, as
 * taught by the NHS). Long lists end with how many more there are. */
class HandoverText
{
    Q_DECLARE_TR_FUNCTIONS(HandoverText)
public:
    /** All must outlive it and be of the same unit at `now`. */
    HandoverText(const Store& store, const ShiftView& shift, const BoardView& board, const HandoverView& view,
        const Language& language, Instant now);

    [[nodiscard]] HandoverWords words() const;

private:
    [[nodiscard]] QString item(const std::string& id) const;
    [[nodiscard]] QString stock(const std::string& id) const;
    [[nodiscard]] QString answer(const Handover& what) const;
    [[nodiscard]] HandoverPart situation() const;
    [[nodiscard]] HandoverPart background() const;
    [[nodiscard]] HandoverPart assessment() const;
    [[nodiscard]] HandoverPart recommendation() const;
    [[nodiscard]] HandoverPart changes() const;
    [[nodiscard]] QString change(const HandoverChange& change) const;
    [[nodiscard]] QString request(const HandoverRequest& request) const;
    [[nodiscard]] HandoverGapWords gap(const HandoverGap& gap) const;
    [[nodiscard]] QString why(const HandoverGap& gap, const Item* item) const;
    [[nodiscard]] QString lowStock(const HandoverStock& stock) const;

    const Store& m_store;
    const ShiftView& m_shift;
    const BoardView& m_board;
    const HandoverView& m_view;
    const Language& m_language;
    TimeText m_times;
    Instant m_now;
    std::vector<Gap> m_open; ///< with their reasons in full
};

}
