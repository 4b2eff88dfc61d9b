// SPDX-License-Identifier: MIT
#include "core/store/draftshelter.h"

#include <filesystem>

namespace cradlepost {

bool DraftShelter::isThere() const
{
    std::error_code error;
    return std::filesystem::exists(m_file, error);
}

std::unique_ptr<Database> DraftShelter::open() const
{
    auto file = std::make_unique<Database>(m_file, Database::Access::ReadWrite);
    file->runScript("PRAGMA synchronous = FULL; CREATE TABLE IF NOT EXISTS draft (unit TEXT NOT NULL, "
                    "kind TEXT NOT NULL, body TEXT NOT NULL, saved_at INTEGER NOT NULL, "
                    "PRIMARY KEY (unit, kind)) STRICT, WITHOUT ROWID");
    return file;
}

void DraftShelter::keep(const Draft& draft, Instant now) { DraftTable(*open()).put(draft, now); }

void DraftShelter::drop(const std::string& unit, RoundKind kind)
{
    if (isThere())
        DraftTable(*open()).drop(unit, kind);
}

void DraftShelter::bringBack(Database& server)
{
    if (!isThere())
        return;
    const auto file = open();
    {
        Statement rows = file->prepare("SELECT unit, kind, body, saved_at FROM draft");
        while (rows.next())
            server
                .prepare("INSERT INTO draft (unit, kind, body, saved_at) VALUES (?, ?, ?, ?) "
                         "ON CONFLICT (unit, kind) DO UPDATE SET body = excluded.body, "
                         "saved_at = excluded.saved_at WHERE excluded.saved_at > draft.saved_at")
                .bind(rows.textView(0))
                .bind(rows.textView(1))
                .bind(rows.textView(2))
                .bind(rows.integer(3))
                .run();
    }
    // Only now: whoever is cut off in between brings them once more.
    file->run("DELETE FROM draft");
}

}
