// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/round/answer.h"

namespace cradlepost {

/**
 * An answer as it stands in a record; it says its own kind, so that it can be read without the checklist:
 * null not checked, "-" does not apply, "y" confirmed, "absent" and the other gap reasons by their code,
 * {"v":"26.4"} measured, {"s":1764012240000} running since (UTC ms), {"t":"pp-","d":"7"} steps,
 * {"n":[[4,"2027-03-31","LOT"],[2]]} counted, {"k":[4,3]} kit parts,
 * {"g":"120","z":"us-e","f":"5"} cylinder.
 */
Json toJson(const Answer& answer);
Result<Answer> answerFromJson(const Json& json);

}
