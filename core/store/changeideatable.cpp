// SPDX-License-Identifier: MIT
#include "core/store/changeideatable.h"

#include "core/ledger/canonical.h"
#include "core/store/failure.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

void ChangeIdeaTable::put(const std::string& unit, const ChangeIdea& idea, const Origin& origin)
{
    m_database
        .prepare("INSERT INTO change_idea (unit, idea, body, at, station, seq) VALUES (?, ?, ?, ?, ?, ?) "
                 "ON CONFLICT (unit, idea) DO UPDATE SET body = excluded.body, at = excluded.at, "
                 "station = excluded.station, seq = excluded.seq WHERE (excluded.at, excluded.station, "
                 "excluded.seq) > (change_idea.at, change_idea.station, change_idea.seq)")
        .bind(unit)
        .bind(idea.id)
        .bind(canonicalText(toBody(idea)))
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .run();
}

std::vector<ChangeIdea> ChangeIdeaTable::of(const std::string& unit) const
{
    std::vector<ChangeIdea> ideas;
    Statement rows = m_database.prepare("SELECT body FROM change_idea WHERE unit = ?");
    rows.bind(unit);
    while (rows.next())
        ideas.push_back(need(changeIdeaFromBody(need(parseJson(rows.text(0))))));
    std::sort(ideas.begin(), ideas.end(), [](const ChangeIdea& a, const ChangeIdea& b) {
        return std::tie(a.from, a.id) < std::tie(b.from, b.id);
    });
    return ideas;
}

}
