// SPDX-License-Identifier: MIT
#include "core/exchange/csvexport.h"

#include "core/exchange/csvdictionary.h"
#include "core/exchange/csvrounds.h"
#include "core/exchange/csvtablefile.h"
#include "core/exchange/tablecell.h"

#include <algorithm>
#include <filesystem>
#include <limits>
#include <map>

namespace cradlepost {

namespace {

#define CRADLEPOST_NEED(expression)                                                                          \
    if (auto done = (expression); !done)                                                                     \
    return tl::unexpected(done.error())

std::string flag(bool set) { return set ? "1" : "0"; }

std::vector<std::string> gapCells(const Gap& gap)
{
    const auto moment = [](const std::optional<Instant>& at) { return at ? toIso(*at) : std::string(); };
    std::string how;
    if (gap.closedAt)
        how = gap.closedAsNotApplicable ? "does-not-apply" : "mended";
    return {gap.unit, gap.item, std::to_string(gap.nth), codeName(gap.severity), codeName(gap.reason.code),
        toIso(gap.openedAt), recordName(gap.openedBy), std::to_string(gap.found), toIso(gap.lastFound),
        toIso(gap.due), moment(gap.closedAt), gap.closedBy ? recordName(*gap.closedBy) : std::string(), how};
}

std::vector<std::string> itemCells(const std::string& unit, const StockItem& item)
{
    std::string serves;
    for (const std::string& one : item.serves)
        serves += (serves.empty() ? "" : " ") + one;
    return {unit, item.id, item.name, std::to_string(item.levels.par), std::to_string(item.levels.minimum),
        std::to_string(item.levels.emergency), flag(item.expires), item.fridge, std::to_string(item.packSize),
        item.perBirth.toString(), item.deliveryDays > 0 ? std::to_string(item.deliveryDays) : "",
        item.service != Decimal{} ? item.service.toString() : "", serves, flag(item.retired)};
}

std::vector<std::string> movementCells(const std::string& unit, const Recorded<StockMovement>& recorded)
{
    const StockMovement& movement = recorded.what;
    return {recordName({.station = recorded.id.station, .seq = recorded.id.seq}), unit, movement.item,
        codeName(movement.kind), toIso(movement.at), std::to_string(movement.quantity), movement.lot,
        movement.expiry ? toIso(*movement.expiry) : std::string(), codeName(movement.reason),
        movement.kind == MovementKind::CountCorrection ? codeName(movement.scope) : "", movement.counterpart};
}

/** Writes all tables as drafts, and gives them their names at the end. */
class CsvExporter
{
public:
    CsvExporter(const Store& store, const CsvExportRequest& request)
        : m_store(store)
        , m_request(request)
    {
    }

    Result<std::vector<CsvExported>> write()
    {
        CRADLEPOST_NEED(prepareFolder());
        for (const std::string& table : csvTableNames()) {
            auto file = CsvTableFile::begin(m_request.folder, table);
            if (!file)
                return tl::unexpected(file.error());
            m_files.emplace(table, std::move(*file));
        }
        const auto units = m_store.units();
        if (!units)
            return tl::unexpected(units.error());
        CRADLEPOST_NEED(checkUnits(*units));
        for (const Unit& unit : *units) {
            if (takes(unit.id)) {
                CRADLEPOST_NEED(writeUnit(unit));
            }
        }
        return publish();
    }

private:
    Result<void> prepareFolder() const
    {
        std::error_code error;
        std::filesystem::create_directories(m_request.folder, error);
        if (!std::filesystem::is_directory(m_request.folder, error))
            return fail(ErrorCode::InvalidArgument, m_request.folder + " is no folder and cannot be made one",
                "Name a folder in a place that can be written.");
        std::vector<std::string> names = csvTableNames();
        names.emplace_back("dictionary");
        for (const std::string& name : names) {
            const auto path = std::filesystem::path(m_request.folder) / (name + ".csv");
            if (std::filesystem::exists(path, error))
                return fail(
                    ErrorCode::AlreadyExists, path.string() + " is there already", "Name a new folder.");
        }
        return {};
    }

    Result<void> checkUnits(const std::vector<Unit>& units) const
    {
        for (const std::string& id : m_request.units) {
            if (std::none_of(units.begin(), units.end(), [&](const Unit& unit) { return unit.id == id; }))
                return fail(ErrorCode::NotFound, "there is no unit '" + id + "'");
        }
        return {};
    }

    [[nodiscard]] bool takes(const std::string& unit) const
    {
        const auto& units = m_request.units;
        return units.empty() || std::find(units.begin(), units.end(), unit) != units.end();
    }

    Result<void> add(const char* table, std::vector<std::string> cells)
    {
        return m_files.at(table).add(std::move(cells));
    }

    Result<void> writeUnit(const Unit& unit)
    {
        CRADLEPOST_NEED(add("units", {unit.id, unit.name, unit.level, unit.zone}));
        CRADLEPOST_NEED(writeRounds(unit.id));
        const auto zone = TimeZone::named(unit.zone);
        if (!zone)
            return tl::unexpected(zone.error());
        CRADLEPOST_NEED(writeGaps(unit.id, *zone));
        return writeStock(unit.id, *zone);
    }

    Result<void> writeRounds(const std::string& unit)
    {
        Slot from = 0;
        Slot to = std::numeric_limits<Slot>::max();
        if (m_request.span) {
            from = slotOf(m_request.span->from, 0);
            to = slotOf(m_request.span->to, 0);
        }
        const auto rows = m_store.rounds(unit, from, to);
        if (!rows)
            return tl::unexpected(rows.error());
        for (const RoundRow& row : *rows)
            CRADLEPOST_NEED(writeRound(unit, row));
        return {};
    }

    Result<void> writeRound(const std::string& unit, const RoundRow& row)
    {
        auto list = m_lists.find({row.checklist, row.version});
        if (list == m_lists.end()) {
            auto read = m_store.checklist(row.checklist, row.version);
            if (!read)
                return tl::unexpected(read.error());
            list = m_lists.emplace(std::pair(row.checklist, row.version), std::move(*read)).first;
        }
        const auto saved = m_store.round(row.id);
        if (!saved)
            return tl::unexpected(saved.error());
        CRADLEPOST_NEED(add("rounds", roundCells(unit, row, *saved)));
        for (auto& cells : answerCells(list->second, *saved))
            CRADLEPOST_NEED(add("answers", std::move(cells)));
        for (auto& cells : readingCells(unit, list->second, *saved))
            CRADLEPOST_NEED(add("readings", std::move(cells)));
        return {};
    }

    Result<void> writeGaps(const std::string& unit, const TimeZone& zone)
    {
        const Instant from = m_request.span ? zone.toInstant({.date = m_request.span->from}) : fromMs(0);
        auto gaps = m_store.closedGaps(unit, from);
        const auto open = m_store.openGaps(unit);
        if (!gaps)
            return tl::unexpected(gaps.error());
        if (!open)
            return tl::unexpected(open.error());
        gaps->insert(gaps->end(), open->begin(), open->end());
        std::stable_sort(
            gaps->begin(), gaps->end(), [](const Gap& a, const Gap& b) { return a.openedAt < b.openedAt; });
        for (const Gap& gap : *gaps) {
            if (m_request.span && gap.openedAt >= zone.toInstant({.date = m_request.span->to}))
                continue;
            CRADLEPOST_NEED(add("gaps", gapCells(gap)));
        }
        return {};
    }

    Result<void> writeStock(const std::string& unit, const TimeZone& zone)
    {
        const auto items = m_store.stockItems(unit);
        if (!items)
            return tl::unexpected(items.error());
        for (const StockItem& item : *items)
            CRADLEPOST_NEED(add("stock_items", itemCells(unit, item)));
        const auto movements = m_store.stockMovements(unit);
        if (!movements)
            return tl::unexpected(movements.error());
        for (const auto& movement : *movements) {
            if (m_request.span && !m_request.span->contains(zone.toLocal(movement.what.at).date))
                continue;
            CRADLEPOST_NEED(add("stock_movements", movementCells(unit, movement)));
        }
        return {};
    }

    Result<std::vector<CsvExported>> publish()
    {
        std::vector<CsvExported> written;
        for (const std::string& table : csvTableNames()) {
            CsvTableFile& file = m_files.at(table);
            CRADLEPOST_NEED(file.publish());
            written.push_back({.table = table, .rows = file.rows()});
        }
        const auto path = std::filesystem::path(m_request.folder) / "dictionary.csv";
        CRADLEPOST_NEED(writeWholeFile(path.string(), csvDictionaryText()));
        written.push_back({.table = "dictionary", .rows = static_cast<std::int64_t>(csvDictionary().size())});
        return written;
    }

    const Store& m_store;
    const CsvExportRequest& m_request;
    std::map<std::string, CsvTableFile, std::less<>> m_files;
    std::map<std::pair<std::string, int>, Checklist> m_lists;
};

}

Result<std::vector<CsvExported>> exportCsv(const Store& store, const CsvExportRequest& request)
{
    return CsvExporter(store, request).write();
}

}
