// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/libxlsxwriter.h"
#include "core/exchange/tables.h"

#include <cstdint>
#include <map>

namespace cradlepost {

/** The formats of a work book, each made once. */
class XlsxFormats
{
public:
    XlsxFormats(const Libxlsxwriter& library, lxw_workbook* book)
        : m_library(library)
        , m_book(book)
    {
    }

    lxw_format* heading();
    lxw_format* wrapped();
    /** For the cells of a column; shares in percent, `decimals` as the column says. */
    lxw_format* of(const Column& column);
    [[nodiscard]] const Libxlsxwriter& library() const { return m_library; }

private:
    lxw_format* numbered(const std::string& pattern);

    const Libxlsxwriter& m_library;
    lxw_workbook* m_book;
    lxw_format* m_heading = nullptr;
    lxw_format* m_wrapped = nullptr;
    std::map<std::string, lxw_format*> m_byPattern;
};

/** One sheet being filled. */
class XlsxSheet
{
public:
    XlsxSheet(lxw_worksheet* sheet, XlsxFormats& formats, const TimeZone& zone)
        : m_library(formats.library())
        , m_sheet(sheet)
        , m_formats(formats)
        , m_zone(zone)
    {
    }

    void heading(lxw_col_t column, const std::string& words);
    void cell(lxw_row_t row, lxw_col_t column, const Cell& value, lxw_format* format);
    /** A day, moment or flag as what it is; anything else as cell() writes it. */
    void cell(lxw_row_t row, lxw_col_t column, const Cell& value, const Column& kind);
    /** Widens the columns to what was written, fixes the heading, sets the filter. */
    void finish(lxw_row_t rows, lxw_col_t columns, bool withFilter, bool rightToLeft);

private:
    void text(lxw_row_t row, lxw_col_t column, const std::string& words, lxw_format* format);
    void date(lxw_row_t row, lxw_col_t column, Date day, std::chrono::milliseconds clock, lxw_format* format);
    void widen(lxw_col_t column, std::size_t characters);

    const Libxlsxwriter& m_library;
    lxw_worksheet* m_sheet;
    XlsxFormats& m_formats;
    const TimeZone& m_zone;
    std::map<lxw_col_t, std::size_t> m_widths; ///< in characters
};

}
