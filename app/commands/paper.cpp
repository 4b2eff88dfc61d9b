// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "core/exchange/paperrounds.h"
#include "core/exchange/papertemplate.h"
#include "core/ledger/canonical.h"
#include "ui/text/papertext.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace cradlepost {

namespace {

/** At most one byte more than is taken: the rest of a huge file says nothing more. */
Result<std::string> readSheet(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    std::string text(maxPaperBytes + 1, '\0');
    if (!file || std::filesystem::is_directory(path))
        return fail(ErrorCode::NotFound, path + " cannot be read", "Name a CSV file.");
    file.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(file.gcount()));
    return text;
}

Json toJson(const PaperFault& fault)
{
    return Json::Object{{"code", codeName(fault.code)}, {"column", fault.column},
        {"kind", fault.kind ? Json(codeName(*fault.kind)) : Json()}, {"limit", fault.limit},
        {"line", fault.line}, {"name", fault.name}, {"value", fault.value}};
}

Json toJson(const std::vector<PaperFault>& faults)
{
    Json::Array list;
    for (const PaperFault& fault : faults)
        list.push_back(toJson(fault));
    return list;
}

/** --json of import-rounds: {"faults": [...], "rounds": n, "warnings": [...], "written": n} */
void printJson(const PaperPreview& preview, std::size_t written)
{
    const Json all = Json::Object{{"faults", toJson(preview.faults)},
        {"rounds", static_cast<int>(preview.rounds.size())}, {"warnings", toJson(preview.warnings)},
        {"written", static_cast<int>(written)}};
    std::printf("%s\n", canonicalText(all).c_str());
}

void printFaults(const std::vector<PaperFault>& faults)
{
    for (const PaperFault& fault : faults) {
        const QString place = PaperText::place(fault);
        const QString line
            = (place.isEmpty() ? QString() : place + QStringLiteral(": ")) + PaperText::sentence(fault);
        std::printf("%s\n", line.toUtf8().constData());
    }
}

void printPreview(const PaperPreview& preview)
{
    printFaults(preview.faults);
    printFaults(preview.warnings);
    if (!preview.faults.empty())
        return;
    for (const PaperRound& one : preview.rounds) {
        const RoundRecord& round = one.walked.round;
        std::printf("%d: %s %s, %s, %d of %d met\n", one.line, toIso(round.shift.date).c_str(),
            round.shift.code.c_str(), codeName(round.state), round.met, round.applicable);
    }
}

Result<void> writeNew(const std::string& path, const std::string& text)
{
    std::error_code error;
    if (std::filesystem::exists(path, error))
        return fail(ErrorCode::AlreadyExists, path + " is there already", "Name a new file.");
    std::ofstream file(path, std::ios::binary);
    file << text;
    file.close();
    if (!file)
        return fail(
            ErrorCode::Io, path + " cannot be written", "Name a file in a folder that can be written.");
    return {};
}

/** The option is common to all commands, but a sheet is always of one unit. */
int needsUnit()
{
    std::fprintf(stderr, "--unit is required: a sheet is of one unit\n");
    return WrongUse;
}

std::string guideBeside(const std::string& path)
{
    const std::filesystem::path sheet(path);
    return (sheet.parent_path() / (sheet.stem().string() + "-guide.csv")).string();
}

}

int runPaperTemplate(const CommandContext& context, const std::string& out)
{
    if (context.options.unit.empty())
        return needsUnit();
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    const auto tomorrow = std::chrono::floor<std::chrono::days>(context.clock.now()) + std::chrono::days(1);
    const auto calendar = (*store)->calendar(context.options.unit, tomorrow); // for its zone
    if (!calendar)
        return complain(calendar.error());
    const Date today = calendar->zone().toLocal(context.clock.now()).date;
    const auto adopted = (*store)->checklistFor(context.options.unit, RoundKind::Shift, today);
    if (!adopted)
        return complain(adopted.error());
    const std::string guide = guideBeside(out);
    auto written = writeNew(out, paperTemplate(adopted->checklist));
    if (written)
        written = writeNew(guide, paperGuide(adopted->checklist, context.language.code().toStdString()));
    if (!written)
        return complain(written.error());
    std::printf("%s\n%s\n", out.c_str(), guide.c_str());
    return Done;
}

int runImportRounds(const CommandContext& context, const PaperRequest& request)
{
    if (context.options.unit.empty())
        return needsUnit();
    const auto sheet = readSheet(request.sheet);
    if (!sheet)
        return complain(sheet.error());
    const auto store = context.openStore(request.dryRun ? OpenMode::ReadOnly : OpenMode::ReadWrite);
    if (!store)
        return complain(store.error());
    const auto preview = readPaperRounds(**store, context.options.unit, *sheet, context.clock.now());
    if (!preview)
        return complain(preview.error());
    std::size_t written = 0;
    if (preview->isSound() && !request.dryRun) {
        const auto ids = importPaperRounds(**store, context.options.unit, *preview);
        if (!ids)
            return complain(ids.error());
        written = ids->size();
    }
    if (request.json)
        printJson(*preview, written);
    else {
        printPreview(*preview);
        if (!preview->faults.empty())
            std::printf("%zu faults; nothing was written\n", preview->faults.size());
        else
            std::printf(
                "%zu rounds %s\n", preview->rounds.size(), request.dryRun ? "would be written" : "written");
    }
    return preview->isSound() ? Done : Failed;
}

}
