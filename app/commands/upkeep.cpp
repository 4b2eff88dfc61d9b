// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "core/ledger/canonical.h"

#include <cstdio>
#include <spdlog/spdlog.h>

namespace cradlepost {

namespace {
/** --json of verify: {"records": n, "stations": n, "fault": null | {"where", "what"}} */
Json toJson(const Verified& verified)
{
    Json fault;
    if (verified.fault)
        fault = Json::Object {{"what", verified.fault->what}, {"where", verified.fault->where}};
    return Json::Object {{"fault", std::move(fault)}, {"records", verified.records}, {"stations", verified.stations}};
}
}

int runVerify(const CommandContext& context, bool json)
{
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto verified = (*store)->verify();
    if (!verified)
        return complain(verified.error());
    if (json)
        std::printf("%s\n", canonicalText(toJson(*verified)).c_str());
    else if (verified->fault)
        std::printf("%s: %s\n", verified->fault->where.c_str(), verified->fault->what.c_str());
    else
        std::printf("%lld records of %lld stations verified: nothing was changed\n",
            static_cast<long long>(verified->records), static_cast<long long>(verified->stations));
    if (verified->fault)
        spdlog::error("verify: {}: {}", verified->fault->where, verified->fault->what);
    return verified->fault ? Failed : Done;
}

int runRebuild(const CommandContext& context)
{
    const auto store = context.openStore(OpenMode::ReadWrite);
    if (!store)
        return complain(store.error());
    if (auto done = (*store)->rebuild(); !done)
        return complain(done.error());
    std::printf("projections rebuilt\n");
    return Done;
}

int runBackup(const CommandContext& context, const std::string& to)
{
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    if (auto done = (*store)->backup(to); !done)
        return complain(done.error());
    std::printf("backed up to %s\n", to.c_str());
    return Done;
}

int runRestore(const CommandContext& context, const std::string& from)
{
    if (auto done = Store::restore(from, context.databasePath(), context.clock); !done)
        return complain(done.error());
    std::printf("restored from %s\n", from.c_str());
    return Done;
}

}
