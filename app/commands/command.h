// SPDX-License-Identifier: MIT
#pragma once

#include "app/exitcode.h"
#include "app/options.h"
#include "core/store/store.h"
#include "ui/text/language.h"

namespace cradlepost {

/** What a command works with, made once the options are known. */
struct CommandContext
{
    CommonOptions options;
    const Clock& clock;
    const Language& language;

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

}
