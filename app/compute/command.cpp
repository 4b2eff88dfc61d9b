// SPDX-License-Identifier: MIT
#include "app/compute/command.h"

#include "app/compute/compute.h"
#include "app/exitcode.h"

#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <fstream>
#include <iostream>
#include <iterator>
#include <memory>

namespace cradlepost::compute {

namespace {

constexpr std::uintmax_t largestTable = 256U * 1024 * 1024;

struct Request
{
    std::string path;
    bool json = false;
    std::map<std::string, std::string> given;
};

Result<std::string> readAll(const std::string& path)
{
    std::ifstream file;
    if (path != "-") {
        file.open(path, std::ios::binary);
        if (!file)
            return fail(ErrorCode::NotFound, "cannot open '" + path + "'");
    }
    std::istream& in = path == "-" ? std::cin : file;
    std::string text;
    char block[65536];
    while (in.read(block, sizeof block) || in.gcount() > 0) {
        text.append(block, static_cast<std::size_t>(in.gcount()));
        if (text.size() > largestTable)
            return fail(ErrorCode::BadDocument, "'" + path + "' is larger than 256 MiB");
    }
    if (in.bad() || (path != "-" && text.empty() && !in.eof()))
        return fail(ErrorCode::Io, "cannot read '" + path + "'");
    return text;
}

int codeOf(const Error& error)
{
    return error.code == ErrorCode::InvalidArgument || error.code == ErrorCode::NotFound ? WrongUse
                                                                                         : Failed;
}

int report(const Error& error, const std::string& what, std::ostream& err)
{
    err << what << ": " << error.message;
    if (!error.hint.empty())
        err << " (" << error.hint << ')';
    err << '\n';
    return codeOf(error);
}

int run(const Method& method, const Request& request, std::ostream& out, std::ostream& err)
{
    const auto text = readAll(request.path);
    if (!text)
        return report(text.error(), method.name, err);
    GivenOptions given;
    for (const auto& [name, value] : request.given) {
        if (!value.empty())
            given.emplace(name, value);
    }
    const auto answer = compute(method.name, *text, given);
    if (!answer)
        return report(answer.error(), request.path, err);
    out << (request.json ? toJsonLine(*answer) : toPlainText(*answer));
    return out.good() ? Done : Failed;
}

/** Only options are listed by CLI11; columns, members and example are ours. */
std::string footerOf(const Method& method)
{
    const auto text = helpText(method);
    return text.substr(text.find("Columns of the table"));
}

}

void registerComputeCommand(CLI::App& app, ComputeRun& chosen)
{
    auto* const compute
        = app.add_subcommand("compute", "Any method of the statistics on a table of your own");
    compute->require_subcommand(1);
    for (const auto& method : methods()) {
        auto* const command = compute->add_subcommand(method.name, method.summary);
        const auto request = std::make_shared<Request>();
        command->add_option("--in", request->path, "the table, CSV with a header line; -: standard input")
            ->required();
        command->add_flag("--json", request->json, "answer as one line of JSON");
        for (const auto& option : method.options)
            command->add_option("--" + option.name, request->given[option.name], option.meaning)
                ->default_str(option.fallback);
        command->footer(footerOf(method));
        command->callback([&method, request, &chosen] {
            chosen = [&method, request](
                         std::ostream& out, std::ostream& err) { return run(method, *request, out, err); };
        });
    }
}

}
