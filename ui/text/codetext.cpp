// SPDX-License-Identifier: MIT
#include "ui/text/codetext.h"

#include <algorithm>
#include <QCoreApplication>
#include <string_view>

namespace cradlepost {

namespace {

struct Word
{
    std::string_view code;
    const char* word;
};

// Words of more than one meaning have one wording that fits all tables.
constexpr Word words[] = {
    {"above", QT_TRANSLATE_NOOP("CodeText", "above")},
    {"ac1", QT_TRANSLATE_NOOP("CodeText", "agreement coefficient AC1")},
    {"adjusted-kappa", QT_TRANSLATE_NOOP("CodeText", "kappa adjusted for prevalence and bias")},
    {"agreed", QT_TRANSLATE_NOOP("CodeText", "answers that agree with spot checks")},
    {"all", QT_TRANSLATE_NOOP("CodeText", "all")},
    {"amended", QT_TRANSLATE_NOOP("CodeText", "rounds amended")},
    {"amended-late", QT_TRANSLATE_NOOP("CodeText", "rounds amended after their shift")},
    {"ask-agreement", QT_TRANSLATE_NOOP("CodeText", "spot checks disagree")},
    {"ask-late", QT_TRANSLATE_NOOP("CodeText", "rounds late")},
    {"ask-pace", QT_TRANSLATE_NOOP("CodeText", "rounds entered too fast")},
    {"ask-repeats", QT_TRANSLATE_NOOP("CodeText", "rounds repeated")},
    {"ask-rounding", QT_TRANSLATE_NOOP("CodeText", "readings rounded")},
    {"ask-same-reading", QT_TRANSLATE_NOOP("CodeText", "readings that never vary")},
    {"availability", QT_TRANSLATE_NOOP("CodeText", "equipment")},
    {"below-floor", QT_TRANSLATE_NOOP("CodeText", "rounds faster than the floor")},
    {"beyond-limit", QT_TRANSLATE_NOOP("CodeText", "a point beyond its limits")},
    {"by-shift", QT_TRANSLATE_NOOP("CodeText", "by shift")},
    {"by-weekday", QT_TRANSLATE_NOOP("CodeText", "by weekday")},
    {"change-better", QT_TRANSLATE_NOOP("CodeText", "better since the change")},
    {"change-open", QT_TRANSLATE_NOOP("CodeText", "change: too early to say")},
    {"change-worse", QT_TRANSLATE_NOOP("CodeText", "worse since the change")},
    {"changes", QT_TRANSLATE_NOOP("CodeText", "change ideas")},
    {"complete", QT_TRANSLATE_NOOP("CodeText", "rounds done of those due")},
    {"course", QT_TRANSLATE_NOOP("CodeText", "week by week")},
    {"critical", QT_TRANSLATE_NOOP("CodeText", "critical")},
    {"critical-open", QT_TRANSLATE_NOOP("CodeText", "critical gaps open")},
    {"done", QT_TRANSLATE_NOOP("CodeText", "rounds done")},
    {"equal-pairs", QT_TRANSLATE_NOOP("CodeText", "pairs of equal rounds")},
    {"equal-pairs-chance", QT_TRANSLATE_NOOP("CodeText", "chance of so many equal pairs")},
    {"equal-pairs-expected", QT_TRANSLATE_NOOP("CodeText", "equal pairs by chance")},
    {"equipment-down", QT_TRANSLATE_NOOP("CodeText", "equipment out of use")},
    {"fell", QT_TRANSLATE_NOOP("CodeText", "fell")},
    {"how-ready", QT_TRANSLATE_NOOP("CodeText", "how ready")},
    {"in-time", QT_TRANSLATE_NOOP("CodeText", "in time")},
    {"incomplete", QT_TRANSLATE_NOOP("CodeText", "rounds missing")},
    {"item-weeks", QT_TRANSLATE_NOOP("CodeText", "items by week")},
    {"items-met", QT_TRANSLATE_NOOP("CodeText", "items met")},
    {"kappa", QT_TRANSLATE_NOOP("CodeText", "kappa")},
    {"late", QT_TRANSLATE_NOOP("CodeText", "late")},
    {"looked-at", QT_TRANSLATE_NOOP("CodeText", "items looked at")},
    {"lost", QT_TRANSLATE_NOOP("CodeText", "lost readiness")},
    {"lost-most", QT_TRANSLATE_NOOP("CodeText", "items that lose most")},
    {"lowest-index", QT_TRANSLATE_NOOP("CodeText", "lowest readiness index")},
    {"major", QT_TRANSLATE_NOOP("CodeText", "major")},
    {"mean-index", QT_TRANSLATE_NOOP("CodeText", "mean readiness index")},
    {"median-seconds", QT_TRANSLATE_NOOP("CodeText", "median length of a round")},
    {"median-seconds-per-item", QT_TRANSLATE_NOOP("CodeText", "median time for an item")},
    {"minor", QT_TRANSLATE_NOOP("CodeText", "minor")},
    {"missing", QT_TRANSLATE_NOOP("CodeText", "missing")},
    {"no-change", QT_TRANSLATE_NOOP("CodeText", "no change beyond chance")},
    {"no-critical-gap", QT_TRANSLATE_NOOP("CodeText", "without a critical gap")},
    {"no-data", QT_TRANSLATE_NOOP("CodeText", "nothing seen")},
    {"no-spread", QT_TRANSLATE_NOOP("CodeText", "all the same")},
    {"not-applicable", QT_TRANSLATE_NOOP("CodeText", "does not apply")},
    {"not-ready", QT_TRANSLATE_NOOP("CodeText", "not ready")},
    {"nothing-done", QT_TRANSLATE_NOOP("CodeText", "no rounds")},
    {"open-gaps", QT_TRANSLATE_NOOP("CodeText", "open gaps")},
    {"pairs", QT_TRANSLATE_NOOP("CodeText", "pairs")},
    {"paper", QT_TRANSLATE_NOOP("CodeText", "from paper")},
    {"readiness", QT_TRANSLATE_NOOP("CodeText", "readiness")},
    {"readings", QT_TRANSLATE_NOOP("CodeText", "readings")},
    {"readings-outside", QT_TRANSLATE_NOOP("CodeText", "readings outside their limits")},
    {"ready", QT_TRANSLATE_NOOP("CodeText", "ready")},
    {"ready-with-gaps", QT_TRANSLATE_NOOP("CodeText", "ready with gaps")},
    {"recorded-late", QT_TRANSLATE_NOOP("CodeText", "rounds recorded after their shift")},
    {"repeating", QT_TRANSLATE_NOOP("CodeText", "rounds that repeat an earlier one")},
    {"restore", QT_TRANSLATE_NOOP("CodeText", "time to mend")},
    {"rose", QT_TRANSLATE_NOOP("CodeText", "rose")},
    {"rounds", QT_TRANSLATE_NOOP("CodeText", "rounds")},
    {"run-on-one-side", QT_TRANSLATE_NOOP("CodeText", "a run on one side of the centre")},
    {"running", QT_TRANSLATE_NOOP("CodeText", "not done yet")},
    {"set", QT_TRANSLATE_NOOP("CodeText", "limits set")},
    {"share", QT_TRANSLATE_NOOP("CodeText", "share")},
    {"shift", QT_TRANSLATE_NOOP("CodeText", "shift")},
    {"shift-differs", QT_TRANSLATE_NOOP("CodeText", "a shift stands out")},
    {"spot-checks", QT_TRANSLATE_NOOP("CodeText", "spot checks")},
    {"time-to-restore", QT_TRANSLATE_NOOP("CodeText", "time to mend")},
    {"too-fast", QT_TRANSLATE_NOOP("CodeText", "rounds entered too fast")},
    {"too-few", QT_TRANSLATE_NOOP("CodeText", "too few")},
    {"too-few-points", QT_TRANSLATE_NOOP("CodeText", "too few points")},
    {"too-little", QT_TRANSLATE_NOOP("CodeText", "too little to say")},
    {"trend", QT_TRANSLATE_NOOP("CodeText", "a trend")},
    {"trust", QT_TRANSLATE_NOOP("CodeText", "trust in the entries")},
    {"weekday", QT_TRANSLATE_NOOP("CodeText", "weekday")},
    {"weekday-differs", QT_TRANSLATE_NOOP("CodeText", "a weekday stands out")},
};

}

QString CodeText::word(const std::string& code)
{
    const auto* found
        = std::find_if(std::begin(words), std::end(words), [&](const Word& one) { return one.code == code; });
    return found == std::end(words) ? QString::fromStdString(code)
                                    : QCoreApplication::translate("CodeText", found->word);
}

}
