// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "app/commands/exchange.h"
#include "app/commands/standards.h"
#include "app/compute/command.h"
#include "app/log.h"
#include "app/paths.h"
#include "app/window.h"
#include "core/review/visitweights.h"
#include "ui/pages/setup/settings.h"

#include <CLI/CLI.hpp>
#include <functional>
#include <iostream>
#include <memory>
#include <QApplication>

namespace {

using namespace cradlepost;

/** Options and arguments of the commands, filled by the parser. */
struct Arguments
{
    CommonOptions common;
    std::string file;
    bool json = false;
    bool dryRun = false;
    ReportRequest report;
    UnitsReportRequest units;
    bool paints = false; ///< the command draws charts
};

using Command = std::function<int(const CommandContext&)>;

void addCommon(CLI::App& app, CommonOptions& common)
{
    app.add_option("--database", common.database, "Database file, or postgresql://USER@HOST/NAME (default: the ward's own file in the user's data folder)");
    app.add_option("--language", common.language, "Language code, for example en or hi");
    app.add_option("--unit", common.unit, "Id of a unit, for example sorrel-hill");
    app.add_option("--log-level", common.logLevel, "trace, debug, info, warn, error or off")
        ->check(CLI::IsMember({"trace", "debug", "info", "warn", "error", "off"}));
}

/** Declares the commands; the chosen one is left in `chosen`. */
void addCommands(CLI::App& app, Arguments& args, Command& chosen)
{
    const auto add = [&](const char* name, const char* what, Command run) {
        CLI::App* sub = app.add_subcommand(name, what);
        sub->fallthrough();
        sub->callback([&chosen, run = std::move(run)] { chosen = run; });
        return sub;
    };
    add("demo", "Write the invented district into a new file",
        [&args](const CommandContext& c) { return runDemo(c, args.file); })
        ->add_option("--into", args.file, "The new file")
        ->required();
    add("status", "The verdict now, open gaps, what is due; exit 3 when a unit is not ready",
        [&args](const CommandContext& c) { return runStatus(c, args.json); })
        ->add_flag("--json", args.json, "As JSON");
    add("verify", "Check every record, signature and projection; exit 1 with the first fault",
        [&args](const CommandContext& c) { return runVerify(c, args.json); })
        ->add_flag("--json", args.json, "As JSON");
    add("rebuild", "Drop the projections and replay them from the records",
        [](const CommandContext& c) { return runRebuild(c); });
    add("backup", "Write a sound copy of the database into a new file",
        [&args](const CommandContext& c) { return runBackup(c, args.file); })
        ->add_option("file", args.file, "The new file")
        ->required();
    add("restore", "Put a backup in the place of the database; what was there is kept beside it",
        [&args](const CommandContext& c) { return runRestore(c, args.file); })
        ->add_option("file", args.file, "The backup")
        ->required();
    CLI::App* report = app.add_subcommand(
        "report", "Write a report: PDF, HTML, XLSX, CSV or JSON, by the ending of --out");
    report->require_subcommand(1);
    report->fallthrough();
    CLI::App* month = report->add_subcommand("month", "The month of one unit");
    month->fallthrough();
    month->add_option("--month", args.report.month, "For example 2026-10")->required();
    month->add_option("--out", args.report.out, "The new file; one of that name is replaced")->required();
    month->callback([&args, &chosen] {
        args.paints = true;
        chosen = [&args](const CommandContext& c) { return runReportMonth(c, args.report); };
    });
    const auto addUnits = [&](const char* name, const char* what, auto run) {
        CLI::App* units = report->add_subcommand(name, what);
        units->fallthrough();
        units->add_option("--from", args.units.from, "The first month, for example 2026-08")->required();
        units->add_option("--to", args.units.to, "The last month; the first one when it is left out");
        units->add_option("--level", args.units.level, "Only units of this level of facility");
        units->add_option("--out", args.units.out, "The new file; one of that name is replaced")->required();
        units->callback([&args, &chosen, run] {
            args.paints = true;
            chosen = [&args, run](const CommandContext& c) { return run(c, args.units); };
        });
    };
    addUnits("units", "All units compared, and which one to see first", &runReportUnits);
    addUnits("visit", "A sheet for a visit to --unit: why, what is open, the sample with boxes to fill",
        &runReportVisit);
    CLI::App* handover = report->add_subcommand("handover", "One page of PDF for the next shift of --unit");
    handover->fallthrough();
    handover->add_option("--out", args.file, "The new PDF file; one of that name is replaced")->required();
    handover->callback([&args, &chosen] {
        args.paints = true;
        chosen = [&args](const CommandContext& c) { return runReportHandover(c, args.file); };
    });
    add("paper-template", "Write an empty sheet for rounds of --unit on paper, and a guide to its columns",
        [&args](const CommandContext& c) { return runPaperTemplate(c, args.file); })
        ->add_option("--out", args.file, "The new CSV file")
        ->required();
    CLI::App* import
        = add("import-rounds", "Take in rounds of --unit from paper, all or none; exit 1 with every fault",
            [&args](const CommandContext& c) {
                return runImportRounds(c, {.sheet = args.file, .dryRun = args.dryRun, .json = args.json});
            });
    import->add_option("file", args.file, "The filled sheet, CSV")->required();
    import->add_flag("--dry-run", args.dryRun, "Say what would be written, and write nothing");
    import->add_flag("--json", args.json, "As JSON");
}

int runCommand(int argc, char** argv, const Arguments& args, const Command& command)
{
    // No window, no display: a scheduled job runs these.
    if (args.paints)
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const std::unique_ptr<QCoreApplication> application(
        args.paints ? new QApplication(argc, argv) : new QCoreApplication(argc, argv));
    startLog(args.common.logLevel);
    const SystemClock clock;
    const Settings settings = loadSettings(settingsFile());
    const QString set = settings.language;
    DistrictOptions district;
    district.weights = weightsFromText(settings.visitWeights.toStdString()).value_or(VisitWeights());
    const Language language(args.common.language.empty()
            ? (set.isEmpty() ? QLocale::system().bcp47Name() : set)
            : QString::fromStdString(args.common.language));
    return command(
        CommandContext{.options = args.common, .clock = clock, .language = language, .district = district});
}

}

int main(int argc, char** argv)
{
    CLI::App app(
        "Cradlepost: is this labour ward ready for the next baby? Without a command it opens the window.");
    app.set_version_flag("--version", "cradlepost " CRADLEPOST_VERSION);
    Arguments args;
    Command command;
    compute::ComputeRun computation;
    addCommon(app, args.common);
    addCommands(app, args, command);
    addExchangeCommands(app, command);
    addStandardsCommands(app, command);
    compute::registerComputeCommand(app, computation);
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& done) { // --help, --version
        return app.exit(done);
    } catch (const CLI::ParseError& error) {
        app.exit(error);
        return cradlepost::WrongUse;
    }
    if (computation)
        return computation(std::cout, std::cerr);
    return command ? runCommand(argc, argv, args, command) : runWindow(argc, argv, args.common);
}
