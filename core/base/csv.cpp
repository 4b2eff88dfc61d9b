// SPDX-License-Identifier: MIT
#include "core/base/csv.h"

#include <algorithm>
#include <set>

namespace cradlepost {

namespace {

tl::unexpected<Error> fault(int line, int column, const std::string& what)
{
    return fail(ErrorCode::BadDocument,
        "line " + std::to_string(line) + ", column " + std::to_string(column) + ": " + what);
}

/** Length of the UTF-8 character at the start of `text`, 0 when it is broken (RFC 3629). */
std::size_t characterLength(std::string_view text)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned first = byte(0);
    if (first < 0x80)
        return 1;
    const std::size_t length = first >= 0xF0 ? 4 : (first >= 0xE0 ? 3 : 2);
    if (first < 0xC2 || first > 0xF4 || text.size() < length)
        return 0;
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U)
            return 0;
    }
    const unsigned second = byte(1);
    const bool overlong = (first == 0xE0 && second < 0xA0) || (first == 0xF0 && second < 0x90);
    const bool outside = (first == 0xED && second > 0x9F) || (first == 0xF4 && second > 0x8F);
    return overlong || outside ? 0 : length;
}

class Reader
{
public:
    Reader(std::string_view text, char separator)
        : m_text(text)
        , m_separator(separator)
    {
        if (m_text.substr(0, 3) == "\xEF\xBB\xBF")
            m_text.remove_prefix(3);
    }

    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }

    /** One line of fields; nothing but one empty unquoted field stands for an empty line. */
    Result<std::vector<CsvCell>> line()
    {
        std::vector<CsvCell> cells;
        while (true) {
            auto cell = field();
            if (!cell)
                return tl::unexpected(cell.error());
            cells.push_back(std::move(*cell));
            if (atEnd())
                return cells;
            if (peek() == m_separator) {
                step(1);
                continue;
            }
            endLine();
            return cells;
        }
    }

    [[nodiscard]] bool lastWasEmptyLine(const std::vector<CsvCell>& cells) const
    {
        return cells.size() == 1 && cells.front().text.empty() && !m_quoted;
    }

private:
    [[nodiscard]] char peek() const { return m_text[m_at]; }
    [[nodiscard]] bool atLineEnd() const
    {
        return atEnd() || peek() == '\n' || m_text.substr(m_at, 2) == "\r\n";
    }

    void step(std::size_t bytes)
    {
        m_at += bytes;
        ++m_column;
    }

    void endLine()
    {
        m_at += peek() == '\r' ? 2 : 1;
        ++m_line;
        m_column = 1;
    }

    Result<CsvCell> field()
    {
        while (!atEnd() && (peek() == ' ' || (peek() == '\t' && m_separator != '\t')))
            step(1);
        m_quoted = !atEnd() && peek() == '"';
        CsvCell cell{.text = {}, .line = m_line, .column = m_column};
        if (m_quoted)
            return quoted(std::move(cell));
        while (!atLineEnd() && peek() != m_separator) {
            if (peek() == '"')
                return fault(m_line, m_column, "a quote inside a field that does not begin with one");
            if (auto taken = take(cell.text); !taken)
                return tl::unexpected(taken.error());
        }
        while (!cell.text.empty() && (cell.text.back() == ' ' || cell.text.back() == '\t'))
            cell.text.pop_back();
        return cell;
    }

    Result<CsvCell> quoted(CsvCell cell)
    {
        step(1);
        while (true) {
            if (atEnd())
                return fault(cell.line, cell.column, "the quote that begins here never closes");
            if (peek() == '"') {
                step(1);
                if (atEnd() || peek() != '"')
                    break;
                cell.text += '"';
                step(1);
            } else if (atLineEnd()) {
                cell.text += '\n';
                endLine();
            } else if (auto taken = take(cell.text); !taken) {
                return tl::unexpected(taken.error());
            }
        }
        while (!atEnd() && (peek() == ' ' || (peek() == '\t' && m_separator != '\t')))
            step(1);
        if (!atLineEnd() && peek() != m_separator)
            return fault(m_line, m_column, "text behind a closing quote");
        return cell;
    }

    /** Moves one sound character over. */
    Result<void> take(std::string& to)
    {
        const auto length = characterLength(m_text.substr(m_at));
        if (length == 0)
            return fault(m_line, m_column, "this is not UTF-8");
        const auto byte = static_cast<unsigned char>(peek());
        if (byte == '\r')
            return fault(m_line, m_column, "a carriage return that ends no line");
        if ((byte < 0x20 && byte != '\t') || byte == 0x7F)
            return fault(m_line, m_column, "a control character");
        to.append(m_text.substr(m_at, length));
        step(length);
        return {};
    }

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    int m_line = 1;
    int m_column = 1;
    bool m_quoted = false;
};

Result<void> checkHeader(const std::vector<CsvCell>& header)
{
    std::set<std::string_view> seen;
    for (const auto& cell : header) {
        if (cell.text.empty())
            return fault(cell.line, cell.column, "a column without a name");
        if (!seen.insert(cell.text).second)
            return fault(cell.line, cell.column, "the column '" + cell.text + "' comes twice");
    }
    return {};
}

Result<void> checkWidth(const std::vector<CsvCell>& row, std::size_t width)
{
    if (row.size() == width)
        return {};
    const auto& at = row.size() > width ? row[width] : row.back();
    return fault(at.line, at.column,
        std::to_string(row.size()) + (row.size() == 1 ? " field" : " fields") + " where the header has "
            + std::to_string(width));
}

}

int CsvTable::find(std::string_view name) const
{
    const auto at
        = std::find_if(header.begin(), header.end(), [&](const CsvCell& c) { return c.text == name; });
    return at == header.end() ? -1 : static_cast<int>(at - header.begin());
}

Result<std::vector<std::vector<CsvCell>>> readCsvLines(std::string_view text, char separator)
{
    Reader reader(text, separator);
    std::vector<std::vector<CsvCell>> lines;
    while (!reader.atEnd()) {
        auto cells = reader.line();
        if (!cells)
            return tl::unexpected(cells.error());
        if (!reader.lastWasEmptyLine(*cells))
            lines.push_back(std::move(*cells));
    }
    return lines;
}

Result<CsvTable> readCsv(std::string_view text, char separator)
{
    Reader reader(text, separator);
    CsvTable table;
    while (!reader.atEnd()) {
        auto cells = reader.line();
        if (!cells)
            return tl::unexpected(cells.error());
        if (reader.lastWasEmptyLine(*cells))
            continue;
        if (table.header.empty()) {
            if (auto sound = checkHeader(*cells); !sound)
                return tl::unexpected(sound.error());
            table.header = std::move(*cells);
            continue;
        }
        if (auto sound = checkWidth(*cells, table.header.size()); !sound)
            return tl::unexpected(sound.error());
        table.rows.push_back(std::move(*cells));
    }
    if (table.header.empty())
        return fault(1, 1, "there is no header line");
    return table;
}

std::string csvField(std::string_view text, char separator)
{
    const bool plain = text.find_first_of("\"\r\n") == std::string_view::npos
        && text.find(separator) == std::string_view::npos
        && (text.empty()
            || (text.front() != ' ' && text.back() != ' ' && text.front() != '\t' && text.back() != '\t'));
    if (plain)
        return std::string(text);
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"')
            quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

void appendCsvLine(std::string& out, const std::vector<std::string>& fields, char separator)
{
    // A single empty field would read back as an empty line.
    if (fields.size() == 1 && fields.front().empty())
        out += "\"\"";
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (i > 0)
            out += separator;
        out += csvField(fields[i], separator);
    }
    out += "\r\n";
}

}
