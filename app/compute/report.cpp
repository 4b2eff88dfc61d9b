// SPDX-License-Identifier: MIT
#include "app/compute/report.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace cradlepost::compute {

namespace {

std::string numberText(double value)
{
    // JSON has no word for these; no method lets one out.
    if (!std::isfinite(value))
        return "null";
    char text[32];
    std::string shortest(text, std::to_chars(text, text + sizeof text, value).ptr);
    return shortest;
}

void writeString(std::string& out, const std::string& text)
{
    static constexpr char hex[] = "0123456789abcdef";
    out += '"';
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            (out += '\\') += c;
        else if (c == '\n')
            out += "\\n";
        else if (byte < 0x20)
            ((out += "\\u00") += hex[byte >> 4]) += hex[byte & 15];
        else
            out += c;
    }
    out += '"';
}

void write(std::string& out, const Json& json)
{
    if (json.isNull()) {
        out += "null";
    } else if (const auto* flag = json.asBool()) {
        out += *flag ? "true" : "false";
    } else if (const auto* whole = json.asInteger()) {
        out += std::to_string(*whole);
    } else if (const auto* number = std::get_if<double>(&json.value)) {
        out += numberText(*number);
    } else if (const auto* text = json.asString()) {
        writeString(out, *text);
    } else if (const auto* array = json.asArray()) {
        out += '[';
        for (std::size_t i = 0; i < array->size(); ++i) {
            out += i > 0 ? "," : "";
            write(out, (*array)[i]);
        }
        out += ']';
    } else if (const auto* object = json.asObject()) {
        out += '{';
        for (std::size_t i = 0; i < object->size(); ++i) {
            out += i > 0 ? "," : "";
            writeString(out, (*object)[i].name);
            out += ':';
            write(out, (*object)[i].value);
        }
        out += '}';
    }
}

std::string cellText(const Json& json)
{
    if (json.isNull())
        return "-";
    if (const auto* text = json.asString())
        return *text;
    std::string out;
    write(out, json);
    return out;
}

bool isTable(const Json::Array& array) { return !array.empty() && array.front().asObject() != nullptr; }

void writeTable(std::string& out, const Json::Array& rows)
{
    std::vector<std::vector<std::string>> cells(1);
    for (const auto& member : *rows.front().asObject())
        cells.front().push_back(member.name);
    for (const auto& row : rows) {
        auto& line = cells.emplace_back();
        for (const auto& member : *row.asObject())
            line.push_back(cellText(member.value));
    }
    std::vector<std::size_t> width(cells.front().size());
    for (const auto& line : cells) {
        for (std::size_t c = 0; c < std::min(line.size(), width.size()); ++c)
            width[c] = std::max(width[c], line[c].size());
    }
    for (const auto& line : cells) {
        std::string text = " ";
        for (std::size_t c = 0; c < std::min(line.size(), width.size()); ++c)
            text += ' ' + line[c] + std::string(width[c] - line[c].size(), ' ');
        text.erase(text.find_last_not_of(' ') + 1);
        out += text + '\n';
    }
}

void writeMembers(std::string& out, const Json::Object& object, const std::string& prefix)
{
    for (const auto& [name, value] : object) {
        if (const auto* inner = value.asObject()) {
            writeMembers(out, *inner, prefix + name + '.');
        } else if (const auto* array = value.asArray(); array != nullptr && isTable(*array)) {
            out += prefix + name + ":\n";
            writeTable(out, *array);
        } else {
            out += prefix + name + ": " + cellText(value) + '\n';
        }
    }
}

}

std::string toJsonLine(const Report& report)
{
    std::string out;
    write(out, Json(report.body));
    return out + '\n';
}

std::string toPlainText(const Report& report)
{
    std::string out;
    writeMembers(out, report.body, "");
    return out;
}

}
