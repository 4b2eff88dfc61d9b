// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/datatable.h"

#include <functional>
#include <string>
#include <vector>

namespace cradlepost {

/** Where tables come from; stands before them in every format. */
struct TablesAbout
{
    std::string unit; ///< id; empty when the tables are about several
    std::string place; ///< its name
    Date firstDay;
    Date lastDay; ///< inclusive
    Instant madeAt;
    TimeZone zone = TimeZone::utc(); ///< of the unit: moments in a work sheet are its wall clock
    std::string station;
    std::string ledgerHead; ///< hash of the ledger's last record, hex
    std::string program; ///< "Cradlepost 0.1.0"
    std::vector<std::string> cautions;
};

struct TableBook
{
    TablesAbout about;
    std::vector<DataTable> tables;
};

/** The reader's words for ids; an id stands for itself where a function is missing. */
struct TableWords
{
    std::function<std::string(const std::string& table)> sheet; ///< "about" is asked for too
    std::function<std::string(const std::string& table, const Column& column)> heading; ///< with its unit
    std::function<std::string(const std::string& table, const Column& column, const std::string& code)> code;
    std::function<std::string(const std::string& key)> about; ///< keys as in aboutLines()
    bool rightToLeft = false;
};

std::string sheetWord(const TableWords& words, const std::string& table);
/** Without a function: the id, with the unit in brackets. */
std::string headingWord(const TableWords& words, const std::string& table, const Column& column);
std::string codeWord(
    const TableWords& words, const std::string& table, const Column& column, const std::string& code);
std::string aboutWord(const TableWords& words, const std::string& key);

struct AboutLine
{
    std::string key; ///< stable, camelCase
    Cell value;
};

/** unit, place, firstDay, lastDay, madeAt, zone, station, ledgerHead, program; the cautions are apart. */
std::vector<AboutLine> aboutLines(const TablesAbout& about);

}
