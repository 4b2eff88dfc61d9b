// SPDX-License-Identifier: MIT
#include "app/compute/compute.h"

#include <algorithm>
#include <iterator>

namespace cradlepost::compute {

namespace {

std::vector<Method> allMethods()
{
    std::vector<Method> all;
    for (auto* const family : {shareMethods, chartMethods, changeMethods, unitMethods, durationMethods,
             agreementMethods, stockMethods, samplingMethods, trustMethods, trendMethods}) {
        auto list = family();
        std::move(list.begin(), list.end(), std::back_inserter(all));
    }
    return all;
}

/** The engine counts rows; the user looks at lines. */
Error inTable(Error error, const Table& table)
{
    if (error.code != ErrorCode::InvalidArgument)
        return error;
    error.code = ErrorCode::BadDocument;
    for (const std::string word : {"row ", "stratum ", "item "}) {
        if (error.message.compare(0, word.size(), word) != 0)
            continue;
        const auto end = error.message.find(':');
        const auto row = readWhole(error.message.substr(word.size(), end - word.size()));
        if (row && *row >= 1 && static_cast<std::size_t>(*row) <= table.size())
            error.message = "line " + std::to_string(table.line(static_cast<std::size_t>(*row - 1)))
                + error.message.substr(end);
        return error;
    }
    error.message = "line " + std::to_string(table.line(0)) + ": " + error.message;
    return error;
}

std::string kindText(const OptionSpec& option)
{
    std::string text;
    switch (option.kind) {
    case OptionKind::Number:
        text = "NUMBER";
        break;
    case OptionKind::Whole:
        text = "COUNT";
        break;
    case OptionKind::Choice:
        for (const auto& choice : option.choices)
            text += (text.empty() ? "" : "|") + choice;
        break;
    case OptionKind::Rows:
        text = "ROW,ROW,...";
        break;
    case OptionKind::Words:
        text = "WORD,WORD,...";
        break;
    }
    return text;
}

}

const std::vector<Method>& methods()
{
    static const auto all = allMethods();
    return all;
}

const Method* findMethod(std::string_view name)
{
    const auto at
        = std::find_if(methods().begin(), methods().end(), [&](const Method& m) { return m.name == name; });
    return at == methods().end() ? nullptr : &*at;
}

Result<Report> compute(std::string_view method, std::string_view csvText, const GivenOptions& given)
{
    const auto* const found = findMethod(method);
    if (found == nullptr)
        return fail(ErrorCode::NotFound, "there is no method '" + std::string(method) + "'",
            "compute --help lists the methods");
    const auto options = Options::read(found->options, given);
    if (!options)
        return tl::unexpected(options.error());
    const auto table = Table::read(csvText, found->columns, found->openColumns);
    if (!table)
        return tl::unexpected(table.error());
    auto report = found->run(*table, *options);
    if (!report)
        return tl::unexpected(inTable(report.error(), *table));
    report->body.insert(report->body.begin(), JsonMember{"method", Json(found->name)});
    return report;
}

std::string helpText(const Method& method)
{
    std::string text = method.summary + "\n\nColumns of the table:\n";
    for (const auto& column : method.columns)
        text += "  " + column.name + (column.optional ? " (optional)" : "") + ": " + column.meaning
            + (column.gaps ? "; may be empty" : "") + '\n';
    if (!method.options.empty())
        text += "\nOptions of the method:\n";
    for (const auto& option : method.options)
        text += "  --" + option.name + ' ' + kindText(option) + ": " + option.meaning
            + (option.fallback.empty() ? "" : " [" + option.fallback + "]") + '\n';
    text += "\nMembers of the answer (--json; rows count from 1 below the header; null: does not exist):\n";
    for (const auto& field : method.fields)
        text += "  " + field.name + ": " + field.meaning + '\n';
    return text + "\nExample of a table:\n" + method.example;
}

}
