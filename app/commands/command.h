// SPDX-License-Identifier: MIT
#pragma once

#include "app/exitcode.h"
#include "app/options.h"
#include "core/review/districtoptions.h"
#include "core/store/store.h"
#include "ui/text/language.h"

namespace cradlepost {

/** What a command works with, made once the options are known. */
struct CommandContext
{
    CommonOptions options;
    const Clock& clock;
    const Language& language;
    DistrictOptions district = {}; ///< with the weights that were set on this computer

    [[nodiscard]] std::string databasePath() const;
    [[nodiscard]] Result<std::unique_ptr<Store>> openStore(OpenMode mode) const;
};

/** Prints an error the way every command does, to standard error, and returns Failed. */
int complain(const Error& error);

int runDemo(const CommandContext& context, const std::string& into);
int runStatus(const CommandContext& context, bool json);
int runVerify(const CommandContext& context, bool json);
int runRebuild(const CommandContext& context);
int runBackup(const CommandContext& context, const std::string& to);
int runRestore(const CommandContext& context, const std::string& from);

/** What `import-rounds` is asked for. */
struct PaperRequest
{
    std::string sheet; ///< CSV
    bool dryRun = false; ///< says what it would do
    bool json = false;
};
/** Exit 1 when the sheet has faults; then nothing is written. */
int runImportRounds(const CommandContext& context, const PaperRequest& request);
/** The sheet, and beside it NAME-guide.csv with what its columns mean. */
int runPaperTemplate(const CommandContext& context, const std::string& out);

/** What `report month` is asked for. */
struct ReportRequest
{
    std::string month; ///< "2026-10"
    std::string out; ///< .pdf, .html, .xlsx, .csv or .json
};
/** Paints, so it needs a QApplication; the platform may be offscreen. */
int runReportMonth(const CommandContext& context, const ReportRequest& request);

/** `report handover`: one page of PDF for the next shift, of --unit as it stands now. Paints as well. */
int runReportHandover(const CommandContext& context, const std::string& out);

/** What `report units` is asked for. */
struct UnitsReportRequest
{
    std::string from; ///< first month, "2026-08"
    std::string to; ///< last month; empty: the first one
    std::string out; ///< as of ReportRequest
    std::string level; ///< of the facility; empty: all
};
/** Of all units of the database. Paints as well. */
int runReportUnits(const CommandContext& context, const UnitsReportRequest& request);
/** A sheet for a visit to --unit, by the units' comparison over the span. Paints as well. */
int runReportVisit(const CommandContext& context, const UnitsReportRequest& request);

}
