// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/amendment.h"
#include "core/store/ledgertable.h"
#include "core/store/origin.h"

namespace cradlepost {

/** A round as it counts now. */
struct CountedRound
{
    std::string unit;
    std::string actor; ///< of the round as it was first recorded
    RoundRecord round;
    std::vector<Amendment> amendments;
};

/** The projection `amendment`, and rounds read from the ledger with what was amended since. */
class AmendmentTable
{
public:
    /** `ledger` holds the records, `target` the projections; mostly the same database. */
    AmendmentTable(Database& ledger, Database& target)
        : m_ledger(ledger)
        , m_target(target)
    {
    }

    void put(const RecordId& round, const Origin& by);
    [[nodiscard]] bool knows(const RecordId& round) const;
    /** Every round that an amendment names. */
    [[nodiscard]] std::vector<RecordId> rounds() const;

    /**
     * The round, and those amendments that fit it, see checkAmendment: the last one counts. Leaves out the
     * one that is named `without`. Throws NotFound when the record is none of a round or spot check.
     */
    [[nodiscard]] CountedRound read(const RecordId& round, const std::optional<RecordId>& without = {}) const;
    /** The round as it was first recorded. */
    [[nodiscard]] CountedRound readFirst(const RecordId& round) const;

private:
    [[nodiscard]] std::vector<Origin> of(const RecordId& round) const;

    LedgerTable m_ledger;
    Database& m_target;
};

}
