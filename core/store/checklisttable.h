// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/ledgertable.h"
#include "core/store/origin.h"
#include "core/store/unit.h"

#include <map>
#include <memory>

namespace cradlepost {

/**
 * The projections `checklist` and `adoption`. Documents stay in the ledger; those read are kept parsed, since
 * a version never changes.
 */
class ChecklistTable
{
public:
    /** `ledger` holds the records, `target` the projections; mostly the same database. */
    ChecklistTable(Database& ledger, Database& target)
        : m_ledger(ledger)
        , m_target(target)
    {
    }

    /** Throws AlreadyExists when another document has this id and version. */
    void refuseAnother(const Checklist& checklist, const Json& document) const;
    /**
     * Whether this id and version means something new now. Of two documents of different stations that claim
     * one version the one that was adopted first holds, on every station.
     */
    bool put(const Checklist& checklist, const Json& document, const Origin& origin);
    void put(
        const std::string& unit, const Checklist& checklist, const Adoption& adoption, const Origin& origin);

    /** nullptr when it is not known. */
    std::shared_ptr<const Checklist> find(const std::string& id, int version);
    struct Adopted
    {
        std::string checklist;
        int version = 1;
        ChosenLimits limits;
    };
    [[nodiscard]] std::optional<Adopted> adopted(const std::string& unit, RoundKind kind, Date day) const;
    /** Forgets what was parsed, after a transaction that was taken back. */
    void forget() { m_parsed.clear(); }

private:
    LedgerTable m_ledger;
    Database& m_target;
    std::map<std::pair<std::string, int>, std::shared_ptr<const Checklist>> m_parsed;
};

}
