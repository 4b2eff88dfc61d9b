// SPDX-License-Identifier: MIT
#include "core/exchange/packhave.h"

#include "core/exchange/packfields.h"
#include "core/exchange/packformat.h"
#include "core/ledger/canonical.h"
#include "core/store/failure.h"

namespace cradlepost {

namespace {

constexpr const char* formatName = "cradlepost-have";
constexpr std::size_t largest = std::size_t{4} << 20U;

Result<HaveList::Tip> readTip(const Json& json)
{
    HaveList::Tip tip;
    Fields fields(json);
    fields.hex("hash", tip.hash);
    fields.integer("seq", tip.seq);
    fields.text("station", tip.station);
    if (const auto done = fields.end("a chain"); !done)
        return tl::unexpected(done.error());
    if (!isStationId(tip.station) || tip.seq < 1)
        return fail(ErrorCode::BadDocument, "it names no place in a chain");
    return tip;
}

Result<HaveList> readLine(std::string_view line)
{
    const auto json = readCanonical(line);
    if (!json)
        return tl::unexpected(json.error());
    HaveList have;
    std::string format;
    std::int64_t version = 0;
    const Json::Array* chains = nullptr;
    Fields fields(*json);
    fields.array("chains", chains);
    fields.text("format", format);
    fields.hex("key", have.key);
    fields.time("madeAt", have.madeAt);
    fields.text("station", have.station);
    fields.integer("version", version);
    if (const auto done = fields.end("the list"); !done)
        return tl::unexpected(done.error());
    if (format != formatName)
        return fail(ErrorCode::BadDocument, "it is of another format");
    if (version != packVersion)
        return fail(ErrorCode::NewerSchema, "it is of version " + std::to_string(version));
    if (stationId(have.key) != have.station)
        return fail(ErrorCode::Forged, "the station that it is of is not that of its key");
    for (const Json& chain : *chains) {
        auto tip = readTip(chain);
        if (!tip)
            return tl::unexpected(tip.error());
        if (!have.tips.empty() && have.tips.back().station >= tip->station)
            return fail(ErrorCode::BadDocument, "its stations are not in order");
        have.tips.push_back(std::move(*tip));
    }
    return have;
}

}

Result<HaveList> whatIsHere(const Store& store, Instant now)
{
    return attempt([&] {
        const StationKey own = need(store.ownKey());
        HaveList have{.station = own.id(), .key = own.publicKey(), .madeAt = now, .tips = {}};
        for (const Chain& chain : need(store.chains()))
            if (chain.seq > 0)
                have.tips.push_back({.station = chain.station, .seq = chain.seq, .hash = chain.hash});
        return have;
    });
}

Result<void> writeHaveList(const HaveList& have, const std::string& path, Overwrite overwrite)
{
    Json::Array chains;
    for (const HaveList::Tip& tip : have.tips)
        chains.push_back(Json::Object{{"hash", toHex(tip.hash)}, {"seq", tip.seq}, {"station", tip.station}});
    const std::string line = canonicalText(Json::Object{{"chains", std::move(chains)}, {"format", formatName},
                                 {"key", toHex(have.key)}, {"madeAt", toMs(have.madeAt)},
                                 {"station", have.station}, {"version", packVersion}})
        + '\n';
    return attempt([&] {
        FileSink file(path, overwrite);
        file.write(line);
        file.finish();
    });
}

Result<HaveList> readHaveList(const std::string& path)
{
    return attempt([&] {
        FileSource file(path);
        std::string text(largest, '\0');
        text.resize(file.read(std::span(reinterpret_cast<unsigned char*>(text.data()), text.size())));
        if (text.empty() || text.back() != '\n')
            refuse(ErrorCode::BadDocument, "list " + path + ": it is torn, or no list of what a station has",
                "Choose a file that have wrote.");
        text.pop_back();
        auto have = readLine(text);
        if (!have)
            refuse(have.error().code, "list " + path + ": " + have.error().message, have.error().hint);
        return std::move(*have);
    });
}

}
