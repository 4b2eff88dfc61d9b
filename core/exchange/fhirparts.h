// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"
#include "core/base/decimal.h"
#include "core/base/json.h"

/** Pieces of HL7 FHIR R4 (4.0.1) resources, as their JSON stands in the specification. */
namespace cradlepost::fhir {

/** Under which everything of ours is named. A reserved top-level name (RFC 2606): it never leads anywhere. */
inline constexpr char base[] = "https://cradlepost.invalid/fhir";

/** Code systems of the specification. */
inline constexpr char populations[] = "http://terminology.hl7.org/CodeSystem/measure-population";
inline constexpr char scorings[] = "http://terminology.hl7.org/CodeSystem/measure-scoring";
inline constexpr char improvements[] = "http://terminology.hl7.org/CodeSystem/measure-improvement-notation";
inline constexpr char resourceTypes[] = "http://hl7.org/fhir/resource-types";

/** `display`: the code in words, as its system has them; empty: it has none. */
Json coding(const std::string& system, const std::string& code, const std::string& display);
/** A code of our own, in its own words: `vocabulary` is "outcome", "reason", "severity" and so on. */
Json ownCoding(const std::string& vocabulary, const std::string& code);
/** The same for what a document names: an item, a set of limits, a size. */
Json ownCoding(const std::string& vocabulary, const std::string& code, const std::string& display);
/** One coding as a CodeableConcept. */
Json codeable(Json coding);
/** "Location/sorrel-hill", within the bundle. */
Json reference(const std::string& type, const std::string& id);
/** The unit as printed ("°C"), and its UCUM code where there is one. */
Json quantity(double value, const std::string& unit);
/** UCUM's code of a unit as it is printed; empty when there is none for it. */
std::string ucumCode(const std::string& unit);

/** Where a resource of ours lies: base/Type/id. */
std::string urlOf(const std::string& type, const std::string& id);
/** Id of a checklist's Questionnaire: "shift-readiness-3". */
std::string questionnaireId(const std::string& checklist, int version);

/** One entry of a Bundle. */
struct Resource
{
    std::string type;
    std::string id; ///< [A-Za-z0-9.-]{1,64}
    Json::Object members; ///< without resourceType and id
};
Json bundle(const std::vector<Resource>& resources, Instant madeAt);

}
