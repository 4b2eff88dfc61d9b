// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/storesview.h"
#include "ui/text/figuretext.h"
#include "ui/text/timetext.h"

#include <QCoreApplication>

namespace cradlepost {

/** What shelves, devices and fridges say, in words. */
class StoresText
{
    Q_DECLARE_TR_FUNCTIONS(StoresText)
public:
    /** `language` must outlive it. */
    StoresText(const Language& language, TimeText times, Instant now)
        : m_figures(language)
        , m_times(std::move(times))
        , m_now(now)
    {
    }

    /** The answer of the page: what runs out first and how many to order. */
    [[nodiscard]] QString answer(const StoresView& view) const;
    /** What else wants doing, in a sentence or two. */
    [[nodiscard]] QString sentence(const StoresView& view) const;

    /** "3 shifts", "12 days"; "none left"; "not used lately" */
    [[nodiscard]] QString cover(const ShelfRow& row) const;
    /** "14 of 80" */
    [[nodiscard]] QString pieces(const ShelfRow& row) const;
    /** "34 until 11 Dec (A1), 20 until 11 Mar": first to expire first; empty when nothing tells them apart.
     */
    [[nodiscard]] QString lots(const ShelfRow& row, Date today) const;
    /** "OX1 · 2026-11-25": its number and last day, as far as they are known. */
    [[nodiscard]] static QString lot(const LotKey& lot);
    /** "order 40", "take off 4 expired"; empty when there is nothing to do. */
    [[nodiscard]] QString toDo(const ShelfRow& row) const;
    /** "28% to last until 30 Nov"; empty when nothing is left that could. */
    [[nodiscard]] QString chance(const ShelfRow& row) const;
    /** "Within 30 days 12, 60 days 0, 90 days 20" of all shelves. */
    [[nodiscard]] QString expiring(const StoresView& view) const;
    /** "The round counted 33, the book says 40" */
    [[nodiscard]] QString difference(const BookDifference& difference) const;
    [[nodiscard]] QString kit(const KitRow& row, const StoresView& view) const;
    /** Levels, how long it lasts, when to order, what will expire unused: a line each. */
    [[nodiscard]] QStringList shelfCourse(const ShelfRow& row) const;

    [[nodiscard]] static QString movement(MovementKind kind);
    [[nodiscard]] static QString reason(MovementReason reason);
    [[nodiscard]] static QString device(EquipmentKind kind);
    [[nodiscard]] static QString state(EquipmentState state);
    /** "service 3 Dec", "calibration late since 3 Dec"; empty without any. */
    [[nodiscard]] QString upkeep(const DeviceRow& row) const;
    /** Function tests, availability, the last check of its reading, its spare: a line each. */
    [[nodiscard]] QStringList deviceCourse(const DeviceRow& row) const;
    /** "2 to 8 °C" */
    [[nodiscard]] QString fridgeLimits() const;
    /** Excursions, kinetic temperature, missed readings, what was inside: a line each. */
    [[nodiscard]] QStringList fridgeCourse(const FridgeRow& row, const StoresView& view) const;
    /** "4.6 °C, 07:40" */
    [[nodiscard]] QString reading(const FridgeRow& row) const;
    /** What to do with what is inside, and what is due: a line each. */
    [[nodiscard]] QStringList fridgeToDo(const FridgeRow& row) const;
    /** The same with the fridge's name before each. */
    [[nodiscard]] QString fridge(const FridgeRow& row) const;
    /** The shelf's own name; the id when it is not on the list. */
    [[nodiscard]] static QString nameOf(const StoresView& view, const std::string& item);

private:
    [[nodiscard]] QString excursion(const Excursion& excursion) const;
    [[nodiscard]] QStringList devicesToSee(const StoresView& view) const;

    FigureText m_figures;
    TimeText m_times;
    Instant m_now;
};

}
