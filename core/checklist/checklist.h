// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/decimal.h"

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cradlepost {

/** Weight of an item, the classes used for audit findings; only critical items decide "not ready". */
enum class Severity { Critical, Major, Minor };

enum class ItemKind { Confirm, Measure, Since, Steps, Count, Kit, Cylinder };

/** What a walk with a checklist is for. */
enum class RoundKind {
    Shift, ///< the full readiness round, one a shift
    Recheck, ///< some items of the shift round seen again, after mending
    PreBirth, ///< the short check before a birth
    AfterUse, ///< restock, reprocess, test again after a birth
    SpotCheck, ///< items of the shift round seen by somebody else, who does not know its answers
};

/** The kind of checklist that a walk of that kind takes: re-checks and spot checks take the shift round's. */
RoundKind checklistUse(RoundKind kind);

/** One text in several languages: language code ("en", "hi") to text. English is always there. */
class Wording
{
public:
    Wording() = default;
    explicit Wording(std::map<std::string, std::string> texts)
        : m_texts(std::move(texts))
    {
    }
    /** The text in `language`, or in its base ("hi" for "hi-IN"), or in English. */
    [[nodiscard]] const std::string& in(std::string_view language) const;
    [[nodiscard]] bool has(std::string_view language) const
    {
        return m_texts.contains(std::string(language));
    }
    [[nodiscard]] const std::map<std::string, std::string>& texts() const { return m_texts; }
    bool operator==(const Wording&) const = default;

private:
    std::map<std::string, std::string> m_texts;
};

/** A named band with its source; a site picks one and the record keeps which. At least one end is given. */
struct LimitSet
{
    std::string id; ///< "practice-26-28"
    Wording name;
    std::optional<Decimal> low; ///< inclusive
    std::optional<Decimal> high; ///< inclusive
    std::string source;
    bool operator==(const LimitSet&) const = default;
};

/** Yes or no. */
struct ConfirmRule
{
    bool operator==(const ConfirmRule&) const = default;
};

/** A number with a unit; met inside the chosen limit set, refused outside the plausible band. */
struct MeasureRule
{
    std::string unit; ///< as printed: "°C", "kPa", "g", "mmHg"
    int decimals = 1; ///< as the instrument shows it, 0..3
    Decimal plausibleLow;
    Decimal plausibleHigh;
    std::vector<LimitSet> limits; ///< the first is the default
    bool operator==(const MeasureRule&) const = default;
};

/** Met when running for at least so long at the reference time. */
struct SinceRule
{
    std::chrono::minutes minutes{0};
    std::string source;
    bool operator==(const SinceRule&) const = default;
};

struct Step
{
    std::string id;
    Wording label;
    bool operator==(const Step&) const = default;
};

/** A function test of one device, step by step; the device is named by its number. */
struct StepsRule
{
    std::vector<Step> steps;
    bool operator==(const StepsRule&) const = default;
};

/** Usable pieces, that is not expired at the end of the shift, at least par. */
struct CountRule
{
    int par = 0;
    bool expires = false; ///< lots with their expiry dates are asked for
    bool operator==(const CountRule&) const = default;
};

struct KitPart
{
    std::string id;
    Wording label;
    int perKit = 1;
    bool operator==(const KitPart&) const = default;
};

/** Complete kits = the smallest whole ratio of parts there to parts a kit; met at par. */
struct KitRule
{
    int par = 0;
    std::vector<KitPart> parts;
    bool operator==(const KitRule&) const = default;
};

/** One cylinder size. Letters differ between countries, so a size is never known by its letter alone. */
struct CylinderSize
{
    std::string id; ///< "us-e", "iso-10l"
    Wording name;
    std::string unit; ///< the gauge's: "psi" or "bar"
    Decimal litresPerUnit; ///< litres of gas for one unit of gauge pressure
    Decimal residual; ///< safe residual pressure, in the gauge's unit
    Decimal fullPressure; ///< readings above it by more than a tenth are refused
    std::string source;
    bool operator==(const CylinderSize&) const = default;
};

/** Minutes = litresPerUnit x (gauge - residual) / flow, rounded down; met at `minutes`. */
struct CylinderRule
{
    std::chrono::minutes minutes{0};
    Decimal flow; ///< planned flow in L/min
    std::vector<CylinderSize> sizes; ///< the first is the default
    std::string source;
    bool operator==(const CylinderRule&) const = default;
};

using ItemRule
    = std::variant<ConfirmRule, MeasureRule, SinceRule, StepsRule, CountRule, KitRule, CylinderRule>;

struct Item
{
    std::string id; ///< the same id in another checklist means the same thing in the ward: gaps follow it
    Severity severity = Severity::Minor;
    bool mayNotApply = false;
    Wording label;
    Wording help; ///< how to look; may be empty
    Wording whenNotMet; ///< what to do about it
    std::string source; ///< why it is asked and where the limit is from, or "common practice, no source"
    ItemRule rule;
    bool operator==(const Item&) const = default;

    [[nodiscard]] ItemKind kind() const { return static_cast<ItemKind>(rule.index()); }
};

struct Section
{
    std::string id;
    Wording title;
    std::vector<Item> items;
    bool operator==(const Section&) const = default;
};

/** A checklist document as read: never changed once adopted; a change is a new version. */
struct Checklist
{
    std::string id; ///< "shift-readiness"
    int version = 1;
    RoundKind use = RoundKind::Shift; ///< Shift, PreBirth or AfterUse
    Wording title;
    std::vector<Section> sections;
    bool operator==(const Checklist&) const = default;

    [[nodiscard]] std::size_t itemCount() const;
    /** Item at a position, below itemCount, over all sections: the order of the letters of `outcomes`. */
    [[nodiscard]] const Item& item(std::size_t position) const;
    [[nodiscard]] const Section& sectionOf(std::size_t position) const;
    /** Position of the item of that id, if any. */
    [[nodiscard]] std::optional<std::size_t> position(std::string_view itemId) const;
};

/** Lower-case codes as they stand in documents, records and --json. */
const char* codeName(Severity severity);
const char* codeName(ItemKind kind);
const char* codeName(RoundKind kind);
std::optional<Severity> severityFromCode(std::string_view code);
std::optional<ItemKind> itemKindFromCode(std::string_view code);
std::optional<RoundKind> roundKindFromCode(std::string_view code);

}
