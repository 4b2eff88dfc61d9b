// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/checklisttable.h"
#include "core/store/gaptable.h"
#include "core/store/ledgertable.h"
#include "core/store/roundtable.h"
#include "core/store/unittable.h"

#include <set>

namespace cradlepost {

class GapFold;

/**
 * Turns records into the rows of the projections. The rows depend on the set of records only, not on the
 * order in which they came: what excludes each other is decided by Origin, and a record that is not the
 * latest of its unit makes the unit's gaps be carried anew. Kinds that are not known here are left alone.
 */
class Projector
{
public:
    /** `ledger` holds the records, `target` the projections; mostly the same database. */
    Projector(Database& ledger, Database& target);

    /** The record must be in the ledger already. Throws when its body cannot be read. */
    void apply(const Record& record);
    /** Empties all projections and applies the whole ledger; records that cannot be read project nothing. */
    void replay();

    [[nodiscard]] ChecklistTable& checklists() { return m_checklists; }

private:
    Origin originOf(const Record& record);
    void applyBody(const Record& record, const Json& body, const Origin& origin);
    void applyAdoption(const Record& record, const Json& body, const Origin& origin);
    void applyRound(const Record& record, const Json& body, const Origin& origin);
    void applyAction(const Record& record, const Json& body, const Origin& origin);
    /** nullptr when the document has not come yet, or does not fit. */
    std::shared_ptr<const Checklist> checklistOf(const RoundRecord& round);
    void putReadings(
        const std::string& unit, const Checklist& checklist, const RoundRecord& round, const RecordId& id);
    void carryGaps(
        const std::string& unit, const Checklist& checklist, const RoundRecord& round, const RecordId& id);
    /** Whether the unit must be carried anew from its first round. */
    bool comesLate(const std::string& unit, const Origin& origin) const;
    void carryAnew(const std::string& unit);
    void takeRound(GapFold& fold, const std::string& unit, const RecordId& id);

    Database& m_target;
    LedgerTable m_ledger;
    UnitTable m_units;
    ChecklistTable m_checklists;
    RoundTable m_rounds;
    GapTable m_gaps;
    std::optional<std::set<std::string>> m_later; ///< in a replay: units whose gaps are carried at its end
    std::optional<std::pair<RecordId, Instant>>
        m_latest; ///< in a replay: the last record and its chain's latest time
};

/** Names of the projections in the database, and how many columns make up their key. */
struct ProjectionTable
{
    const char* name;
    int keys;
};
const std::vector<ProjectionTable>& projectionTables();

}
