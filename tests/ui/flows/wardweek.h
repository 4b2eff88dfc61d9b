// SPDX-License-Identifier: MIT
#pragma once

#include "tests/ui/flows/keywalk.h"
#include "tests/ui/window/wardwindow.h"

namespace cradlepost::test {

/**
 * The people of a ward at its window, from Monday 23 November 2026 on: everything they enter is typed or
 * clicked. Set up the evening before: eight empty shelves, a warmer and its spare, a fridge. Shifts are 07 to
 * 19 and 19 to 07.
 */
struct WardWeek : WardWindow
{
    WardWeek();

    /** Time passes until then, at the ward. */
    void until(int day, int hour, int minute);
    /** Chosen at the top of the window. */
    void inCharge(const char* initials) const;

    /** Alt and the number of the place, then Ctrl and the number of its part. */
    void open(Qt::Key place, Qt::Key part = Qt::Key_unknown) const;
    /** Moves the cursor of a list that has the keyboard to the row of that title. */
    void choose(const char* table, const char* title) const;
    /** The row of that title in words. */
    [[nodiscard]] QString rowOf(const char* table, const char* title) const;
    void click(const char* button) const;
    void clickRow(const char* table, const char* title) const;
    void tabTo(const char* field) const;
    void pick(const char* comboBox, const char* entry) const;

    // What happens on a ward.
    void enter(const char* shelf, const char* happened, const char* pieces, const char* lastDay = nullptr,
        const char* lot = nullptr) const;
    /** One kit and an ampoule each of oxytocin and vitamin K. */
    void useForBirth() const;
    void readFridge(const char* celsius, const char* lowest = nullptr, const char* highest = nullptr) const;
    void happensTo(const char* device, const char* deed) const;
    /** The round of this shift, all met unless `keys` say otherwise. */
    void walkRound(const Keys& keys) const;
    /** On the board, "1500". */
    void expectBirth(const char* about) const;
    /** On the board, now: on when it is off, off when it is on. */
    void switchWarmer(const char* warmer) const;
    void born() const;
    void signHandover() const;

    /** What every page says. */
    [[nodiscard]] QStringList allPages() const;
};

}
