// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "core/store/handoverview.h"
#include "ui/report/handover/handoverdocument.h"

#include <cstdio>

namespace cradlepost {

int runReportHandover(const CommandContext& context, const std::string& out)
{
    const std::string& unit = context.options.unit;
    if (unit.empty())
        return complain({ErrorCode::InvalidArgument, "a handover is of one unit", "Name it with --unit."});
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const Instant now = context.clock.now();
    const auto shift = shiftView(**store, unit, now);
    if (!shift)
        return complain(shift.error());
    const auto board = boardView(**store, *shift, now);
    if (!board)
        return complain(board.error());
    const auto view = handoverView(**store, *shift, *board, now);
    if (!view)
        return complain(view.error());
    const TimeText times(context.language, shift->calendar.zone());
    const auto words = HandoverText(**store, *shift, *board, *view, context.language, now).words();
    const auto written
        = writeHandover(**store, words, context.language, times, now, QString::fromStdString(out));
    if (!written)
        return complain(written.error());
    std::printf("%s\n", out.c_str());
    return Done;
}

}
