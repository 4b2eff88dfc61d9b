// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/history.h"
#include "ui/text/language.h"

namespace cradlepost {

/** Items and sections by their ids, worded as in the latest checklist of a history that has them. */
class ItemNames
{
public:
    /** Both must outlive it. */
    ItemNames(const UnitHistory& history, const Language& language)
        : m_history(history)
        , m_language(language)
    {
    }

    /** The id itself when no checklist has it. */
    [[nodiscard]] QString item(const std::string& id) const;
    [[nodiscard]] QString section(const std::string& id) const;
    /** A shelf of a stock book by its name: as the checklist words it, or as the ward called it. */
    [[nodiscard]] QString shelf(const std::string& name) const;
    /** nullptr when no checklist has it. */
    [[nodiscard]] const Item* find(const std::string& id) const;

private:
    const UnitHistory& m_history;
    const Language& m_language;
};

}
