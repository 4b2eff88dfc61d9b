// SPDX-License-Identifier: MIT
#include "core/exchange/papertemplate.h"

#include "core/exchange/papercell.h"
#include "core/exchange/papersheet.h"

namespace cradlepost {

std::string paperTemplate(const Checklist& checklist)
{
    std::vector<std::string> columns(paperColumns.begin(), paperColumns.end());
    for (std::size_t at = 0; at < checklist.itemCount(); ++at)
        columns.push_back(checklist.item(at).id);
    std::string text;
    appendCsvLine(text, columns);
    return text;
}

std::string paperGuide(const Checklist& checklist, std::string_view language)
{
    std::string text;
    appendCsvLine(text, {"column", "section", "wording", "kind", "cell"});
    appendCsvLine(text, {"date", "", "", "", "YYYY-MM-DD"});
    appendCsvLine(text, {"shift", "", "", "", "CODE"});
    appendCsvLine(text, {"finished", "", "", "", "HH:MM"});
    appendCsvLine(text, {"initials", "", "", "", "INITIALS"});
    for (const Section& section : checklist.sections)
        for (const Item& item : section.items)
            appendCsvLine(text,
                {item.id, section.title.in(language), item.label.in(language), codeName(item.kind()),
                    paperCellForms(item)});
    return text;
}

}
