// SPDX-License-Identifier: MIT
#include "core/exchange/packformat.h"

#include "core/exchange/packfields.h"
#include "core/ledger/canonical.h"

#include <algorithm>
#include <charconv>
#include <sodium.h>

namespace cradlepost {

namespace {

constexpr std::string_view headStart = "CRADLEPOST PACK ";
constexpr std::string_view formatName = "cradlepost-pack";
constexpr std::string_view endDomain = "cradlepost pack 1 end\n";

Result<PackChain> readChain(const Json& json)
{
    PackChain chain;
    Fields fields(json);
    fields.integer("from", chain.from);
    fields.hex("key", chain.key);
    fields.text("station", chain.station);
    fields.integer("to", chain.to);
    if (const auto done = fields.end("a chain"); !done)
        return tl::unexpected(done.error());
    if (stationId(chain.key) != chain.station)
        return fail(ErrorCode::Forged, "station " + chain.station + ": the key beside it is not its own");
    constexpr std::int64_t most = std::int64_t{1} << 53;
    if (chain.from < 1 || chain.to < chain.from || chain.to > most)
        return fail(ErrorCode::BadDocument,
            "station " + chain.station + ": records " + std::to_string(chain.from) + " to "
                + std::to_string(chain.to) + " are none");
    return chain;
}

Result<void> readChains(const Json::Array& array, PackManifest& manifest, const PackLimits& limits)
{
    if (array.size() > static_cast<std::size_t>(limits.chains))
        return fail(
            ErrorCode::BadDocument, "it holds more than " + std::to_string(limits.chains) + " stations");
    std::int64_t records = 0;
    for (const Json& json : array) {
        auto chain = readChain(json);
        if (!chain)
            return tl::unexpected(chain.error());
        if (!manifest.chains.empty() && manifest.chains.back().station >= chain->station)
            return fail(ErrorCode::BadDocument, "its stations are not in order");
        if (chain->records() > limits.records - records)
            return fail(ErrorCode::BadDocument,
                "it holds more than " + std::to_string(limits.records) + " records",
                "Ask for smaller packs, for example with --unit or --since.");
        records += chain->records();
        manifest.chains.push_back(std::move(*chain));
    }
    return {};
}

}

std::string headLine(const PackHead& head)
{
    return std::string(headStart) + std::to_string(packVersion)
        + (head.receiver ? " sealed " + *head.receiver : " plain") + '\n';
}

Result<PackHead> readHead(std::string_view line)
{
    const auto noPack = [] {
        return fail(ErrorCode::BadDocument, "it is no pack of records", "Choose a file that export wrote.");
    };
    if (!line.starts_with(headStart))
        return noPack();
    line.remove_prefix(headStart.size());
    int version = 0;
    const auto [rest, fault] = std::from_chars(line.data(), line.data() + line.size(), version);
    if (fault != std::errc() || version < 1)
        return noPack();
    if (version > packVersion)
        return fail(ErrorCode::NewerSchema, "it is a pack of version " + std::to_string(version),
            "Bring this program up to date first.");
    line.remove_prefix(static_cast<std::size_t>(rest - line.data()));
    if (line == " plain")
        return PackHead{};
    constexpr std::string_view sealed = " sealed ";
    if (line.starts_with(sealed) && isStationId(line.substr(sealed.size())))
        return PackHead{.receiver = std::string(line.substr(sealed.size()))};
    return noPack();
}

std::int64_t PackManifest::records() const
{
    std::int64_t sum = 0;
    for (const PackChain& chain : chains)
        sum += chain.records();
    return sum;
}

std::string manifestLine(const PackManifest& manifest)
{
    Json::Array chains;
    for (const PackChain& chain : manifest.chains)
        chains.push_back(Json::Object{
            {"from", chain.from}, {"key", toHex(chain.key)}, {"station", chain.station}, {"to", chain.to}});
    return canonicalText(
               Json::Object{{"by", manifest.by}, {"chains", std::move(chains)}, {"format", formatName},
                   {"key", toHex(manifest.key)}, {"madeAt", toMs(manifest.madeAt)}, {"version", packVersion}})
        + '\n';
}

Result<PackManifest> readManifest(std::string_view line, const PackLimits& limits)
{
    const auto json = readCanonical(line);
    if (!json)
        return tl::unexpected(json.error());
    PackManifest manifest;
    std::string format;
    std::int64_t version = 0;
    const Json::Array* chains = nullptr;
    Fields fields(*json);
    fields.text("by", manifest.by);
    fields.array("chains", chains);
    fields.text("format", format);
    fields.hex("key", manifest.key);
    fields.time("madeAt", manifest.madeAt);
    fields.integer("version", version);
    if (const auto done = fields.end("the manifest"); !done)
        return tl::unexpected(done.error());
    if (format != formatName || version != packVersion)
        return fail(ErrorCode::BadDocument, "the manifest is of another format");
    if (stationId(manifest.key) != manifest.by)
        return fail(ErrorCode::Forged, "the station that packed it is not that of its key");
    if (const auto read = readChains(*chains, manifest, limits); !read)
        return tl::unexpected(read.error());
    return manifest;
}

std::string endLine(const PackEnd& end)
{
    return canonicalText(Json::Object{
               {"records", end.records}, {"sha256", toHex(end.digest)}, {"signature", toHex(end.signature)}})
        + '\n';
}

Result<PackEnd> readEnd(std::string_view line)
{
    const auto json = readCanonical(line);
    if (!json)
        return tl::unexpected(json.error());
    PackEnd end;
    Fields fields(*json);
    fields.integer("records", end.records);
    fields.hex("sha256", end.digest);
    fields.hex("signature", end.signature);
    if (const auto done = fields.end("the last line"); !done)
        return tl::unexpected(done.error());
    return end;
}

std::vector<unsigned char> endMessage(const Hash& digest)
{
    std::vector<unsigned char> message(endDomain.size() + digest.size());
    std::ranges::copy(digest, std::ranges::copy(endDomain, message.begin()).out);
    return message;
}

std::string toHex(std::span<const unsigned char> bytes)
{
    std::string text(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

bool fromHex(std::string_view hex, std::span<unsigned char> out)
{
    if (hex.size() != out.size() * 2)
        return false;
    const auto digit = [](char c) {
        return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
    };
    for (std::size_t i = 0; i < out.size(); ++i) {
        const int high = digit(hex[2 * i]);
        const int low = digit(hex[2 * i + 1]);
        if (high < 0 || low < 0)
            return false;
        out[i] = static_cast<unsigned char>(high << 4 | low);
    }
    return true;
}

bool isStationId(std::string_view text)
{
    return text.size() == 16
        && std::ranges::all_of(text, [](char c) { return (c >= 'a' && c <= 'z') || (c >= '2' && c <= '7'); });
}

}
