// SPDX-License-Identifier: MIT
#include "core/round/changeidea.h"

#include "core/base/characters.h"
#include "core/base/refusal.h"
#include "core/ledger/canonical.h"

#include <algorithm>
#include <set>

namespace cradlepost {

namespace {

constexpr std::size_t maxItems = 200;
constexpr std::size_t maxIdLength = 40;

tl::unexpected<Error> refuse(const std::string& what, const std::string& hint)
{
    return fail(ErrorCode::InvalidArgument, "change idea: " + what, hint);
}

tl::unexpected<Error> unreadable(const std::string& what)
{
    return fail(ErrorCode::BadDocument, "change idea: " + what);
}

bool isLine(const std::string& text, std::size_t least, std::size_t most)
{
    const std::size_t length = countCharacters(text);
    return isUtf8(text) && isOneLine(text) && least <= length && length <= most;
}

bool isId(const std::string& id)
{
    return !id.empty() && id.size() <= maxIdLength
        && id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

Result<std::vector<std::string>> itemsFrom(const Json* list)
{
    if (list == nullptr || list->asArray() == nullptr)
        return unreadable("no list of items");
    std::vector<std::string> items;
    for (const Json& one : *list->asArray()) {
        if (one.asString() == nullptr)
            return unreadable("an item is no id");
        items.push_back(*one.asString());
    }
    return items;
}

}

Result<void> checkChangeIdea(const ChangeIdea& idea)
{
    if (!isId(idea.id))
        return refuse("'" + idea.id + "' is no id", "use 1 to 40 of a-z, 0-9 and -");
    if (!isLine(idea.title, 3, 120))
        return tl::unexpected(refused(refusal::line, {"3", "120"},
            "change idea: the title is not one line of 3 to 120 characters",
            "say in a few words what is tried"));
    if (!isLine(idea.hope, 0, 200))
        return tl::unexpected(refused(refusal::line, {"0", "200"},
            "change idea: what is expected is longer than one line of 200 characters",
            "say in one line what is expected"));
    if (!idea.from.ok() || (idea.until && !idea.until->ok()))
        return refuse("a day does not exist", "give the first and the last day of it");
    if (idea.until && *idea.until < idea.from)
        return tl::unexpected(refused(refusal::endsFirst, {}, "change idea: it ends before it begins",
            "give the first and the last day of it"));
    const std::set<std::string> once(idea.items.begin(), idea.items.end());
    const bool named = std::all_of(idea.items.begin(), idea.items.end(), isId);
    if (!named || once.size() != idea.items.size() || idea.items.size() > maxItems)
        return refuse("an item is no id, or is named twice", "name each item once, or none for all");
    return {};
}

Json toBody(const ChangeIdea& idea)
{
    Json::Array items;
    for (const std::string& item : idea.items)
        items.emplace_back(item);
    Json::Object body{{"from", toIso(idea.from)}, {"hope", idea.hope}, {"id", idea.id},
        {"items", std::move(items)}, {"title", idea.title}};
    if (idea.until)
        body.push_back({"until", toIso(*idea.until)});
    return body;
}

Result<ChangeIdea> changeIdeaFromBody(const Json& body)
{
    const auto* id = body.findString("id");
    const auto* title = body.findString("title");
    const auto* hope = body.findString("hope");
    const auto* from = body.findString("from");
    const auto* until = body.findString("until");
    if (id == nullptr || title == nullptr || hope == nullptr || from == nullptr)
        return unreadable("it needs an id, a title, a first day and what is expected");
    auto items = itemsFrom(body.find("items"));
    auto first = dateFromIso(*from);
    auto last = until != nullptr ? dateFromIso(*until) : first;
    for (const Error* error : {items ? nullptr : &items.error(), first ? nullptr : &first.error(),
             last ? nullptr : &last.error()}) {
        if (error != nullptr)
            return tl::unexpected(*error);
    }
    ChangeIdea idea{.id = *id,
        .title = *title,
        .from = *first,
        .until = until != nullptr ? std::optional(*last) : std::nullopt,
        .items = std::move(*items),
        .hope = *hope};
    if (auto sound = checkChangeIdea(idea); !sound)
        return tl::unexpected(sound.error());
    if (canonicalText(toBody(idea)) != canonicalText(body))
        return unreadable("a member is broken or not known");
    return idea;
}

}
