// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace cradlepost {

/**
 * A file that appears whole or not at all: written as a draft in the same folder, synced, then given its
 * name. A draft that is not published goes away. Errors: NotFound (no such folder), ReadOnly, DiskFull, Io.
 */
class WholeFile
{
public:
    /** Makes the empty draft of `path`. */
    static Result<WholeFile> draftOf(const std::string& path);
    WholeFile(WholeFile&& other) noexcept;
    WholeFile& operator=(WholeFile&&) = delete;
    ~WholeFile();

    /** Where to write. */
    [[nodiscard]] const std::string& draft() const { return m_draft; }
    /** Replaces what had the name before. */
    Result<void> publish();

private:
    WholeFile(std::string path, std::string draft);

    std::string m_path;
    std::string m_draft; ///< empty once published or moved from
};

/** The bytes under that name, whole or not at all. */
Result<void> writeWholeFile(const std::string& path, std::string_view bytes);

}
