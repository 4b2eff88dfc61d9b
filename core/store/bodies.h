// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/unit.h"

namespace cradlepost {

// The bodies of the set-up records.

/** `unit`: {"name", "zone", "level"}. */
Json toBody(const Unit& unit);
Result<Unit> unitFromBody(const std::string& id, const Json& body);
/** `shift-pattern`: {"from": "2026-11-24", "starts": [{"code", "minutes"}]}. */
Json toBody(const PatternFrom& pattern);
Result<PatternFrom> patternFromBody(const Json& body);
/** `people`: {"people": [{"initials", "role"}]}; replaces the list before. */
Json toBody(const std::vector<Person>& people);
Result<std::vector<Person>> peopleFromBody(const Json& body);
/** `checklist-adopted`: {"from", "document", "limits": {item: limit set}}. */
Json toBody(const Adoption& adoption);
Result<Adoption> adoptionFromBody(const Json& body);

/** What the header says of these values, with what to do when it does not hold. */
Result<void> checkUnit(const Unit& unit);
Result<void> checkPeople(const std::vector<Person>& people);
/** Every limit that is picked is one of a measure of this checklist. */
Result<void> checkLimits(const Checklist& checklist, const ChosenLimits& limits);

}
