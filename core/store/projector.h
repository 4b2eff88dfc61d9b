// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/amendmenttable.h"
#include "core/store/changeideatable.h"
#include "core/store/checklisttable.h"
#include "core/store/gapcarrier.h"
#include "core/store/ledgertable.h"
#include "core/store/roundmonthtable.h"
#include "core/store/roundtable.h"
#include "core/store/stockmovementtable.h"
#include "core/store/supplyfacttable.h"
#include "core/store/unittable.h"

namespace cradlepost {

/**
 * Turns records into the rows of the projections. The rows depend on the set of records only, not on the
 * order in which they came: what excludes each other is decided by Origin. Kinds that are not known here are
 * left alone.
 */
class Projector
{
public:
    /** `ledger` holds the records, `target` the projections; mostly the same database. */
    Projector(Database& ledger, Database& target);

    /** The record must be in the ledger already; `body` is its body. Throws when that cannot be read. */
    void apply(const Record& record, const Json& body);
    /** The same for a round that was just written: `round` is what its body says. */
    void apply(const Record& record, const RoundRecord& round);

    // A replay of everything: begin, each record of the ledger in the order of its chain, end.
    /** Empties all projections. */
    void beginReplay();
    /** A record whose body cannot be read projects nothing. */
    void replay(const Record& record, const Json& body);
    /** The same for a round or observation: `round` is what its body says. */
    void replay(const Record& record, const RoundRecord& round);
    void endReplay();
    /** All three, over the whole ledger. */
    void replayAll();

    // Many records at once: gather, apply each, carry. Each unit's gaps are read and written once, and carried
    // anew once when something comes late.
    void gatherLate();
    void carryLate();

    [[nodiscard]] ChecklistTable& checklists() { return m_checklists; }
    /** Forgets what belongs to a transaction that was taken back. */
    void forget();

private:
    Origin originOf(const Record& record);
    void applyBody(const Record& record, const Json& body, const Origin& origin);
    void applyAdoption(const Record& record, const Json& body, const Origin& origin);
    void applyRound(const Record& record, const RoundRecord& round, const Origin& origin);
    void applyAmendment(const RoundAmendment& amendment, const Origin& origin);
    /** Lays the amendments over the row of the round and over its gaps. */
    void recount(const RecordId& round, const std::optional<RecordId>& newest);

    struct ChainEnd
    {
        RecordId id;
        Instant latest; ///< time that the chain has seen
    };

    Database& m_target;
    LedgerTable m_ledger;
    UnitTable m_units;
    ChecklistTable m_checklists;
    RoundTable m_rounds;
    RoundMonthTable m_months;
    AmendmentTable m_amendments;
    ChangeIdeaTable m_ideas;
    SupplyFactTable m_supplies;
    StockMovementTable m_movements;
    GapCarrier m_gaps;
    bool m_replaying = false;
    bool m_gathering = false;
    std::optional<ChainEnd> m_before; ///< in a replay, or while many are gathered: the record before
};

/** Names of the projections in the database, and how many columns make up their key. */
struct ProjectionTable
{
    const char* name;
    int keys;
};
const std::vector<ProjectionTable>& projectionTables();

}
