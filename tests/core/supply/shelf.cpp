// SPDX-License-Identifier: MIT
#include "shelf.h"

using namespace cradlepost;

Decimal num(std::string_view text) { return Decimal::parse(text).value(); }

Date day(std::string_view text) { return dateFromIso(text).value(); }

Instant at(std::string_view text)
{
    const int hour = std::stoi(std::string(text.substr(11, 2)));
    const int minute = std::stoi(std::string(text.substr(14, 2)));
    return std::chrono::sys_days(day(text.substr(0, 10))) + std::chrono::hours(hour)
        + std::chrono::minutes(minute);
}

StockMovement moved(
    MovementKind kind, std::int64_t quantity, std::string_view when, std::string_view expiry, std::string lot)
{
    return {.item = "oxytocin",
        .kind = kind,
        .at = at(when),
        .quantity = quantity,
        .lot = std::move(lot),
        .expiry = expiry.empty() ? std::nullopt : std::optional(day(expiry)),
        .reason = kind == MovementKind::Wastage ? MovementReason::Damaged : MovementReason::None};
}

StockMovement countedAll(std::int64_t quantity, std::string_view when)
{
    StockMovement count = moved(MovementKind::CountCorrection, quantity, when);
    count.reason = MovementReason::NotKnown;
    return count;
}

std::string lotsOf(const ItemBook& book)
{
    std::string out;
    for (const BookLot& lot : book.lots) {
        out += (out.empty() ? "" : ", ") + std::to_string(lot.pieces);
        if (!lot.key.number.empty())
            out += " of " + lot.key.number;
        if (lot.key.expiry)
            out += " " + toIso(*lot.key.expiry);
    }
    return out;
}

bool isRecordBody(const Json& body)
{
    const std::string text = canonicalText(body);
    const auto again = parseJson(text);
    return checkBody(body).has_value() && again && canonicalText(*again) == text;
}
