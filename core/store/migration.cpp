// SPDX-License-Identifier: MIT
#include "core/store/migration.h"

#include "core/store/backup.h"
#include "core/store/failure.h"
#include "core/store/transaction.h"

#include <QDir>
#include <QFile>

// Outside of any namespace, as Qt's macro wants it: the linker would drop the resource of a static library.
static void takeUpResource() { Q_INIT_RESOURCE(schema); }

namespace cradlepost {

namespace {

constexpr int applicationId = 1129338740; // as in 0001-ledger-and-projections.sql

QString folderOf(Dialect dialect)
{
    return dialect == Dialect::Sqlite ? QStringLiteral(":/sql/sqlite/") : QStringLiteral(":/sql/postgresql/");
}

QStringList stepNames(Dialect dialect)
{
    takeUpResource();
    // Not by a pattern: that is a regular expression, compiled each time a station starts.
    QStringList names = QDir(folderOf(dialect)).entryList(QDir::Files, QDir::Name);
    names.removeIf([](const QString& name) { return !name.front().isDigit() || !name.endsWith(QLatin1String(".sql")); });
    return names;
}

struct FoundSchema
{
    int version = 0;
    bool isOurs = true;
};

FoundSchema sqliteSchema(Database& database)
{
    const auto version = static_cast<int>(database.integerOf("PRAGMA user_version"));
    return {.version = version,
        .isOurs = version == 0 ? database.integerOf("SELECT count(*) FROM sqlite_schema") == 0
                               : database.integerOf("PRAGMA application_id") == applicationId};
}

FoundSchema postgresSchema(Database& database)
{
    if (database.integerOf("SELECT count(*) FROM pg_class WHERE oid = to_regclass('cradlepost_schema')") == 0)
        return {.isOurs
            = database.integerOf("SELECT count(*) FROM pg_class "
                                 "WHERE relnamespace = current_schema()::regnamespace AND relkind = 'r'")
                == 0};
    return {.version = static_cast<int>(database.integerOf("SELECT version FROM cradlepost_schema"))};
}

void setVersion(Database& database, int version)
{
    database.run((database.dialect() == Dialect::Sqlite ? "PRAGMA user_version = "
                                                        : "UPDATE cradlepost_schema SET version = ")
        + std::to_string(version));
}

[[noreturn]] void refuseNewer(const Database& database, int found, int known)
{
    refuse(ErrorCode::NewerSchema,
        "database " + database.path() + " was written by a later version of this program (schema "
            + std::to_string(found) + ", this one knows " + std::to_string(known) + ")",
        "Install the later version.");
}

/** Names the copy after the first step to come; one that is left from an earlier try is good as it is. */
void keepCopy(Database& database, int firstStep)
{
    if (database.dialect() != Dialect::Sqlite)
        return; // a server is backed up by its own tools, and takes a step back whole when it fails
    const std::string copy = database.path() + ".before-" + std::to_string(firstStep);
    try {
        copyInto(database, copy);
    } catch (const Failure& failure) {
        if (failure.error.code != ErrorCode::AlreadyExists)
            throw;
    }
}

}

std::vector<SchemaStep> schemaSteps(Dialect dialect)
{
    std::vector<SchemaStep> steps;
    for (const QString& name : stepNames(dialect)) {
        QFile file(folderOf(dialect) + name);
        if (!file.open(QIODevice::ReadOnly))
            refuse(ErrorCode::Io, "the program lacks its schema step " + name.toStdString());
        steps.push_back({.number = QStringView(name).left(4).toInt(),
            .script = file.readAll().toStdString(),
            .replays = name.contains(QStringLiteral(".replay."))});
    }
    return steps;
}

int newestSchema(Dialect dialect) { return static_cast<int>(stepNames(dialect).size()); }

int schemaVersion(Database& database)
{
    const FoundSchema found
        = database.dialect() == Dialect::Sqlite ? sqliteSchema(database) : postgresSchema(database);
    if (!found.isOurs)
        refuse(ErrorCode::NotADatabase, "database " + database.path() + " belongs to another program",
            "Choose another file or database.");
    return found.version;
}

MigrationOutcome migrate(
    Database& database, const std::vector<SchemaStep>& steps, const std::function<void(Database&)>& replay)
{
    const int target = steps.empty() ? 0 : steps.back().number;
    const int before = schemaVersion(database);
    if (before > target)
        refuseNewer(database, before, target);
    if (before == target)
        return MigrationOutcome::Current;
    if (before > 0)
        keepCopy(database, before + 1);

    Transaction transaction(database);
    // Another program may have been quicker.
    const int found = schemaVersion(database);
    if (found > target)
        refuseNewer(database, found, target);
    if (found == target)
        return MigrationOutcome::Current;
    bool replays = false;
    for (const SchemaStep& step : steps) {
        if (step.number <= found)
            continue;
        replays = replays || step.replays;
        database.runScript(step.script);
        setVersion(database, step.number);
    }
    if (replays && found > 0 && replay)
        replay(database);
    transaction.commit();
    return before == 0 ? MigrationOutcome::Fresh : MigrationOutcome::Older;
}

}
