// SPDX-License-Identifier: MIT
#include "app/commands/standards.h"

#include "app/commands/month.h"
#include "core/base/csv.h"
#include "core/exchange/csvexport.h"
#include "core/exchange/fhirbundle.h"
#include "core/exchange/wholefile.h"
#include "core/ledger/canonical.h"

#include <CLI/CLI.hpp>
#include <cstdio>
#include <fstream>
#include <memory>

namespace cradlepost {

namespace {

using Chosen = std::function<int(const CommandContext&)>;

CLI::App* add(CLI::App& app, const char* name, const char* what, Chosen& chosen, Chosen run)
{
    CLI::App* sub = app.add_subcommand(name, what);
    sub->fallthrough();
    sub->callback([&chosen, run = std::move(run)] { chosen = run; });
    return sub;
}

}

int runExportFhir(const CommandContext& context, const FhirRequest& request)
{
    const auto month = monthFrom(request.month);
    if (!month)
        return complain({ErrorCode::InvalidArgument, "--month '" + request.month + "' is no month",
            "Write it as 2026-10."});
    if (context.options.unit.empty())
        return complain({ErrorCode::InvalidArgument, "a bundle is of one unit", "Name it with --unit."});
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto bundle = fhir::monthBundle(**store,
        {.unit = context.options.unit, .month = *month, .rounds = !request.figuresOnly}, context.clock.now());
    if (!bundle)
        return complain(bundle.error());
    const auto written = writeWholeFile(request.out, canonicalText(*bundle) + '\n');
    if (!written)
        return complain(written.error());
    std::printf("%s\n", request.out.c_str());
    return Done;
}

int runExportCsv(const CommandContext& context, const CsvRequest& request)
{
    CsvExportRequest wanted{.folder = request.into, .units = {}, .span = {}};
    if (!context.options.unit.empty())
        wanted.units.push_back(context.options.unit);
    if (!request.from.empty() || !request.to.empty()) {
        wanted.span = monthsFrom(request.from, request.to);
        if (!wanted.span)
            return complain(noSpan(request.from, request.to));
    }
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto written = exportCsv(**store, wanted);
    if (!written)
        return complain(written.error());
    for (const CsvExported& one : *written)
        std::printf("%s.csv %lld\n", one.table.c_str(), static_cast<long long>(one.rows));
    return Done;
}

namespace {

Result<void> takeDistances(Store& store, const DistancesRequest& request, Instant now)
{
    std::ifstream file(request.in, std::ios::binary);
    if (!file)
        return fail(ErrorCode::NotFound, request.in + " cannot be read", "Name a CSV file.");
    const std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    const auto units = store.units();
    if (!units)
        return tl::unexpected(units.error());
    std::vector<std::string> ids;
    for (const Unit& unit : *units)
        ids.push_back(unit.id);
    const auto read = readDistances(text, ids, now);
    return read ? store.setDistances(*read, request.by) : tl::unexpected(read.error());
}

}

int runDistances(const CommandContext& context, const DistancesRequest& request)
{
    const auto store = context.openStore(request.in.empty() ? OpenMode::ReadOnly : OpenMode::ReadWrite);
    if (!store)
        return complain(store.error());
    if (!request.in.empty()) {
        if (const auto taken = takeDistances(**store, request, context.clock.now()); !taken)
            return complain(taken.error());
    }
    const auto known = (*store)->distances();
    if (!known)
        return complain(known.error());
    std::string text;
    appendCsvLine(text, {"from", "to", "km"});
    for (const Distance& way : known->all())
        appendCsvLine(text, {way.from, way.to, Decimal{way.metres}.toString()});
    std::printf("%s", text.c_str());
    return Done;
}

void addStandardsCommands(CLI::App& app, std::function<int(const CommandContext&)>& chosen)
{
    const auto fhir = std::make_shared<FhirRequest>();
    CLI::App* sub = add(app, "export-fhir",
        "Write a month of --unit as an HL7 FHIR R4 bundle: figures, checklists, rounds", chosen,
        [fhir](const CommandContext& c) { return runExportFhir(c, *fhir); });
    sub->add_option("--month", fhir->month, "For example 2026-10")->required();
    sub->add_option("--out", fhir->out, "The new file; one of that name is replaced")->required();
    sub->add_flag("--figures-only", fhir->figuresOnly, "Leave out checklists and rounds");
    const auto ways = std::make_shared<DistancesRequest>();
    sub = add(app, "distances",
        "Take in the distances between units, by which stock is moved; print those known", chosen,
        [ways](const CommandContext& c) { return runDistances(c, *ways); });
    sub->add_option("--in", ways->in, "Table with the columns from, to and km, CSV");
    sub->add_option("--by", ways->by, "Initials of the person who enters them");
    const auto csv = std::make_shared<CsvRequest>();
    sub = add(app, "export-csv",
        "Write rounds, answers, readings, gaps and stock as plain tables with a dictionary", chosen,
        [csv](const CommandContext& c) { return runExportCsv(c, *csv); });
    sub->add_option("--into", csv->into, "A new folder")->required();
    sub->add_option(
        "--from", csv->from, "The first month, for example 2026-08; everything when it is left out");
    sub->add_option("--to", csv->to, "The last month; the first one when it is left out");
}

}
