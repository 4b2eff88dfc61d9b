// SPDX-License-Identifier: MIT
#pragma once

#include "app/commands/command.h"

#include <functional>

namespace CLI {
class App;
}

namespace cradlepost {

/** What `export` is asked for. */
struct ExportRequest
{
    std::string out;
    std::string since; ///< "2026-11-24", from midnight UTC; or empty
    std::string have; ///< file that `have` wrote; or empty
    std::string receiver; ///< station that alone can open it; or empty
    std::vector<std::string> units;
    bool replace = false;
};
int runExport(const CommandContext& context, const ExportRequest& request);

/** Writes what is here into `out`, for `export --have` of another station. */
int runHave(const CommandContext& context, const std::string& out, bool replace);

/** What `import` is asked for. */
struct ImportRequest
{
    std::string pack;
    std::vector<std::string> trust; ///< stations
    std::string by;
    bool dryRun = false;
    bool json = false;
};
/** Exit 1 when the pack is refused; then nothing is written. */
int runImport(const CommandContext& context, const ImportRequest& request);

/** What `trust add` is asked for. */
struct TrustRequest
{
    std::string station;
    std::string name;
    std::string by;
    std::vector<std::string> units;
};
int runTrustList(const CommandContext& context, bool json);
int runTrustAdd(const CommandContext& context, const TrustRequest& request);
int runTrustRemove(const CommandContext& context, const std::string& station);

/** Declares the commands above; the chosen one is left in `chosen`. */
void addExchangeCommands(CLI::App& app, std::function<int(const CommandContext&)>& chosen);

}
