// SPDX-License-Identifier: MIT
#pragma once

#include "sourcetext.h"

#include <map>

/** Faults of one file against the rules of the house, each as "path: what is wrong". Empty: none. */
std::vector<std::string> faultsOf(const SourceFile& file);

/**
 * Faults of the mirror: every core/FOLDER/NAME.cpp has a tests/core/FOLDER/test_NAME.cpp or stands in
 * `reasons`. A key of `reasons` is a path, or a folder that ends in '/'. One that is not needed any more is a
 * fault too.
 */
std::vector<std::string> mirrorFaults(const std::vector<std::string>& sources,
    const std::vector<std::string>& tests, const std::map<std::string, std::string>& reasons);
