// SPDX-License-Identifier: MIT
#include "core/supply/stockitem.h"

#include "core/base/refusal.h"
#include "core/checklist/objectreader.h"
#include "core/supply/bodyreader.h"
#include "core/supply/codes.h"

#include <algorithm>

namespace cradlepost {

namespace {
constexpr std::size_t maxNameLength = 60;
constexpr std::size_t maxServes = 20;
constexpr Decimal mostPerBirth{1'000'000};
constexpr int mostDeliveryDays = 366;
constexpr Decimal leastService{500};
constexpr Decimal mostService{999};
constexpr char itemKind[] = "item";

constexpr CodeTable<StockStatus, 5> statusNames{{
    {StockStatus::Out, "out"},
    {StockStatus::BelowEmergency, "below-emergency"},
    {StockStatus::BelowMinimum, "below-minimum"},
    {StockStatus::BelowPar, "below-par"},
    {StockStatus::AtPar, "at-par"},
}};

tl::unexpected<Error> wrong(const std::string& what, std::string hint = {})
{
    return fail(ErrorCode::InvalidArgument, "stock item: " + what, std::move(hint));
}

Result<void> checkLevels(const StockLevels& levels)
{
    if (levels.emergency < 0 || levels.par > mostPieces)
        return tl::unexpected(refused(refusal::levelRange, {std::to_string(mostPieces)},
            "stock item: a level is below 0 or above 1 000 000"));
    if (levels.emergency > levels.minimum || levels.minimum > levels.par)
        return tl::unexpected(refused(refusal::levelOrder,
            {std::to_string(levels.emergency), std::to_string(levels.minimum), std::to_string(levels.par)},
            "stock item: the levels do not rise", "emergency is at most minimum, minimum at most par"));
    return {};
}

bool areServed(const std::vector<std::string>& ids)
{
    return ids.size() <= maxServes && std::all_of(ids.begin(), ids.end(), isId)
        && std::adjacent_find(ids.begin(), ids.end(), std::greater_equal<>()) == ids.end();
}
}

const char* codeName(StockStatus status) { return codeIn(statusNames, status); }
std::optional<StockStatus> stockStatusFromCode(std::string_view code)
{
    return fromCodeIn(statusNames, code);
}

StockStatus statusOf(const StockLevels& levels, std::int64_t usable)
{
    if (usable <= 0 && levels.par > 0)
        return StockStatus::Out;
    if (usable < levels.emergency)
        return StockStatus::BelowEmergency;
    if (usable >= levels.par)
        return StockStatus::AtPar;
    return usable <= levels.minimum ? StockStatus::BelowMinimum : StockStatus::BelowPar;
}

Result<void> checkItem(const StockItem& item)
{
    if (!isId(item.id))
        return wrong("'" + item.id + "' is no id", "use 1 to 40 letters a-z, digits and hyphens");
    if (!isPlainText(item.name, maxNameLength))
        return tl::unexpected(refused(refusal::name, {std::to_string(maxNameLength)},
            "stock item: the name is blank or too long", "use 1 to 60 characters"));
    if (auto levels = checkLevels(item.levels); !levels)
        return levels;
    if (item.packSize < 1 || item.packSize > mostPieces)
        return wrong("a pack holds 1 to 1 000 000 pieces");
    if (item.perBirth < Decimal{0} || item.perBirth > mostPerBirth)
        return wrong("pieces for one birth are 0 to 1000");
    if (item.deliveryDays < 0 || item.deliveryDays > mostDeliveryDays)
        return wrong("between deliveries lie 1 to 366 days");
    if (item.service != Decimal{0} && (item.service < leastService || item.service > mostService))
        return wrong("the chance to have enough is 0.5 to 0.999");
    if (!item.fridge.empty() && !isId(item.fridge))
        return wrong("the fridge is no id");
    if (!areServed(item.serves))
        return wrong("what it serves is no list of at most 20 ids in rising order");
    return {};
}

Json toBody(const StockItem& item)
{
    Json::Object body{{"at", toMs(item.at)}, {"emergency", item.levels.emergency}, {"item", item.id},
        {"kind", itemKind}, {"minimum", item.levels.minimum}, {"name", item.name}, {"pack", item.packSize},
        {"par", item.levels.par}, {"perBirth", item.perBirth.toString()}};
    if (item.deliveryDays > 0)
        body.push_back({"deliveryDays", item.deliveryDays});
    if (item.service != Decimal{0})
        body.push_back({"service", item.service.toString()});
    if (item.expires)
        body.push_back({"expires", true});
    if (!item.fridge.empty())
        body.push_back({"fridge", item.fridge});
    if (item.harmedByFrost)
        body.push_back({"frost", true});
    if (item.retired)
        body.push_back({"retired", true});
    if (!item.serves.empty())
        body.push_back({"serves", Json::Array(item.serves.begin(), item.serves.end())});
    return body;
}

Result<StockItem> stockItemFromBody(const Json& body)
{
    BodyReader read(body, "stock record");
    if (read.text("kind", maxNameLength) != itemKind)
        read.fault("kind", "is not 'item'");
    const StockItem item{.id = read.id("item"),
        .name = read.text("name", maxNameLength),
        .at = read.moment("at"),
        .levels = {.par = read.integer("par", 0, mostPieces),
            .minimum = read.integer("minimum", 0, mostPieces),
            .emergency = read.integer("emergency", 0, mostPieces)},
        .expires = read.flag("expires"),
        .fridge = read.has("fridge") ? read.id("fridge") : std::string(),
        .harmedByFrost = read.flag("frost"),
        .packSize = read.integer("pack", 1, mostPieces),
        .perBirth = read.decimal("perBirth", {0}, mostPerBirth),
        .deliveryDays = read.has("deliveryDays")
            ? static_cast<int>(read.integer("deliveryDays", 1, mostDeliveryDays))
            : 0,
        .service = read.has("service") ? read.decimal("service", leastService, mostService) : Decimal{},
        .serves = read.ids("serves", maxServes),
        .retired = read.flag("retired")};
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    if (auto sound = checkLevels(item.levels); !sound)
        return fail(ErrorCode::BadDocument, sound.error().message);
    return item;
}

bool isItemBody(const Json& body)
{
    const auto* kind = body.findString("kind");
    return kind != nullptr && *kind == itemKind;
}

}
