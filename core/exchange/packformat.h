// SPDX-License-Identifier: MIT
#pragma once

#include "core/ledger/record.h"

#include <optional>
#include <vector>

namespace cradlepost {

// The texts in a pack; DEVELOPERS.md describes the whole of it.

inline constexpr int packVersion = 1;

/** What a pack may hold at most. Beyond it is refused, before the memory for it is taken. */
struct PackLimits
{
    std::int64_t records = 10'000'000;
    std::int64_t chains = 10'000;
    std::size_t lineBytes = std::size_t{9} << 20U; ///< a record's body has 8 MiB at most
    std::int64_t textBytes = std::int64_t{64} << 30U;
    /** Text for each byte of its compressed form; packs of rounds stay below 20. The first MiB is free. */
    std::int64_t ratio = 200;
};

/** The first line, which is never compressed nor sealed. */
struct PackHead
{
    std::optional<std::string> receiver; ///< station that alone can open it; nothing: whoever has it
};
std::string headLine(const PackHead& head);
/** `line` without its end. NewerSchema when it is of a later version. */
Result<PackHead> readHead(std::string_view line);

/** Which records of a station are in the pack, both ends in. */
struct PackChain
{
    std::string station;
    PublicKey key{};
    std::int64_t from = 1;
    std::int64_t to = 0;
    [[nodiscard]] std::int64_t records() const { return to - from + 1; }
};

struct PackManifest
{
    std::string by; ///< station that packed it
    PublicKey key{};
    Instant madeAt;
    std::vector<PackChain> chains; ///< by station
    [[nodiscard]] std::int64_t records() const;
};
std::string manifestLine(const PackManifest& manifest);
Result<PackManifest> readManifest(std::string_view line, const PackLimits& limits);

/** The last line: what a torn or changed pack cannot have. */
struct PackEnd
{
    std::int64_t records = 0;
    Hash digest{}; ///< SHA-256 of all lines before, their ends in
    Signature signature{}; ///< by the packing station, of endMessage()
};
std::string endLine(const PackEnd& end);
Result<PackEnd> readEnd(std::string_view line);
/** What is signed: it can be mistaken for no record's hash. */
std::vector<unsigned char> endMessage(const Hash& digest);

// Bytes as lower-case hex.
std::string toHex(std::span<const unsigned char> bytes);
/** Whether `hex` was as many lower-case digits as fill `out`. */
bool fromHex(std::string_view hex, std::span<unsigned char> out);

/** Whether a text can be a station's id. */
bool isStationId(std::string_view text);

}
