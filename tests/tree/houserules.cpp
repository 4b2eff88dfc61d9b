// SPDX-License-Identifier: MIT
#include "houserules.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>

namespace {

constexpr std::size_t mostLines = 400;

/** The house from the ground up. */
const std::map<std::string, int, std::less<>>& floors()
{
    static const std::map<std::string, int, std::less<>> floors{{"core/base", 1}, {"core/stats", 1},
        {"core/checklist", 2}, {"core/ledger", 2}, {"core/round", 3}, {"core/gap", 3}, {"core/supply", 3},
        {"core/review", 4}, {"core/store", 5}, {"core/exchange", 6}, {"ui", 7}, {"app", 8}};
    return floors;
}

bool contains(std::string_view text, std::string_view what)
{
    return text.find(what) != std::string_view::npos;
}

/** "core/round" for what lies in it, "ui" and "app" for all of theirs; empty for anything else. */
std::string roomOf(std::string_view path)
{
    const auto first = path.find('/');
    const std::string_view top = path.substr(0, first);
    if (first == std::string_view::npos || (top != "core" && top != "ui" && top != "app"))
        return {};
    return std::string(top == "core" ? path.substr(0, path.find('/', first + 1)) : top);
}

std::string lower(std::string_view text)
{
    std::string out;
    for (const char c : text)
        out += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return out;
}

/** Every run of white space as one space, so that a statement may be broken anywhere. */
std::string onOneLine(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        const bool isSpace = std::isspace(static_cast<unsigned char>(c)) != 0;
        if (!isSpace || (!out.empty() && out.back() != ' '))
            out += isSpace ? ' ' : c;
    }
    return out;
}

bool isSql(std::string_view literal)
{
    const std::string text = onOneLine(literal);
    const std::string small = lower(text);
    constexpr std::array anywhere{"insert into ", "delete from ", "create table ", "create index ",
        "create trigger ", "create view ", "drop table ", "alter table ", "pragma ", "begin immediate"};
    constexpr std::array capitals{"SELECT ", "UPDATE ", " FROM ", " WHERE "};
    const auto in = [](const std::string& where) {
        return [&where](const char* word) { return contains(where, word); };
    };
    const bool isQuery = contains(small, "select ") && contains(small, " from ")
        && (contains(small, " where ") || contains(small, " order by ") || contains(small, " group by "));
    return isQuery || std::any_of(anywhere.begin(), anywhere.end(), in(small))
        || std::any_of(capitals.begin(), capitals.end(), in(text));
}

std::string fileOf(std::string_view include) { return std::string(include.substr(include.rfind('/') + 1)); }

bool isWindowHeader(std::string_view include)
{
    constexpr std::array modules{"QtWidgets", "QtGui", "QtCharts", "QtPrintSupport", "QtSvg"};
    constexpr std::array headers{"QAction", "QApplication", "QBrush", "QChart", "QColor", "QDialog", "QFont",
        "QGuiApplication", "QIcon", "QImage", "QLabel", "QMainWindow", "QMessageBox", "QPageSize", "QPaint",
        "QPdf", "QPen", "QPixmap", "QPrinter", "QStyle", "QTextDocument", "QWidget", "QWindow"};
    const auto begins = [&](const char* what) { return include.starts_with(what); };
    const std::string file = fileOf(include);
    return std::any_of(modules.begin(), modules.end(), begins)
        || std::any_of(
            headers.begin(), headers.end(), [&](const char* what) { return file.starts_with(what); });
}

bool isQt(std::string_view include)
{
    return include.size() > 1 && include[0] == 'Q'
        && (std::isupper(static_cast<unsigned char>(include[1])) != 0 || include[1] == 't');
}

std::optional<std::string> roomFault(const std::string& from, const Include& include)
{
    if (contains(include.target, ".."))
        return "includes '" + include.target + "' by climbing";
    const std::string to = roomOf(include.target);
    if (to.empty() || to == from)
        return std::nullopt;
    const auto there = floors().find(to);
    if (there == floors().end())
        return "includes '" + include.target + "' from a folder that has no floor";
    const bool isNeighbour = (from == "core/gap" && to == "core/round") || (from == "core/stats" && to == "core/base");
    if (there->second >= floors().at(from) && !isNeighbour)
        return "includes '" + include.target + "' against the floors";
    return std::nullopt;
}

std::optional<std::string> qtFault(const std::string& from, const Include& include)
{
    const std::string file = fileOf(include.target);
    if (from.starts_with("core/") && isWindowHeader(include.target))
        return "includes '" + include.target + "', a header of windows, in core";
    if (from == "core/stats" && isQt(file))
        return "includes '" + include.target + "', Qt, in core/stats";
    const bool isDatabase = file.starts_with("QSql") || include.target.starts_with("QtSql") || file == "sqlite3.h"
        || file == "libpq-fe.h";
    if (isDatabase && from != "core/store")
        return "includes '" + include.target + "' outside core/store";
    return std::nullopt;
}

/** Qt's libraries for SVG and printers would be loaded before the first window if a floor were linked to them. */
std::optional<std::string> lateFault(const std::string& path, const Include& include)
{
    const std::string file = fileOf(include.target);
    const bool isLate = file.starts_with("QSvg") || file.starts_with("QPrint") || include.target.starts_with("QtSvg")
        || include.target.starts_with("QtPrintSupport");
    if (isLate && !path.starts_with("ui/output/") && !path.starts_with("core/"))
        return "includes '" + include.target + "' outside ui/output, which loads it when it is wanted";
    return std::nullopt;
}

bool hasSingleton(const std::string& code)
{
    for (auto at = code.find("instance()"); at != std::string::npos; at = code.find("instance()", at + 1)) {
        const auto isWord
            = [](char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; };
        if (at > 0 && isWord(code[at - 1]))
            continue; // the end of a longer name
        if (at < 2 || code.substr(at - 2, 2) != "::")
            return true;
        std::size_t from = at - 2;
        while (from > 0 && isWord(code[from - 1]))
            --from;
        if (code[from] != 'Q')
            return true;
    }
    return false;
}

/** A class or struct of ours that is named after nothing. */
bool hasEmptyName(const std::string& code)
{
    for (const std::string_view key : {"class ", "struct ", "namespace "}) {
        for (auto at = code.find(key); at != std::string::npos; at = code.find(key, at + 1)) {
            const std::size_t from = at + key.size();
            const std::string name = lower(code.substr(from, code.find_first_of(" \n;:{", from) - from));
            const bool isOurs = !name.starts_with("q");
            for (const char* empty : {"util", "helper", "manager", "misc"}) {
                if (isOurs && contains(name, empty))
                    return true;
            }
        }
    }
    return false;
}

void checkText(
    const SourceFile& file, const std::string& room, const SourceText& source, std::vector<std::string>& what)
{
    if (room != "core/store" && std::any_of(source.literals.begin(), source.literals.end(), isSql))
        what.emplace_back("holds SQL outside core/store");
    if (hasSingleton(source.code))
        what.emplace_back("has a singleton");
    if (room.starts_with("core/") && contains(source.code, "QMessageBox"))
        what.emplace_back("opens a message box in core");
    if (source.lines > mostLines)
        what.push_back("has " + std::to_string(source.lines) + " lines, more than 400");
    if (!file.text.starts_with("// SPDX-License-Identifier: MIT\n"))
        what.emplace_back("does not begin with its SPDX line");
    if (file.path.ends_with(".h") && !contains(source.code, "#pragma once"))
        what.emplace_back("is a header without #pragma once");
    const std::string name = lower(file.path);
    for (const char* empty : {"util", "helper", "manager", "misc"}) {
        if (contains(name, empty))
            what.push_back(std::string("has '") + empty + "' in its path");
    }
    if (hasEmptyName(source.code))
        what.emplace_back("has a type named util, helper, manager or misc");
}

}

std::vector<std::string> faultsOf(const SourceFile& file)
{
    std::vector<std::string> what;
    const SourceText source = readSource(file.text);
    const std::string room = roomOf(file.path);
    if (floors().contains(room)) {
        for (const Include& include : source.includes) {
            if (auto fault = roomFault(room, include))
                what.push_back(*fault);
            if (auto fault = qtFault(room, include))
                what.push_back(*fault);
            if (auto fault = lateFault(file.path, include))
                what.push_back(*fault);
        }
    } else {
        what.emplace_back("lies in a folder that has no floor");
    }
    checkText(file, room, source, what);
    for (std::string& fault : what)
        fault = file.path + ": " + fault;
    return what;
}

std::vector<std::string> mirrorFaults(const std::vector<std::string>& sources,
    const std::vector<std::string>& tests, const std::map<std::string, std::string>& reasons)
{
    std::vector<std::string> faults;
    std::map<std::string, int> used;
    for (const auto& [path, reason] : reasons)
        used[path] = 0;
    for (const std::string& path : sources) {
        if (!path.starts_with("core/") || !path.ends_with(".cpp"))
            continue;
        const auto slash = path.rfind('/');
        const std::string mirror = "tests/" + path.substr(0, slash + 1) + "test_" + path.substr(slash + 1);
        if (std::find(tests.begin(), tests.end(), mirror) != tests.end())
            continue;
        const auto listed = reasons.contains(path) ? path : path.substr(0, slash + 1);
        if (used.contains(listed))
            ++used[listed];
        else
            faults.push_back(path + ": has no " + mirror + " and no reason for it");
    }
    for (const auto& [path, times] : used) {
        if (times == 0)
            faults.push_back(path + ": is listed without need");
    }
    return faults;
}
