// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

/** A file of the product: its path from the top of the tree, and what stands in it. */
struct SourceFile
{
    std::string path;
    std::string text;
};

struct Include
{
    std::string target;
    bool isQuoted = false; ///< "…" and not <…>
};

/** What the checks look at in C++ text. */
struct SourceText
{
    std::string code; ///< without comments, literals emptied
    std::vector<std::string> literals; ///< what stands between quotes, raw strings too; not of includes
    std::vector<Include> includes;
    std::size_t lines = 0;
};

SourceText readSource(std::string_view text);

/** Files under `top`/`folder` whose names end in .h or .cpp, sorted by path. */
std::vector<SourceFile> sourcesUnder(const std::string& top, const std::string& folder);
