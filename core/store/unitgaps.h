// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/gaptable.h"

#include <map>

namespace cradlepost {

/**
 * The gaps of one unit while rounds and actions go into them: the open ones are read once and written once,
 * by write(). What is not written when it is dropped is lost.
 */
class UnitGaps
{
public:
    UnitGaps(GapTable& table, std::string unit);

    std::optional<GapProgress> progress; ///< nothing: nothing went in yet

    /** nullptr when the item has no open gap. */
    [[nodiscard]] const Gap* open(const std::string& item) const;
    /** How many gaps the item has had. */
    [[nodiscard]] int count(const std::string& item) const;
    /** Open or closed; nothing when the item never had it. */
    [[nodiscard]] std::optional<Gap> find(const std::string& item, int nth) const;
    /** A new one, or one that went on or was closed. */
    void put(Gap gap);
    void write();

private:
    struct Kept
    {
        Gap gap;
        bool isStored = false;
        bool isChanged = false;
    };
    void store(const Kept& kept);

    GapTable& m_table;
    std::string m_unit;
    std::map<std::string, Kept> m_open; ///< by item
};

}
