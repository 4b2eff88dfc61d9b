// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/boardview.h"
#include "ui/text/timetext.h"

namespace cradlepost {

/** Expected births and warmers in words. Nothing here says who. */
class BoardText
{
    Q_DECLARE_TR_FUNCTIONS(BoardText)
public:
    BoardText(const TimeText& times, const BoardView& board, Instant now)
        : m_times(times)
        , m_board(board)
        , m_now(now)
    {
    }

    /** "twins, preterm" */
    [[nodiscard]] static QString babies(int babies, bool preterm);
    /** As the ward calls it; the id of a device that is not on the register. */
    [[nodiscard]] QString device(const std::string& id) const;
    /** "about 16:30, twins, preterm" */
    [[nodiscard]] QString birth(const ExpectedBirth& birth) const;
    /** A birth by its id: as above; empty when it is off the board. */
    [[nodiscard]] QString birth(const std::string& id) const;
    /** "switch Warmer 2 on by 16:00" */
    [[nodiscard]] QString place(const BabyPlace& place) const;
    /** "Warmer 1 is warm; switch Warmer 2 on by 16:00" */
    [[nodiscard]] QString places(const BirthCover& cover) const;
    /** "a kit is ready", "no kit is left", "kits were not counted" */
    [[nodiscard]] QString kit(const BirthCover& cover) const;
    /** "on for 18 min, since 16:12" */
    [[nodiscard]] QString running(const WarmerRow& row) const;
    /** "ready at 16:42", "warm since 16:42"; empty when off. */
    [[nodiscard]] QString warm(const WarmerRow& row) const;
    /** The warmer went off with a birth near; empty when it did not. */
    [[nodiscard]] QString offByMistake(const std::string& device) const;
    /** What the board comes to, in a few words: what to do first. */
    [[nodiscard]] QString answer() const;
    /** "2 births expected, 3 whole kits." */
    [[nodiscard]] QString sentence() const;

private:
    const TimeText& m_times;
    const BoardView& m_board;
    Instant m_now;
};

}
