// SPDX-License-Identifier: MIT
#pragma once

#include "core/gap/gapaction.h"
#include "core/store/database.h"
#include "core/store/origin.h"

namespace cradlepost {

/** How far the gaps of a unit are carried. */
struct GapProgress
{
    Origin last; ///< the last round or action that went in
    std::int64_t held = 0; ///< actions that came before the gap they name
};

/** The projections `gap`, `gap_action` and `gap_progress`. */
class GapTable
{
public:
    explicit GapTable(Database& database)
        : m_database(database)
    {
    }

    void insert(const Gap& gap);
    /** Everything but how it opened, which does not change. */
    void update(const Gap& gap);
    void drop(const std::string& unit);
    [[nodiscard]] std::vector<Gap> open(const std::string& unit) const;
    [[nodiscard]] std::vector<Gap> closedSince(const std::string& unit, Instant since) const;
    /** Open at any time with from <= t < to, by when they opened. */
    [[nodiscard]] std::vector<Gap> during(const std::string& unit, Instant from, Instant to) const;
    [[nodiscard]] std::vector<Gap> ofItem(const std::string& unit, const std::string& item) const;
    [[nodiscard]] std::optional<Gap> find(const std::string& unit, const std::string& item, int nth) const;
    /** How many gaps the item has had. */
    [[nodiscard]] int count(const std::string& unit, const std::string& item) const;

    void putAction(const std::string& unit, const Origin& origin, const GapAction& action);
    [[nodiscard]] std::vector<Origin> actions(const std::string& unit) const;
    /** Of one gap, in their order. */
    [[nodiscard]] std::vector<RecordId> actionsOn(
        const std::string& unit, const std::string& item, int nth) const;

    [[nodiscard]] std::optional<GapProgress> progress(const std::string& unit) const;
    void setProgress(const std::string& unit, const GapProgress& progress);

private:
    Database& m_database;
};

}
