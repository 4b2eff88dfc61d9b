// SPDX-License-Identifier: MIT
#include "core/exchange/csvdictionary.h"

#include "core/base/csv.h"

#include <QFile>
#include <sstream>

/** A static library's resources are only linked in when asked for, and only from outside any namespace. */
static void initialiseDictionary() { Q_INIT_RESOURCE(dictionary); }

namespace cradlepost {

namespace {

std::vector<std::string> wordsOf(const std::string& text)
{
    std::istringstream in(text);
    return {std::istream_iterator<std::string>(in), {}};
}

std::vector<CsvColumn> readDictionary()
{
    initialiseDictionary();
    QFile file(QStringLiteral(":/dictionary/dictionary.csv"));
    std::vector<CsvColumn> columns;
    if (!file.open(QIODevice::ReadOnly))
        return columns;
    const auto table = readCsv(file.readAll().toStdString());
    if (!table)
        return columns;
    for (const auto& row : table->rows)
        columns.push_back({.table = row[0].text,
            .column = row[1].text,
            .type = row[2].text,
            .unit = row[3].text,
            .meaning = row[4].text,
            .codes = wordsOf(row[5].text)});
    return columns;
}

}

const std::vector<CsvColumn>& csvDictionary()
{
    static const std::vector<CsvColumn> columns = readDictionary();
    return columns;
}

std::vector<std::string> csvTableNames()
{
    std::vector<std::string> names;
    for (const CsvColumn& one : csvDictionary()) {
        if (names.empty() || names.back() != one.table)
            names.push_back(one.table);
    }
    return names;
}

std::string csvDictionaryText()
{
    std::string text;
    appendCsvLine(text, {"table", "column", "type", "unit", "meaning", "codes"});
    for (const CsvColumn& one : csvDictionary()) {
        std::string codes;
        for (const std::string& code : one.codes)
            codes += (codes.empty() ? "" : " ") + code;
        appendCsvLine(text, {one.table, one.column, one.type, one.unit, one.meaning, codes});
    }
    return text;
}

}
