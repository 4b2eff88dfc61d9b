// SPDX-License-Identifier: MIT
#include "app/commands/command.h"

#include "app/paths.h"
#include "ui/text/errortext.h"

#include <cstdio>
#include <spdlog/spdlog.h>

namespace cradlepost {

std::string CommandContext::databasePath() const
{
    return options.database.empty() ? defaultDatabase().toStdString() : options.database;
}

Result<std::unique_ptr<Store>> CommandContext::openStore(OpenMode mode) const
{
    return Store::open(databasePath(), clock, mode);
}

int complain(const Error& error)
{
    spdlog::error("{}: {}", codeName(error.code), error.message);
    std::fprintf(stderr, "cradlepost: %s %s\n", ErrorText::sentence(error).toUtf8().constData(), error.message.c_str());
    const QString advice = ErrorText::advice(error);
    if (!advice.isEmpty())
        std::fprintf(stderr, "%s\n", advice.toUtf8().constData());
    if (!error.hint.empty() && qs(error.hint) != advice)
        std::fprintf(stderr, "%s\n", error.hint.c_str());
    return Failed;
}

}
