// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packbytes.h"
#include "core/ledger/stationkey.h"

#include <sodium.h>
#include <string>
#include <vector>

namespace cradlepost {

// The sealed part of a pack: a fresh key sealed for the receiver's station, then the text in pieces of 64 KiB
// under XChaCha20-Poly1305 (libsodium's secretstream). Each piece vouches for the first line of the file too,
// and the last one says that it is the last. All functions throw Failure.

/** Seals what goes through it. */
class SealedSink final : public ByteSink
{
public:
    SealedSink(ByteSink& to, const PublicKey& receiver, std::string headLine);
    ~SealedSink() override;
    SealedSink(const SealedSink&) = delete;
    SealedSink& operator=(const SealedSink&) = delete;
    void write(std::span<const unsigned char> bytes) override;
    void finish() override;

private:
    void push(std::span<const unsigned char> piece, unsigned char tag);

    ByteSink& m_to;
    std::string m_head;
    crypto_secretstream_xchacha20poly1305_state m_state{};
    std::vector<unsigned char> m_piece;
};

/** Opens what comes through it. */
class SealedSource final : public ByteSource
{
public:
    SealedSource(ByteSource& from, const StationKey& receiver, std::string headLine);
    ~SealedSource() override;
    SealedSource(const SealedSource&) = delete;
    SealedSource& operator=(const SealedSource&) = delete;
    std::size_t read(std::span<unsigned char> into) override;

private:
    void pull();

    ByteSource& m_from;
    std::string m_head;
    crypto_secretstream_xchacha20poly1305_state m_state{};
    std::vector<unsigned char> m_piece; ///< opened
    std::size_t m_taken = 0; ///< of it
    bool m_last = false;
};

}
