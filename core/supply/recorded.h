// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/clock.h"

#include <algorithm>
#include <string>
#include <vector>

namespace cradlepost {

/** Names the record that holds a fact. */
struct FactId
{
    std::string station;
    std::int64_t seq = 0;
    auto operator<=>(const FactId&) const = default;
};

/** Something that happened at `what.at` and the record that says so. */
template <class T> struct Recorded
{
    FactId id;
    T what;
    bool operator==(const Recorded&) const = default;
};

/**
 * In the order in which it happened, facts of the same moment by station and seq: the same on every station,
 * in whatever order the records arrive. A fact that is there twice is kept once.
 */
template <class T> std::vector<Recorded<T>> inOrder(std::vector<Recorded<T>> facts)
{
    std::sort(facts.begin(), facts.end(), [](const Recorded<T>& a, const Recorded<T>& b) {
        return a.what.at != b.what.at ? a.what.at < b.what.at : a.id < b.id;
    });
    const auto same = [](const Recorded<T>& a, const Recorded<T>& b) { return a.id == b.id; };
    facts.erase(std::unique(facts.begin(), facts.end(), same), facts.end());
    return facts;
}

}
