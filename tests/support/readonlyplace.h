// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace cradlepost::test {

/**
 * A small file system of its own over a folder: full after so many kilobytes, or closed to writing. Works
 * only where the test may mount (root outside of most containers); isThere() says whether it did.
 */
class SmallDisk
{
public:
    SmallDisk(const std::string& folder, int kilobytes);
    ~SmallDisk();
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    [[nodiscard]] bool isThere() const { return m_mounted; }
    /** From now on nothing can be written; also to root. */
    bool close();

private:
    std::string m_folder;
    bool m_mounted = false;
};

/**
 * Closes a folder and the files in it to writing, for root too where the file system can (immutable flag).
 * Opens them again at the end.
 */
class ClosedFolder
{
public:
    explicit ClosedFolder(const std::string& folder);
    ~ClosedFolder();
    ClosedFolder(const ClosedFolder&) = delete;
    ClosedFolder& operator=(const ClosedFolder&) = delete;
    /** Whether a write is really refused now. */
    [[nodiscard]] bool isClosed() const { return m_closed; }

private:
    std::string m_folder;
    bool m_closed = false;
};

}
