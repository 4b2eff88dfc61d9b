// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"
#include "core/exchange/fhirparts.h"

namespace cradlepost::fhir {

/**
 * A checklist as a Questionnaire. A section is a group; an item is a group of that linkId with what is asked
 * of it inside, each at ID/…: `outcome` and `reason` (choices), and by the item's kind
 *
 * measure   value (quantity), limits (choice of limit set)
 * since     since (dateTime)
 * steps     step-ID (boolean) each, device (string)
 * count     lot (group, repeats): lot-pieces (integer), lot-expiry (date), lot-number (string)
 * kit       part-ID (integer) each
 * cylinder  gauge (quantity), size (choice), flow (quantity)
 *
 * Before the sections stands the group `_round` (_round/date, shift, kind), behind them `_verdict`
 * (_verdict/state, met, applicable, index). Wording in other languages: the translation extension.
 */
Resource questionnaire(const Checklist& checklist);

}
