// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/checklisttable.h"
#include "core/store/draftshelter.h"
#include "core/store/failure.h"
#include "core/store/projector.h"
#include "core/store/recordkind.h"
#include "core/store/transaction.h"

#include <variant>

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
        , months(*database)
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
    /** Runs `write` as one transaction; nobody else writes meanwhile. */
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
    /**
     * The same for what touches one unit only: other stations go on writing other units. When the server
     * takes it back for the sake of another transaction, or was lost and is there again, `write` is run anew.
     */
    template <class F> auto inUnit(const std::string& unit, F&& write)
    {
        using T = std::invoke_result_t<F>;
        if constexpr (std::is_void_v<T>) {
            const auto kept = inUnit(unit, [&] {
                write();
                return std::monostate();
            });
            return kept ? Result<void>() : Result<void>(tl::unexpected(kept.error()));
        } else {
            return attempt([&] { return manyTimes<T>(unit, write); });
        }
    }
    /** Last record that entered the ledger in this transaction. */
    struct Entered
    {
        RecordId id;
        Hash hash{};
    };
    /** Whether a transaction of which no answer came was committed after all. */
    bool isThere(const Entered& record) const;
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

private:
    static constexpr int mostTurns = 5;

    template <class T, class F> T manyTimes(const std::string& unit, F& write)
    {
        const bool isNested = database->inTransaction();
        std::optional<Entered> doubtful;
        std::optional<T> result;
        for (int turn = 1;; ++turn) {
            entered.reset();
            try {
                Transaction transaction(*database, WriteScope::Parts);
                database->connection().lock("unit/" + unit);
                if (doubtful && isThere(*doubtful))
                    return std::move(*result);
                result = write();
                transaction.commit();
                return std::move(*result);
            } catch (const Failure& failure) {
                projector.forget();
                if (failure.isInDoubt && entered)
                    doubtful = entered;
                if (isNested || !failure.isPassing || turn == mostTurns)
                    throw;
            }
        }
    }

public:
    /** Nothing for a file, which is there whenever this station is. */
    std::optional<DraftShelter>& draftShelter();

    std::unique_ptr<Database> database;
    const Clock& clock;
    std::optional<Entered> entered;
    std::optional<DraftShelter> shelter;
    std::optional<StationKey> key;
    LedgerTable ledger;
    UnitTable units;
    RoundTable rounds;
    RoundMonthTable months;
    AmendmentTable amendments;
    ChangeIdeaTable ideas;
    SupplyFactTable supplies;
    StockMovementTable movements;
    GapTable gaps;
    DraftTable drafts;
    Projector projector;
};

}
