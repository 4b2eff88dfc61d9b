// SPDX-License-Identifier: MIT
#include "sourcetext.h"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace {

/** Walks over C++ text once, well enough for a house that has no trigraphs and no macros in strings. */
class Lexer
{
public:
    explicit Lexer(std::string_view text)
        : m_text(text)
    {
    }

    SourceText run()
    {
        while (m_at < m_text.size()) {
            if (starts("//"))
                skipTo("\n", 0);
            else if (starts("/*"))
                skipTo("*/", 2);
            else if (starts("R\"") && !isWord(before()))
                rawLiteral();
            else if (m_text[m_at] == '"')
                literal('"');
            else if (m_text[m_at] == '\'' && !isWord(before())) // not the mark between digits
                literal('\'');
            else if (m_text[m_at] == '#' && include())
                continue;
            else
                m_out.code += m_text[m_at++];
        }
        m_out.lines = static_cast<std::size_t>(std::count(m_text.begin(), m_text.end(), '\n'));
        return std::move(m_out);
    }

private:
    [[nodiscard]] bool starts(std::string_view what) const { return m_text.substr(m_at).starts_with(what); }
    [[nodiscard]] char before() const { return m_at == 0 ? '\n' : m_text[m_at - 1]; }
    static bool isWord(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

    void skipTo(std::string_view end, std::size_t over)
    {
        const auto found = m_text.find(end, m_at);
        m_at = found == std::string_view::npos ? m_text.size() : found + over;
    }

    void rawLiteral()
    {
        const auto open = m_text.find('(', m_at);
        if (open == std::string_view::npos) {
            m_at = m_text.size();
            return;
        }
        const std::string end = ")" + std::string(m_text.substr(m_at + 2, open - m_at - 2)) + "\"";
        const auto close = std::min(m_text.find(end, open), m_text.size());
        m_out.literals.emplace_back(m_text.substr(open + 1, close - open - 1));
        m_at = std::min(close + end.size(), m_text.size());
    }

    void literal(char quote)
    {
        std::string held;
        for (++m_at; m_at < m_text.size() && m_text[m_at] != quote && m_text[m_at] != '\n'; ++m_at) {
            if (m_text[m_at] == '\\' && m_at + 1 < m_text.size())
                ++m_at;
            held += m_text[m_at];
        }
        ++m_at;
        m_out.code += "\"\"";
        if (quote == '"')
            m_out.literals.push_back(std::move(held));
    }

    bool include()
    {
        const auto line = m_text.substr(m_at, m_text.find('\n', m_at) - m_at);
        const auto word = line.find_first_not_of(" \t", 1);
        if (word == std::string_view::npos || !line.substr(word).starts_with("include"))
            return false;
        const auto open = line.find_first_of("<\"", word);
        if (open == std::string_view::npos)
            return false;
        const auto close = line.find_first_of(">\"", open + 1);
        m_out.includes.push_back({std::string(line.substr(open + 1, close - open - 1)), line[open] == '"'});
        m_at += line.size();
        return true;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    SourceText m_out;
};

}

SourceText readSource(std::string_view text) { return Lexer(text).run(); }

std::vector<SourceFile> sourcesUnder(const std::string& top, const std::string& folder)
{
    namespace fs = std::filesystem;
    std::vector<SourceFile> files;
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(top) / folder)) {
        const std::string ending = entry.path().extension().string();
        if (!entry.is_regular_file() || (ending != ".h" && ending != ".cpp"))
            continue;
        std::ifstream in(entry.path(), std::ios::binary);
        std::ostringstream text;
        text << in.rdbuf();
        files.push_back({fs::relative(entry.path(), top).generic_string(), text.str()});
    }
    std::sort(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
    return files;
}
