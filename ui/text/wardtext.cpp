// SPDX-License-Identifier: MIT
#include "ui/text/wardtext.h"

namespace cradlepost {

QString WardText::readiness(Readiness state)
{
    switch (state) {
    case Readiness::NotReady:
        return tr("Not ready");
    case Readiness::ReadyWithGaps:
        return tr("Ready with gaps");
    case Readiness::Ready:
        break;
    }
    return tr("Ready");
}

QString WardText::severity(Severity severity)
{
    switch (severity) {
    case Severity::Critical:
        return tr("critical");
    case Severity::Major:
        return tr("major");
    case Severity::Minor:
        break;
    }
    return tr("minor");
}

QString WardText::outcome(Outcome outcome)
{
    switch (outcome) {
    case Outcome::Met:
        return tr("met");
    case Outcome::Gap:
        return tr("gap");
    case Outcome::DoesNotApply:
        return tr("does not apply");
    case Outcome::NotChecked:
        break;
    }
    return tr("not checked");
}

QString WardText::gapReason(GapReason reason)
{
    switch (reason) {
    case GapReason::Absent:
        return tr("absent");
    case GapReason::NotWorking:
        return tr("not working");
    case GapReason::NotClean:
        return tr("not clean");
    case GapReason::Expired:
        return tr("expired");
    case GapReason::OutOfLimits:
        return tr("out of limits");
    case GapReason::NotKnown:
        break;
    }
    return tr("not known");
}

QString WardText::roundKind(RoundKind kind)
{
    switch (kind) {
    case RoundKind::Shift:
        return tr("Round of the shift");
    case RoundKind::Recheck:
        return tr("Re-check of what is missing");
    case RoundKind::PreBirth:
        return tr("Check before a birth");
    case RoundKind::SpotCheck:
        return tr("Spot check");
    case RoundKind::AfterUse:
        break;
    }
    return tr("Check after use");
}

QString WardText::sectionState(bool hasRound, Outcome worst, bool critical)
{
    if (!hasRound)
        return tr("no round");
    if (worst == Outcome::Gap)
        return critical ? tr("critical gap") : tr("gap");
    return outcome(worst);
}

QString WardText::neverDelayCare()
{
    return tr("Never delay the care of a mother or baby to fill this in. Leave at any time: every answer is kept.");
}

QString WardText::cautions()
{
    return tr("Cradlepost supports local protocol and licensed clinical judgement and never replaces them. It is no "
              "medical device and gives no treatment advice. Its limits are defaults that the facility sets. It holds "
              "no patient data: write none into it.");
}

}
