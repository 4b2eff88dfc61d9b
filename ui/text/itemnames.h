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
    /** nullptr when no checklist has it. */
    [[nodiscard]] const Item* find(const std::string& id) const;

private:
    const UnitHistory& m_history;
    const Language& m_language;
};

}
