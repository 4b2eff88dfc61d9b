// SPDX-License-Identifier: MIT
#include "core/supply/handoverdifference.h"

#include "core/supply/codes.h"

namespace cradlepost {

namespace {

using Code = HandoverChangeCode;

constexpr CodeTable<Code, 13> codeNames{{
    {Code::StateChanged, "state-changed"},
    {Code::GapOpened, "gap-opened"},
    {Code::GapChanged, "gap-changed"},
    {Code::GapMended, "gap-mended"},
    {Code::StockWorse, "stock-worse"},
    {Code::StockBetter, "stock-better"},
    {Code::DeviceOut, "device-out"},
    {Code::DeviceBack, "device-back"},
    {Code::WarmerOn, "warmer-on"},
    {Code::WarmerOff, "warmer-off"},
    {Code::BirthExpected, "birth-expected"},
    {Code::BirthChanged, "birth-changed"},
    {Code::BirthGone, "birth-gone"},
}};

std::string keyOf(const HandoverGap& gap) { return gap.item + "/" + std::to_string(gap.nth); }
std::string keyOf(const HandoverStock& stock) { return stock.item; }
std::string keyOf(const HandoverDevice& device) { return device.device; }
std::string keyOf(const HandoverWarmer& warmer) { return warmer.device; }
std::string keyOf(const ExpectedBirth& birth) { return birth.birth; }

template <class T> std::map<std::string, T> byKey(const std::vector<T>& list)
{
    std::map<std::string, T> out;
    for (const T& one : list)
        out.emplace(keyOf(one), one);
    return out;
}

/** What is only in one list or in both, by key. */
template <class T, class Gone, class Came, class Stayed>
void compare(const std::vector<T>& before, const std::vector<T>& after, Gone gone, Came came, Stayed stayed)
{
    const auto old = byKey(before);
    const auto now = byKey(after);
    for (const auto& [key, one] : old) {
        if (!now.contains(key))
            gone(one);
    }
    for (const auto& [key, one] : now) {
        const auto was = old.find(key);
        if (was == old.end())
            came(one);
        else
            stayed(was->second, one);
    }
}

class Comparison
{
public:
    std::vector<HandoverChange> of(const Handover& before, const Handover& after)
    {
        if (before.state != after.state)
            add(Code::StateChanged, {}, before.state, after.state);
        gaps(before, after);
        stock(before, after);
        devices(before, after);
        warmers(before, after);
        births(before, after);
        std::stable_sort(m_changes.begin(), m_changes.end(),
            [](const HandoverChange& a, const HandoverChange& b) { return a.code < b.code; });
        return std::move(m_changes);
    }

private:
    void add(Code code, std::string subject, std::string before = {}, std::string after = {}, int nth = 0)
    {
        m_changes.push_back({.code = code,
            .subject = std::move(subject),
            .nth = nth,
            .before = std::move(before),
            .after = std::move(after)});
    }

    void gaps(const Handover& before, const Handover& after)
    {
        compare(
            before.gaps, after.gaps,
            [&](const auto& gap) { add(Code::GapMended, gap.item, {}, {}, gap.nth); },
            [&](const auto& gap) { add(Code::GapOpened, gap.item, {}, {}, gap.nth); },
            [&](const auto& was, const auto& is) {
                if (was.owner != is.owner || was.due != is.due)
                    add(Code::GapChanged, is.item, was.owner, is.owner, is.nth);
            });
    }

    void stock(const Handover& before, const Handover& after)
    {
        compare(
            before.stock, after.stock,
            [&](const auto& one) { add(Code::StockBetter, one.item, codeName(one.status)); },
            [&](const auto& one) { add(Code::StockWorse, one.item, {}, codeName(one.status)); },
            [&](const auto& was, const auto& is) {
                if (was.status != is.status)
                    add(is.status < was.status ? Code::StockWorse : Code::StockBetter, is.item,
                        codeName(was.status), codeName(is.status));
            });
    }

    void devices(const Handover& before, const Handover& after)
    {
        compare(
            before.devices, after.devices,
            [&](const auto& one) { add(Code::DeviceBack, one.device, codeName(one.state)); },
            [&](const auto& one) { add(Code::DeviceOut, one.device, {}, codeName(one.state)); },
            [&](const auto& was, const auto& is) {
                if (was.state != is.state)
                    add(Code::DeviceOut, is.device, codeName(was.state), codeName(is.state));
            });
    }

    void warmers(const Handover& before, const Handover& after)
    {
        compare(
            before.warming, after.warming, [&](const auto& one) { add(Code::WarmerOff, one.device); },
            [&](const auto& one) { add(Code::WarmerOn, one.device); }, [](const auto&, const auto&) {});
    }

    void births(const Handover& before, const Handover& after)
    {
        compare(
            before.births, after.births, [&](const auto& one) { add(Code::BirthGone, one.birth); },
            [&](const auto& one) { add(Code::BirthExpected, one.birth); },
            [&](const auto& was, const auto& is) {
                if (was != is)
                    add(Code::BirthChanged, is.birth);
            });
    }

    std::vector<HandoverChange> m_changes;
};

}

const char* codeName(HandoverChangeCode code) { return codeIn(codeNames, code); }

std::vector<HandoverChange> differenceOf(const Handover& before, const Handover& after)
{
    return Comparison().of(before, after);
}

}
