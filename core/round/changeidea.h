// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/json.h"

#include <optional>
#include <vector>

namespace cradlepost {

/**
 * Something that a unit tries in order to be ready more often: the body of a `note-of-change` record. A later
 * record of the same id puts it right or ends it.
 */
struct ChangeIdea
{
    std::string id; ///< 1 to 40 of a-z, 0-9 and -
    std::string title; ///< one line of 3 to 120 characters: "Check the kits at handover"
    Date from; ///< the first day of it
    std::optional<Date> until; ///< the last day of it; nothing: it goes on
    std::vector<std::string> items; ///< ids of the items it is for; empty: all
    std::string hope; ///< what is expected of it, one line of at most 200 characters; may be empty
    bool operator==(const ChangeIdea&) const = default;

    [[nodiscard]] bool isOn(Date day) const { return from <= day && (!until || day <= *until); }
};

/** What the members say; the error says which of them does not hold. */
Result<void> checkChangeIdea(const ChangeIdea& idea);
Json toBody(const ChangeIdea& idea);
/** Fails on anything that toBody would not have written. */
Result<ChangeIdea> changeIdeaFromBody(const Json& body);

}
