// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/objectreader.h"

namespace cradlepost {

/**
 * Reads an item's "rule" object: its "kind" says which of the seven rules it is and so which members it has.
 * Faults go to the context, named with the rule; the value is of no use then.
 */
ItemRule readRule(const Json& value, ReadingContext& context);

}
