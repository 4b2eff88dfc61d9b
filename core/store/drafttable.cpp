// SPDX-License-Identifier: MIT
#include "core/store/drafttable.h"

#include "core/ledger/canonical.h"
#include "core/store/failure.h"

namespace cradlepost {

namespace {

Result<Draft> read(const std::string& body)
{
    return parseJson(body).and_then([](const Json& json) { return draftFromJson(json); });
}

}

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
    while (rows.next()) {
        if (auto draft = read(rows.text(0)))
            drafts.push_back(std::move(*draft));
    }
    return drafts;
}

std::vector<UnreadableDraft> DraftTable::unreadable(const std::string& unit) const
{
    std::vector<UnreadableDraft> found;
    Statement rows
        = m_database.prepare("SELECT kind, body FROM draft WHERE unit = ? ORDER BY saved_at DESC, kind");
    rows.bind(unit);
    while (rows.next()) {
        const auto draft = read(rows.text(1));
        if (!draft)
            found.push_back(
                {.kind = roundKindFromCode(rows.text(0)).value_or(RoundKind::Shift), .why = draft.error()});
    }
    return found;
}
}
