// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/roundrecord.h"
#include "core/round/walk.h"

#include <random>
#include <string_view>

// Small checklists and answers made in code, so that these tests stand apart from the documents.

/** A moment of November 2026, UTC. */
cradlepost::Instant at(int day, int hour, int minute = 0, int second = 0);
cradlepost::Decimal num(std::string_view text);
cradlepost::Date date(std::string_view iso);

/** 24 November 2026, 07:00 to 19:00 UTC. */
cradlepost::Shift dayShift();

/** Ten items, every kind, in three sections: room, corner, stock. */
cradlepost::Checklist sampleChecklist();
/** One item of the sample. */
cradlepost::Item sampleItem(std::string_view id);
/** An answer to each item of the sample that meets it on dayShift() from 08:00 on. */
std::vector<cradlepost::Answer> allMet();

/** Sections of `confirm` items, any of which may not apply, with these severities. */
cradlepost::Checklist plainChecklist(const std::vector<std::vector<cradlepost::Severity>>& sections);

/** Numbers that are the same on every machine: std's distributions are not. */
class Dice
{
public:
    explicit Dice(unsigned seed)
        : m_random(seed)
    {
    }
    /** 0 to end - 1. */
    std::size_t below(std::size_t end) { return m_random() % end; }
    int upTo(int end) { return static_cast<int>(below(static_cast<std::size_t>(end))); }
    bool coin() { return below(2) == 0; }

private:
    std::mt19937 m_random;
};

/** Any answer that `item` allows; not checked, gaps and "does not apply" too. */
cradlepost::Answer randomAnswer(const cradlepost::Item& item, Dice& dice);
