// SPDX-License-Identifier: MIT
#include "core/supply/equipment.h"

#include "core/base/refusal.h"
#include "core/checklist/objectreader.h"
#include "core/supply/bodyreader.h"
#include "core/supply/codes.h"

namespace cradlepost {

namespace {

constexpr CodeTable<EquipmentKind, 10> kindNames{{
    {EquipmentKind::Warmer, "warmer"},
    {EquipmentKind::BagMask, "bag-mask"},
    {EquipmentKind::Suction, "suction"},
    {EquipmentKind::OxygenSource, "oxygen-source"},
    {EquipmentKind::Oximeter, "oximeter"},
    {EquipmentKind::Scale, "scale"},
    {EquipmentKind::Thermometer, "thermometer"},
    {EquipmentKind::Fridge, "fridge"},
    {EquipmentKind::Clock, "clock"},
    {EquipmentKind::Other, "other"},
}};

constexpr CodeTable<EquipmentState, 4> stateNames{{
    {EquipmentState::InUse, "in-use"},
    {EquipmentState::Spare, "spare"},
    {EquipmentState::OutForRepair, "out-for-repair"},
    {EquipmentState::Retired, "retired"},
}};

constexpr CodeTable<MoveReason, 9> reasonNames{{
    {MoveReason::Broken, "broken"},
    {MoveReason::FailedTest, "failed-test"},
    {MoveReason::Service, "service"},
    {MoveReason::Repaired, "repaired"},
    {MoveReason::StepsIn, "steps-in"},
    {MoveReason::StepsBack, "steps-back"},
    {MoveReason::WornOut, "worn-out"},
    {MoveReason::Lost, "lost"},
    {MoveReason::NotKnown, "not-known"},
}};

// In the order of EquipmentDeed.
constexpr std::array deedNames{
    "added", "changed", "moved", "serviced", "calibrated", "scale-checked", "thermometer-checked"};
static_assert(deedNames.size() == std::variant_size_v<EquipmentDeed>);

constexpr std::size_t maxLabel = 60;
constexpr std::size_t maxNumber = 40;
constexpr std::size_t maxServes = 20;
constexpr int maxDays = 3660;
constexpr int maxGrams = 50'000;
constexpr Decimal coldest{-90'000};
constexpr Decimal hottest{200'000};

Json deviceJson(const Equipment& device)
{
    Json::Object out{{"kind", codeName(device.kind)}, {"label", device.label}};
    if (device.calibrationDays > 0)
        out.push_back({"calibrationDays", device.calibrationDays});
    if (!device.number.empty())
        out.push_back({"number", device.number});
    if (!device.serves.empty())
        out.push_back({"serves", Json::Array(device.serves.begin(), device.serves.end())});
    if (device.serviceDays > 0)
        out.push_back({"serviceDays", device.serviceDays});
    if (!device.spareFor.empty())
        out.push_back({"spareFor", device.spareFor});
    return out;
}

int days(BodyReader& read, std::string_view member)
{
    return read.has(member) ? static_cast<int>(read.integer(member, 1, maxDays)) : 0;
}

Result<Equipment> deviceFromJson(const std::string& id, const Json& json)
{
    BodyReader read(json, "equipment record, device");
    Equipment device{.id = id,
        .kind = read.code("kind", equipmentKindFromCode),
        .label = read.text("label", maxLabel),
        .number = read.has("number") ? read.text("number", maxNumber) : std::string(),
        .serves = read.ids("serves", maxServes),
        .spareFor = read.has("spareFor") ? read.id("spareFor") : std::string(),
        .serviceDays = days(read, "serviceDays"),
        .calibrationDays = days(read, "calibrationDays")};
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    return device;
}

struct Writer
{
    Json::Object& body;

    void operator()(const Added& deed) const
    {
        body.push_back({"what", deviceJson(deed.device)});
        body.push_back({"state", codeName(deed.state)});
    }
    void operator()(const Changed& deed) const { body.push_back({"what", deviceJson(deed.device)}); }
    void operator()(const Moved& deed) const
    {
        body.push_back({"state", codeName(deed.to)});
        body.push_back({"reason", codeName(deed.reason)});
    }
    void operator()(const Serviced&) const { }
    void operator()(const Calibrated&) const { }
    void operator()(const ScaleChecked& deed) const
    {
        body.push_back({"known", deed.known});
        body.push_back({"read", deed.read});
    }
    void operator()(const ThermometerChecked& deed) const
    {
        body.push_back({"reference", deed.reference.toString()});
        body.push_back({"read", deed.read.toString()});
    }
};

Equipment readDevice(BodyReader& read, const std::string& id)
{
    auto device = deviceFromJson(id, read.part("what"));
    if (!device) {
        read.adopt(tl::unexpected(device.error()));
        return {};
    }
    return *device;
}

EquipmentDeed readDeed(BodyReader& read, const std::string& id)
{
    const std::string did = read.text("did", maxLabel);
    if (did == deedNames[0])
        return Added{.device = readDevice(read, id), .state = read.code("state", equipmentStateFromCode)};
    if (did == deedNames[1])
        return Changed{.device = readDevice(read, id)};
    if (did == deedNames[2])
        return Moved{.to = read.code("state", equipmentStateFromCode),
            .reason = read.code("reason", moveReasonFromCode)};
    if (did == deedNames[3])
        return Serviced{};
    if (did == deedNames[4])
        return Calibrated{};
    if (did == deedNames[5])
        return ScaleChecked{.known = static_cast<int>(read.integer("known", 1, maxGrams)),
            .read = static_cast<int>(read.integer("read", 0, maxGrams))};
    if (did == deedNames[6])
        return ThermometerChecked{.reference = read.decimal("reference", coldest, hottest),
            .read = read.decimal("read", coldest, hottest)};
    read.fault("did", "is not a known word");
    return Serviced{};
}

/** What a person can mistype of a device. */
Result<void> checkDevice(const Equipment& device)
{
    if (!isPlainText(device.label, maxLabel))
        return tl::unexpected(
            refused(refusal::name, {std::to_string(maxLabel)}, "equipment: the label is blank or too long"));
    if (!device.number.empty() && !isPlainText(device.number, maxNumber))
        return tl::unexpected(refused(refusal::deviceNumber, {std::to_string(maxNumber)},
            "equipment: the number is blank or too long"));
    for (const int days : {device.serviceDays, device.calibrationDays}) {
        if (days < 0 || days > maxDays)
            return tl::unexpected(refused(refusal::upkeepDays, {std::to_string(maxDays)},
                "equipment: between services or calibrations lie 1 to 3660 days"));
    }
    return {};
}

/** What a person can mistype of a check. */
struct CheckLimits
{
    Result<void> operator()(const ScaleChecked& deed) const
    {
        if (deed.known >= 1 && deed.known <= maxGrams && deed.read >= 0 && deed.read <= maxGrams)
            return {};
        return tl::unexpected(refused(refusal::scaleRange, {std::to_string(maxGrams)},
            "equipment: a known weight is 1 to 50 000 g, what the scale shows 0 to 50 000 g"));
    }
    Result<void> operator()(const ThermometerChecked& deed) const
    {
        if (std::min(deed.reference, deed.read) >= coldest && std::max(deed.reference, deed.read) <= hottest)
            return {};
        return tl::unexpected(refused(refusal::thermometerRange, {coldest.toString(), hottest.toString()},
            "equipment: the readings of a check are -90 to 200 degrees C"));
    }
    Result<void> operator()(const Added& deed) const { return checkDevice(deed.device); }
    Result<void> operator()(const Changed& deed) const { return checkDevice(deed.device); }
    template <class Deed> Result<void> operator()(const Deed&) const { return {}; }
};

tl::unexpected<Error> wrong(const std::string& what)
{
    return fail(ErrorCode::InvalidArgument, "equipment: " + what);
}

}

const char* codeName(EquipmentKind kind) { return codeIn(kindNames, kind); }
const char* codeName(EquipmentState state) { return codeIn(stateNames, state); }
const char* codeName(MoveReason reason) { return codeIn(reasonNames, reason); }
std::optional<EquipmentKind> equipmentKindFromCode(std::string_view code)
{
    return fromCodeIn(kindNames, code);
}
std::optional<EquipmentState> equipmentStateFromCode(std::string_view code)
{
    return fromCodeIn(stateNames, code);
}
std::optional<MoveReason> moveReasonFromCode(std::string_view code) { return fromCodeIn(reasonNames, code); }

Json toBody(const EquipmentEvent& event)
{
    Json::Object body{
        {"at", toMs(event.at)}, {"device", event.device}, {"did", deedNames[event.deed.index()]}};
    std::visit(Writer{body}, event.deed);
    return body;
}

Result<EquipmentEvent> equipmentEventFromBody(const Json& body)
{
    BodyReader read(body, "equipment record");
    EquipmentEvent event{.device = read.id("device"), .at = read.moment("at"), .deed = Serviced{}};
    event.deed = readDeed(read, event.device);
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    return event;
}

Result<void> checkEvent(const EquipmentEvent& event)
{
    const Equipment* device = nullptr;
    if (const auto* added = std::get_if<Added>(&event.deed))
        device = &added->device;
    if (const auto* changed = std::get_if<Changed>(&event.deed))
        device = &changed->device;
    if (device != nullptr && device->id != event.device)
        return wrong("the event and its device have different ids");
    if (device != nullptr && device->spareFor == device->id)
        return wrong("a device is no spare for itself");
    if (auto sound = std::visit(CheckLimits(), event.deed); !sound)
        return sound;
    // What can be read back as the same is sound: one set of limits, not two.
    const auto again = equipmentEventFromBody(toBody(event));
    if (!again)
        return fail(ErrorCode::InvalidArgument, again.error().message);
    return *again == event ? Result<void>() : wrong("it cannot be read back as it is");
}

}
