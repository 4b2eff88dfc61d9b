// SPDX-License-Identifier: MIT
#include "core/exchange/packcipher.h"

#include "core/store/failure.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr std::size_t pieceBytes = std::size_t{64} << 10U;
constexpr std::size_t extraBytes = crypto_secretstream_xchacha20poly1305_ABYTES;
using Key = std::array<unsigned char, crypto_secretstream_xchacha20poly1305_KEYBYTES>;
using Header = std::array<unsigned char, crypto_secretstream_xchacha20poly1305_HEADERBYTES>;

const unsigned char* bytesOf(const std::string& text)
{
    return reinterpret_cast<const unsigned char*>(text.data());
}

[[noreturn]] void refuseTorn()
{
    refuse(ErrorCode::BadDocument, "the pack ends too early", "Copy it again from where it was made.");
}

}

SealedSink::SealedSink(ByteSink& to, const PublicKey& receiver, std::string headLine)
    : m_to(to)
    , m_head(std::move(headLine))
{
    Key key;
    Header header;
    crypto_secretstream_xchacha20poly1305_keygen(key.data());
    crypto_secretstream_xchacha20poly1305_init_push(&m_state, header.data(), key.data());
    const auto box = sealedFor(receiver, key);
    sodium_memzero(key.data(), key.size());
    if (!box)
        refuse(ErrorCode::InvalidArgument, "the receiver's key is none that can be sealed to");
    m_to.write(*box);
    m_to.write(header);
    m_piece.reserve(pieceBytes);
}

SealedSink::~SealedSink() { sodium_memzero(&m_state, sizeof m_state); }

void SealedSink::write(std::span<const unsigned char> bytes)
{
    while (!bytes.empty()) {
        if (m_piece.size() == pieceBytes) {
            push(m_piece, 0);
            m_piece.clear();
        }
        const auto part = bytes.first(std::min(bytes.size(), pieceBytes - m_piece.size()));
        m_piece.insert(m_piece.end(), part.begin(), part.end());
        bytes = bytes.subspan(part.size());
    }
}

void SealedSink::finish()
{
    push(m_piece, crypto_secretstream_xchacha20poly1305_TAG_FINAL);
    m_piece.clear();
    m_to.finish();
}

void SealedSink::push(std::span<const unsigned char> piece, unsigned char tag)
{
    std::vector<unsigned char> sealed(piece.size() + extraBytes);
    crypto_secretstream_xchacha20poly1305_push(
        &m_state, sealed.data(), nullptr, piece.data(), piece.size(), bytesOf(m_head), m_head.size(), tag);
    m_to.write(sealed);
}

SealedSource::SealedSource(ByteSource& from, const StationKey& receiver, std::string headLine)
    : m_from(from)
    , m_head(std::move(headLine))
{
    std::array<unsigned char, crypto_box_SEALBYTES + std::tuple_size_v<Key>> box;
    Header header;
    if (m_from.read(box) < box.size() || m_from.read(header) < header.size())
        refuseTorn();
    auto key = receiver.unseal(box);
    if (!key)
        refuse(ErrorCode::Forged, "the pack was changed after it was sealed", "Ask for it again.");
    const int begun = crypto_secretstream_xchacha20poly1305_init_pull(&m_state, header.data(), key->data());
    sodium_memzero(key->data(), key->size());
    if (begun != 0)
        refuse(ErrorCode::Forged, "the pack was changed after it was sealed", "Ask for it again.");
}

SealedSource::~SealedSource() { sodium_memzero(&m_state, sizeof m_state); }

std::size_t SealedSource::read(std::span<unsigned char> into)
{
    std::size_t got = 0;
    while (got < into.size()) {
        if (m_taken == m_piece.size()) {
            if (m_last)
                break;
            pull();
            continue;
        }
        const std::size_t part = std::min(into.size() - got, m_piece.size() - m_taken);
        std::copy_n(m_piece.begin() + static_cast<std::ptrdiff_t>(m_taken), part,
            into.begin() + static_cast<std::ptrdiff_t>(got));
        m_taken += part;
        got += part;
    }
    return got;
}

void SealedSource::pull()
{
    std::vector<unsigned char> sealed(pieceBytes + extraBytes);
    sealed.resize(m_from.read(sealed));
    if (sealed.size() < extraBytes)
        refuseTorn();
    m_piece.resize(sealed.size() - extraBytes);
    m_taken = 0;
    unsigned char tag = 0;
    const int opened = crypto_secretstream_xchacha20poly1305_pull(&m_state, m_piece.data(), nullptr, &tag,
        sealed.data(), sealed.size(), bytesOf(m_head), m_head.size());
    if (opened != 0)
        refuse(ErrorCode::Forged, "the pack ends too early or was changed after it was sealed",
            "Ask for it again.");
    m_last = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
    unsigned char more = 0;
    if (m_last && m_from.read(std::span(&more, 1)) != 0)
        refuse(ErrorCode::BadDocument, "something stands behind the end of the pack");
}

}
