// SPDX-License-Identifier: MIT
#pragma once

#include <span>

namespace cradlepost {

/** Where the bytes of a pack come from. */
class ByteSource
{
public:
    virtual ~ByteSource() = default;
    /** As many bytes as there are up to the size of `into`; fewer only at the end. Throws Failure. */
    virtual std::size_t read(std::span<unsigned char> into) = 0;

protected:
    ByteSource() = default;
    ByteSource(const ByteSource&) = default;
    ByteSource& operator=(const ByteSource&) = default;
};

/** Where the bytes of a pack go. */
class ByteSink
{
public:
    virtual ~ByteSink() = default;
    /** Throws Failure. */
    virtual void write(std::span<const unsigned char> bytes) = 0;
    /** Nothing comes after it. */
    virtual void finish() = 0;

protected:
    ByteSink() = default;
    ByteSink(const ByteSink&) = default;
    ByteSink& operator=(const ByteSink&) = default;
};

}
