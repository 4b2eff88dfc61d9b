// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/csv.h"
#include "core/checklist/checklist.h"

#include <array>
#include <optional>

namespace cradlepost {

/** What is wrong with a sheet of the paper backlog. */
enum class PaperFaultCode {
    TooLarge, ///< value: bytes, limit: bytes
    NotUtf8, ///< UTF-16, another encoding, or no text at all
    BrokenTable, ///< value: what RFC 4180 says against it, in English
    NoRows,
    TooManyRows, ///< value, limit: rows
    ColumnUnknown, ///< name
    ColumnTwice, ///< name
    ColumnMissing, ///< name
    WrongWidth, ///< value: fields of the line, limit: of the header
    WrongDate, ///< value; else than YYYY-MM-DD
    WrongShift, ///< value; limit: the codes of the pattern in force that day
    WrongTime, ///< value; else than HH:MM
    TimeOutsideShift, ///< value; limit: "07:00 to 19:00"
    WrongInitials, ///< value; none, or longer than 12 characters
    InFuture,
    NoPattern, ///< the unit had no shifts on that day
    BeforeAdoption, ///< the unit had no checklist on that day
    AlreadyThere, ///< the shift has its round
    TwiceInSheet, ///< limit: the line that has the same shift
    NothingChecked, ///< a row without one answer
    NotAsked, ///< the checklist of that day does not ask this item
    WrongValue, ///< value; kind: of the item; limit: the forms that it takes
    // warnings
    UnknownInitials, ///< value; not among the people of the unit
};

struct PaperFault
{
    PaperFaultCode code = PaperFaultCode::BrokenTable;
    int line = 0; ///< from 1; 0: the whole sheet
    int column = 0; ///< which field of the line, from 1; 0: the whole line
    std::string name; ///< of the column: an item id, "date", ...
    std::string value; ///< as it stands there
    std::string limit;
    std::optional<ItemKind> kind;
    bool operator==(const PaperFault&) const = default;
};

/** Lower-case code for --json: "wrong-date". */
const char* codeName(PaperFaultCode code);

inline constexpr std::size_t maxPaperBytes = std::size_t{4} << 20;
inline constexpr std::size_t maxPaperRows = 4000; ///< more than five years of two shifts a day
inline constexpr std::size_t maxPaperFaults = 2000; ///< a sheet of something else has no end of them

/** The columns before the items. */
inline constexpr std::array<const char*, 4> paperColumns{"date", "shift", "finished", "initials"};

/** A sheet taken apart. */
struct PaperSheet
{
    std::vector<CsvCell> header;
    std::vector<std::vector<CsvCell>> rows; ///< only those as wide as the header
    std::vector<PaperFault> faults;
};

/**
 * Takes a sheet apart: UTF-8 with or without a byte order mark, lines by LF or CR LF, fields parted by
 * commas, or by semicolons where the header has no comma (as spread-sheet programs write it where the comma
 * is a decimal sign). Empty rows are passed over.
 */
PaperSheet readPaperSheet(std::string_view text);

}
