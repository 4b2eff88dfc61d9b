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
template <class T> struct Fact
{
    FactId id;
    T what;
    bool operator==(const Fact&) const = default;
};

/**
 * In the order in which it happened, facts of the same moment by station and seq: the same on every station,
 * in whatever order the records arrive. A fact that is there twice is kept once.
 */
template <class T> std::vector<Fact<T>> inOrder(std::vector<Fact<T>> facts)
{
    std::sort(facts.begin(), facts.end(), [](const Fact<T>& a, const Fact<T>& b) {
        return a.what.at != b.what.at ? a.what.at < b.what.at : a.id < b.id;
    });
    const auto same = [](const Fact<T>& a, const Fact<T>& b) { return a.id == b.id; };
    facts.erase(std::unique(facts.begin(), facts.end(), same), facts.end());
    return facts;
}

}
