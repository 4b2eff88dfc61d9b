// SPDX-License-Identifier: MIT
#include "core/exchange/tablesxlsx.h"

#include "core/exchange/sheetnames.h"
#include "core/exchange/wholefile.h"
#include "core/exchange/xlsxsheet.h"
#include "core/exchange/ziptest.h"

#include <algorithm>

namespace cradlepost {

namespace {

Result<void> checkSize(const DataTable& table)
{
    if (table.rows.size() < LXW_ROW_MAX && table.columns.size() <= LXW_COL_MAX)
        return {};
    return fail(ErrorCode::InvalidArgument, "the table '" + table.id + "' is larger than a sheet");
}

std::vector<std::string> namesOf(const TableBook& book, const TableWords& words)
{
    std::vector<std::string> wishes{sheetWord(words, "about")};
    std::transform(book.tables.begin(), book.tables.end(), std::back_inserter(wishes),
        [&](const DataTable& table) { return sheetWord(words, table.id); });
    return sheetNames(wishes);
}

Column columnOf(const Cell& value)
{
    if (std::holds_alternative<Date>(value))
        return {.kind = ColumnKind::Day};
    return {.kind = std::holds_alternative<Instant>(value) ? ColumnKind::Time : ColumnKind::Text};
}

void writeAbout(XlsxSheet sheet, XlsxFormats& formats, const TablesAbout& about, const TableWords& words)
{
    lxw_row_t row = 0;
    sheet.heading(0, aboutWord(words, "key"));
    sheet.heading(1, aboutWord(words, "value"));
    for (const AboutLine& line : aboutLines(about)) {
        sheet.cell(++row, 0, aboutWord(words, line.key), formats.wrapped());
        sheet.cell(row, 1, line.value, columnOf(line.value));
    }
    for (const std::string& caution : about.cautions) {
        sheet.cell(++row, 0, aboutWord(words, "caution"), formats.wrapped());
        sheet.cell(row, 1, caution, formats.wrapped());
    }
    sheet.finish(row, 2, false, words.rightToLeft);
}

void writeTable(XlsxSheet sheet, const DataTable& table, const TableWords& words)
{
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        sheet.heading(static_cast<lxw_col_t>(i), headingWord(words, table.id, table.columns[i]));
    lxw_row_t row = 0;
    for (const std::vector<Cell>& cells : table.rows) {
        ++row;
        for (std::size_t i = 0; i < std::min(cells.size(), table.columns.size()); ++i) {
            const Column& column = table.columns[i];
            const auto* code
                = column.kind == ColumnKind::Code ? std::get_if<std::string>(&cells[i]) : nullptr;
            const Cell shown = code != nullptr ? Cell(codeWord(words, table.id, column, *code)) : cells[i];
            sheet.cell(row, static_cast<lxw_col_t>(i), shown, column);
        }
    }
    sheet.finish(row, static_cast<lxw_col_t>(table.columns.size()), true, words.rightToLeft);
}

/** What the library says when it closes the book. */
Result<void> closed(const Libxlsxwriter& library, lxw_error error, const WholeFile& file, const std::string& path)
{
    const bool isDisk = error == LXW_ERROR_CREATING_TMPFILE || error == LXW_ERROR_ZIP_FILE_OPERATION
        || error == LXW_ERROR_ZIP_FILE_ADD || error == LXW_ERROR_ZIP_CLOSE;
    if (error != LXW_NO_ERROR && !isDisk)
        return fail(ErrorCode::Io, "cannot write " + path + ": " + library.lxw_strerror(error));
    if (error != LXW_NO_ERROR || !hasWholeParts(file.draft()))
        return fail(ErrorCode::DiskFull,
            "cannot write " + path + ": no room left there or in the folder for temporary files");
    return {};
}

}

Result<void> writeXlsx(const TableBook& book, const TableWords& words, const std::string& path)
{
    for (const DataTable& table : book.tables) {
        if (auto fits = checkSize(table); !fits)
            return fits;
    }
    const auto loaded = loadLibxlsxwriter();
    if (!loaded)
        return tl::unexpected(loaded.error());
    const Libxlsxwriter& library = **loaded;
    auto file = WholeFile::draftOf(path);
    if (!file)
        return tl::unexpected(file.error());
    lxw_workbook* workbook = library.workbook_new(file->draft().c_str());
    if (workbook == nullptr)
        return fail(ErrorCode::Io, "cannot write " + path);
    std::string title = book.about.place; // the library does not write to its properties
    lxw_doc_properties properties{};
    properties.title = title.data();
    properties.created = static_cast<time_t>(toMs(book.about.madeAt) / 1000); // else the wall clock
    library.workbook_set_properties(workbook, &properties);
    XlsxFormats formats(library, workbook);
    const auto names = namesOf(book, words);
    const auto sheet = [&](std::size_t i) {
        return XlsxSheet(library.workbook_add_worksheet(workbook, names[i].c_str()), formats, book.about.zone);
    };
    writeAbout(sheet(0), formats, book.about, words);
    for (std::size_t i = 0; i < book.tables.size(); ++i)
        writeTable(sheet(i + 1), book.tables[i], words);
    if (auto written = closed(library, library.workbook_close(workbook), *file, path); !written)
        return written;
    return file->publish();
}

}
