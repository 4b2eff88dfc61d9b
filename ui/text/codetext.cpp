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
    {"ask-entries", QT_TRANSLATE_NOOP("CodeText", "entries to ask about")},
    {"ask-late", QT_TRANSLATE_NOOP("CodeText", "rounds late")},
    {"ask-pace", QT_TRANSLATE_NOOP("CodeText", "rounds entered too fast")},
    {"ask-repeats", QT_TRANSLATE_NOOP("CodeText", "rounds repeated")},
    {"ask-rounding", QT_TRANSLATE_NOOP("CodeText", "readings rounded")},
    {"ask-same-reading", QT_TRANSLATE_NOOP("CodeText", "readings that never vary")},
    {"availability", QT_TRANSLATE_NOOP("CodeText", "equipment")},
    {"below", QT_TRANSLATE_NOOP("CodeText", "below what chance allows")},
    {"below-floor", QT_TRANSLATE_NOOP("CodeText", "rounds faster than the floor")},
    {"beyond-limit", QT_TRANSLATE_NOOP("CodeText", "a point beyond its limits")},
    {"by-shift", QT_TRANSLATE_NOOP("CodeText", "by shift")},
    {"by-weekday", QT_TRANSLATE_NOOP("CodeText", "by weekday")},
    {"change-better", QT_TRANSLATE_NOOP("CodeText", "better since the change")},
    {"change-open", QT_TRANSLATE_NOOP("CodeText", "change: too early to say")},
    {"change-worse", QT_TRANSLATE_NOOP("CodeText", "worse since the change")},
    {"changes", QT_TRANSLATE_NOOP("CodeText", "change ideas")},
    {"complete", QT_TRANSLATE_NOOP("CodeText", "rounds done of those due")},
    {"could-move", QT_TRANSLATE_NOOP("CodeText", "stock that could move")},
    {"course", QT_TRANSLATE_NOOP("CodeText", "week by week")},
    {"critical", QT_TRANSLATE_NOOP("CodeText", "critical")},
    {"critical-gap", QT_TRANSLATE_NOOP("CodeText", "each critical gap open")},
    {"critical-open", QT_TRANSLATE_NOOP("CodeText", "critical gaps open")},
    {"critical-week", QT_TRANSLATE_NOOP("CodeText", "each week of the oldest")},
    {"dispersion-additive", QT_TRANSLATE_NOOP("CodeText", "limits widened by random effects: p of the test")},
    {"dispersion-multiplicative",
        QT_TRANSLATE_NOOP("CodeText", "limits widened by the factor of spread: p of the test")},
    {"dispersion-none", QT_TRANSLATE_NOOP("CodeText", "limits of chance alone: p of the test")},
    {"dispersion-phi", QT_TRANSLATE_NOOP("CodeText", "factor of spread, winsorised")},
    {"dispersion-tau", QT_TRANSLATE_NOOP("CodeText", "standard deviation between units")},
    {"done", QT_TRANSLATE_NOOP("CodeText", "rounds done")},
    {"engineer", QT_TRANSLATE_NOOP("CodeText", "the engineer")},
    {"equal-pairs", QT_TRANSLATE_NOOP("CodeText", "pairs of equal rounds")},
    {"equal-pairs-chance", QT_TRANSLATE_NOOP("CodeText", "chance of so many equal pairs")},
    {"equal-pairs-expected", QT_TRANSLATE_NOOP("CodeText", "equal pairs by chance")},
    {"equipment-down", QT_TRANSLATE_NOOP("CodeText", "equipment out of use")},
    {"fell", QT_TRANSLATE_NOOP("CodeText", "fell")},
    {"funnel", QT_TRANSLATE_NOOP("CodeText", "funnel")},
    {"higher", QT_TRANSLATE_NOOP("CodeText", "clearly higher")},
    {"how-ready", QT_TRANSLATE_NOOP("CodeText", "how ready")},
    {"in-time", QT_TRANSLATE_NOOP("CodeText", "in time")},
    {"incomplete", QT_TRANSLATE_NOOP("CodeText", "rounds missing")},
    {"item-weeks", QT_TRANSLATE_NOOP("CodeText", "items by week")},
    {"items", QT_TRANSLATE_NOOP("CodeText", "items")},
    {"items-met", QT_TRANSLATE_NOOP("CodeText", "items met")},
    {"kappa", QT_TRANSLATE_NOOP("CodeText", "kappa")},
    {"late", QT_TRANSLATE_NOOP("CodeText", "late")},
    {"likelihood-additive", QT_TRANSLATE_NOOP("CodeText", "log-likelihood, random effects")},
    {"likelihood-multiplicative", QT_TRANSLATE_NOOP("CodeText", "log-likelihood, factor of spread")},
    {"looked-at", QT_TRANSLATE_NOOP("CodeText", "items looked at")},
    {"lost", QT_TRANSLATE_NOOP("CodeText", "lost readiness")},
    {"lost-most", QT_TRANSLATE_NOOP("CodeText", "items that lose most")},
    {"lower", QT_TRANSLATE_NOOP("CodeText", "clearly lower")},
    {"lowest-index", QT_TRANSLATE_NOOP("CodeText", "lowest readiness index")},
    {"major", QT_TRANSLATE_NOOP("CodeText", "major")},
    {"mean-index", QT_TRANSLATE_NOOP("CodeText", "mean readiness index")},
    {"median-seconds", QT_TRANSLATE_NOOP("CodeText", "median length of a round")},
    {"median-seconds-per-item", QT_TRANSLATE_NOOP("CodeText", "median time for an item")},
    {"minor", QT_TRANSLATE_NOOP("CodeText", "minor")},
    {"missing", QT_TRANSLATE_NOOP("CodeText", "missing")},
    {"months", QT_TRANSLATE_NOOP("CodeText", "months")},
    {"most-critical-gaps", QT_TRANSLATE_NOOP("CodeText", "most critical gaps counted")},
    {"most-often-missing", QT_TRANSLATE_NOOP("CodeText", "most items counted")},
    {"most-questions", QT_TRANSLATE_NOOP("CodeText", "most questions counted")},
    {"most-running-out", QT_TRANSLATE_NOOP("CodeText", "most stock items counted")},
    {"most-silent-weeks", QT_TRANSLATE_NOOP("CodeText", "most silent weeks counted")},
    {"most-weeks", QT_TRANSLATE_NOOP("CodeText", "most weeks counted")},
    {"no-change", QT_TRANSLATE_NOOP("CodeText", "no change beyond chance")},
    {"no-critical-gap", QT_TRANSLATE_NOOP("CodeText", "without a critical gap")},
    {"no-data", QT_TRANSLATE_NOOP("CodeText", "nothing seen")},
    {"no-spread", QT_TRANSLATE_NOOP("CodeText", "all the same")},
    {"nobody-first", QT_TRANSLATE_NOOP("CodeText", "nobody first")},
    {"not-applicable", QT_TRANSLATE_NOOP("CodeText", "does not apply")},
    {"not-reached", QT_TRANSLATE_NOOP("CodeText", "does not reach the standard")},
    {"not-ready", QT_TRANSLATE_NOOP("CodeText", "not ready")},
    {"not-told-apart", QT_TRANSLATE_NOOP("CodeText", "not to be told apart")},
    {"nothing-done", QT_TRANSLATE_NOOP("CodeText", "no rounds")},
    {"often-missing", QT_TRANSLATE_NOOP("CodeText", "often missing")},
    {"open-gaps", QT_TRANSLATE_NOOP("CodeText", "open gaps")},
    {"pairs", QT_TRANSLATE_NOOP("CodeText", "pairs")},
    {"paper", QT_TRANSLATE_NOOP("CodeText", "from paper")},
    {"question", QT_TRANSLATE_NOOP("CodeText", "each question")},
    {"questions", QT_TRANSLATE_NOOP("CodeText", "questions about the entries")},
    {"reached", QT_TRANSLATE_NOOP("CodeText", "reaches the standard")},
    {"readiness", QT_TRANSLATE_NOOP("CodeText", "readiness")},
    {"readings", QT_TRANSLATE_NOOP("CodeText", "readings")},
    {"readings-outside", QT_TRANSLATE_NOOP("CodeText", "readings outside their limits")},
    {"ready", QT_TRANSLATE_NOOP("CodeText", "ready")},
    {"ready-with-gaps", QT_TRANSLATE_NOOP("CodeText", "ready with gaps")},
    {"recorded-late", QT_TRANSLATE_NOOP("CodeText", "rounds recorded after their shift")},
    {"repeating", QT_TRANSLATE_NOOP("CodeText", "rounds that repeat an earlier one")},
    {"reporting", QT_TRANSLATE_NOOP("CodeText", "reporting")},
    {"restore", QT_TRANSLATE_NOOP("CodeText", "time to mend")},
    {"rose", QT_TRANSLATE_NOOP("CodeText", "rose")},
    {"rounds", QT_TRANSLATE_NOOP("CodeText", "rounds")},
    {"run-on-one-side", QT_TRANSLATE_NOOP("CodeText", "a run on one side of the centre")},
    {"running", QT_TRANSLATE_NOOP("CodeText", "not done yet")},
    {"runs-out", QT_TRANSLATE_NOOP("CodeText", "stock out or about to run out")},
    {"sample-good-failed", QT_TRANSLATE_NOOP("CodeText", "a good room fails")},
    {"sample-pass", QT_TRANSLATE_NOOP("CodeText", "items that must be met")},
    {"sample-poor-passed", QT_TRANSLATE_NOOP("CodeText", "a poor room passes")},
    {"sample-size", QT_TRANSLATE_NOOP("CodeText", "items to look at on a visit")},
    {"see-first", QT_TRANSLATE_NOOP("CodeText", "see first")},
    {"set", QT_TRANSLATE_NOOP("CodeText", "limits set")},
    {"share", QT_TRANSLATE_NOOP("CodeText", "share")},
    {"shift", QT_TRANSLATE_NOOP("CodeText", "shift")},
    {"shift-differs", QT_TRANSLATE_NOOP("CodeText", "a shift stands out")},
    {"side-by-side", QT_TRANSLATE_NOOP("CodeText", "side by side")},
    {"silent", QT_TRANSLATE_NOOP("CodeText", "silent")},
    {"silent-week", QT_TRANSLATE_NOOP("CodeText", "each silent week")},
    {"spot-checks", QT_TRANSLATE_NOOP("CodeText", "spot checks")},
    {"stock", QT_TRANSLATE_NOOP("CodeText", "stock")},
    {"supervisor", QT_TRANSLATE_NOOP("CodeText", "the supervisor")},
    {"supplies", QT_TRANSLATE_NOOP("CodeText", "supplies")},
    {"time-to-restore", QT_TRANSLATE_NOOP("CodeText", "time to mend")},
    {"too-fast", QT_TRANSLATE_NOOP("CodeText", "rounds entered too fast")},
    {"too-few", QT_TRANSLATE_NOOP("CodeText", "too few")},
    {"too-few-points", QT_TRANSLATE_NOOP("CodeText", "too few points")},
    {"too-little", QT_TRANSLATE_NOOP("CodeText", "too little to say")},
    {"trend", QT_TRANSLATE_NOOP("CodeText", "a trend")},
    {"trust", QT_TRANSLATE_NOOP("CodeText", "trust in the entries")},
    {"undecided", QT_TRANSLATE_NOOP("CodeText", "not decided, too few looked at")},
    {"visits", QT_TRANSLATE_NOOP("CodeText", "visits")},
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
