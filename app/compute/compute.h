// SPDX-License-Identifier: MIT
#pragma once

#include "app/compute/method.h"

#include <string_view>

namespace cradlepost::compute {

/** Every method, in the order in which --help shows them. */
const std::vector<Method>& methods();
/** Nothing when there is no method of that name. */
const Method* findMethod(std::string_view name);

/**
 * Runs one method over a table of the user's own (CSV, RFC 4180, a header line with the method's columns).
 *
 * Errors: InvalidArgument or NotFound for wrong use (unknown method or option, an option's value out of
 * range), BadDocument for a fault in the table (the message begins with "line L, column C", or "line L" where
 * a whole row is at fault), Undefined where the table is sound but the figure does not exist for it. Nothing
 * is thrown.
 */
Result<Report> compute(std::string_view method, std::string_view csvText, const GivenOptions& given = {});

/** Columns, options, members of the answer and an example, for --help. */
std::string helpText(const Method& method);

}
