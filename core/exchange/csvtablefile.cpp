// SPDX-License-Identifier: MIT
#include "core/exchange/csvtablefile.h"

#include "core/base/csv.h"
#include "core/exchange/csvdictionary.h"

#include <filesystem>

namespace cradlepost {

namespace {
constexpr std::size_t mostWaiting = 1 << 16; // bytes
}

CsvTableFile::CsvTableFile(std::string table, WholeFile file)
    : m_table(std::move(table))
    , m_file(std::move(file))
    , m_out(m_file.draft(), std::ios::binary | std::ios::trunc)
{
}

Result<CsvTableFile> CsvTableFile::begin(const std::string& folder, const std::string& table)
{
    auto draft = WholeFile::draftOf((std::filesystem::path(folder) / (table + ".csv")).string());
    if (!draft)
        return tl::unexpected(draft.error());
    CsvTableFile file(table, std::move(*draft));
    std::vector<std::string> names;
    for (const CsvColumn& column : csvDictionary()) {
        if (column.table != table)
            continue;
        names.push_back(column.column);
        file.m_isText.push_back(column.type == "text" || column.type == "id");
    }
    appendCsvLine(file.m_waiting, names);
    return file;
}

Result<void> CsvTableFile::add(std::vector<std::string> cells)
{
    if (cells.size() != m_isText.size())
        return fail(ErrorCode::InvalidArgument,
            "table " + m_table + ": " + std::to_string(cells.size()) + " cells for "
                + std::to_string(m_isText.size()) + " columns");
    constexpr std::string_view formulaSigns = "=+-@\t\r";
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const bool isFormula = m_isText[i] && !cells[i].empty()
            && formulaSigns.find(cells[i].front()) != std::string_view::npos;
        if (isFormula)
            cells[i].insert(0, 1, '\'');
    }
    appendCsvLine(m_waiting, cells);
    ++m_rows;
    return m_waiting.size() < mostWaiting ? Result<void>() : flush();
}

Result<void> CsvTableFile::flush()
{
    m_out << m_waiting;
    m_waiting.clear();
    if (!m_out)
        return fail(ErrorCode::Io, "table " + m_table + " cannot be written", "Is the disk full?");
    return {};
}

Result<void> CsvTableFile::publish()
{
    if (auto flushed = flush(); !flushed)
        return flushed;
    m_out.close();
    if (!m_out)
        return fail(ErrorCode::Io, "table " + m_table + " cannot be written", "Is the disk full?");
    return m_file.publish();
}

}
