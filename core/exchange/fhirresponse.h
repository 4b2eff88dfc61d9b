// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/fhirquestionnaire.h"
#include "core/round/standing.h"

namespace cradlepost::fhir {

/**
 * A round as a QuestionnaireResponse to questionnaire(checklist), as it counts now: "amended" where it was
 * put right. Its subject is the room (a Location), never a person; who walked it is left out. Of a re-check
 * or a spot check only what was looked at is there.
 */
Resource questionnaireResponse(const Checklist& checklist, const SavedRound& saved, const std::string& unit);

}
