// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/judge.h"

namespace cradlepost {

/** The verdict of a round: decided by severity, never by arithmetic. */
enum class Readiness {
    NotReady, ///< a critical item is a gap or was not checked
    ReadyWithGaps, ///< only major or minor items are
    Ready,
};

struct SectionTally
{
    std::string section; ///< id
    int met = 0;
    int gaps = 0;
    int criticalGaps = 0; ///< among the gaps
    int notChecked = 0;
    int doesNotApply = 0;
    [[nodiscard]] int applicable() const { return met + gaps + notChecked; }
    bool operator==(const SectionTally&) const = default;
};

struct Verdict
{
    Readiness state = Readiness::NotReady;
    std::vector<Reason> reasons; ///< what to mend first stands first
    std::vector<SectionTally> sections; ///< in the order of the checklist
    int met = 0;
    int applicable = 0;
    /**
     * Readiness index in ten-thousandths: mean over sections of the share of applicable items met (the
     * tracer-item method of the WHO Service Availability and Readiness Assessment, reference manual 2015).
     * Sections without applicable items are left out; 0 when there are none at all.
     */
    int index = 0;
    bool operator==(const Verdict&) const = default;
};

/** Every item judged, in the order of the checklist. `answers` holds one answer an item. */
std::vector<Judgement> judgeAll(
    const Checklist& checklist, const std::vector<Answer>& answers, const JudgeContext& context);

/** The verdict from judgements. Pure; the order of reasons: critical before major before minor, a gap before
    something not checked, what mends itself after what needs a hand, then the order of the checklist. */
Verdict verdictOf(const Checklist& checklist, const std::vector<Judgement>& judgements);

/** The letters m g n u, one an item. */
std::string outcomesOf(const std::vector<Judgement>& judgements);

const char* codeName(Readiness state);
std::optional<Readiness> readinessFromCode(std::string_view code);

}
