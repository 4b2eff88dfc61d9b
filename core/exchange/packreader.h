// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packfile.h"
#include "core/exchange/packtext.h"

#include <functional>
#include <memory>

namespace cradlepost {

/**
 * Walks through the file of a pack and holds it to its format: head, manifest, as many lines as the manifest
 * says, the signed end. The record lines are handed on as they are. All functions throw Failure; its message
 * does not name the file.
 */
class PackReader
{
public:
    /** `key` opens what is sealed for its station; asked for only when it is needed. */
    PackReader(const std::string& path, const std::function<StationKey()>& key, const PackLimits& limits);

    [[nodiscard]] const PackHead& head() const { return m_head; }
    [[nodiscard]] const PackManifest& manifest() const { return m_manifest; }
    /** The next record line; to be called manifest().records() times. Good until the next call. */
    std::string_view nextLine();
    /** Reads the last line and holds it against all before. Gives their digest. */
    Hash finish();

private:
    PackHead m_head;
    PackManifest m_manifest;
    std::unique_ptr<FileSource> m_file;
    std::unique_ptr<ByteSource> m_opened; ///< when the pack is sealed
    std::unique_ptr<LineSource> m_lines;
};

}
