// SPDX-License-Identifier: MIT
#include "core/store/trusttable.h"

#include "core/ledger/canonical.h"

namespace cradlepost {

namespace {

std::string unitsText(const std::vector<std::string>& units)
{
    Json::Array array;
    for (const std::string& unit : units)
        array.emplace_back(unit);
    return canonicalText(Json(std::move(array)));
}

std::vector<std::string> unitsIn(const std::string& text)
{
    const Json json = need(parseJson(text));
    std::vector<std::string> units;
    if (const auto* array = json.asArray())
        for (const Json& unit : *array)
            if (const auto* name = unit.asString())
                units.push_back(*name);
    return units;
}

}

std::vector<TrustedStation> TrustTable::all() const
{
    std::vector<TrustedStation> stations;
    Statement rows = m_database.prepare("SELECT station, public_key, name, trusted_at, trusted_by, units "
                                        "FROM station_trust ORDER BY name, station");
    while (rows.next())
        stations.push_back({.station = rows.text(0),
            .key = rows.isNull(1) ? std::nullopt : std::optional(rows.bytes<32>(1)),
            .name = rows.text(2),
            .at = rows.time(3),
            .by = rows.text(4),
            .units = unitsIn(rows.text(5))});
    return stations;
}

void TrustTable::put(const TrustedStation& trusted)
{
    drop(trusted.station);
    Statement row = m_database.prepare("INSERT INTO station_trust (station, public_key, name, trusted_at, "
                                       "trusted_by, units) VALUES (?, ?, ?, ?, ?, ?)");
    row.bind(trusted.station);
    if (trusted.key)
        row.bind(std::span<const unsigned char>(*trusted.key));
    else
        row.bindNull();
    row.bind(trusted.name).bind(trusted.at).bind(trusted.by).bind(unitsText(trusted.units)).run();
}

bool TrustTable::drop(const std::string& station)
{
    Statement there = m_database.prepare("SELECT 1 FROM station_trust WHERE station = ?");
    const bool known = there.bind(station).next();
    m_database.prepare("DELETE FROM station_trust WHERE station = ?").bind(station).run();
    return known;
}

}
