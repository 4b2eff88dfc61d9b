// SPDX-License-Identifier: MIT
#include "core/exchange/sheetnames.h"

#include <algorithm>
#include <set>
#include <string_view>

namespace cradlepost {

namespace {

constexpr std::size_t mostCharacters = 31;

bool beginsCharacter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

/** The first characters of an UTF-8 text that take at most `most` units of UTF-16, which is what counts here.
 */
std::string_view cut(std::string_view text, std::size_t most)
{
    std::size_t units = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!beginsCharacter(text[i]))
            continue;
        units += static_cast<unsigned char>(text[i]) >= 0xF0U ? 2 : 1;
        if (units > most)
            return text.substr(0, i);
    }
    return text;
}

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
        [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return text;
}

/** What may not stand at either end. */
std::string trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of("' ");
    if (first == std::string_view::npos)
        return {};
    return std::string(text.substr(first, text.find_last_not_of("' ") - first + 1));
}

std::string legal(std::string name)
{
    constexpr std::string_view refused = "[]:*?/\\";
    for (char& c : name) {
        if (refused.find(c) != std::string_view::npos || static_cast<unsigned char>(c) < 0x20U || c == 0x7F)
            c = ' ';
    }
    name = trimmed(cut(trimmed(name), mostCharacters));
    if (name.empty())
        name = "table";
    return lower(name) == "history" ? name + '_' : name;
}

}

std::vector<std::string> sheetNames(const std::vector<std::string>& wishes)
{
    std::vector<std::string> names;
    std::set<std::string> taken;
    for (const std::string& wish : wishes) {
        const std::string stem = legal(wish);
        std::string name = stem;
        for (int i = 2; !taken.insert(lower(name)).second; ++i) {
            const std::string number = ' ' + std::to_string(i);
            name = trimmed(cut(stem, mostCharacters - number.size())) + number;
        }
        names.push_back(name);
    }
    return names;
}

}
