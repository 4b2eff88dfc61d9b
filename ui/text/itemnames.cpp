// SPDX-License-Identifier: MIT
#include "ui/text/itemnames.h"

#include "core/supply/shelfplan.h"

namespace cradlepost {

const Item* ItemNames::find(const std::string& id) const
{
    for (auto list = m_history.lists.rbegin(); list != m_history.lists.rend(); ++list) {
        if (const auto at = list->checklist->position(id))
            return &list->checklist->item(*at);
    }
    for (const auto& list : m_history.others) {
        if (const auto at = list->position(id))
            return &list->item(*at);
    }
    return nullptr;
}

QString ItemNames::item(const std::string& id) const
{
    const Item* found = find(id);
    return found == nullptr ? qs(id) : m_language.wording(found->label);
}

QString ItemNames::shelf(const std::string& name) const
{
    const std::string language = m_language.code().toStdString();
    for (auto list = m_history.lists.rbegin(); list != m_history.lists.rend(); ++list) {
        if (const auto worded = shelfName(name, *list->checklist, language))
            return qs(*worded);
    }
    return qs(name);
}

QString ItemNames::section(const std::string& id) const
{
    for (auto list = m_history.lists.rbegin(); list != m_history.lists.rend(); ++list) {
        for (const Section& section : list->checklist->sections) {
            if (section.id == id)
                return m_language.wording(section.title);
        }
    }
    return qs(id);
}

}
