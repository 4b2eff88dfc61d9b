// SPDX-License-Identifier: MIT
#include "tests/support/readonlyplace.h"

#include <fcntl.h>
#include <filesystem>
#include <linux/fs.h>
#include <sys/ioctl.h>
#include <sys/mount.h>
#include <unistd.h>
#include <vector>

namespace cradlepost::test {

namespace {

namespace fs = std::filesystem;

void setImmutable(const std::string& path, bool immutable)
{
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_NONBLOCK);
    if (descriptor < 0)
        return;
    int flags = 0;
    if (::ioctl(descriptor, FS_IOC_GETFLAGS, &flags) == 0) {
        flags = immutable ? flags | FS_IMMUTABLE_FL : flags & ~FS_IMMUTABLE_FL;
        ::ioctl(descriptor, FS_IOC_SETFLAGS, &flags);
    }
    ::close(descriptor);
}

std::vector<std::string> withContent(const std::string& folder)
{
    std::vector<std::string> paths;
    for (const auto& entry : fs::directory_iterator(folder))
        paths.push_back(entry.path().string());
    paths.push_back(folder);
    return paths;
}

}

SmallDisk::SmallDisk(const std::string& folder, int kilobytes)
    : m_folder(folder)
{
    const std::string size = "size=" + std::to_string(kilobytes) + "k";
    m_mounted = ::mount("tmpfs", folder.c_str(), "tmpfs", 0, size.c_str()) == 0;
}

SmallDisk::~SmallDisk()
{
    if (m_mounted)
        ::umount2(m_folder.c_str(), MNT_DETACH);
}

bool SmallDisk::close()
{
    return m_mounted && ::mount("tmpfs", m_folder.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0;
}

ClosedFolder::ClosedFolder(const std::string& folder)
    : m_folder(folder)
{
    for (const std::string& path : withContent(folder)) {
        std::error_code error;
        fs::permissions(path, fs::perms::owner_write | fs::perms::group_write | fs::perms::others_write,
            fs::perm_options::remove, error);
        if (::geteuid() == 0)
            setImmutable(path, true);
    }
    const std::string probe = folder + "/probe";
    const int descriptor = ::open(probe.c_str(), O_WRONLY | O_CREAT, 0600);
    m_closed = descriptor < 0;
    if (descriptor >= 0) {
        ::close(descriptor);
        ::unlink(probe.c_str());
    }
}

ClosedFolder::~ClosedFolder()
{
    if (::geteuid() == 0)
        setImmutable(m_folder, false);
    std::error_code error;
    fs::permissions(m_folder, fs::perms::owner_write, fs::perm_options::add, error);
    for (const std::string& path : withContent(m_folder)) {
        if (::geteuid() == 0)
            setImmutable(path, false);
        fs::permissions(path, fs::perms::owner_write, fs::perm_options::add, error);
    }
}

}
