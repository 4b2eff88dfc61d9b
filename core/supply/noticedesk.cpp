// SPDX-License-Identifier: MIT
#include "core/supply/noticedesk.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

std::optional<std::chrono::minutes> repeatsAfter(NoticeCode code)
{
    switch (code) {
    case NoticeCode::BirthWithoutWarmer:
    case NoticeCode::BirthWithoutKit:
    case NoticeCode::SwitchOnWarmer:
    case NoticeCode::WarmerOffTooSoon:
        return std::chrono::minutes(10);
    case NoticeCode::GapOverdue:
    case NoticeCode::RoundOverdue:
    case NoticeCode::FridgeReadingDue:
        return std::chrono::hours(1);
    case NoticeCode::UpkeepOverdue:
        return std::chrono::hours(12);
    case NoticeCode::RoundDue:
    case NoticeCode::WarmerReady:
        break;
    }
    return std::nullopt;
}

std::vector<Notice> NoticeDesk::toShow(std::vector<Notice> notices, Instant now) const
{
    std::erase_if(notices, [&](const Notice& notice) {
        const auto away = m_away.find(notice.key);
        if (away == m_away.end())
            return false;
        const auto again = repeatsAfter(notice.code);
        return !again || now < away->second + *again;
    });
    std::sort(notices.begin(), notices.end(), [](const Notice& a, const Notice& b) {
        return std::tie(a.code, a.at, a.key) < std::tie(b.code, b.at, b.key);
    });
    return notices;
}

}
