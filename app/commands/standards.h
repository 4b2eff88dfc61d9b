// SPDX-License-Identifier: MIT
#pragma once

#include "app/commands/command.h"

#include <functional>

namespace CLI {
class App;
}

namespace cradlepost {

/** What `export-fhir` is asked for. */
struct FhirRequest
{
    std::string month; ///< "2026-10"
    std::string out;
    bool figuresOnly = false;
};
/** A month of --unit as one HL7 FHIR R4 Bundle. */
int runExportFhir(const CommandContext& context, const FhirRequest& request);

/** What `export-csv` is asked for. */
struct CsvRequest
{
    std::string into; ///< folder
    std::string from; ///< first month, "2026-08"; empty: everything
    std::string to; ///< last month; empty: the first one
};
/** Of --unit, or of all. Prints how many rows each table has. */
int runExportCsv(const CommandContext& context, const CsvRequest& request);

/** What `distances` is asked for. */
struct DistancesRequest
{
    std::string in; ///< CSV from,to,km; empty: only say what is known
    std::string by = "command line";
};
/** Takes in distances between units, all or none, and prints those that are known as such a table. */
int runDistances(const CommandContext& context, const DistancesRequest& request);

/** Declares the commands above; the chosen one is left in `chosen`. */
void addStandardsCommands(CLI::App& app, std::function<int(const CommandContext&)>& chosen);

}
