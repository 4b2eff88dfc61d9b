// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include "core/checklist/rulereader.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr std::size_t maxSections = 20;
constexpr std::size_t maxItems = 120;
constexpr std::size_t maxLanguages = 20;
constexpr int maxVersion = 999'999;

/** How messages call a section or item: by its id, or by its number when the id cannot be read. */
std::string nameOf(const char* what, const Json& value, std::size_t number)
{
    const std::string* id = value.findString("id");
    return std::string(what) + (id != nullptr && isId(*id) ? " '" + *id + "'" : " " + std::to_string(number));
}

/** "en", "hi", "pt-BR" */
bool isLanguage(std::string_view code)
{
    const auto isLower = [](char c) { return c >= 'a' && c <= 'z'; };
    const auto isSubtag
        = [&](char c) { return isLower(c) || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'); };
    const std::string_view base = code.substr(0, code.find('-'));
    if (base.size() < 2 || base.size() > 3 || !std::all_of(base.begin(), base.end(), isLower))
        return false;
    if (base.size() == code.size())
        return true;
    const std::string_view rest = code.substr(base.size() + 1);
    return rest.size() >= 2 && rest.size() <= 8 && std::all_of(rest.begin(), rest.end(), isSubtag);
}

void readLanguages(ObjectReader& reader, ReadingContext& context)
{
    for (const Json& entry : reader.array("languages", 1, maxLanguages)) {
        const std::string* code = entry.asString();
        if (code == nullptr || !isLanguage(*code))
            context.fault.report(entry.line, "'languages': must hold codes such as \"en\" or \"hi\"");
        else if (!context.languages.insert(*code).second)
            context.fault.report(entry.line, "'languages': '" + *code + "' stands twice");
    }
    if (!context.languages.contains("en"))
        reader.fault("languages", "must hold \"en\"");
}

Severity readSeverity(ObjectReader& reader)
{
    const auto severity = severityFromCode(reader.text("severity"));
    if (!severity)
        reader.fault("severity", "must be critical, major or minor");
    return severity.value_or(Severity::Minor);
}

RoundKind readUse(ObjectReader& reader)
{
    const auto use = roundKindFromCode(reader.text("use"));
    if (!use || *use != checklistUse(*use)) // a re-check walks with the shift checklist
        reader.fault("use", "must be shift, pre-birth or after-use");
    return use.value_or(RoundKind::Shift);
}

Item readItem(const Json& value, ReadingContext& context)
{
    ObjectReader reader(value, "",
        {"id", "severity", "mayNotApply", "label", "help", "whenNotMet", "source", "rule"}, context);
    Item item;
    item.id = reader.id("id");
    item.severity = readSeverity(reader);
    item.mayNotApply = reader.boolean("mayNotApply");
    item.label = reader.wording("label");
    if (reader.has("help"))
        item.help = reader.wording("help");
    item.whenNotMet = reader.wording("whenNotMet");
    item.source = reader.text("source");
    item.rule = readRule(reader.object("rule"), context);
    return item;
}

/** Reads one section and the ids of its items into `itemIds`. */
Section readSection(const Json& value, std::set<std::string>& itemIds, ReadingContext& context)
{
    ObjectReader reader(value, "", {"id", "title", "items"}, context);
    Section section{.id = reader.id("id"), .title = reader.wording("title"), .items = {}};
    std::size_t number = 0;
    for (const Json& entry : reader.array("items", 1, maxItems)) {
        context.fault.item = nameOf("item", entry, ++number);
        section.items.push_back(readItem(entry, context));
        if (!itemIds.insert(section.items.back().id).second)
            context.fault.report(entry.line, "'id' stands twice in the document");
        context.fault.item.clear();
    }
    return section;
}

void readSections(ObjectReader& reader, Checklist& checklist, ReadingContext& context)
{
    std::set<std::string> sectionIds;
    std::set<std::string> itemIds;
    std::size_t number = 0;
    for (const Json& entry : reader.array("sections", 1, maxSections)) {
        context.fault.section = nameOf("section", entry, ++number);
        checklist.sections.push_back(readSection(entry, itemIds, context));
        if (!sectionIds.insert(checklist.sections.back().id).second)
            context.fault.report(entry.line, "'id' stands twice in the document");
        context.fault.section.clear();
    }
    if (itemIds.size() > maxItems)
        reader.fault("sections", "hold more than " + std::to_string(maxItems) + " items");
}

}

Result<Checklist> readChecklist(const Json& document)
{
    ReadingContext context;
    ObjectReader reader(document, "", {"id", "version", "use", "languages", "title", "sections"}, context);
    Checklist checklist;
    checklist.id = reader.id("id");
    checklist.version = reader.integer("version", 1, maxVersion);
    checklist.use = readUse(reader);
    readLanguages(reader, context);
    checklist.title = reader.wording("title");
    readSections(reader, checklist, context);
    if (context.fault.found())
        return tl::unexpected<Error>(context.fault.error());
    return checklist;
}

Result<Checklist> readChecklist(std::string_view text)
{
    return parseJson(text).and_then([](const Json& document) { return readChecklist(document); });
}

}
