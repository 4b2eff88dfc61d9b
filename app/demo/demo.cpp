// SPDX-License-Identifier: MIT
#include "app/demo/demo.h"

#include "app/demo/chronicle.h"

#include <filesystem>

namespace cradlepost {

namespace {

Result<DemoWritten> writeInto(const std::string& file, Instant until, int months)
{
    const auto lists = demo::Lists::builtIn();
    if (!lists)
        return tl::unexpected(lists.error());
    FixedClock clock(until);
    const auto store = Store::open(file, clock);
    if (!store)
        return tl::unexpected(store.error());
    DemoWritten written;
    for (const demo::UnitPlan& plan : demo::larkmere()) {
        const auto zone = TimeZone::named(plan.unit.zone);
        if (!zone)
            return tl::unexpected(zone.error());
        const Date today = ShiftCalendar(plan.pattern, *zone).shiftAt(until).date;
        const demo::Stories stories = demo::storiesUpTo(today, months);
        (*store)->signWith(demo::stationOf(plan));
        const auto done = (*store)->together([&]() -> Result<void> {
            const auto rounds = demo::Chronicle(**store, clock, plan, stories, *lists, *zone, until).write();
            if (!rounds)
                return tl::unexpected(rounds.error());
            written.rounds += *rounds;
            return {};
        });
        if (!done)
            return tl::unexpected(done.error());
        ++written.units;
    }
    return written;
}

}

Result<DemoWritten> writeDemo(const std::string& file, Instant until, int months)
{
    std::error_code error;
    if (std::filesystem::exists(file, error))
        return fail(ErrorCode::AlreadyExists, file + " is there already", "Name a new file for the demo.");
    auto written = writeInto(file, until, months);
    if (!written) {
        for (const char* ending : {"", "-wal", "-shm"})
            std::filesystem::remove(file + ending, error);
    }
    return written;
}

}
