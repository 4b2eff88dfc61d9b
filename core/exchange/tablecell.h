// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"

namespace cradlepost {

/** The shortest text that reads back as the same number, with a point; empty for what is no finite number. */
std::string numberText(double number);

/** "2026-10-12T02:30:00Z" (ISO 8601, RFC 3339), with ".123" only where there are milliseconds. */
std::string toIso(Instant moment);

/** A cell for machines: numbers in full precision, days and moments in ISO form, empty when not known. */
std::string cellText(const Cell& cell);

/** Stable lower-case name of a kind of column, as it stands in JSON. */
const char* kindName(ColumnKind kind);

}
