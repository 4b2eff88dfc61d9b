// SPDX-License-Identifier: MIT
#include "core/supply/warmerclock.h"

#include "core/checklist/objectreader.h"
#include "core/supply/bodyreader.h"
#include "core/supply/codes.h"

namespace cradlepost {

namespace {
constexpr CodeTable<WarmerState, 3> stateNames{{
    {WarmerState::Off, "off"},
    {WarmerState::Warming, "warming"},
    {WarmerState::Ready, "ready"},
}};

bool isOnAt(const WarmerRun& run, Instant t) { return run.on <= t && (!run.off || *run.off > t); }
}

const char* codeName(WarmerState state) { return codeIn(stateNames, state); }

Result<void> checkSwitch(const WarmerSwitch& event)
{
    if (!isId(event.device))
        return fail(ErrorCode::InvalidArgument, "warmer: no device is named");
    return {};
}

Json toBody(const WarmerSwitch& event)
{
    return Json::Object{
        {"at", toMs(event.at)}, {"device", event.device}, {"switched", event.on ? "on" : "off"}};
}

Result<WarmerSwitch> warmerSwitchFromBody(const Json& body)
{
    BodyReader read(body, "warmer record");
    WarmerSwitch event{.device = read.id("device"), .at = read.moment("at")};
    const std::string switched = read.text("switched", 3);
    if (switched != "on" && switched != "off")
        read.fault("switched", "is neither 'on' nor 'off'");
    event.on = switched == "on";
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    return event;
}

std::vector<WarmerRun> foldWarmers(std::vector<Recorded<WarmerSwitch>> events)
{
    std::map<std::string, std::vector<WarmerRun>> byDevice;
    for (const auto& event : inOrder(std::move(events))) {
        auto& runs = byDevice[event.what.device];
        const bool on = !runs.empty() && !runs.back().off;
        if (event.what.on && !on)
            runs.push_back({.device = event.what.device, .on = event.what.at, .off = std::nullopt});
        if (!event.what.on && on)
            runs.back().off = event.what.at;
    }
    std::vector<WarmerRun> all;
    for (const auto& [device, runs] : byDevice)
        all.insert(all.end(), runs.begin(), runs.end());
    return all;
}

WarmerStanding warmerAt(
    const std::vector<WarmerRun>& runs, const std::string& device, Instant now, std::chrono::minutes warmUp)
{
    WarmerStanding standing{.device = device};
    for (const WarmerRun& run : runs) {
        if (run.device != device || !isOnAt(run, now))
            continue;
        standing.onSince = run.on;
        standing.readyAt = run.on + warmUp;
        standing.onFor = std::chrono::floor<std::chrono::minutes>(now - run.on);
        standing.state = now >= *standing.readyAt ? WarmerState::Ready : WarmerState::Warming;
    }
    return standing;
}

std::vector<OffTooSoon> offTooSoon(const std::vector<WarmerRun>& runs, const std::vector<BirthSpan>& board,
    Instant now, std::chrono::minutes before)
{
    const auto open = expectedAt(board, now);
    const auto isOpen = [&](const std::string& birth) {
        return std::any_of(open.begin(), open.end(), [&](const auto& one) { return one.birth == birth; });
    };
    std::vector<OffTooSoon> out;
    for (const WarmerRun& run : runs) {
        if (!run.off || *run.off > now)
            continue;
        const bool onAgain = std::any_of(runs.begin(), runs.end(), [&](const WarmerRun& other) {
            return other.device == run.device && other.on >= *run.off && other.on <= now;
        });
        const auto births = expectedAt(board, *run.off);
        if (onAgain || births.empty() || births.front().expected > *run.off + before)
            continue;
        if (isOpen(births.front().birth))
            out.push_back({.device = run.device,
                .off = *run.off,
                .birth = births.front().birth,
                .expected = births.front().expected});
    }
    return out;
}

}
