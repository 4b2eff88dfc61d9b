// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cradlepost {

using PublicKey = std::array<unsigned char, 32>; ///< Ed25519

/** Station id: the first 10 bytes of SHA-256 of the public key in lower-case base32 (RFC 4648), 16 letters.
 */
std::string stationId(const PublicKey& key);

/**
 * A few bytes that only the station of this key can open (X25519 sealed box, from the key by the birational map
 * of RFC 7748). Nothing when the key is none that can be sealed to. Who sealed them cannot be told from it.
 */
std::optional<std::vector<unsigned char>> sealedFor(
    const PublicKey& station, std::span<const unsigned char> message);

/** A station's signing key (Ed25519, RFC 8032). Wiped from memory when dropped. */
class StationKey
{
public:
    /** From the system's random numbers. */
    static StationKey generate();
    /** From a 32-byte seed: for the demo and for tests. */
    static StationKey fromSeed(std::span<const unsigned char, 32> seed);
    /** Reads the key file, or makes one (mode 0600) when there is none. */
    static Result<StationKey> loadOrCreate(const std::string& path);

    StationKey(const StationKey&) = default;
    StationKey& operator=(const StationKey&) = default;
    ~StationKey();

    [[nodiscard]] const PublicKey& publicKey() const { return m_public; }
    [[nodiscard]] const std::string& id() const { return m_id; }
    [[nodiscard]] std::array<unsigned char, 64> sign(std::span<const unsigned char> message) const;
    /** What was sealedFor() this station; nothing when it was for another one or was changed. */
    [[nodiscard]] std::optional<std::vector<unsigned char>> unseal(std::span<const unsigned char> box) const;

private:
    StationKey() = default;
    PublicKey m_public{};
    std::array<unsigned char, 64> m_secret{};
    std::string m_id;
};

}
