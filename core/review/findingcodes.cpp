// SPDX-License-Identifier: MIT
#include "core/review/findings.h"

namespace cradlepost {

const char* codeName(MonthFindingCode code)
{
    switch (code) {
    case MonthFindingCode::NothingDone:
        return "nothing-done";
    case MonthFindingCode::TooLittle:
        return "too-little";
    case MonthFindingCode::HowReady:
        return "how-ready";
    case MonthFindingCode::Fell:
        return "fell";
    case MonthFindingCode::Rose:
        return "rose";
    case MonthFindingCode::NoChange:
        return "no-change";
    case MonthFindingCode::Incomplete:
        return "incomplete";
    case MonthFindingCode::LostMost:
        return "lost-most";
    case MonthFindingCode::ShiftDiffers:
        return "shift-differs";
    case MonthFindingCode::WeekdayDiffers:
        return "weekday-differs";
    case MonthFindingCode::ReadingsOutside:
        return "readings-outside";
    case MonthFindingCode::EquipmentDown:
        return "equipment-down";
    case MonthFindingCode::TimeToRestore:
        return "time-to-restore";
    case MonthFindingCode::CriticalOpen:
        return "critical-open";
    case MonthFindingCode::ChangeBetter:
        return "change-better";
    case MonthFindingCode::ChangeWorse:
        return "change-worse";
    case MonthFindingCode::ChangeOpen:
        return "change-open";
    case MonthFindingCode::AskRepeats:
        return "ask-repeats";
    case MonthFindingCode::AskPace:
        return "ask-pace";
    case MonthFindingCode::AskRounding:
        return "ask-rounding";
    case MonthFindingCode::AskSameReading:
        return "ask-same-reading";
    case MonthFindingCode::AskLate:
        return "ask-late";
    case MonthFindingCode::AskAgreement:
        break;
    }
    return "ask-agreement";
}

const char* codeName(MonthPart part)
{
    switch (part) {
    case MonthPart::Done:
        return "done";
    case MonthPart::Readiness:
        return "readiness";
    case MonthPart::Course:
        return "course";
    case MonthPart::Lost:
        return "lost";
    case MonthPart::ItemWeeks:
        return "item-weeks";
    case MonthPart::ByShift:
        return "by-shift";
    case MonthPart::ByWeekday:
        return "by-weekday";
    case MonthPart::Readings:
        return "readings";
    case MonthPart::Restore:
        return "restore";
    case MonthPart::OpenGaps:
        return "open-gaps";
    case MonthPart::Availability:
        return "availability";
    case MonthPart::Trust:
        return "trust";
    case MonthPart::Changes:
        break;
    }
    return "changes";
}

}
