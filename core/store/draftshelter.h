// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/drafttable.h"

namespace cradlepost {

/**
 * Drafts that could not reach the server, in a file of this station until it is there again. Of two drafts of
 * one unit and kind the one saved last stays.
 */
class DraftShelter
{
public:
    explicit DraftShelter(std::string file)
        : m_file(std::move(file))
    {
    }

    void keep(const Draft& draft, Instant now);
    void drop(const std::string& unit, RoundKind kind);
    /** Moves what is here to the server. */
    void bringBack(Database& server);

private:
    [[nodiscard]] bool isThere() const;
    [[nodiscard]] std::unique_ptr<Database> open() const;

    std::string m_file;
};

}
