// SPDX-License-Identifier: MIT
#include "core/supply/distance.h"

#include "core/base/csv.h"
#include "core/base/refusal.h"
#include "core/supply/bodyreader.h"

#include <algorithm>

namespace cradlepost {

namespace {

tl::unexpected<Error> wrong(const CsvCell& cell, const std::string& what, std::string hint = {})
{
    return tl::unexpected(refused(refusal::tableCell, {std::to_string(cell.line), cell.text},
        "distances, line " + std::to_string(cell.line) + ": '" + cell.text + "' " + what, std::move(hint),
        ErrorCode::BadDocument));
}

std::pair<std::string, std::string> wayOf(const std::string& a, const std::string& b)
{
    return a < b ? std::pair(a, b) : std::pair(b, a);
}

}

Json toBody(const Distance& distance)
{
    return Json::Object{{"at", toMs(distance.at)}, {"metres", distance.metres}, {"to", distance.to}};
}

Result<Distance> distanceFromBody(const std::string& from, const Json& body)
{
    BodyReader read(body, "distance record");
    Distance distance{.from = from,
        .to = read.id("to"),
        .metres = read.integer("metres", 0, mostMetres),
        .at = read.moment("at")};
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    if (distance.from == distance.to)
        return fail(ErrorCode::BadDocument, "distance record: from a unit to itself");
    return distance;
}

Result<void> checkDistance(const Distance& distance)
{
    if (distance.from.empty() || distance.to.empty() || distance.from == distance.to)
        return fail(ErrorCode::InvalidArgument, "a distance lies between two units", "Name two units.");
    if (distance.metres < 0 || distance.metres > mostMetres)
        return tl::unexpected(refused(refusal::distanceRange, {std::to_string(mostMetres / 1000)},
            "a distance of " + std::to_string(distance.metres) + " m", "Give 0 to 1000 km."));
    return {};
}

void DistanceTable::set(const Distance& distance)
{
    Distance& held = m_ways.try_emplace(wayOf(distance.from, distance.to), distance).first->second;
    if (distance.at >= held.at)
        held = distance;
}

std::optional<std::int64_t> DistanceTable::between(const std::string& a, const std::string& b) const
{
    const auto way = m_ways.find(wayOf(a, b));
    return way == m_ways.end() || way->second.metres == 0 ? std::nullopt : std::optional(way->second.metres);
}

std::vector<Distance> DistanceTable::all() const
{
    std::vector<Distance> ways;
    for (const auto& [way, distance] : m_ways) {
        if (distance.metres > 0)
            ways.push_back(distance);
    }
    return ways;
}

Result<std::vector<Distance>> readDistances(
    std::string_view text, const std::vector<std::string>& units, Instant at)
{
    const auto table = readCsv(text);
    if (!table)
        return tl::unexpected(table.error());
    const int from = table->find("from");
    const int to = table->find("to");
    const int km = table->find("km");
    if (from < 0 || to < 0 || km < 0)
        return tl::unexpected(refused(refusal::tableHead, {"from,to,km"}, "distances need the columns from, to and km",
            "Begin the file with the line from,to,km.", ErrorCode::BadDocument));
    std::vector<Distance> ways;
    for (const auto& row : table->rows) {
        const CsvCell& a = row[static_cast<std::size_t>(from)];
        const CsvCell& b = row[static_cast<std::size_t>(to)];
        const CsvCell& length = row[static_cast<std::size_t>(km)];
        for (const CsvCell* unit : {&a, &b}) {
            if (std::find(units.begin(), units.end(), unit->text) == units.end())
                return wrong(*unit, "is no unit here", "Use the ids of the units.");
        }
        if (a.text == b.text)
            return wrong(b, "stands on both sides");
        const auto number = length.text.empty() ? Result<Decimal>(Decimal{}) : Decimal::parse(length.text);
        // Thousandths of a kilometre are metres.
        if (!number || number->thousandths < 0 || number->thousandths > mostMetres)
            return wrong(length, "is no distance of 0 to 1000 km");
        ways.push_back({.from = a.text, .to = b.text, .metres = number->thousandths, .at = at});
    }
    return ways;
}

}
