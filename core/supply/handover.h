// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/equipment.h"
#include "core/supply/stockbook.h"
#include "core/supply/warmerclock.h"

#include "core/base/shiftcalendar.h"
#include "core/checklist/checklist.h"

namespace cradlepost {

struct HandoverGap
{
    std::string item; ///< checklist item
    int nth = 1;
    Severity severity = Severity::Minor;
    std::string reason; ///< code of the reason
    std::string owner; ///< initials or role; empty: nobody yet
    Instant due;
    bool operator==(const HandoverGap&) const = default;
};

/** A shelf that is below par. */
struct HandoverStock
{
    std::string item; ///< stock item
    StockStatus status = StockStatus::BelowPar;
    std::int64_t usable = 0;
    std::optional<Date> runsOut;
    bool operator==(const HandoverStock&) const = default;
};

struct HandoverDevice
{
    std::string device; ///< equipment id
    EquipmentState state = EquipmentState::OutForRepair;
    bool operator==(const HandoverDevice&) const = default;
};

struct HandoverWarmer
{
    std::string device;
    Instant readyAt; ///< on now; warm from then
    bool operator==(const HandoverWarmer&) const = default;
};

enum class HandoverAsk {
    MendBeforeBirth, ///< a critical gap; subject: checklist item
    Restock, ///< subject: stock item
    SwitchOnWarmer, ///< subject: equipment; by: at the latest
    AssembleKit, ///< subject: birth
    ReadFridge, ///< subject: equipment
    ChaseRepair, ///< subject: equipment
    DoRound, ///< subject: shift code
};

struct HandoverRequest
{
    HandoverAsk ask = HandoverAsk::DoRound;
    std::string subject;
    std::optional<Instant> by;
    bool operator==(const HandoverRequest&) const = default;
};

/** What one shift tells the next, in the order situation, background, assessment, recommendation. */
struct Handover
{
    // situation
    std::string shift; ///< code of the shift that hands over
    Date date;
    std::string state; ///< code of the verdict, empty without a round
    int met = 0;
    int applicable = 0;
    // background
    std::optional<Instant> roundFinished;
    std::vector<ExpectedBirth> births; ///< in order of time
    std::vector<HandoverWarmer> warming;
    // assessment
    std::vector<HandoverGap> gaps; ///< open ones
    std::vector<HandoverStock> stock;
    std::vector<HandoverDevice> devices; ///< not in use and no spare
    // recommendation
    std::vector<HandoverRequest> requests;
    bool operator==(const Handover&) const = default;
};

/** Signed by who leaves. The body of a `handover` record. */
struct HandoverGiven
{
    Handover what;
    std::string by; ///< initials, 1..24 characters
    Instant at;
    bool operator==(const HandoverGiven&) const = default;
};

/** Accepted by who comes. The body of a `handover` record as well, naming the one it answers. */
struct HandoverTaken
{
    FactId given;
    std::string by;
    Instant at;
    bool operator==(const HandoverTaken&) const = default;
};

Result<void> checkGiven(const HandoverGiven& given);
Result<void> checkTaken(const HandoverTaken& taken);
Json toBody(const HandoverGiven& given);
Json toBody(const HandoverTaken& taken);
Result<HandoverGiven> handoverGivenFromBody(const Json& body);
Result<HandoverTaken> handoverTakenFromBody(const Json& body);
/** Whether a `handover` body is a HandoverTaken. */
bool isTakenBody(const Json& body);

const char* codeName(HandoverAsk ask);
std::optional<HandoverAsk> handoverAskFromCode(std::string_view code);

}
