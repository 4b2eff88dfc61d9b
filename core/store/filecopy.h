// SPDX-License-Identifier: MIT
#pragma once

#include <string>

namespace cradlepost {

// Files that must outlive a cut of power at any moment. All throw Failure.

/** What was written to the file, or to the list of names of the folder, is on the disk when it returns. */
void syncFile(const std::string& path);
void syncFolderOf(const std::string& path);
/** Copies the bytes and syncs them; `to` is replaced. */
void copyFile(const std::string& from, const std::string& to);
/** Gives the whole file `draft` the name `to`; throws AlreadyExists when something has it. */
void publish(const std::string& draft, const std::string& to);
/** A second name for the same bytes, or a copy where the file system knows no second names. */
void keepUnder(const std::string& path, const std::string& name);

}
