// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/round/roundrecord.h"

namespace cradlepost {

// Parts that drafts and round records share. Reading takes nullptr as "missing" and says so.

Json answersToJson(const std::vector<Answer>& answers);
Result<std::vector<Answer>> answersFromJson(const Json* json);
Json limitsToJson(const ChosenLimits& limits);
Result<ChosenLimits> limitsFromJson(const Json* json);
Json toJson(const Shift& shift);
Result<Shift> shiftFromJson(const Json* json);
Json toJson(const RecordId& id);
Result<RecordId> recordIdFromJson(const Json& json);

}
