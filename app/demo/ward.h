// SPDX-License-Identifier: MIT
#pragma once

#include "app/demo/story.h"
#include "app/demo/thing.h"

#include <map>

namespace cradlepost::demo {

/** The ward as it really is: every thing that a checklist asks about, shift after shift. */
class Ward
{
public:
    Ward(const UnitPlan& plan, const Stories& stories, const Checklist& shiftRound);

    /** A shift begins: things were used, some failed, some were mended. */
    void pass(const Moment& moment, Instant begins);
    /** A birth uses what it uses. */
    void birth(Date today);
    /** Mends the faulty ones among `items` as a shift may; says whether any was. */
    bool mendSome(const std::vector<std::string>& items, const Moment& moment);
    /** What a look at the item finds, for items of any of the checklists. */
    Answer seen(const Item& item, const Look& look);

private:
    [[nodiscard]] bool isWithout(const std::string& item) const;
    [[nodiscard]] bool isFaulty(const std::string& item) const;
    /** What only the checks before a birth and after use ask. */
    Answer momentary(const Item& item);

    const UnitPlan& m_plan;
    const Stories& m_stories;
    Random m_random;
    std::vector<const Item*> m_items;
    std::map<std::string, std::unique_ptr<Thing>> m_things;
};

}
