// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>

namespace cradlepost {

/** A moment in UTC, to the millisecond. */
using Instant = std::chrono::sys_time<std::chrono::milliseconds>;

inline std::int64_t toMs(Instant t) { return t.time_since_epoch().count(); }
inline Instant fromMs(std::int64_t ms) { return Instant(std::chrono::milliseconds(ms)); }

/** Where the time comes from; passed in, so that a test can set it. */
class Clock
{
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
};

class SystemClock final : public Clock
{
public:
    [[nodiscard]] Instant now() const override;
};

/** Stands still until it is told otherwise. */
class FixedClock final : public Clock
{
public:
    explicit FixedClock(Instant start)
        : m_now(start)
    {
    }
    [[nodiscard]] Instant now() const override { return m_now; }
    void set(Instant t) { m_now = t; }
    void advance(std::chrono::milliseconds by) { m_now += by; }

private:
    Instant m_now;
};

}
