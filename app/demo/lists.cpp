// SPDX-License-Identifier: MIT
#include "app/demo/lists.h"

#include "core/checklist/reader.h"

namespace cradlepost::demo {

Result<Lists> Lists::builtIn()
{
    Lists lists;
    for (const auto& [use, entry] :
        {std::pair(RoundKind::Shift, &lists.shift), std::pair(RoundKind::PreBirth, &lists.preBirth),
            std::pair(RoundKind::AfterUse, &lists.afterUse)}) {
        auto document = parseJson(builtInChecklistText(use));
        if (!document)
            return tl::unexpected(document.error());
        auto checklist = readChecklist(*document);
        if (!checklist)
            return tl::unexpected(checklist.error());
        *entry = {.document = std::move(*document), .checklist = std::move(*checklist)};
    }
    return lists;
}

ChosenLimits limitsOf(const Checklist& checklist, ChosenLimits chosen)
{
    std::erase_if(chosen, [&](const auto& one) { return !checklist.position(one.first); });
    return chosen;
}

}
