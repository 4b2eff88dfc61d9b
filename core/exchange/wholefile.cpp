// SPDX-License-Identifier: MIT
#include "core/exchange/wholefile.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>
#include <utility>

namespace cradlepost {

namespace {

ErrorCode codeOf(int why)
{
    switch (why) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return ErrorCode::DiskFull;
    case EACCES:
    case EPERM:
    case EROFS:
        return ErrorCode::ReadOnly;
    case ENOENT:
    case ENOTDIR:
        return ErrorCode::NotFound;
    default:
        return ErrorCode::Io;
    }
}

tl::unexpected<Error> refused(int why, const std::string& path)
{
    return fail(codeOf(why), "cannot write " + path + ": " + std::strerror(why));
}

/** 0, or why not. */
int sync(const std::string& path)
{
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        return errno;
    const int why = ::fsync(descriptor) == 0 || errno == EINVAL ? 0 : errno; // some cannot sync a folder
    ::close(descriptor);
    return why;
}

int writeAll(int descriptor, std::string_view bytes)
{
    while (!bytes.empty()) {
        const auto written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno != EINTR)
            return errno;
        if (written > 0)
            bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

}

WholeFile::WholeFile(std::string path, std::string draft)
    : m_path(std::move(path))
    , m_draft(std::move(draft))
{
}

WholeFile::WholeFile(WholeFile&& other) noexcept
    : m_path(std::move(other.m_path))
    , m_draft(std::exchange(other.m_draft, {}))
{
}

WholeFile::~WholeFile()
{
    if (!m_draft.empty())
        ::unlink(m_draft.c_str());
}

Result<WholeFile> WholeFile::draftOf(const std::string& path)
{
    std::error_code error;
    if (std::filesystem::is_directory(path, error))
        return fail(ErrorCode::InvalidArgument, path + " is a folder");
    // Two programs may write the same report; each has a draft of its own.
    const std::string stem = path + ".part" + std::to_string(::getpid());
    for (int i = 0;; ++i) {
        const std::string draft = i == 0 ? stem : stem + '-' + std::to_string(i);
        const int descriptor = ::open(draft.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
        if (descriptor >= 0) {
            ::close(descriptor);
            return WholeFile(path, draft);
        }
        if (errno != EEXIST)
            return refused(errno, path);
    }
}

Result<void> WholeFile::publish()
{
    if (const int why = sync(m_draft); why != 0)
        return refused(why, m_path);
    if (::rename(m_draft.c_str(), m_path.c_str()) != 0)
        return refused(errno, m_path);
    m_draft.clear();
    const auto folder = std::filesystem::path(m_path).parent_path();
    sync(folder.empty() ? "." : folder.string()); // the file is whole either way
    return {};
}

Result<void> writeWholeFile(const std::string& path, std::string_view bytes)
{
    auto file = WholeFile::draftOf(path);
    if (!file)
        return tl::unexpected(file.error());
    const int descriptor = ::open(file->draft().c_str(), O_WRONLY | O_CLOEXEC);
    if (descriptor < 0)
        return refused(errno, path);
    int why = writeAll(descriptor, bytes);
    if (::close(descriptor) != 0 && why == 0)
        why = errno;
    if (why != 0)
        return refused(why, path);
    return file->publish();
}

}
