// SPDX-License-Identifier: MIT
#include "core/store/packedmonth.h"

#include "core/store/failure.h"

#include <algorithm>
#include <array>
#include <cstring>

namespace cradlepost {

namespace {

constexpr unsigned groupBits = 7;
constexpr std::uint64_t goesOn = 1U << groupBits;
constexpr char usual = static_cast<char>(Outcome::Met);
// One byte a round.
constexpr std::uint64_t stateMask = 3;
constexpr std::uint64_t paperBit = 4;
constexpr std::uint64_t amendedBit = 8;

class Writer
{
public:
    explicit Writer(std::size_t expected) { m_bytes.reserve(expected); }
    void number(std::uint64_t value)
    {
        for (; value >= goesOn; value >>= groupBits)
            m_bytes.push_back(static_cast<unsigned char>((value & (goesOn - 1)) | goesOn));
        m_bytes.push_back(static_cast<unsigned char>(value));
    }
    void number(int value) { number(static_cast<std::uint64_t>(value)); }
    /** 0, -1, 1, -2 … become 0, 1, 2, 3 …: small ones of either sign stay short. */
    void difference(std::int64_t value)
    {
        number(static_cast<std::uint64_t>(value) << 1U ^ static_cast<std::uint64_t>(value < 0 ? -1 : 0));
    }
    void text(std::string_view text)
    {
        number(text.size());
        m_bytes.insert(m_bytes.end(), text.begin(), text.end());
    }
    std::vector<unsigned char> take() { return std::move(m_bytes); }

private:
    std::vector<unsigned char> m_bytes;
};

class Reader
{
public:
    explicit Reader(std::span<const unsigned char> bytes)
        : m_bytes(bytes)
    {
    }

    std::uint64_t number()
    {
        std::uint64_t value = 0;
        for (unsigned shift = 0; shift < 64; shift += groupBits) {
            const unsigned char byte = next();
            value |= (byte & (goesOn - 1)) << shift;
            if ((byte & goesOn) == 0)
                return value;
        }
        refuseIt();
    }
    /** One below `end`. */
    std::size_t numberBelow(std::uint64_t end)
    {
        const std::uint64_t value = number();
        if (value >= end)
            refuseIt();
        return static_cast<std::size_t>(value);
    }
    int count() { return static_cast<int>(numberBelow(INT32_MAX)); }
    /** Of things that take a byte each at least. */
    std::size_t size()
    {
        const std::uint64_t value = number();
        if (value > m_bytes.size()) // what is left behind the number itself
            refuseIt();
        return static_cast<std::size_t>(value);
    }
    std::int64_t difference()
    {
        const std::uint64_t folded = number();
        return static_cast<std::int64_t>(folded >> 1U ^ (~(folded & 1U) + 1));
    }
    /** `before` with the difference added; what is damaged may go round. */
    std::int64_t from(std::int64_t before)
    {
        return static_cast<std::int64_t>(
            static_cast<std::uint64_t>(before) + static_cast<std::uint64_t>(difference()));
    }
    Instant from(Instant before) { return fromMs(from(toMs(before))); }
    std::string text()
    {
        const std::size_t length = size();
        const auto* from = reinterpret_cast<const char*>(m_bytes.data());
        m_bytes = m_bytes.subspan(length);
        return {from, length};
    }
    unsigned char next()
    {
        if (m_bytes.empty())
            refuseIt();
        const unsigned char byte = m_bytes.front();
        m_bytes = m_bytes.subspan(1);
        return byte;
    }
    void expectEnd() const
    {
        if (!m_bytes.empty())
            refuseIt();
    }
    [[noreturn]] static void refuseIt()
    {
        refuse(ErrorCode::Damaged, "a packed month of rounds cannot be read", "Run verify, then rebuild.");
    }

private:
    std::span<const unsigned char> m_bytes;
};

/** Where the next one stands that is not the usual one; the end when there is none. Saving packs a month of them. */
std::size_t nextOther(std::string_view outcomes, std::size_t from)
{
    constexpr std::array<char, 8> allUsual{usual, usual, usual, usual, usual, usual, usual, usual};
    while (from + allUsual.size() <= outcomes.size()
        && std::memcmp(outcomes.data() + from, allUsual.data(), allUsual.size()) == 0)
        from += allUsual.size();
    return std::min(outcomes.find_first_not_of(usual, from), outcomes.size());
}

void writeOutcomes(Writer& out, std::string_view outcomes)
{
    out.number(outcomes.size());
    out.number(static_cast<std::uint64_t>(
        outcomes.size() - static_cast<std::size_t>(std::count(outcomes.begin(), outcomes.end(), usual))));
    std::size_t from = 0;
    for (std::size_t at = nextOther(outcomes, 0); at < outcomes.size(); at = nextOther(outcomes, from)) {
        out.number(at - from);
        out.number(static_cast<std::uint64_t>(static_cast<unsigned char>(outcomes[at])));
        from = at + 1;
    }
}

/** How many there are; into `outcomes` unless that is nullptr. */
std::size_t readOutcomes(Reader& in, std::string* outcomes)
{
    constexpr std::uint64_t mostItems = 100'000; // far above any checklist: no memory for what is damaged
    const std::size_t size = in.numberBelow(mostItems);
    if (outcomes != nullptr)
        outcomes->assign(size, usual);
    std::size_t at = 0;
    for (std::size_t left = in.size(); left > 0; --left, ++at) {
        at += in.numberBelow(size - at);
        const char outcome = static_cast<char>(in.next());
        if (outcomes != nullptr)
            (*outcomes)[at] = outcome;
    }
    return size;
}

/** Names in the order in which the rounds need them; those that none needs are left out. */
struct Order
{
    std::vector<std::size_t> names;
    std::vector<std::size_t> placeOf; ///< by position in PackedMonth::names

    explicit Order(const PackedMonth& month)
        : placeOf(month.names.size(), month.names.size())
    {
        for (const PackedRound& round : month.rounds)
            for (const std::size_t name : {round.station, round.checklist, round.actor})
                if (placeOf[name] == month.names.size()) {
                    placeOf[name] = names.size();
                    names.push_back(name);
                }
    }
};

void writeRound(Writer& out, const PackedRound& round, const Order& order, const PackedRound& before)
{
    out.difference(round.slot - before.slot);
    out.number(order.placeOf[round.station]);
    out.difference(round.seq - before.seq);
    out.number(order.placeOf[round.checklist]);
    out.number(round.version);
    out.number(static_cast<std::uint64_t>(round.state) | (round.fromPaper ? paperBit : 0)
        | (round.amended > 0 ? amendedBit : 0));
    if (round.amended > 0) {
        out.number(round.amended);
        out.difference(toMs(round.amendedAt.value_or(Instant{})));
    }
    out.number(round.met);
    out.number(round.applicable);
    out.number(round.index);
    out.difference((round.started - before.started).count());
    out.difference((round.finished - round.started).count());
    out.difference((round.recorded - round.finished).count());
    out.number(order.placeOf[round.actor]);
    writeOutcomes(out, round.outcomes);
    out.number(round.readings.size());
    for (const ReadingFact& reading : round.readings) {
        out.number(reading.position);
        out.difference(reading.value.thousandths);
    }
}

PackedRound readRound(Reader& in, std::size_t names, const PackedRound& before, Slot wholeFrom)
{
    PackedRound round;
    round.slot = in.from(before.slot);
    round.station = in.numberBelow(names);
    round.seq = in.from(before.seq);
    round.checklist = in.numberBelow(names);
    round.version = in.count();
    const std::uint64_t bits = in.number();
    if ((bits & stateMask) > static_cast<std::uint64_t>(Readiness::Ready))
        Reader::refuseIt();
    round.state = static_cast<Readiness>(bits & stateMask);
    round.fromPaper = (bits & paperBit) != 0;
    if ((bits & amendedBit) != 0) {
        round.amended = in.count();
        round.amendedAt = fromMs(in.difference());
    }
    round.met = in.count();
    round.applicable = in.count();
    round.index = in.count();
    round.started = in.from(before.started);
    round.finished = in.from(round.started);
    round.recorded = in.from(round.finished);
    round.actor = in.numberBelow(names);
    const bool isWhole = round.slot >= wholeFrom;
    const std::size_t items = readOutcomes(in, isWhole ? &round.outcomes : nullptr);
    const std::size_t readings = in.size();
    round.readings.reserve(isWhole ? readings : 0);
    for (std::size_t i = 0; i < readings; ++i) {
        const std::size_t position = in.numberBelow(items);
        const Decimal value{.thousandths = in.difference()};
        if (isWhole)
            round.readings.push_back({.position = position, .value = value});
    }
    return round;
}

}

std::size_t PackedMonth::nameOf(std::string_view text)
{
    const auto at = static_cast<std::size_t>(std::find(names.begin(), names.end(), text) - names.begin());
    if (at == names.size())
        names.emplace_back(text);
    return at;
}

std::vector<unsigned char> packMonth(const PackedMonth& month)
{
    constexpr std::size_t expectedPerRound = 64;
    const Order order(month);
    Writer out(expectedPerRound * (month.rounds.size() + 1));
    out.number(order.names.size());
    for (const std::size_t name : order.names)
        out.text(month.names[name]);
    out.number(month.rounds.size());
    const PackedRound none;
    const PackedRound* before = &none;
    for (const PackedRound& round : month.rounds) {
        writeRound(out, round, order, *before);
        before = &round;
    }
    return out.take();
}

PackedMonth unpackMonth(std::span<const unsigned char> bytes, Slot wholeFrom)
{
    Reader in(bytes);
    PackedMonth month;
    month.names.resize(in.size());
    for (std::string& name : month.names)
        name = in.text();
    const std::size_t rounds = in.size();
    month.rounds.reserve(rounds); // so that none moves
    const PackedRound none;
    const PackedRound* before = &none;
    while (month.rounds.size() < rounds) {
        month.rounds.push_back(readRound(in, month.names.size(), *before, wholeFrom));
        before = &month.rounds.back();
    }
    in.expectEnd();
    return month;
}

}
