// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/checklisttable.h"
#include "core/store/gapfold.h"
#include "core/store/gaptable.h"
#include "core/store/ledgertable.h"
#include "core/store/roundtable.h"

#include <variant>

namespace cradlepost {

/** A round or an action on its way into the gaps of its unit. */
struct GapStep
{
    Origin origin; ///< of a round: when it was finished, by a clock that never goes back
    std::variant<RoundFindings, GapAction> what;
};

/**
 * Carries rounds and actions into the projection `gap`, in the order of their origin: one that comes late
 * makes the gaps of its unit be carried anew from the first round.
 */
class GapCarrier
{
public:
    GapCarrier(Database& ledger, Database& target, ChecklistTable& checklists);

    void take(const std::string& unit, GapStep step);
    /** All gaps of the unit from the first round on, read from the ledger. */
    void carryAnew(const std::string& unit);

    /** From now on take() only collects, until carryPostponed(): for a replay of everything. */
    void postpone() { m_postponed.emplace(); }
    void carryPostponed();

private:
    void takeNext(const std::string& unit, const RoundFindings& round);
    /** Whether its gap was there. */
    bool takeNext(const std::string& unit, const GapAction& action);
    /** nullptr when the document has not come yet, or does not fit. */
    std::shared_ptr<const Checklist> checklistOf(const RoundFindings& round);
    void carry(const std::string& unit, std::vector<GapStep> steps);

    LedgerTable m_ledger;
    RoundTable m_rounds;
    GapTable m_gaps;
    ChecklistTable& m_checklists;
    std::optional<std::map<std::string, std::vector<GapStep>>> m_postponed;
};

}
