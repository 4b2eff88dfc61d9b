// SPDX-License-Identifier: MIT
#include "app/commands/exchange.h"

#include <CLI/CLI.hpp>
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

void addBy(CLI::App* sub, std::string& by)
{
    by = "command line";
    sub->add_option("--by", by, "Initials of the person who compared the fingerprint");
}

void addExport(CLI::App& app, Chosen& chosen)
{
    const auto request = std::make_shared<ExportRequest>();
    CLI::App* sub = add(app, "export", "Write a pack of records for another station", chosen,
        [request](const CommandContext& c) {
            if (!c.options.unit.empty())
                request->units.push_back(c.options.unit);
            return runExport(c, *request);
        });
    sub->add_option("--out", request->out, "The new file")->required();
    CLI::Option* since
        = sub->add_option("--since", request->since, "Only chains from their first record made on this day or later");
    sub->add_option("--have", request->have, "Only what is not in this list, which the receiver's 'have' wrote")
        ->excludes(since);
    sub->add_option("--for", request->receiver, "Sealed, for this station alone");
    sub->add_option("--unit", request->units, "Only chains of stations that have written these units")
        ->allow_extra_args(false);
    sub->add_flag("--replace", request->replace, "Replace a file of that name");
}

void addHave(CLI::App& app, Chosen& chosen)
{
    const auto request = std::make_shared<ExportRequest>();
    CLI::App* sub = add(app, "have", "Write the list of what is here, to be answered by 'export --have'", chosen,
        [request](const CommandContext& c) { return runHave(c, request->out, request->replace); });
    sub->add_option("--out", request->out, "The new file")->required();
    sub->add_flag("--replace", request->replace, "Replace a file of that name");
}

void addImport(CLI::App& app, Chosen& chosen)
{
    const auto request = std::make_shared<ImportRequest>();
    CLI::App* sub = add(app, "import", "Take in what is new in a pack: all of it, or nothing", chosen,
        [request](const CommandContext& c) { return runImport(c, *request); });
    sub->add_option("pack", request->pack, "The pack")->required();
    sub->add_option("--trust", request->trust, "Trust this station from now on; compare its fingerprint first")
        ->allow_extra_args(false);
    sub->add_flag("--dry-run", request->dryRun, "Check everything, change nothing");
    sub->add_flag("--json", request->json, "As JSON");
    addBy(sub, request->by);
}

void addTrust(CLI::App& app, Chosen& chosen)
{
    CLI::App* trust = app.add_subcommand("trust", "Whose records are taken in");
    trust->fallthrough();
    trust->require_subcommand(1);
    const auto json = std::make_shared<bool>(false);
    add(*trust, "list", "This station, those that are trusted, and their fingerprints", chosen,
        [json](const CommandContext& c) { return runTrustList(c, *json); })
        ->add_flag("--json", *json, "As JSON");
    const auto request = std::make_shared<TrustRequest>();
    CLI::App* adding = add(*trust, "add", "Trust a station", chosen,
        [request](const CommandContext& c) { return runTrustAdd(c, *request); });
    adding->add_option("station", request->station, "Its id")->required();
    adding->add_option("--name", request->name, "What you call it");
    adding->add_option("--unit", request->units, "Units that it may write though another station has written them")
        ->allow_extra_args(false);
    addBy(adding, request->by);
    const auto dropped = std::make_shared<std::string>();
    add(*trust, "remove", "Trust it no longer; its records stay", chosen,
        [dropped](const CommandContext& c) { return runTrustRemove(c, *dropped); })
        ->add_option("station", *dropped, "Its id")
        ->required();
}

}

void addExchangeCommands(CLI::App& app, std::function<int(const CommandContext&)>& chosen)
{
    addExport(app, chosen);
    addHave(app, chosen);
    addImport(app, chosen);
    addTrust(app, chosen);
}

}
