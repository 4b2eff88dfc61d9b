// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packbytes.h"

#include <string>
#include <string_view>
#include <vector>

namespace cradlepost {

/** Whether a file that is there may be replaced. */
enum class Overwrite { Refuse, Replace };

/**
 * A file that is whole under its name or not there: it is written beside it, synced, then named. Dropped
 * without finish() it leaves nothing. All functions throw Failure.
 */
class FileSink final : public ByteSink
{
public:
    /** Refuses at once when a file is there and may not be replaced, or is none that could be. */
    FileSink(std::string path, Overwrite overwrite);
    ~FileSink() override;
    FileSink(const FileSink&) = delete;
    FileSink& operator=(const FileSink&) = delete;

    void write(std::span<const unsigned char> bytes) override;
    void write(std::string_view text);
    void finish() override;

private:
    void flush();

    std::string m_path;
    std::string m_draft;
    Overwrite m_overwrite;
    int m_descriptor = -1;
    std::vector<unsigned char> m_buffer;
};

/** An ordinary file, read from its start. Throws Failure. */
class FileSource final : public ByteSource
{
public:
    explicit FileSource(std::string path);
    ~FileSource() override;
    FileSource(const FileSource&) = delete;
    FileSource& operator=(const FileSource&) = delete;

    std::size_t read(std::span<unsigned char> into) override;
    /** Up to and without the next line end, which is taken; what is there when none comes within `most`
     * bytes. */
    std::string readLine(std::size_t most);

private:
    std::string m_path;
    int m_descriptor = -1;
};

}
