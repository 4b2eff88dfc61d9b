// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/boardview.h"
#include "ui/text/timetext.h"

namespace cradlepost {

/** A notice in one short sentence. */
class NoticeText
{
    Q_DECLARE_TR_FUNCTIONS(NoticeText)
public:
    NoticeText(const Store& store, const ShiftView& shift, const BoardView& board, const Language& language,
        Instant now);

    [[nodiscard]] QString sentence(const Notice& notice) const;

private:
    [[nodiscard]] QString item(const std::string& id) const;

    const Store& m_store;
    const ShiftView& m_shift;
    const BoardView& m_board;
    const Language& m_language;
    TimeText m_times;
    Instant m_now;
};

}
