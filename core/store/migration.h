// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/database.h"

#include <functional>
#include <vector>

namespace cradlepost {

/** One numbered step of the schema: a script that brings version number - 1 to number. */
struct SchemaStep
{
    int number = 0;
    std::string script;
    bool replays = false; ///< an older file needs its projections filled anew afterwards
};

/** The steps that come with the program, 1, 2, 3, ...; those with ".replay" in their name replay. */
std::vector<SchemaStep> schemaSteps(Dialect dialect = Dialect::Sqlite);
/** The number of the last of them, without reading it. */
int newestSchema(Dialect dialect = Dialect::Sqlite);

/** The version that the file says it has; 0 for an empty one. Fails on another program's database. */
int schemaVersion(Database& database);

enum class MigrationOutcome {
    Fresh, ///< the file was empty and has all steps now
    Current, ///< nothing to do
    Older, ///< steps were missing and are done; a copy from before stands in FILE.before-N
};

/**
 * Brings a database to the last of `steps`, all missing ones in one transaction. Before an existing database
 * is touched, a copy is kept as FILE.before-N, N being the first step to come. Throws NewerSchema when the
 * file is ahead of the steps; when a step fails, the file is as it was. `replay` fills the projections from the
 * ledger, in the same transaction, when a step wants that and there was a file before.
 */
MigrationOutcome migrate(Database& database, const std::vector<SchemaStep>& steps,
    const std::function<void(Database&)>& replay = {});

}
