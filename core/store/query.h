// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace cradlepost {

/** What a column holds. */
enum class ColumnType { Null, Integer, Text, Bytes };

/**
 * A prepared query of one connection: what a Statement works on. One implementation for each kind of
 * database. Placeholders are counted from 1, columns from 0. Faults are thrown as Failure.
 */
class Query
{
public:
    virtual ~Query() = default;
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    virtual void bind(int place, std::int64_t value) = 0;
    virtual void bind(int place, std::string_view text) = 0;
    virtual void bind(int place, std::span<const unsigned char> bytes) = 0;
    virtual void bindNull(int place) = 0;

    /** Runs it to its end; what it gives is of no interest. */
    virtual void run() = 0;
    /** Whether there is a first or a further row. */
    virtual bool next() = 0;
    /** Ends it; it can be bound anew. */
    virtual void reset() = 0;

    [[nodiscard]] virtual int columns() const = 0;
    [[nodiscard]] virtual std::string columnName(int column) const = 0;
    [[nodiscard]] virtual ColumnType type(int column) const = 0;
    /** 0 for nothing. */
    [[nodiscard]] virtual std::int64_t integer(int column) const = 0;
    /** These two are good until the next row. */
    [[nodiscard]] virtual std::string_view text(int column) const = 0;
    [[nodiscard]] virtual std::span<const unsigned char> blob(int column) const = 0;

    bool inUse = false; ///< one Statement at a time

protected:
    Query() = default;
};

}
