// SPDX-License-Identifier: MIT
#include "core/exchange/packtext.h"

#include "core/store/failure.h"

#include <array>
#include <new>

namespace cradlepost {

namespace {

constexpr std::size_t bufferBytes = std::size_t{64} << 10U;
constexpr std::int64_t freeBytes = std::int64_t{1} << 20U;

[[noreturn]] void refuseTorn()
{
    refuse(ErrorCode::BadDocument, "the pack ends too early", "Copy it again from where it was made.");
}

}

LineSink::LineSink(ByteSink& to)
    : m_to(to)
{
    if (deflateInit(&m_stream, Z_DEFAULT_COMPRESSION) != Z_OK)
        throw std::bad_alloc();
}

LineSink::~LineSink() { deflateEnd(&m_stream); }

void LineSink::write(std::string_view line)
{
    m_digest.add(line);
    deflate(line, Z_NO_FLUSH);
}

void LineSink::finish()
{
    deflate({}, Z_FINISH);
    m_to.finish();
}

void LineSink::deflate(std::string_view text, int flush)
{
    std::array<unsigned char, bufferBytes> out;
    m_stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(text.data())); // zlib only reads it
    m_stream.avail_in = static_cast<uInt>(text.size());
    do {
        m_stream.next_out = out.data();
        m_stream.avail_out = static_cast<uInt>(out.size());
        ::deflate(&m_stream, flush);
        m_to.write(std::span<const unsigned char>(out).first(out.size() - m_stream.avail_out));
    } while (m_stream.avail_out == 0);
}

LineSource::LineSource(ByteSource& from, const PackLimits& limits)
    : m_from(from)
    , m_limits(limits)
    , m_packed(bufferBytes)
{
    if (inflateInit(&m_stream) != Z_OK)
        throw std::bad_alloc();
}

LineSource::~LineSource() { inflateEnd(&m_stream); }

std::string_view LineSource::next()
{
    std::size_t searched = m_taken;
    std::size_t end = 0;
    while ((end = m_text.find('\n', searched)) == std::string::npos) {
        if (m_text.size() - m_taken > m_limits.lineBytes)
            refuse(ErrorCode::BadDocument,
                "a line is longer than " + std::to_string(m_limits.lineBytes) + " bytes");
        m_text.erase(0, m_taken);
        m_taken = 0;
        searched = m_text.size();
        if (!inflateMore())
            refuseTorn();
    }
    if (end - m_taken > m_limits.lineBytes)
        refuse(
            ErrorCode::BadDocument, "a line is longer than " + std::to_string(m_limits.lineBytes) + " bytes");
    const std::string_view whole = std::string_view(m_text).substr(m_taken, end + 1 - m_taken);
    m_taken = end + 1;
    m_digest.add(whole);
    return whole.substr(0, whole.size() - 1);
}

void LineSource::expectEnd()
{
    while (m_taken == m_text.size()) {
        m_text.clear();
        m_taken = 0;
        if (!inflateMore())
            return;
    }
    refuse(ErrorCode::BadDocument, "something stands behind the last line");
}

bool LineSource::inflateMore()
{
    if (m_ended)
        return false;
    if (m_hungry) {
        const std::size_t got = m_from.read(m_packed);
        m_packedBytes += static_cast<std::int64_t>(got);
        m_stream.next_in = m_packed.data();
        m_stream.avail_in = static_cast<uInt>(got);
        if (got == 0)
            refuseTorn();
    }
    const std::size_t had = m_text.size();
    m_text.resize(had + bufferBytes);
    m_stream.next_out = reinterpret_cast<Bytef*>(m_text.data() + had);
    m_stream.avail_out = static_cast<uInt>(bufferBytes);
    const int step = inflate(&m_stream, Z_NO_FLUSH);
    m_hungry = m_stream.avail_in == 0 && m_stream.avail_out > 0;
    m_text.resize(m_text.size() - m_stream.avail_out);
    m_textBytes += static_cast<std::int64_t>(m_text.size() - had);
    if (step != Z_OK && step != Z_STREAM_END && step != Z_BUF_ERROR)
        refuse(ErrorCode::BadDocument, "the pack is damaged: it cannot be decompressed",
            "Copy it again from where it was made.");
    checkSize();
    if (step == Z_STREAM_END) {
        unsigned char more = 0;
        if (m_stream.avail_in > 0 || m_from.read(std::span(&more, 1)) != 0)
            refuse(ErrorCode::BadDocument, "something stands behind the end of the pack");
        m_ended = true;
    }
    return true;
}

void LineSource::checkSize() const
{
    if (m_textBytes > m_limits.textBytes)
        refuse(ErrorCode::BadDocument,
            "it unpacks to more than " + std::to_string(m_limits.textBytes) + " bytes",
            "Ask for smaller packs, for example with --unit or --since.");
    // Only what was read counts, not what it may still unpack to, so that no memory is taken for it.
    if (m_textBytes > freeBytes && (m_textBytes - freeBytes) / m_limits.ratio > m_packedBytes - m_stream.avail_in)
        refuse(ErrorCode::BadDocument,
            "it unpacks to more than " + std::to_string(m_limits.ratio)
                + " times its size: no pack of records does");
}

}
