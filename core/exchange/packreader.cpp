// SPDX-License-Identifier: MIT
#include "core/exchange/packreader.h"

#include "core/exchange/packcipher.h"
#include "core/store/failure.h"

namespace cradlepost {

PackReader::PackReader(
    const std::string& path, const std::function<StationKey()>& key, const PackLimits& limits)
    : m_file(std::make_unique<FileSource>(path))
{
    constexpr std::size_t longestHead = 80;
    m_head = need(readHead(m_file->readLine(longestHead)));
    ByteSource* source = m_file.get();
    if (m_head.receiver) {
        const StationKey own = key();
        if (own.id() != *m_head.receiver)
            refuse(ErrorCode::InvalidArgument,
                "it is sealed for station " + *m_head.receiver + "; this one is " + own.id(),
                "Ask for a pack for this station.");
        m_opened = std::make_unique<SealedSource>(*m_file, own, headLine(m_head));
        source = m_opened.get();
    }
    m_lines = std::make_unique<LineSource>(*source, limits);
    m_manifest = need(readManifest(m_lines->next(), limits));
}

std::string_view PackReader::nextLine() { return m_lines->next(); }

Hash PackReader::finish()
{
    const Hash digest = m_lines->digest();
    const PackEnd end = need(readEnd(m_lines->next()));
    m_lines->expectEnd();
    if (end.records != m_manifest.records())
        refuse(ErrorCode::BadDocument, "its last line counts other records than its first");
    if (end.digest != digest)
        refuse(ErrorCode::Forged, "it was changed after it was made: the sum over its lines does not fit",
            "Copy it again from where it was made.");
    const auto message = endMessage(digest);
    if (crypto_sign_verify_detached(
            end.signature.data(), message.data(), message.size(), m_manifest.key.data())
        != 0)
        refuse(ErrorCode::Forged, "the signature at its end is not that of the station that packed it");
    return digest;
}

}
