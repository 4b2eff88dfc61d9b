// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

/** A small valid document with every kind of rule, one member a line. */
std::string sampleDocument();

/** One way to break a text: a piece of it, what stands there instead, and what the message must hold. */
struct Breakage
{
    std::string piece;
    std::string instead;
    std::vector<std::string> said;
};

/** The text with the first `piece` replaced; the piece must stand in it. */
std::string broken(std::string text, const Breakage& breakage);

/** Checks that the sample, broken so, is refused with a message that holds everything in `said`. */
void checkRefused(const Breakage& breakage);
