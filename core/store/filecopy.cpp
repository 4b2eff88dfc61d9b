// SPDX-License-Identifier: MIT
#include "core/store/filecopy.h"

#include "core/store/failure.h"
#include "core/store/sqlerror.h"

#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

namespace cradlepost {

namespace {

[[noreturn]] void throwErrno(const std::string& doing) { throw Failure{systemError(errno, doing)}; }

void syncPath(const std::string& path)
{
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0)
        throwErrno("open " + path);
    const int synced = ::fsync(descriptor);
    const int why = errno;
    ::close(descriptor);
    errno = why;
    if (synced != 0 && why != EINVAL) // some file systems cannot sync a folder
        throwErrno("write " + path);
}

}

void syncFile(const std::string& path) { syncPath(path); }

void syncFolderOf(const std::string& path)
{
    const auto folder = std::filesystem::path(path).parent_path();
    syncPath(folder.empty() ? "." : folder.string());
}

void copyFile(const std::string& from, const std::string& to)
{
    std::error_code error;
    std::filesystem::copy_file(from, to, std::filesystem::copy_options::overwrite_existing, error);
    if (error)
        throw Failure{systemError(error.value(), "copy " + from + " to " + to)};
    syncFile(to);
}

void publish(const std::string& draft, const std::string& to)
{
    if (::link(draft.c_str(), to.c_str()) == 0) {
        ::unlink(draft.c_str());
    } else if (errno == EEXIST || ::access(to.c_str(), F_OK) == 0) {
        errno = EEXIST;
        throwErrno("write " + to);
    } else if (::rename(draft.c_str(), to.c_str()) != 0) { // no second names on this file system
        throwErrno("rename " + draft + " to " + to);
    }
    syncFolderOf(to);
}

void keepUnder(const std::string& path, const std::string& name)
{
    if (::link(path.c_str(), name.c_str()) == 0)
        return;
    if (errno == EEXIST)
        throwErrno("keep " + path + " as " + name);
    copyFile(path, name);
}

}
