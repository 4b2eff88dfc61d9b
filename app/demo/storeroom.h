// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/ward.h"
#include "core/store/store.h"

namespace cradlepost::demo {

/**
 * The stock book of one unit, kept for the last half-year only. The shelves of the ward are looked at and written
 * up before and after each delivery, and again before the last shift's round.
 */
class Storeroom
{
public:
    /** All but the last must outlive it. */
    Storeroom(Store& store, FixedClock& clock, const UnitPlan& plan, const Stories& stories,
        const Checklist& shiftRound, const TimeZone& zone);

    /** A shift begins; before it changes the ward. */
    Result<void> pass(const Shift& shift, Ward& ward);
    /** Looks again and writes it up. */
    Result<void> close(Instant at, Date day, Ward& ward);

private:
    /** A stock item and where the checklist counts it. */
    struct Kept
    {
        StockItem item;
        const Item* seenAs;
        std::size_t part = 0; ///< of a kit
        double perDay = 0; ///< pieces used, as a rule
    };

    void keep(const Item& item);
    [[nodiscard]] bool isLookedAt(const Shift& shift) const;
    Result<void> open(Instant at);
    void look(Instant at, Date day, Ward& ward);
    void level(const Kept& kept, const std::vector<Lot>& there, Instant at, Date day, int days);
    /** Pieces of a lot that are gone: used as far as that is usual, else lent. */
    void gone(const Kept& kept, const LotKey& lot, std::int64_t pieces, std::int64_t& usual, Instant at);
    /** The pack says another date than the book. */
    void redate(const Kept& kept, const Lot& lot, Instant at);
    void note(const StockMovement& movement);
    void leaveExpired(Instant at);
    Result<void> writeUp(Instant at);

    Store& m_store;
    FixedClock& m_clock;
    const UnitPlan& m_plan;
    const Stories& m_stories;
    const TimeZone& m_zone;
    Date m_from;
    std::vector<Kept> m_kept;
    bool m_isOpen = false;
    Date m_looked;
    StockBook m_book;
    std::vector<StockMovement> m_waiting;
};

}
