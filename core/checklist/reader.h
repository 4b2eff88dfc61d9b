// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/json.h"
#include "core/checklist/checklist.h"

namespace cradlepost {

/**
 * Reads and validates a checklist document (format: resources/checklists/checklist.schema.json).
 * Every fault names line, section, item and rule, for example
 * "line 41, section 'room', item 'room-temperature': measure: low 29 is above high 28".
 * The first fault is returned; nothing is guessed or defaulted.
 */
Result<Checklist> readChecklist(std::string_view text);
// A std::string or a literal would also convert to Json: these say that it is a text to be parsed.
inline Result<Checklist> readChecklist(const std::string& text)
{
    return readChecklist(std::string_view(text));
}
inline Result<Checklist> readChecklist(const char* text)
{
    return readChecklist(std::string_view(text));
}
/** The same from a value already parsed, as a ledger record carries it. */
Result<Checklist> readChecklist(const Json& document);

/**
 * The documents that come with the program, parsed; a fault in one is a fault of the build.
 * A recheck walks with the shift checklist.
 */
Result<Checklist> builtInChecklist(RoundKind use);
/** The text of a document that comes with the program. */
std::string builtInChecklistText(RoundKind use);

}
