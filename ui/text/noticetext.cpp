// SPDX-License-Identifier: MIT
#include "ui/text/noticetext.h"

#include "ui/text/boardtext.h"

namespace cradlepost {

NoticeText::NoticeText(
    const Store& store, const ShiftView& shift, const BoardView& board, const Language& language, Instant now)
    : m_store(store)
    , m_shift(shift)
    , m_board(board)
    , m_language(language)
    , m_times(language, shift.calendar.zone())
    , m_now(now)
{
}

QString NoticeText::item(const std::string& id) const
{
    const auto found = itemNamed(m_store, m_shift, id);
    return found ? m_language.wording(found->label) : qs(id);
}

QString NoticeText::sentence(const Notice& notice) const
{
    const BoardText board(m_times, m_board, m_now);
    const QString at = m_times.moment(notice.at, m_now);
    switch (notice.code) {
    case NoticeCode::BirthWithoutWarmer:
        return tr("No warm place in time: birth %1").arg(board.birth(notice.subject));
    case NoticeCode::BirthWithoutKit:
        return tr("No kit is left: birth %1").arg(board.birth(notice.subject));
    case NoticeCode::SwitchOnWarmer:
        return tr("Switch %1 on by %2").arg(board.device(notice.subject), at);
    case NoticeCode::WarmerOffTooSoon:
        return tr("%1 went off at %2, a birth is near").arg(board.device(notice.subject), at);
    case NoticeCode::GapOverdue:
        return tr("Late since %1: %2").arg(at, item(notice.subject));
    case NoticeCode::RoundDue:
        return tr("The round of this shift is due");
    case NoticeCode::RoundOverdue:
        return tr("The round of this shift is late since %1").arg(at);
    case NoticeCode::FridgeReadingDue:
        return tr("Read %1, due from %2").arg(board.device(notice.subject), at);
    case NoticeCode::UpkeepOverdue:
        return tr("Upkeep of %1 is overdue").arg(board.device(notice.subject));
    case NoticeCode::WarmerReady:
        break;
    }
    return tr("%1 is warm since %2").arg(board.device(notice.subject), at);
}

}
