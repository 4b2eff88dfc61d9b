// SPDX-License-Identifier: MIT
#include "core/exchange/packwriter.h"

#include "core/exchange/packcipher.h"
#include "core/exchange/packrecord.h"
#include "core/exchange/packtext.h"
#include "core/store/failure.h"

#include <algorithm>
#include <set>

namespace cradlepost {

namespace {

/** Stations that have written one of the units; throws NotFound when nobody has written one. */
std::set<std::string> writersOf(const Store& store, const std::vector<std::string>& units)
{
    std::set<std::string> writers;
    for (const std::string& unit : units) {
        const auto stations = need(store.writersOf(unit));
        if (stations.empty())
            refuse(ErrorCode::NotFound, "unit '" + unit + "' is not known");
        writers.insert(stations.begin(), stations.end());
    }
    return writers;
}

/** The first record of the chain that the receiver lacks; behind the last one when it lacks none. */
std::int64_t behind(const Store& store, const HaveList& have, const Chain& chain)
{
    const auto tip = std::ranges::find(have.tips, chain.station, &HaveList::Tip::station);
    if (tip == have.tips.end())
        return 1;
    if (tip->seq > chain.seq)
        return chain.seq + 1;
    const auto here = need(store.sealOf(chain.station, tip->seq));
    if (!here || here->hash != tip->hash)
        refuse(ErrorCode::Forged,
            "record " + chain.station + '/' + std::to_string(tip->seq) + " of station " + have.station
                + " is not the one that is here: the chain has forked",
            "Two databases go on with one key. Keep both files and find out which one is right.");
    return tip->seq + 1;
}

std::vector<PackChain> chosen(const Store& store, const PackWish& wish)
{
    const auto writers = writersOf(store, wish.units);
    std::vector<PackChain> chains;
    for (const Chain& chain : need(store.chains())) {
        if (!wish.units.empty() && !writers.contains(chain.station))
            continue;
        std::int64_t from = wish.have ? behind(store, *wish.have, chain) : 1;
        if (wish.since)
            from = std::max(from, need(store.firstSince(chain.station, *wish.since)).value_or(chain.seq + 1));
        if (from <= chain.seq)
            chains.push_back({.station = chain.station, .key = chain.key, .from = from, .to = chain.seq});
    }
    return chains;
}

void writeChain(const Store& store, const PackChain& chain, LineSink& lines)
{
    std::int64_t next = chain.from;
    need(store.records(chain.station, chain.from, chain.to, [&](const Record& record) -> Result<void> {
        if (record.seq != next++ || record.body.empty() || hashOf(record) != record.hash)
            return fail(ErrorCode::Damaged,
                "record " + record.station + '/' + std::to_string(record.seq) + " does not hold",
                "Run verify, then restore a backup.");
        return attempt([&] { lines.write(recordLine(record)); });
    }));
    if (next != chain.to + 1)
        refuse(ErrorCode::Damaged, "record " + chain.station + '/' + std::to_string(next) + " is missing",
            "Run verify, then restore a backup.");
}

void writeLines(const Store& store, const StationKey& own, const PackManifest& manifest, LineSink& lines)
{
    lines.write(manifestLine(manifest));
    for (const PackChain& chain : manifest.chains)
        writeChain(store, chain, lines);
    PackEnd end{.records = manifest.records(), .digest = lines.digest()};
    end.signature = own.sign(endMessage(end.digest));
    lines.write(endLine(end));
    lines.finish();
}

}

Result<PackWritten> writePack(
    const Store& store, const PackWish& wish, const std::string& path, Instant now, const PackLimits& limits)
{
    return attempt([&] {
        FileSink file(path, wish.overwrite);
        const StationKey own = need(store.ownKey());
        const PackManifest manifest{
            .by = own.id(), .key = own.publicKey(), .madeAt = now, .chains = chosen(store, wish)};
        if (manifest.records() > limits.records)
            refuse(ErrorCode::InvalidArgument,
                "the pack would hold more than " + std::to_string(limits.records) + " records",
                "Make smaller packs, for example with --unit or --since.");
        const std::string head
            = headLine({.receiver = wish.receiver ? std::optional(wish.receiver->station) : std::nullopt});
        file.write(head);
        std::optional<SealedSink> sealed;
        if (wish.receiver)
            sealed.emplace(file, wish.receiver->key, head);
        LineSink lines(sealed ? static_cast<ByteSink&>(*sealed) : file);
        writeLines(store, own, manifest, lines);
        return PackWritten{.records = manifest.records(), .chains = manifest.chains};
    });
}

}
