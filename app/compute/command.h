// SPDX-License-Identifier: MIT
#pragma once

#include <CLI/App.hpp>
#include <functional>
#include <iosfwd>

namespace cradlepost::compute {

/** Runs what was asked for: the answer goes to the first stream, one line on a fault to the second; returns
 * an ExitCode: Failed when the table is at fault or the figure does not exist for it. */
using ComputeRun = std::function<int(std::ostream& out, std::ostream& err)>;

/**
 * Adds `compute METHOD --in FILE [--json]` ("-": standard input) with one subcommand a method, its options
 * and its help. When the parser meets a method, `chosen` is left holding what to run; else it is left as it
 * was. Errors of the command line itself are thrown by CLI11's parse() as usual; they are wrong use.
 */
void registerComputeCommand(CLI::App& app, ComputeRun& chosen);

}
