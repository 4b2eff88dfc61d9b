// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/amendmenttable.h"
#include "core/store/checklisttable.h"
#include "core/store/gapfold.h"
#include "core/store/gaptable.h"
#include "core/store/ledgertable.h"
#include "core/store/roundtable.h"
#include "core/store/unitgaps.h"

#include <set>
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
    /** The same for a round that was taken before, put right since. */
    void amend(const std::string& unit, GapStep round);
    /** All gaps of the unit from the first round on, read from the ledger. */
    void carryAnew(const std::string& unit);

    /** From now on take() only collects, until carryPostponed(): for a replay of everything. */
    void postpone() { m_postponed.emplace(); }
    void carryPostponed();
    /**
     * From now on open gaps are kept in memory, and a unit to which something comes late is left alone, until
     * carryLate().
     */
    void gatherLate() { m_gathered.emplace(); }
    void carryLate();
    void forgetLate() { m_gathered.reset(); }

private:
    /** What comes to the units meanwhile. */
    struct Gathered
    {
        std::map<std::string, UnitGaps> gaps;
        std::set<std::string> late; ///< to be carried anew, and not in `gaps`
    };

    /** Whether it could: what comes late cannot. */
    bool takeInto(UnitGaps& gaps, const std::string& unit, const GapStep& step);
    /** Carries what waits for gaps that open into them; says how many actions that were. */
    std::int64_t takeNext(UnitGaps& gaps, const std::string& unit, const RoundFindings& round, bool someHeld);
    Gap withHeld(const std::string& unit, Gap opened, std::int64_t& released);
    /** Whether its gap was there. */
    static bool takeNext(UnitGaps& gaps, const GapAction& action);
    /** nullptr when the document has not come yet, or does not fit. */
    std::shared_ptr<const Checklist> checklistOf(const RoundFindings& round);
    void carry(const std::string& unit, std::vector<GapStep> steps);

    LedgerTable m_ledger;
    RoundTable m_rounds;
    AmendmentTable m_amendments;
    GapTable m_gaps;
    ChecklistTable& m_checklists;
    std::optional<std::map<std::string, std::vector<GapStep>>> m_postponed;
    std::optional<Gathered> m_gathered;
};

}
