// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/decimal.h"
#include "core/ledger/canonical.h"
#include "core/supply/recorded.h"
#include "core/supply/stockbook.h"

#include <string_view>

/** "26.4" */
cradlepost::Decimal num(std::string_view text);
/** "2027-03-31" */
cradlepost::Date day(std::string_view text);
/** "2026-11-24 07:30", in UTC */
cradlepost::Instant at(std::string_view text);

/** The same fact as record `seq` of station "a". */
template <class T> cradlepost::Recorded<T> recorded(std::int64_t seq, T what)
{
    return {.id = {.station = "a", .seq = seq}, .what = std::move(what)};
}

/** Facts numbered from 1 on in the order given. */
template <class T> std::vector<cradlepost::Recorded<T>> recordedAll(std::vector<T> facts)
{
    std::vector<cradlepost::Recorded<T>> out;
    for (T& fact : facts)
        out.push_back(recorded(static_cast<std::int64_t>(out.size()) + 1, std::move(fact)));
    return out;
}

cradlepost::StockMovement moved(cradlepost::MovementKind kind, std::int64_t quantity, std::string_view when,
    std::string_view expiry = {}, std::string lot = {});
/** A count of everything, with the reason "not known". */
cradlepost::StockMovement countedAll(std::int64_t quantity, std::string_view when);

/** "3 of A1 2027-03-31, 2" : the lots of a book, as a text that a check can show. */
std::string lotsOf(const cradlepost::ItemBook& book);

/** Whether the body may stand in a record, and reads back from its canonical text as the same body. */
bool isRecordBody(const cradlepost::Json& body);
