// SPDX-License-Identifier: MIT
#include "core/exchange/tables.h"

namespace cradlepost {

std::string sheetWord(const TableWords& words, const std::string& table)
{
    return words.sheet ? words.sheet(table) : table;
}

std::string headingWord(const TableWords& words, const std::string& table, const Column& column)
{
    if (words.heading)
        return words.heading(table, column);
    return column.unit.empty() ? column.id : column.id + " (" + column.unit + ")";
}

std::string codeWord(
    const TableWords& words, const std::string& table, const Column& column, const std::string& code)
{
    return words.code ? words.code(table, column, code) : code;
}

std::string aboutWord(const TableWords& words, const std::string& key)
{
    return words.about ? words.about(key) : key;
}

std::vector<AboutLine> aboutLines(const TablesAbout& about)
{
    return {{"unit", about.unit}, {"place", about.place}, {"firstDay", about.firstDay},
        {"lastDay", about.lastDay}, {"madeAt", about.madeAt}, {"zone", about.zone.name()},
        {"station", about.station}, {"ledgerHead", about.ledgerHead}, {"program", about.program}};
}

}
