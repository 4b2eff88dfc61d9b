// SPDX-License-Identifier: MIT
#include "core/exchange/packfile.h"

#include "core/store/failure.h"
#include "core/store/filecopy.h"
#include "core/store/sqlerror.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace cradlepost {

namespace {

constexpr std::size_t bufferBytes = std::size_t{64} << 10U;

[[noreturn]] void throwErrno(const std::string& doing) { throw Failure{systemError(errno, doing)}; }

void checkPlace(const std::string& path, Overwrite overwrite)
{
    struct stat there
    {
    };
    if (::lstat(path.c_str(), &there) != 0)
        return;
    if (!S_ISREG(there.st_mode))
        refuse(ErrorCode::InvalidArgument, path + " is there and is no file that could be replaced",
            "Choose another name.");
    if (overwrite == Overwrite::Refuse)
        refuse(
            ErrorCode::AlreadyExists, path + " is there already", "Choose another name, or say --replace.");
}

}

FileSink::FileSink(std::string path, Overwrite overwrite)
    : m_path(std::move(path))
    , m_draft(m_path + ".XXXXXX")
    , m_overwrite(overwrite)
{
    checkPlace(m_path, m_overwrite);
    m_descriptor = ::mkostemp(m_draft.data(), O_CLOEXEC);
    if (m_descriptor < 0)
        throwErrno("write " + m_path);
    m_buffer.reserve(bufferBytes);
}

FileSink::~FileSink()
{
    if (m_descriptor < 0)
        return;
    ::close(m_descriptor);
    ::unlink(m_draft.c_str());
}

void FileSink::write(std::span<const unsigned char> bytes)
{
    m_buffer.insert(m_buffer.end(), bytes.begin(), bytes.end());
    if (m_buffer.size() >= bufferBytes)
        flush();
}

void FileSink::write(std::string_view text)
{
    write(std::span(reinterpret_cast<const unsigned char*>(text.data()), text.size()));
}

void FileSink::flush()
{
    std::span<const unsigned char> rest(m_buffer);
    while (!rest.empty()) {
        const ssize_t written = ::write(m_descriptor, rest.data(), rest.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            throwErrno("write " + m_path);
        rest = rest.subspan(static_cast<std::size_t>(written));
    }
    m_buffer.clear();
}

void FileSink::finish()
{
    flush();
    if (::fsync(m_descriptor) != 0)
        throwErrno("write " + m_path);
    checkPlace(m_path, m_overwrite);
    if (m_overwrite == Overwrite::Refuse) {
        publish(m_draft, m_path);
    } else {
        if (::rename(m_draft.c_str(), m_path.c_str()) != 0)
            throwErrno("write " + m_path);
        syncFolderOf(m_path);
    }
    ::close(m_descriptor);
    m_descriptor = -1;
}

FileSource::FileSource(std::string path)
    : m_path(std::move(path))
    , m_descriptor(::open(m_path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK))
{
    if (m_descriptor < 0)
        throwErrno("read " + m_path);
    struct stat there
    {
    };
    if (::fstat(m_descriptor, &there) == 0 && S_ISREG(there.st_mode))
        return;
    ::close(m_descriptor);
    refuse(ErrorCode::InvalidArgument, m_path + " is no ordinary file", "Copy it to a file first.");
}

FileSource::~FileSource() { ::close(m_descriptor); }

std::size_t FileSource::read(std::span<unsigned char> into)
{
    std::size_t got = 0;
    while (got < into.size()) {
        const ssize_t n = ::read(m_descriptor, into.data() + got, into.size() - got);
        if (n < 0 && errno == EINTR)
            continue;
        if (n < 0)
            throwErrno("read " + m_path);
        if (n == 0)
            break;
        got += static_cast<std::size_t>(n);
    }
    return got;
}

std::string FileSource::readLine(std::size_t most)
{
    std::string line;
    unsigned char byte = 0;
    while (line.size() < most && read(std::span(&byte, 1)) == 1) {
        if (byte == '\n')
            return line;
        line += static_cast<char>(byte);
    }
    return line;
}

}
