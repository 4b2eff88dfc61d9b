// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/checklisttable.h"
#include "core/store/drafttable.h"
#include "core/store/failure.h"
#include "core/store/projector.h"
#include "core/store/recordkind.h"
#include "core/store/transaction.h"

namespace cradlepost {

/** What a Store is made of. */
struct Store::Parts
{
    Parts(std::unique_ptr<Database> opened, const Clock& theClock)
        : database(std::move(opened))
        , clock(theClock)
        , ledger(*database)
        , units(*database)
        , rounds(*database)
        , amendments(*database, *database)
        , ideas(*database)
        , supplies(*database)
        , movements(*database)
        , gaps(*database)
        , drafts(*database)
        , projector(*database, *database)
    {
    }

    /** Seals the record, appends it to the station's chain and projects it. Inside a transaction. */
    RecordId append(const char* kind, const std::string& unit, const Json& body, const std::string& actor);
    RecordId append(const std::string& unit, const RoundRecord& round, const std::string& actor);
    /** Runs `write` as one transaction. */
    template <class F> auto inTransaction(F&& write)
    {
        return attempt([&] {
            try {
                Transaction transaction(*database);
                if constexpr (std::is_void_v<std::invoke_result_t<F>>) {
                    write();
                    transaction.commit();
                } else {
                    auto result = write();
                    transaction.commit();
                    return result;
                }
            } catch (const Failure&) {
                projector.forget();
                throw;
            }
        });
    }
    /** The record sealed and in the ledger, not yet projected. */
    Record enter(const char* kind, const std::string& unit, const Json& body, const std::string& actor);
    /** The station's key, read or made when it is first needed. */
    const StationKey& signingKey();
    /** Throws NotFound. */
    Unit knownUnit(const std::string& id) const;
    std::shared_ptr<const Checklist> knownChecklist(const std::string& id, int version);
    SavedRound savedRound(const RecordId& id) const;
    /** Throws unless the round fits its checklist, itself and what is there of its shift. */
    void mayBeSaved(const std::string& unit, const RoundRecord& round);
    /** Throws unless it fits its checklist and itself. */
    void mayStandFor(const RoundRecord& corrected);

    std::unique_ptr<Database> database;
    const Clock& clock;
    std::optional<StationKey> key;
    LedgerTable ledger;
    UnitTable units;
    RoundTable rounds;
    AmendmentTable amendments;
    ChangeIdeaTable ideas;
    SupplyFactTable supplies;
    StockMovementTable movements;
    GapTable gaps;
    DraftTable drafts;
    Projector projector;
};

}
