// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <nettle/sha2.h>
#include <string_view>

namespace cradlepost {

using Hash = std::array<unsigned char, 32>; ///< SHA-256

/**
 * SHA-256 (FIPS 180-4) as it goes. By nettle: it uses the processor's own instructions for it, and whole ledgers are
 * hashed when they are verified or taken in.
 */
class Sha256
{
public:
    Sha256() { nettle_sha256_init(&m_state); }
    void add(std::string_view text)
    {
        nettle_sha256_update(&m_state, text.size(), reinterpret_cast<const unsigned char*>(text.data()));
    }
    [[nodiscard]] Hash soFar() const
    {
        sha256_ctx state = m_state;
        Hash hash;
        nettle_sha256_digest(&state, hash.size(), hash.data());
        return hash;
    }

private:
    sha256_ctx m_state{};
};

inline Hash sha256(std::string_view text)
{
    Sha256 digest;
    digest.add(text);
    return digest.soFar();
}

}
