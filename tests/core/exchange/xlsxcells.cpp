// SPDX-License-Identifier: MIT
#include "xlsxcells.h"

#include <cstdlib>
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>

namespace cradlepost::test {

std::map<std::string, std::string> cellsOfWorkBook(const std::string& path)
{
    const std::string script = std::string(CRADLEPOST_SOURCE_DIR) + "/tests/core/exchange/readxlsx.py";
    const std::string list = path + ".cells";
    const std::string command = "/usr/bin/python3 '" + script + "' '" + path + "' > '" + list + "'";
    REQUIRE(std::system(command.c_str()) == 0);
    std::map<std::string, std::string> cells;
    std::ifstream lines(list);
    for (std::string line; std::getline(lines, line);)
        cells[line.substr(0, line.find('|'))] = line.substr(line.find('|') + 1);
    return cells;
}

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

}
