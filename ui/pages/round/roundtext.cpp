// SPDX-License-Identifier: MIT
#include "ui/pages/round/roundtext.h"

#include "ui/text/wardtext.h"

#include <algorithm>

namespace cradlepost {

QString RoundText::title(RoundKind kind, const Shift& shift)
{
    if (kind != RoundKind::Shift)
        return WardText::roundKind(kind);
    if (shift.code == "day")
        return tr("Round of the day shift");
    if (shift.code == "night")
        return tr("Round of the night shift");
    if (shift.code == "morning")
        return tr("Round of the morning shift");
    if (shift.code == "evening")
        return tr("Round of the evening shift");
    return tr("Round of the shift %1").arg(TimeText::shiftName(shift.code));
}

VerdictState RoundText::state(Readiness readiness)
{
    switch (readiness) {
    case Readiness::NotReady:
        return VerdictState::NotReady;
    case Readiness::ReadyWithGaps:
        return VerdictState::ReadyWithGaps;
    case Readiness::Ready:
        break;
    }
    return VerdictState::Ready;
}

int RoundText::answered(const Draft& draft)
{
    return static_cast<int>(std::count_if(draft.asked.begin(), draft.asked.end(),
        [&](std::size_t at) { return at < draft.answers.size() && isChecked(draft.answers[at]); }));
}

QString RoundText::begin(RoundKind kind, const Draft* draft)
{
    if (draft != nullptr) {
        const QString progress
            = tr("%1 of %n answered", nullptr, static_cast<int>(draft->asked.size())).arg(answered(*draft));
        switch (kind) {
        case RoundKind::Shift:
            return tr("Take up the round · %1").arg(progress);
        case RoundKind::Recheck:
            return tr("Take up the re-check · %1").arg(progress);
        case RoundKind::PreBirth:
            return tr("Take up the check before a birth · %1").arg(progress);
        case RoundKind::AfterUse:
            return tr("Take up the check after use · %1").arg(progress);
        case RoundKind::SpotCheck:
            return tr("Take up the spot check · %1").arg(progress);
        }
    }
    switch (kind) {
    case RoundKind::Shift:
        return tr("Begin the round");
    case RoundKind::Recheck:
        return tr("Re-check what is missing");
    case RoundKind::PreBirth:
        return tr("Check before a birth");
    case RoundKind::SpotCheck:
        return tr("Spot check");
    case RoundKind::AfterUse:
        break;
    }
    return tr("Check after use");
}

QString RoundText::walker(const Draft& draft, const TimeText& times, Instant now)
{
    //: %1 initials, %2 a time
    return tr("%1, begun %2").arg(qs(draft.actor), times.moment(draft.started, now));
}

QString RoundText::late(const Draft& draft, const Shift& present, const TimeText& times)
{
    if (draft.shift.slot() == present.slot())
        return {};
    return tr("It counts for %1, and is late.").arg(times.shift(draft.shift));
}

}
