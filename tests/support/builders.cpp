// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"

#include "core/checklist/reader.h"

#include <cstdlib>

namespace cradlepost::test {

namespace {

constexpr Date somewhen = std::chrono::year(2026) / 11 / 24;

struct Meeting
{
    Instant reference;
    Date lastDay;

    Answer operator()(const ConfirmRule&) const { return Confirmed{}; }
    Answer operator()(const MeasureRule& rule) const
    {
        const LimitSet& limits = rule.limits.front();
        return Measured{limits.low ? *limits.low : *limits.high};
    }
    Answer operator()(const SinceRule& rule) const { return RunningSince{reference - rule.minutes}; }
    Answer operator()(const StepsRule& rule) const
    {
        return StepsDone{.marks = std::string(rule.steps.size(), 'p'), .device = "7"};
    }
    Answer operator()(const CountRule& rule) const
    {
        Lot lot{.quantity = rule.par, .expiry = std::nullopt, .number = {}};
        if (rule.expires) {
            lot.expiry = addDays(lastDay, 200);
            lot.number = "L17";
        }
        return Counted{{lot}};
    }
    Answer operator()(const KitRule& rule) const
    {
        KitCounted kit;
        for (const KitPart& part : rule.parts)
            kit.parts.push_back(part.perKit * rule.par);
        return kit;
    }
    Answer operator()(const CylinderRule& rule) const
    {
        const CylinderSize& size = rule.sizes.front();
        return CylinderRead{.gauge = size.fullPressure, .size = size.id, .flow = rule.flow};
    }
};

Json oneText(const std::string& text) { return Json::Object{{"en", text}}; }

}

TempDir::TempDir()
{
    std::string name = (std::filesystem::temp_directory_path() / "cradlepost-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        throw std::runtime_error("no folder for the test");
    m_path = name;
}

TempDir::~TempDir()
{
    std::error_code error;
    std::filesystem::remove_all(m_path, error);
}

Unit aUnit(const std::string& id)
{
    return {.id = id,
        .name = id == "sorrel-hill" ? "Sorrel Hill" : id,
        .zone = "Asia/Kolkata",
        .level = "primary"};
}

ShiftCalendar aCalendar()
{
    return ShiftCalendar(ShiftPattern::twoByTwelve(), must(TimeZone::named(aUnit().zone)));
}

StationKey aKey(unsigned char number)
{
    std::array<unsigned char, 32> seed{};
    seed.fill(number);
    return StationKey::fromSeed(seed);
}

Adoption anAdoption(RoundKind use)
{
    return {.from = std::chrono::year(2020) / 1 / 1,
        .document = must(parseJson(builtInChecklistText(use))),
        .limits = {}};
}

std::unique_ptr<Store> aStore(const std::string& path, const Clock& clock, const Adoption& adoption)
{
    auto store = must(Store::open(path, clock));
    addUnit(*store, aUnit(), adoption);
    return store;
}

void addUnit(Store& store, const Unit& unit, const Adoption& adoption)
{
    must(store.together([&]() -> Result<void> {
        must(store.describeUnit(unit, "AB"));
        must(
            store.setPattern(unit.id, {.from = adoption.from, .pattern = ShiftPattern::twoByTwelve()}, "AB"));
        must(store.setPeople(
            unit.id, {{.initials = "AB", .role = "in charge"}, {.initials = "CD", .role = ""}}, "AB"));
        return store.adopt(unit.id, adoption, "AB");
    }));
}

Answer metAnswer(const Item& item, Instant reference, Date lastDay)
{
    return std::visit(Meeting{.reference = reference, .lastDay = lastDay}, item.rule);
}

RoundBuilder::RoundBuilder(const Checklist& checklist)
    : m_checklist(checklist)
    , m_date(somewhen)
{
}

RoundBuilder& RoundBuilder::on(Date date, int shift)
{
    m_date = date;
    m_shift = shift;
    return *this;
}

RoundBuilder& RoundBuilder::finishedAfter(std::chrono::minutes time)
{
    m_after = time;
    return *this;
}

RoundBuilder& RoundBuilder::finishedAt(Instant time)
{
    m_finish = time;
    return *this;
}

RoundBuilder& RoundBuilder::withGap(const std::string& item, GapReason reason)
{
    return withAnswer(item, GapFound{reason});
}

RoundBuilder& RoundBuilder::withAnswer(const std::string& item, Answer answer)
{
    if (!m_checklist.position(item))
        throw std::runtime_error("no item " + item);
    m_answers[item] = std::move(answer);
    return *this;
}

RoundBuilder& RoundBuilder::measuring(const std::string& item, const std::string& value)
{
    return withAnswer(item, Measured{must(Decimal::parse(value))});
}

RoundBuilder& RoundBuilder::rechecking(const RecordId& round, std::vector<std::string> items)
{
    m_over = round;
    m_items = std::move(items);
    return *this;
}

Shift RoundBuilder::shift() const { return aCalendar().shift(m_date, m_shift); }

Instant RoundBuilder::finish() const { return m_finish.value_or(shift().begins + m_after); }

Answer RoundBuilder::answerTo(std::size_t position) const
{
    const Item& item = m_checklist.item(position);
    const auto own = m_answers.find(item.id);
    return own != m_answers.end() ? own->second
                                  : metAnswer(item, finish(), lastDayOf(shift(), aCalendar().zone()));
}

Draft RoundBuilder::draft(const std::string& unit) const
{
    const Instant started = finish() - std::chrono::minutes(15);
    Draft draft = Walk::begin(m_checklist, m_checklist.use, unit, "AB", shift(), {}, started);
    if (m_over) {
        std::vector<Answer> before;
        for (std::size_t at = 0; at < m_checklist.itemCount(); ++at)
            before.push_back(
                metAnswer(m_checklist.item(at), finish(), lastDayOf(shift(), aCalendar().zone())));
        std::vector<std::size_t> asked;
        for (const std::string& item : m_items)
            asked.push_back(*m_checklist.position(item));
        draft = Walk::beginRecheck(m_checklist, unit, "AB", shift(), {}, *m_over, before, asked, started);
    }
    Walk walk = must(Walk::of(m_checklist, aCalendar().zone(), draft));
    std::chrono::seconds after{0};
    for (const std::size_t at : draft.asked)
        must(walk.give(at, answerTo(at), started + (after += std::chrono::seconds(7 + at % 9))));
    return walk.draft();
}

RoundRecord RoundBuilder::done() const
{
    return must(Walk::of(m_checklist, aCalendar().zone(), draft())).finish(finish());
}

Adoption aPlainAdoption(int items, int version, const std::string& id)
{
    const Json confirm = Json::Object{{"kind", "confirm"}};
    const Json measure = Json::Object{{"kind", "measure"}, {"unit", "°C"}, {"decimals", 1},
        {"plausible", Json::Object{{"low", 0}, {"high", 60}}},
        {"limits",
            Json::Array{Json::Object{{"id", "room"}, {"name", oneText("Room")}, {"low", 26}, {"high", 28},
                {"source", "invented for a test"}}}}};
    Json::Array list;
    for (int i = 0; i < items; ++i)
        list.emplace_back(Json::Object{{"id", "item-" + std::to_string(i)},
            {"severity",
                i % 7 == 0       ? "critical"
                    : i % 2 == 0 ? "major"
                                 : "minor"},
            {"mayNotApply", i % 5 == 1}, {"label", oneText("Item " + std::to_string(i))},
            {"whenNotMet", oneText("Mend it")}, {"source", "invented for a test"},
            {"rule", i % 10 == 3 ? measure : confirm}});
    Json document = Json::Object{{"id", id}, {"version", version}, {"use", "shift"},
        {"languages", Json::Array{"en"}}, {"title", oneText("Plain")},
        {"sections",
            Json::Array{Json::Object{{"id", "all"}, {"title", oneText("All")}, {"items", std::move(list)}}}}};
    return {.from = std::chrono::year(2020) / 1 / 1, .document = std::move(document), .limits = {}};
}

}
