// SPDX-License-Identifier: MIT
#include "ui/report/reportabout.h"

#include "ui/text/wardtext.h"

#include <algorithm>

namespace cradlepost {

namespace {

QString hexOf(const Hash& hash)
{
    return QString::fromLatin1(
        QByteArray(reinterpret_cast<const char*>(hash.data()), static_cast<qsizetype>(hash.size())).toHex());
}

/** When the last record of a chain was made. */
Result<Instant> lastWritten(const Store& store, const Chain& chain)
{
    Instant at;
    const auto read = store.records(chain.station, chain.seq, chain.seq, [&](const Record& record) {
        at = record.madeAt;
        return Result<void>();
    });
    return read ? Result<Instant>(at) : tl::unexpected(read.error());
}

/** The chains that count for `unit`. */
Result<std::vector<Chain>> chainsFor(const Store& store, const std::string& unit)
{
    auto chains = store.chains();
    if (!chains || unit.empty())
        return chains;
    const auto writers = store.writersOf(unit);
    if (!writers)
        return tl::unexpected(writers.error());
    std::erase_if(*chains, [&](const Chain& chain) {
        return std::find(writers->begin(), writers->end(), chain.station) == writers->end();
    });
    return chains;
}

}

std::vector<QString> reportCautions()
{
    std::vector<QString> lines;
    for (const QString& line : WardText::cautions().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        lines.push_back(line);
    return lines;
}

Result<ReportSeal> reportSeal(const Store& store, const TimeText& times, Instant now, const std::string& unit)
{
    const auto chains = chainsFor(store, unit);
    if (!chains)
        return tl::unexpected(chains.error());
    ReportSeal seal{.made = qs(toIso(times.zone().toLocal(now).date)) + QLatin1Char(' ') + times.clock(now),
        .station = {},
        .headHash = {}};
    std::optional<Instant> latest;
    for (const Chain& chain : *chains) {
        const auto written = lastWritten(store, chain);
        if (!written)
            return tl::unexpected(written.error());
        if (latest && *written < *latest)
            continue;
        latest = *written;
        seal.station = qs(chain.station);
        seal.headHash = hexOf(chain.hash);
    }
    return seal;
}

void signDocument(ReportDocument& document, const ReportSeal& seal, const Language& language)
{
    document.cautions = reportCautions();
    document.seal = seal;
    document.language = language.code();
    document.direction = language.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight;
}

ReportTables reportTables(TablesAbout about, std::vector<DataTable> tables, const ReportSeal& seal,
    const TableText& tableText, const Language& language)
{
    about.station = seal.station.toStdString();
    about.ledgerHead = seal.headHash.toStdString();
    about.program = "Cradlepost";
    for (const QString& line : reportCautions())
        about.cautions.push_back(line.toStdString());
    ReportTables out{.book = {.about = std::move(about), .tables = std::move(tables)}, .words = {}};
    out.words.sheet = [](const std::string& table) { return TableText::title(table).toStdString(); };
    out.words.heading
        = [](const std::string&, const Column& column) { return TableText::heading(column).toStdString(); };
    out.words.code = [&tableText](const std::string&, const Column& column, const std::string& code) {
        return tableText.word(column, code).toStdString();
    };
    out.words.rightToLeft = language.isRightToLeft();
    return out;
}

ChartTable wordedTable(
    const TableText& text, const DataTable& table, std::string_view where, std::string_view is)
{
    ChartTable out{.headers = text.headings(table), .rows = {}, .numbers = {}};
    std::size_t column = table.columns.size();
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const ColumnKind kind = table.columns[i].kind;
        out.numbers.push_back(
            kind == ColumnKind::Count || kind == ColumnKind::Number || kind == ColumnKind::Share);
        if (!where.empty() && table.columns[i].id == where)
            column = i;
    }
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const auto* cell
            = column < table.columns.size() ? std::get_if<std::string>(&table.rows[row][column]) : nullptr;
        if (cell == nullptr || *cell == is)
            out.rows.push_back(text.row(table, row));
    }
    return out;
}

ChartTable wordedTable(const TableText& text, const std::vector<DataTable>& tables, std::string_view id,
    std::string_view where, std::string_view is)
{
    const auto found
        = std::find_if(tables.begin(), tables.end(), [&](const DataTable& one) { return one.id == id; });
    return found == tables.end() ? ChartTable() : wordedTable(text, *found, where, is);
}

}
