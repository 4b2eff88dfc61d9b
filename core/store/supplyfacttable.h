// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/round/roundrecord.h"
#include "core/store/database.h"
#include "core/store/failure.h"
#include "core/supply/recorded.h"

#include <functional>

namespace cradlepost {

/** Where a fact of the supplies stands among the others of its unit. */
struct SupplyPlace
{
    std::string kind; ///< of the record, or SupplyFactTable::item
    std::string subject;
    Instant at;
};

/** Nothing for a record of another kind, and for a movement of stock. Throws when the body cannot be read. */
std::optional<SupplyPlace> supplyPlaceOf(std::string_view recordKind, const Json& body);

/** The projection `supply_fact`: what records say of supplies and devices, in the order in which it happened.
 */
class SupplyFactTable
{
public:
    static constexpr char item[] = "stock-item";
    static constexpr char given[] = "given"; ///< subjects of handovers
    static constexpr char taken[] = "taken";
    static constexpr char visited[] = "visited"; ///< subject of visits
    static constexpr char levels[] = "levels"; ///< subject of escalations

    explicit SupplyFactTable(Database& database)
        : m_database(database)
    {
    }

    void put(const std::string& unit, const SupplyPlace& place, const RecordId& id, const std::string& body);
    /** Facts of one kind; of one subject unless it is empty; at or after `since`. By subject, then in order.
     */
    template <class T, class Read>
    [[nodiscard]] std::vector<Recorded<T>> facts(const std::string& unit, const std::string& kind, Read read,
        const std::string& subject = {}, Instant since = fromMs(0)) const
    {
        std::vector<Recorded<T>> facts;
        visit(unit, kind, subject, since, [&](FactId id, std::string_view body) {
            facts.push_back({.id = std::move(id), .what = need(read(need(parseJson(body))))});
        });
        return facts;
    }

private:
    void visit(const std::string& unit, const std::string& kind, const std::string& subject, Instant since,
        const std::function<void(FactId, std::string_view)>& take) const;

    Database& m_database;
};

}
