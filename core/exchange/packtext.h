// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packbytes.h"
#include "core/exchange/packformat.h"

#include <zlib.h>

namespace cradlepost {

;

/** Lines on their way into one zlib stream. Throws Failure. */
class LineSink
{
public:
    explicit LineSink(ByteSink& to);
    ~LineSink();
    LineSink(const LineSink&) = delete;
    LineSink& operator=(const LineSink&) = delete;

    /** With its end. */
    void write(std::string_view line);
    void finish();
    [[nodiscard]] Hash digest() const { return m_digest.soFar(); }

private:
    void deflate(std::string_view text, int flush);

    ByteSink& m_to;
    z_stream m_stream{};
    Sha256 m_digest;
};

/** Lines out of one zlib stream, within the limits. Throws Failure. */
class LineSource
{
public:
    LineSource(ByteSource& from, const PackLimits& limits);
    ~LineSource();
    LineSource(const LineSource&) = delete;
    LineSource& operator=(const LineSource&) = delete;

    /** The next line without its end; refuses when there is none. Good until the next call. */
    std::string_view next();
    /** Of all lines so far, their ends in. */
    [[nodiscard]] Hash digest() const { return m_digest.soFar(); }
    /** Refuses when anything stands behind the last line. */
    void expectEnd();

private:
    /** More text behind what is there; false at the end of the stream. */
    bool inflateMore();
    void checkSize() const;

    ByteSource& m_from;
    const PackLimits m_limits;
    z_stream m_stream{};
    std::vector<unsigned char> m_packed;
    std::string m_text; ///< from the line that comes next on
    std::size_t m_taken = 0; ///< of it
    std::int64_t m_packedBytes = 0;
    std::int64_t m_textBytes = 0;
    bool m_hungry = true; ///< nothing more comes out before something goes in
    bool m_ended = false;
    Sha256 m_digest;
};

}
