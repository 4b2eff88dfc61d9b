// SPDX-License-Identifier: MIT
#include "app/commands/exchange.h"

#include "core/exchange/packimport.h"
#include "core/exchange/packwriter.h"
#include "core/ledger/canonical.h"

#include <algorithm>
#include <cstdio>

namespace cradlepost {

namespace {

/** The key of a station that a pack is to be sealed for: from its list, its chain, or a person's word. */
Result<PackReceiver> receiverOf(const Store& store, const std::string& station, const std::optional<HaveList>& have)
{
    if (have && have->station == station)
        return PackReceiver {station, have->key};
    const auto chains = store.chains();
    if (!chains)
        return tl::unexpected(chains.error());
    const auto chain = std::ranges::find(*chains, station, &Chain::station);
    if (chain != chains->end())
        return PackReceiver {station, chain->key};
    const auto trusted = store.trustedStations();
    if (!trusted)
        return tl::unexpected(trusted.error());
    const auto word = std::ranges::find(*trusted, station, &TrustedStation::station);
    if (word != trusted->end() && word->key)
        return PackReceiver {station, *word->key};
    return fail(ErrorCode::NotFound, "the key of station " + station + " is not known here",
        "Ask that station for the list that 'have' writes, and export with --have.");
}

Result<PackWish> wishOf(const Store& store, const ExportRequest& request)
{
    PackWish wish {.units = request.units, .overwrite = request.replace ? Overwrite::Replace : Overwrite::Refuse};
    if (!request.since.empty()) {
        const auto day = dateFromIso(request.since);
        if (!day)
            return tl::unexpected(day.error());
        wish.since = std::chrono::sys_days(*day);
    }
    if (!request.have.empty()) {
        auto have = readHaveList(request.have);
        if (!have)
            return tl::unexpected(have.error());
        wish.have = std::move(*have);
    }
    if (!request.receiver.empty()) {
        auto receiver = receiverOf(store, request.receiver, wish.have);
        if (!receiver)
            return tl::unexpected(receiver.error());
        wish.receiver = std::move(*receiver);
    }
    return wish;
}

/**
 * --json of import: {"by", "dryRun", "known", "madeAt", "new", "records": [{"kind", "new", "unit"}], "sealed",
 * "stations": [{"new", "station"}], "trusted": [station]}
 */
Json toJson(const Imported& imported, bool dryRun)
{
    Json::Array records;
    for (const auto& [key, count] : imported.pack.arriving)
        records.push_back(Json::Object {{"kind", key.second}, {"new", count}, {"unit", key.first}});
    Json::Array stations;
    for (const auto& [station, count] : imported.pack.byStation)
        stations.push_back(Json::Object {{"new", count}, {"station", station}});
    Json::Array trusted;
    for (const std::string& station : imported.trusted)
        trusted.emplace_back(station);
    return Json::Object {{"by", imported.pack.manifest.by}, {"dryRun", dryRun}, {"known", imported.pack.known},
        {"madeAt", toMs(imported.pack.manifest.madeAt)}, {"new", imported.fresh}, {"records", std::move(records)},
        {"sealed", imported.pack.sealed}, {"stations", std::move(stations)}, {"trusted", std::move(trusted)}};
}

void print(const Imported& imported, bool dryRun)
{
    std::printf("packed by station %s: %lld new records%s, %lld here already\n", imported.pack.manifest.by.c_str(),
        static_cast<long long>(imported.fresh), dryRun ? " would come" : "",
        static_cast<long long>(imported.pack.known));
    for (const auto& [key, count] : imported.pack.arriving)
        std::printf("  %s: %lld %s\n", key.first.c_str(), static_cast<long long>(count), key.second.c_str());
    for (const std::string& station : imported.trusted)
        std::printf("  station %s %s trusted\n", station.c_str(), dryRun ? "would be" : "is now");
}

/** One station of `trust list`. */
struct Line
{
    std::string station;
    std::string state; ///< own, trusted, not-trusted
    std::string name;
    std::string fingerprint; ///< empty when its key was not seen yet
    std::vector<std::string> units;
};

Result<std::vector<Line>> linesOf(const Store& store)
{
    const auto own = store.ownKey();
    const auto trusted = store.trustedStations();
    const auto chains = store.chains();
    if (!own)
        return tl::unexpected(own.error());
    if (!trusted)
        return tl::unexpected(trusted.error());
    if (!chains)
        return tl::unexpected(chains.error());
    const auto keyIn = [&](const std::string& station) -> std::optional<PublicKey> {
        const auto chain = std::ranges::find(*chains, station, &Chain::station);
        return chain != chains->end() ? std::optional(chain->key) : std::nullopt;
    };
    std::vector<Line> lines {{own->id(), "own", {}, fingerprint(own->publicKey()), {}}};
    for (const TrustedStation& word : *trusted) {
        const auto key = word.key ? word.key : keyIn(word.station);
        lines.push_back({word.station, "trusted", word.name, key ? fingerprint(*key) : std::string(), word.units});
    }
    for (const Chain& chain : *chains)
        if (std::ranges::find(lines, chain.station, &Line::station) == lines.end())
            lines.push_back({chain.station, "not-trusted", {}, fingerprint(chain.key), {}});
    return lines;
}

/** --json of trust list: [{"fingerprint", "name", "state", "station", "units"}] */
Json toJson(const std::vector<Line>& lines)
{
    Json::Array all;
    for (const Line& line : lines) {
        Json::Array units;
        for (const std::string& unit : line.units)
            units.emplace_back(unit);
        all.push_back(Json::Object {{"fingerprint", line.fingerprint}, {"name", line.name}, {"state", line.state},
            {"station", line.station}, {"units", std::move(units)}});
    }
    return all;
}

}

int runExport(const CommandContext& context, const ExportRequest& request)
{
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto wish = wishOf(**store, request);
    if (!wish)
        return complain(wish.error());
    const auto written = writePack(**store, *wish, request.out, context.clock.now());
    if (!written)
        return complain(written.error());
    std::printf("%lld records of %zu stations written to %s\n", static_cast<long long>(written->records),
        written->chains.size(), request.out.c_str());
    return Done;
}

int runHave(const CommandContext& context, const std::string& out, bool replace)
{
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto have = whatIsHere(**store, context.clock.now());
    if (!have)
        return complain(have.error());
    if (auto done = writeHaveList(*have, out, replace ? Overwrite::Replace : Overwrite::Refuse); !done)
        return complain(done.error());
    std::printf("what is here of %zu stations written to %s\n", have->tips.size(), out.c_str());
    return Done;
}

int runImport(const CommandContext& context, const ImportRequest& request)
{
    const auto store = context.openStore(request.dryRun ? OpenMode::ReadOnly : OpenMode::ReadWrite);
    if (!store)
        return complain(store.error());
    const auto imported = importPack(**store, request.pack,
        {.dryRun = request.dryRun, .trust = request.trust, .by = request.by, .limits = {}}, context.clock.now());
    if (!imported)
        return complain(imported.error());
    if (request.json)
        std::printf("%s\n", canonicalText(toJson(*imported, request.dryRun)).c_str());
    else
        print(*imported, request.dryRun);
    return Done;
}

int runTrustList(const CommandContext& context, bool json)
{
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto lines = linesOf(**store);
    if (!lines)
        return complain(lines.error());
    if (json)
        std::printf("%s\n", canonicalText(toJson(*lines)).c_str());
    else
        for (const Line& line : *lines)
            std::printf("%s  %-11s  %s  %s\n", line.station.c_str(), line.state.c_str(),
                line.fingerprint.empty() ? "(no record seen yet)" : line.fingerprint.c_str(), line.name.c_str());
    return Done;
}

int runTrustAdd(const CommandContext& context, const TrustRequest& request)
{
    if (!isStationId(request.station))
        return complain({ErrorCode::InvalidArgument, "'" + request.station + "' is no station's id",
            "It has 16 letters and digits, as trust list shows it."});
    const auto store = context.openStore(OpenMode::ReadWrite);
    if (!store)
        return complain(store.error());
    const auto receiver = receiverOf(**store, request.station, std::nullopt);
    const TrustedStation trusted {.station = request.station,
        .key = receiver ? std::optional(receiver->key) : std::nullopt, // else it is seen with its first pack
        .name = request.name,
        .at = context.clock.now(),
        .by = request.by,
        .units = request.units};
    if (auto done = (*store)->trust(trusted); !done)
        return complain(done.error());
    std::printf("station %s is trusted\n", request.station.c_str());
    return Done;
}

int runTrustRemove(const CommandContext& context, const std::string& station)
{
    const auto store = context.openStore(OpenMode::ReadWrite);
    if (!store)
        return complain(store.error());
    if (auto done = (*store)->distrust(station); !done)
        return complain(done.error());
    std::printf("station %s is no longer trusted; its records stay\n", station.c_str());
    return Done;
}

}
