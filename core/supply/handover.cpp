// SPDX-License-Identifier: MIT
#include "core/supply/handover.h"

#include "core/supply/bodyreader.h"
#include "core/supply/codes.h"

namespace cradlepost {

namespace {

constexpr CodeTable<HandoverAsk, 7> askNames{{
    {HandoverAsk::MendBeforeBirth, "mend-before-birth"},
    {HandoverAsk::Restock, "restock"},
    {HandoverAsk::SwitchOnWarmer, "switch-on-warmer"},
    {HandoverAsk::AssembleKit, "assemble-kit"},
    {HandoverAsk::ReadFridge, "read-fridge"},
    {HandoverAsk::ChaseRepair, "chase-repair"},
    {HandoverAsk::DoRound, "do-round"},
}};

constexpr char recordName[] = "handover record";
constexpr std::size_t maxInitials = 24;
constexpr std::size_t maxWord = 40;
constexpr std::size_t maxStation = 100;
constexpr std::size_t maxList = 500;
constexpr int maxItems = 10'000;
constexpr int maxNth = 1'000'000;

Json json(const ExpectedBirth& birth)
{
    Json::Object out{{"babies", birth.babies}, {"birth", birth.birth}, {"expected", toMs(birth.expected)}};
    if (birth.preterm)
        out.push_back({"preterm", true});
    return out;
}

Json json(const HandoverWarmer& warmer)
{
    return Json::Object{{"device", warmer.device}, {"readyAt", toMs(warmer.readyAt)}};
}

Json json(const HandoverGap& gap)
{
    Json::Object out{{"due", toMs(gap.due)}, {"item", gap.item}, {"nth", gap.nth}, {"reason", gap.reason},
        {"severity", codeName(gap.severity)}};
    if (!gap.owner.empty())
        out.push_back({"owner", gap.owner});
    return out;
}

Json json(const HandoverStock& stock)
{
    Json::Object out{{"item", stock.item}, {"status", codeName(stock.status)}, {"usable", stock.usable}};
    if (stock.runsOut)
        out.push_back({"runsOut", toIso(*stock.runsOut)});
    return out;
}

Json json(const HandoverDevice& device)
{
    return Json::Object{{"device", device.device}, {"state", codeName(device.state)}};
}

Json json(const HandoverRequest& request)
{
    Json::Object out{{"ask", codeName(request.ask)}, {"subject", request.subject}};
    if (request.by)
        out.push_back({"by", toMs(*request.by)});
    return out;
}

void read(BodyReader& in, ExpectedBirth& birth)
{
    birth = {.birth = in.id("birth"),
        .expected = in.moment("expected"),
        .babies = static_cast<int>(in.integer("babies", 1, 4)),
        .preterm = in.flag("preterm")};
}

void read(BodyReader& in, HandoverWarmer& warmer)
{
    warmer = {.device = in.id("device"), .readyAt = in.moment("readyAt")};
}

void read(BodyReader& in, HandoverGap& gap)
{
    gap = {.item = in.id("item"),
        .nth = static_cast<int>(in.integer("nth", 1, maxNth)),
        .severity = in.code("severity", severityFromCode),
        .reason = in.id("reason"),
        .owner = in.has("owner") ? in.text("owner", maxInitials) : std::string(),
        .due = in.moment("due")};
}

void read(BodyReader& in, HandoverStock& stock)
{
    stock = {.item = in.id("item"),
        .status = in.code("status", stockStatusFromCode),
        .usable = in.integer("usable", 0, mostPieces * maxItems),
        .runsOut = in.has("runsOut") ? std::optional(in.day("runsOut")) : std::nullopt};
}

void read(BodyReader& in, HandoverDevice& device)
{
    device = {.device = in.id("device"), .state = in.code("state", equipmentStateFromCode)};
}

void read(BodyReader& in, HandoverRequest& request)
{
    request = {.ask = in.code("ask", handoverAskFromCode),
        .subject = in.text("subject", maxWord),
        .by = in.has("by") ? std::optional(in.moment("by")) : std::nullopt};
}

/** A list that is empty is left out. */
template <class T> void write(Json::Object& body, const char* member, const std::vector<T>& list)
{
    Json::Array out;
    for (const T& one : list)
        out.push_back(json(one));
    if (!out.empty())
        body.push_back({member, std::move(out)});
}

template <class T> void readList(BodyReader& in, const char* member, std::vector<T>& list)
{
    for (const Json& one : in.list(member, maxList)) {
        BodyReader part(one, std::string(recordName) + ", " + member);
        read(part, list.emplace_back());
        in.adopt(part.finish());
    }
}

template <class T> Result<void> sameAgain(const T& record, const Result<T>& again)
{
    if (!again)
        return fail(ErrorCode::InvalidArgument, again.error().message);
    if (!(*again == record))
        return fail(ErrorCode::InvalidArgument, std::string(recordName) + ": a part cannot be written");
    return {};
}

}

const char* codeName(HandoverAsk ask) { return codeIn(askNames, ask); }
std::optional<HandoverAsk> handoverAskFromCode(std::string_view code) { return fromCodeIn(askNames, code); }

Json toBody(const HandoverGiven& given)
{
    const Handover& what = given.what;
    Json::Object body{{"applicable", what.applicable}, {"at", toMs(given.at)}, {"by", given.by},
        {"date", toIso(what.date)}, {"met", what.met}, {"shift", what.shift}};
    if (!what.state.empty())
        body.push_back({"state", what.state});
    if (what.roundFinished)
        body.push_back({"roundFinished", toMs(*what.roundFinished)});
    write(body, "births", what.births);
    write(body, "warming", what.warming);
    write(body, "gaps", what.gaps);
    write(body, "stock", what.stock);
    write(body, "devices", what.devices);
    write(body, "requests", what.requests);
    return body;
}

Result<HandoverGiven> handoverGivenFromBody(const Json& body)
{
    BodyReader in(body, recordName);
    HandoverGiven given{.what = {.shift = in.text("shift", maxWord), .date = in.day("date")},
        .by = in.text("by", maxInitials),
        .at = in.moment("at")};
    Handover& what = given.what;
    if (in.has("state"))
        what.state = in.id("state");
    what.applicable = static_cast<int>(in.integer("applicable", 0, maxItems));
    what.met = static_cast<int>(in.integer("met", 0, what.applicable));
    if (in.has("roundFinished"))
        what.roundFinished = in.moment("roundFinished");
    readList(in, "births", what.births);
    readList(in, "warming", what.warming);
    readList(in, "gaps", what.gaps);
    readList(in, "stock", what.stock);
    readList(in, "devices", what.devices);
    readList(in, "requests", what.requests);
    if (auto done = in.finish(); !done)
        return tl::unexpected(done.error());
    return given;
}

Json toBody(const HandoverTaken& taken)
{
    return Json::Object{{"at", toMs(taken.at)}, {"by", taken.by},
        {"given", Json::Object{{"seq", taken.given.seq}, {"station", taken.given.station}}}};
}

Result<HandoverTaken> handoverTakenFromBody(const Json& body)
{
    BodyReader in(body, recordName);
    HandoverTaken taken{.given = {}, .by = in.text("by", maxInitials), .at = in.moment("at")};
    BodyReader id(in.part("given"), std::string(recordName) + ", given");
    taken.given = {
        .station = id.text("station", maxStation), .seq = id.integer("seq", 1, (std::int64_t{1} << 53) - 1)};
    in.adopt(id.finish());
    if (auto done = in.finish(); !done)
        return tl::unexpected(done.error());
    return taken;
}

bool isTakenBody(const Json& body) { return body.find("given") != nullptr; }

Result<void> checkGiven(const HandoverGiven& given)
{
    return sameAgain(given, handoverGivenFromBody(toBody(given)));
}

Result<void> checkTaken(const HandoverTaken& taken)
{
    return sameAgain(taken, handoverTakenFromBody(toBody(taken)));
}

}
