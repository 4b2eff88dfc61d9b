// SPDX-License-Identifier: MIT
#include "core/store/drafttable.h"

#include "core/ledger/canonical.h"
#include "core/store/failure.h"

namespace cradlepost {

void DraftTable::put(const Draft& draft, Instant now)
{
    m_database
        .prepare("INSERT INTO draft (unit, kind, body, saved_at) VALUES (?, ?, ?, ?) "
                 "ON CONFLICT (unit, kind) DO UPDATE SET body = excluded.body, saved_at = excluded.saved_at")
        .bind(draft.unit)
        .bind(codeName(draft.kind))
        .bind(canonicalText(toJson(draft)))
        .bind(now)
        .run();
}

void DraftTable::drop(const std::string& unit, RoundKind kind)
{
    m_database.prepare("DELETE FROM draft WHERE unit = ? AND kind = ?").bind(unit).bind(codeName(kind)).run();
}

std::vector<Draft> DraftTable::of(const std::string& unit) const
{
    std::vector<Draft> drafts;
    Statement rows = m_database.prepare("SELECT body FROM draft WHERE unit = ? ORDER BY saved_at DESC, kind");
    rows.bind(unit);
    while (rows.next())
        drafts.push_back(need(draftFromJson(need(parseJson(rows.text(0))))));
    return drafts;
}

}
