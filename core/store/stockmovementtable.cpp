// SPDX-License-Identifier: MIT
#include "core/store/stockmovementtable.h"

#include "core/store/failure.h"

namespace cradlepost {

namespace {

/** The value of a code that this program wrote; throws when somebody else did. */
template <class E> E known(const std::optional<E>& value, std::string_view code)
{
    if (!value)
        refuse(ErrorCode::BadDocument, "stock movement: '" + std::string(code) + "' is not a known word");
    return *value;
}

StockMovement movementIn(const Statement& row)
{
    StockMovement movement{.item = row.text(2), .at = row.time(3), .quantity = row.integer(5)};
    movement.kind = known(movementKindFromCode(row.textView(4)), row.textView(4));
    movement.lot = row.text(6);
    if (!row.isNull(7))
        movement.expiry = need(dateFromIso(row.textView(7)));
    movement.reason = known(movementReasonFromCode(row.textView(8)), row.textView(8));
    movement.scope = known(countScopeFromCode(row.textView(9)), row.textView(9));
    movement.counterpart = row.text(10);
    return movement;
}

}

void StockMovementTable::put(const std::string& unit, const StockMovement& movement, const RecordId& id)
{
    m_database
        .prepare("INSERT INTO stock_movement (unit, item, at, station, seq, kind, quantity, lot, expiry, "
                 "reason, scope, counterpart) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .bind(unit)
        .bind(movement.item)
        .bind(movement.at)
        .bind(id.station)
        .bind(id.seq)
        .bind(codeName(movement.kind))
        .bind(movement.quantity)
        .bind(movement.lot)
        .bind(movement.expiry ? std::optional(toIso(*movement.expiry)) : std::nullopt)
        .bind(codeName(movement.reason))
        .bind(codeName(movement.scope))
        .bind(movement.counterpart)
        .run();
}

std::vector<Recorded<StockMovement>> StockMovementTable::movements(
    const std::string& unit, const std::string& item) const
{
    Statement rows = m_database.prepare(item.empty()
            ? "SELECT station, seq, item, at, kind, quantity, lot, expiry, reason, scope, counterpart "
              "FROM stock_movement WHERE unit = ? ORDER BY item, at, station, seq"
            : "SELECT station, seq, item, at, kind, quantity, lot, expiry, reason, scope, counterpart "
              "FROM stock_movement WHERE unit = ? AND item = ? ORDER BY at, station, seq");
    rows.bind(unit);
    if (!item.empty())
        rows.bind(item);
    std::vector<Recorded<StockMovement>> movements;
    while (rows.next())
        movements.push_back(
            {.id = {.station = rows.text(0), .seq = rows.integer(1)}, .what = movementIn(rows)});
    return movements;
}

}
