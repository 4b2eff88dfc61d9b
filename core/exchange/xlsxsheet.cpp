// SPDX-License-Identifier: MIT
#include "core/exchange/xlsxsheet.h"

#include "core/exchange/tablecell.h"

#include <algorithm>
#include <cmath>

namespace cradlepost {

namespace {

constexpr std::size_t mostCharacters = 32767;
constexpr std::int64_t mostExact = std::int64_t(1) << 53; ///< numbers of a sheet are doubles
constexpr std::size_t narrowest = 8;
constexpr std::size_t widest = 60;
constexpr std::size_t filterButton = 3;

bool beginsCharacter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

std::size_t characters(const std::string& text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), beginsCharacter));
}

std::string shortened(const std::string& text)
{
    if (characters(text) <= mostCharacters)
        return text;
    constexpr std::string_view end = "...";
    std::size_t kept = 0;
    std::size_t at = 0;
    for (; at < text.size() && kept < mostCharacters - end.size(); ++kept) {
        do
            ++at;
        while (at < text.size() && !beginsCharacter(text[at]));
    }
    return text.substr(0, at).append(end);
}

std::string zeros(int decimals)
{
    return decimals > 0 ? "0." + std::string(static_cast<std::size_t>(std::min(decimals, 15)), '0') : "0";
}

std::string patternOf(const Column& column)
{
    switch (column.kind) {
    case ColumnKind::Count:
        return "0";
    case ColumnKind::Number:
        return zeros(column.decimals);
    case ColumnKind::Share:
        return zeros(column.decimals) + '%';
    case ColumnKind::Day:
        return "yyyy-mm-dd";
    case ColumnKind::Time:
        return "yyyy-mm-dd hh:mm";
    default:
        return "@"; // text stays text when the cell is edited
    }
}

/** The years that a sheet's dates reach. */
bool isSheetDate(Date day) { return day.ok() && int(day.year()) >= 1900 && int(day.year()) <= 9999; }

}

lxw_format* XlsxFormats::heading()
{
    if (m_heading == nullptr) {
        m_heading = m_library.workbook_add_format(m_book);
        m_library.format_set_bold(m_heading);
        m_library.format_set_bottom(m_heading, LXW_BORDER_THIN);
    }
    return m_heading;
}

lxw_format* XlsxFormats::wrapped()
{
    if (m_wrapped == nullptr) {
        m_wrapped = m_library.workbook_add_format(m_book);
        m_library.format_set_text_wrap(m_wrapped);
        m_library.format_set_align(m_wrapped, LXW_ALIGN_VERTICAL_TOP);
        m_library.format_set_align(m_wrapped, LXW_ALIGN_LEFT);
    }
    return m_wrapped;
}

lxw_format* XlsxFormats::numbered(const std::string& pattern)
{
    lxw_format*& format = m_byPattern[pattern];
    if (format == nullptr) {
        format = m_library.workbook_add_format(m_book);
        m_library.format_set_num_format(format, pattern.c_str());
    }
    return format;
}

lxw_format* XlsxFormats::of(const Column& column)
{
    return column.kind == ColumnKind::Flag ? nullptr : numbered(patternOf(column));
}

void XlsxSheet::widen(lxw_col_t column, std::size_t count)
{
    std::size_t& width = m_widths[column];
    width = std::max(width, count);
}

void XlsxSheet::text(lxw_row_t row, lxw_col_t column, const std::string& words, lxw_format* format)
{
    if (words.empty())
        return;
    m_library.worksheet_write_string(m_sheet, row, column, shortened(words).c_str(), format);
    widen(column, characters(words));
}

void XlsxSheet::date(
    lxw_row_t row, lxw_col_t column, Date day, std::chrono::milliseconds clock, lxw_format* format)
{
    const auto minutes = std::chrono::floor<std::chrono::minutes>(clock);
    lxw_datetime at{};
    at.year = int(day.year());
    at.month = static_cast<int>(unsigned(day.month()));
    at.day = static_cast<int>(unsigned(day.day()));
    at.hour = static_cast<int>(minutes.count() / 60);
    at.min = static_cast<int>(minutes.count() % 60);
    at.sec = std::chrono::duration<double>(clock - minutes).count();
    m_library.worksheet_write_datetime(m_sheet, row, column, &at, format);
    widen(column, 16);
}

void XlsxSheet::heading(lxw_col_t column, const std::string& words)
{
    text(0, column, words, m_formats.heading());
    widen(column, characters(words) + filterButton);
}

void XlsxSheet::cell(lxw_row_t row, lxw_col_t column, const Cell& value, lxw_format* format)
{
    const auto* whole = std::get_if<std::int64_t>(&value);
    const auto* number = std::get_if<double>(&value);
    if (whole != nullptr && std::abs(*whole) <= mostExact)
        m_library.worksheet_write_number(m_sheet, row, column, static_cast<double>(*whole), format);
    else if (number != nullptr && std::isfinite(*number))
        m_library.worksheet_write_number(m_sheet, row, column, *number, format);
    else
        text(row, column, cellText(value), format);
}

void XlsxSheet::cell(lxw_row_t row, lxw_col_t column, const Cell& value, const Column& kind)
{
    lxw_format* format = m_formats.of(kind);
    const auto* flag = std::get_if<std::int64_t>(&value);
    const auto* day = std::get_if<Date>(&value);
    const auto* moment = std::get_if<Instant>(&value);
    const LocalTime wall = moment != nullptr ? m_zone.toLocal(*moment) : LocalTime{};
    if (flag != nullptr && kind.kind == ColumnKind::Flag)
        m_library.worksheet_write_boolean(m_sheet, row, column, *flag != 0 ? 1 : 0, nullptr);
    else if (day != nullptr && isSheetDate(*day))
        date(row, column, *day, std::chrono::minutes(0), format);
    else if (moment != nullptr && isSheetDate(wall.date))
        // The wall clock counts minutes; what is beyond them is the same in every zone.
        date(row, column, wall.date,
            wall.sinceMidnight + (*moment - std::chrono::floor<std::chrono::minutes>(*moment)), format);
    else
        cell(row, column, value, format);
}

void XlsxSheet::finish(lxw_row_t rows, lxw_col_t columns, bool withFilter, bool rightToLeft)
{
    for (const auto& [column, width] : m_widths)
        m_library.worksheet_set_column(
            m_sheet, column, column, static_cast<double>(std::clamp(width + 1, narrowest, widest)), nullptr);
    m_library.worksheet_freeze_panes(m_sheet, 1, 0);
    m_library.worksheet_repeat_rows(m_sheet, 0, 0);
    m_library.worksheet_set_paper(m_sheet, 9); // A4
    m_library.worksheet_fit_to_pages(m_sheet, 1, 0);
    if (columns > 3)
        m_library.worksheet_set_landscape(m_sheet);
    if (withFilter && columns > 0)
        m_library.worksheet_autofilter(m_sheet, 0, 0, rows, static_cast<lxw_col_t>(columns - 1));
    if (rightToLeft)
        m_library.worksheet_right_to_left(m_sheet);
}

}
