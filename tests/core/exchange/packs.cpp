// SPDX-License-Identifier: MIT
#include "packs.h"

#include "core/exchange/packfields.h"
#include "core/exchange/packrecord.h"
#include "core/ledger/canonical.h"
#include "core/store/verification.h"

#include <fstream>
#include <sodium.h>
#include <zlib.h>

namespace cradlepost::test {

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void writeBytes(const std::string& path, std::string_view bytes)
{
    std::ofstream(path, std::ios::binary | std::ios::trunc)
        .write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

std::optional<std::vector<std::string>> linesIn(std::string_view bytes)
{
    const std::string head = headLine({});
    if (!bytes.starts_with(head))
        return std::nullopt;
    bytes.remove_prefix(head.size());
    std::string text(std::size_t{64} << 20U, '\0');
    auto size = static_cast<uLongf>(text.size());
    auto taken = static_cast<uLong>(bytes.size());
    if (uncompress2(reinterpret_cast<Bytef*>(text.data()), &size,
            reinterpret_cast<const Bytef*>(bytes.data()), &taken)
            != Z_OK
        || taken != bytes.size())
        return std::nullopt;
    text.resize(size);
    std::vector<std::string> lines;
    for (std::size_t at = 0, end = 0; (end = text.find('\n', at)) != std::string::npos; at = end + 1)
        lines.push_back(text.substr(at, end - at));
    return lines;
}

std::vector<std::string> linesOf(const std::string& path)
{
    auto lines = linesIn(bytesOf(path));
    if (!lines)
        throw std::runtime_error(path + " is no plain pack");
    return std::move(*lines);
}

void writeLines(const std::string& path, const std::vector<std::string>& lines)
{
    std::string text;
    for (const std::string& line : lines)
        text += line + '\n';
    std::string packed(compressBound(static_cast<uLong>(text.size())), '\0');
    auto size = static_cast<uLongf>(packed.size());
    compress(reinterpret_cast<Bytef*>(packed.data()), &size, reinterpret_cast<const Bytef*>(text.data()),
        static_cast<uLong>(text.size()));
    writeBytes(path, headLine({}) + packed.substr(0, size));
}

void endAnew(std::vector<std::string>& lines, const StationKey& key)
{
    std::string before;
    for (std::size_t i = 0; i + 1 < lines.size(); ++i)
        before += lines[i] + '\n';
    PackEnd end{.records = static_cast<std::int64_t>(lines.size()) - 2};
    crypto_hash_sha256(
        end.digest.data(), reinterpret_cast<const unsigned char*>(before.data()), before.size());
    end.signature = key.sign(endMessage(end.digest));
    lines.back() = endLine(end);
    lines.back().pop_back();
}

std::string manifestWith(
    const std::string& line, const std::vector<std::pair<std::int64_t, std::int64_t>>& ranges)
{
    PackManifest manifest = must(readManifest(line, {}));
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        manifest.chains[i].from = ranges[i].first;
        manifest.chains[i].to = ranges[i].second;
    }
    std::string text = manifestLine(manifest);
    text.pop_back();
    return text;
}

std::string recordWith(
    const std::string& line, const std::function<void(Record&)>& change, const StationKey* key)
{
    Record record = must(readRecord(line)).record;
    change(record);
    if (key != nullptr)
        seal(record, *key);
    std::string text = recordLine(record);
    text.pop_back();
    return text;
}

void Station::walk(const std::string& unit, int day, int shift)
{
    const Checklist checklist = must(store->checklist("plain", 1));
    auto round = aRound(checklist).on(addDays(firstDay, day), shift);
    round.withGap("item-" + std::to_string((day * 2 + shift) / 3 % 12));
    const RoundRecord record = round.done();
    clock.set(record.finished);
    must(store->saveRound(unit, record, "AB"));
}

std::string Station::ledger() const
{
    std::string text;
    for (const Chain& chain : must(store->chains()))
        must(store->records(chain.station, 1, chain.seq, [&](const Record& record) -> Result<void> {
            text += recordLine(record);
            return {};
        }));
    for (const TrustedStation& trusted : must(store->trustedStations()))
        text += trusted.station + ' ' + trusted.name + ' ' + std::to_string(trusted.units.size()) + '\n';
    return text;
}

std::string difference(const Station& a, const Station& b)
{
    const auto records = [](const Station& station) {
        std::vector<std::pair<std::string, std::int64_t>> tips;
        std::vector<Hash> hashes;
        for (const Chain& chain : must(station.store->chains())) {
            tips.emplace_back(chain.station, chain.seq);
            hashes.push_back(chain.hash);
        }
        return std::pair(tips, hashes);
    };
    if (records(a) != records(b))
        return "other records";
    Database first(a.path(), Database::Access::ReadOnly);
    Database second(b.path(), Database::Access::ReadOnly);
    const auto fault = compareProjections(first, second);
    return fault ? fault->where + ": " + fault->what : "";
}

}
