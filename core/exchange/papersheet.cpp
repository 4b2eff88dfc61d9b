// SPDX-License-Identifier: MIT
#include "core/exchange/papersheet.h"

#include "core/ledger/canonical.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace cradlepost {

namespace {

constexpr std::array faultCodes{"too-large", "not-utf8", "broken-table", "no-rows", "too-many-rows",
    "column-unknown", "column-twice", "column-missing", "wrong-width", "wrong-date", "wrong-shift",
    "wrong-time", "time-outside-shift", "wrong-initials", "in-future", "no-pattern", "before-adoption",
    "already-there", "twice-in-sheet", "nothing-checked", "not-asked", "wrong-value", "unknown-initials"};
static_assert(faultCodes.size() == static_cast<std::size_t>(PaperFaultCode::UnknownInitials) + 1);

/** The separator by the first line. */
char separatorOf(std::string_view text)
{
    const std::string_view header = text.substr(0, text.find('\n'));
    return header.find(',') == std::string_view::npos && header.find(';') != std::string_view::npos ? ';'
                                                                                                    : ',';
}

/** "line 3, column 9: what": the reader of tables counts characters, a person counts fields. */
PaperFault brokenTable(const Error& error)
{
    PaperFault fault{.code = PaperFaultCode::BrokenTable, .value = error.message};
    const std::string_view message = error.message;
    const auto colon = message.find(": ");
    if (message.starts_with("line ") && colon != std::string_view::npos) {
        std::from_chars(message.data() + 5, message.data() + message.size(), fault.line);
        fault.value = message.substr(colon + 2);
    }
    return fault;
}

bool isBlank(const std::vector<CsvCell>& row)
{
    return std::all_of(row.begin(), row.end(), [](const CsvCell& cell) { return cell.text.empty(); });
}

void readHeader(PaperSheet& sheet)
{
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < sheet.header.size(); ++i) {
        const CsvCell& cell = sheet.header[i];
        const auto at = [&](PaperFaultCode code) {
            sheet.faults.push_back(
                {.code = code, .line = cell.line, .column = static_cast<int>(i) + 1, .name = cell.text});
        };
        if (cell.text.empty())
            at(PaperFaultCode::ColumnUnknown);
        else if (!seen.insert(cell.text).second)
            at(PaperFaultCode::ColumnTwice);
    }
}

void readRows(PaperSheet& sheet, std::vector<std::vector<CsvCell>> lines)
{
    sheet.header = std::move(lines.front());
    readHeader(sheet);
    for (std::size_t i = 1; i < lines.size(); ++i) {
        auto& row = lines[i];
        if (isBlank(row))
            continue;
        if (row.size() == sheet.header.size())
            sheet.rows.push_back(std::move(row));
        else
            sheet.faults.push_back({.code = PaperFaultCode::WrongWidth,
                .line = row.front().line,
                .value = std::to_string(row.size()),
                .limit = std::to_string(sheet.header.size())});
    }
}

}

const char* codeName(PaperFaultCode code) { return faultCodes.at(static_cast<std::size_t>(code)); }

PaperSheet readPaperSheet(std::string_view text)
{
    PaperSheet sheet;
    const auto only = [&](PaperFault fault) {
        sheet.faults.push_back(std::move(fault));
        return sheet;
    };
    if (text.size() > maxPaperBytes)
        return only({.code = PaperFaultCode::TooLarge,
            .value = std::to_string(text.size()),
            .limit = std::to_string(maxPaperBytes)});
    if (!isUtf8(text) || text.find('\0') != std::string_view::npos)
        return only({.code = PaperFaultCode::NotUtf8});
    auto lines = readCsvLines(text, separatorOf(text));
    if (!lines)
        return only(brokenTable(lines.error()));
    if (!lines->empty())
        readRows(sheet, std::move(*lines));
    if (const std::size_t rows = sheet.rows.size(); rows > maxPaperRows) {
        sheet = {};
        return only({.code = PaperFaultCode::TooManyRows,
            .value = std::to_string(rows),
            .limit = std::to_string(maxPaperRows)});
    }
    if (sheet.rows.empty() && sheet.faults.empty())
        return only({.code = PaperFaultCode::NoRows});
    return sheet;
}

}
