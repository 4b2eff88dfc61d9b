// SPDX-License-Identifier: MIT
#include "app/compute/command.h"

#include "app/exitcode.h"

#include "app/compute/compute.h"

#include <CLI/CLI.hpp>
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace cradlepost;
using namespace cradlepost::compute;

namespace {

struct Outcome
{
    int code = -1;
    std::string out;
    std::string err;
};

/** Runs a command line as the program does. */
Outcome runLine(const std::string& line)
{
    CLI::App app("program");
    ComputeRun chosen;
    registerComputeCommand(app, chosen);
    std::ostringstream out;
    std::ostringstream err;
    try {
        app.parse(line);
    } catch (const CLI::Success& done) {
        return {app.exit(done, out, err), out.str(), err.str()};
    } catch (const CLI::ParseError& error) {
        app.exit(error, out, err);
        return {WrongUse, out.str(), err.str()};
    }
    REQUIRE(chosen);
    const int code = chosen(out, err);
    return {code, out.str(), err.str()};
}

/** A table on the disk, gone with the test. */
class TableFile
{
public:
    explicit TableFile(const std::string& text)
        : m_path(std::filesystem::temp_directory_path() / "cradlepost-compute-table.csv")
    {
        std::ofstream(m_path, std::ios::binary) << text;
    }
    TableFile(const TableFile&) = delete;
    TableFile& operator=(const TableFile&) = delete;
    ~TableFile() { std::filesystem::remove(m_path); }
    [[nodiscard]] std::string path() const { return m_path.string(); }

private:
    std::filesystem::path m_path;
};

}

TEST_CASE("compute answers a table as text and as JSON")
{
    const TableFile file("x,n\n81,263\n");
    const auto text = runLine("compute wilson --in " + file.path());
    CHECK(text.code == Done);
    CHECK(text.out.find("method: wilson\nlevel: 0.95\nrows:\n") == 0);
    CHECK(text.err.empty());
    const auto json = runLine("compute wilson --json --level 0.9 --in " + file.path());
    CHECK(json.code == Done);
    const auto parsed = parseJson(json.out);
    REQUIRE(parsed);
    CHECK(std::get<double>(parsed->find("level")->value) == 0.9);
}

TEST_CASE("compute says where a table is at fault and ends with 1")
{
    const TableFile file("x,n\n81,263\n7,five\n");
    const auto outcome = runLine("compute p-chart --in " + file.path());
    CHECK(outcome.code == Failed);
    CHECK(outcome.out.empty());
    CHECK(outcome.err.find("line 3, column 3: (n) 'five' is not a count") != std::string::npos);
    CHECK(outcome.err.find(file.path()) == 0);
}

TEST_CASE("wrong use ends with 2")
{
    const TableFile file("x,n\n1,2\n");
    CHECK(runLine("compute wilson --level 2 --in " + file.path()).code == WrongUse);
    CHECK(runLine("compute p-chart --rules none --in " + file.path()).code == WrongUse);
    CHECK(runLine("compute wilson --in /does/not/exist.csv").code == WrongUse);
    CHECK(runLine("compute wilson").code == WrongUse);
    CHECK(runLine("compute tea-leaves --in " + file.path()).code == WrongUse);
    CHECK(runLine("compute").code == WrongUse);
    CHECK(runLine("compute wilson --colour red --in " + file.path()).code == WrongUse);
    CHECK(runLine("compute wilson --in /").code != Done);
}

TEST_CASE("help lists the methods and shows each one's columns and example")
{
    const auto all = runLine("compute --help");
    CHECK(all.code == Done);
    for (const auto& method : methods()) {
        CHECK(all.out.find(method.name) != std::string::npos);
        const auto one = runLine("compute " + method.name + " --help");
        CHECK(one.code == Done);
        CHECK(one.out.find("Columns of the table:") != std::string::npos);
        CHECK(one.out.find(method.example) != std::string::npos);
    }
}
