// SPDX-License-Identifier: MIT
#include "core/supply/notices.h"

#include "core/supply/codes.h"

namespace cradlepost {

namespace {

using Code = NoticeCode;

constexpr CodeTable<Code, 10> codeNames{{
    {Code::BirthWithoutWarmer, "birth-without-warmer"},
    {Code::BirthWithoutKit, "birth-without-kit"},
    {Code::SwitchOnWarmer, "switch-on-warmer"},
    {Code::WarmerOffTooSoon, "warmer-off-too-soon"},
    {Code::GapOverdue, "gap-overdue"},
    {Code::RoundDue, "round-due"},
    {Code::RoundOverdue, "round-overdue"},
    {Code::FridgeReadingDue, "fridge-reading-due"},
    {Code::UpkeepOverdue, "upkeep-overdue"},
    {Code::WarmerReady, "warmer-ready"},
}};

std::string ms(Instant t) { return std::to_string(toMs(t)); }

class Board
{
public:
    explicit Board(const NoticeInput& input)
        : m_in(input)
    {
    }

    std::vector<Notice> all(const TimeZone& zone)
    {
        for (const BirthCover& birth : m_in.births)
            add(birth);
        for (const OffTooSoon& off : m_in.offTooSoon)
            add(Code::WarmerOffTooSoon, off.off, off.device, off.birth, ms(off.off));
        for (const WarmerStanding& warmer : m_in.warmers)
            add(warmer);
        for (const OpenGapDue& gap : m_in.gaps) {
            if (m_in.now > gap.due)
                add(Code::GapOverdue, gap.due, gap.item, std::to_string(gap.nth), ms(gap.due));
        }
        if (m_in.round)
            add(*m_in.round);
        for (const auto& [fridge, slot] : m_in.fridges) {
            if (m_in.now >= slot.from)
                add(Code::FridgeReadingDue, slot.from, fridge, {}, ms(slot.from));
        }
        for (const UpkeepDue& one : m_in.upkeep) {
            if (one.overdue)
                add(Code::UpkeepOverdue, zone.toInstant({.date = addDays(one.due, 1), .sinceMidnight = {}}),
                    one.device, codeName(one.kind), toIso(one.due));
        }
        sort();
        return std::move(m_out);
    }

private:
    void add(
        Code code, Instant at, const std::string& subject, const std::string& value, const std::string& what)
    {
        std::string key = std::string(codeName(code)) + "/" + subject + "/" + value + "/" + what;
        m_out.push_back({.code = code, .key = std::move(key), .at = at, .subject = subject, .value = value});
    }

    void add(const BirthCover& cover)
    {
        const std::string& birth = cover.birth.birth;
        const Instant near = cover.birth.expected - m_in.birthNear;
        std::optional<WarmPlace> worst;
        for (const BabyPlace& place : cover.places) {
            if (place.place == WarmPlace::Late || place.place == WarmPlace::None)
                worst = std::max(worst.value_or(place.place), place.place);
            if (place.switchOnBy && m_in.now >= *place.switchOnBy - m_in.switchOnAhead)
                add(Code::SwitchOnWarmer, *place.switchOnBy, place.device, birth, ms(*place.switchOnBy));
        }
        if (m_in.now < near)
            return;
        if (worst)
            add(Code::BirthWithoutWarmer, near, birth, codeName(*worst), ms(cover.birth.expected));
        if (!cover.kit)
            add(Code::BirthWithoutKit, near, birth, {}, ms(cover.birth.expected));
    }

    void add(const WarmerStanding& warmer)
    {
        if (warmer.state == WarmerState::Ready && m_in.now <= *warmer.readyAt + m_in.readyFor)
            add(Code::WarmerReady, *warmer.readyAt, warmer.device, {}, ms(*warmer.onSince));
    }

    void add(const RoundWanted& round)
    {
        const std::string slot = std::to_string(round.slot);
        if (m_in.now >= round.until)
            add(Code::RoundOverdue, round.until, round.shift, slot, {});
        else if (m_in.now >= round.from)
            add(Code::RoundDue, round.from, round.shift, slot, {});
    }

    void sort()
    {
        std::sort(m_out.begin(), m_out.end(), [](const Notice& a, const Notice& b) {
            return std::tie(a.at, a.code, a.key) < std::tie(b.at, b.code, b.key);
        });
    }

    const NoticeInput& m_in;
    std::vector<Notice> m_out;
};

}

const char* codeName(NoticeCode code) { return codeIn(codeNames, code); }

std::vector<Notice> noticesAt(const NoticeInput& input, const TimeZone& zone)
{
    return Board(input).all(zone);
}

}
