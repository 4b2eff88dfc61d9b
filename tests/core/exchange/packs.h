// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packimport.h"
#include "core/exchange/packwriter.h"
#include "tests/core/store/ward.h"

namespace cradlepost::test {

/** The lines of a plain pack, without their ends. */
std::vector<std::string> linesOf(const std::string& path);
/** Nothing when the file is no plain pack that can be unpacked. */
std::optional<std::vector<std::string>> linesIn(std::string_view bytes);
/** A plain pack of these lines, whatever they are. */
void writeLines(const std::string& path, const std::vector<std::string>& lines);
/** The last line made anew so that it fits all before, signed with `key`. */
void endAnew(std::vector<std::string>& lines, const StationKey& key);
/** The manifest with another range for each chain, in their order. */
std::string manifestWith(
    const std::string& line, const std::vector<std::pair<std::int64_t, std::int64_t>>& ranges);
/** A record line with its record changed and, with a key, sealed anew. */
std::string recordWith(
    const std::string& line, const std::function<void(Record&)>& change, const StationKey* key = nullptr);

std::string bytesOf(const std::string& path);
void writeBytes(const std::string& path, std::string_view bytes);

/** A station with a key of its own and an empty database. */
struct Station
{
    explicit Station(unsigned char number)
        : key(aKey(number))
        , clock(std::chrono::sys_days(firstDay))
    {
        open();
    }

    void open(OpenMode mode = OpenMode::ReadWrite)
    {
        store.reset();
        store = must(Store::open(path(), clock, mode));
        store->signWith(key);
    }
    [[nodiscard]] std::string path() const { return dir.file("station.db"); }
    [[nodiscard]] std::string file(const std::string& name) const { return dir.file(name); }
    void addUnit(const std::string& unit) { test::addUnit(*store, aUnit(unit), aPlainAdoption(12)); }
    /** One gap in each, so that gaps open and go on. */
    void walk(const std::string& unit, int day, int shift = 0);
    /** Everything, or what the wish says. */
    PackWritten pack(const std::string& to, const PackWish& wish = {}) const
    {
        return must(writePack(*store, wish, to, clock.now()));
    }
    Result<Imported> take(const std::string& from, const ImportWish& wish = {})
    {
        return importPack(*store, from, wish, clock.now());
    }
    /** All records and what trust says, as text, to see that nothing changed. */
    [[nodiscard]] std::string ledger() const;

    TempDir dir;
    StationKey key;
    FixedClock clock;
    std::unique_ptr<Store> store;
};

/** A wish that trusts these stations. */
inline ImportWish trusting(const std::vector<const Station*>& stations)
{
    ImportWish wish{.by = "AB"};
    for (const Station* station : stations)
        wish.trust.push_back(station->key.id());
    return wish;
}

/** "" when both hold the same records and projections; else the first difference. */
std::string difference(const Station& a, const Station& b);

}
