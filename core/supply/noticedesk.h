// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/notices.h"

namespace cradlepost {

/** After how long a notice that was put away and still holds is shown again; none: not again. Common
 * practice, no source: what a birth hangs on after 10 minutes, what is late after an hour. */
std::optional<std::chrono::minutes> repeatsAfter(NoticeCode code);

/** What a person has seen and put away. */
class NoticeDesk
{
public:
    void putAway(const Notice& notice, Instant now) { m_away[notice.key] = now; }
    /** Of `notices` those to be shown at `now`, by weight, then first due first. */
    [[nodiscard]] std::vector<Notice> toShow(std::vector<Notice> notices, Instant now) const;

private:
    std::map<std::string, Instant> m_away; ///< by key: when
};

}
