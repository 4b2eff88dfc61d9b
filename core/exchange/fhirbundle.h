// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/store/store.h"

namespace cradlepost::fhir {

struct MonthRequest
{
    std::string unit; ///< id
    std::chrono::year_month month;
    bool rounds = true; ///< each round with its checklist; else the figures alone
};

/**
 * A month of one unit as an HL7 FHIR R4 Bundle (type collection): its Location, two Measures with their
 * MeasureReports, each checklist used as a Questionnaire, each round and check as a QuestionnaireResponse. No
 * patient, no person: who walked a round is left out.
 */
Result<Json> monthBundle(const Store& store, const MonthRequest& request, Instant now);

}
