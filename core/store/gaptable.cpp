// SPDX-License-Identifier: MIT
#include "core/store/gaptable.h"

#include "core/store/failure.h"

#include <algorithm>
#include <tuple>

namespace cradlepost {

namespace {

const std::string columns = "unit, item, nth, severity, reason, reason_value, reason_limit, reason_part, "
                            "reason_ready_at, opened_slot, "
                            "opened_at, opened_station, opened_seq, found, last_found, closed_slot, "
                            "closed_at, closed_station, closed_seq, "
                            "closed_as_not_applicable, owner, due, remark, "
                            "measure, mended_by, mended_at, verified_by, verified_at, reopened";
const std::string select = "SELECT " + columns + " FROM gap WHERE unit = ? AND ";

template <class T> T known(std::optional<T> value, const char* column)
{
    if (!value)
        refuse(ErrorCode::Damaged, std::string("a gap has an unknown code in column ") + column,
            "Run verify, then rebuild.");
    return *value;
}

std::optional<Instant> timeIn(const Statement& row, int column)
{
    return row.isNull(column) ? std::nullopt : std::optional(row.time(column));
}

Gap gapIn(const Statement& row)
{
    const auto severity = known(severityFromCode(row.text(3)), "severity");
    Gap gap{.unit = row.text(0),
        .item = row.text(1),
        .nth = row.number(2),
        .severity = severity,
        .reason = {.code = known(reasonFromCode(row.text(4)), "reason"),
            .item = row.text(1),
            .severity = severity,
            .value = row.text(5),
            .limit = row.text(6),
            .part = row.text(7),
            .readyAt = timeIn(row, 8)},
        .openedSlot = row.integer(9),
        .openedAt = row.time(10),
        .openedBy = {.station = row.text(11), .seq = row.integer(12)},
        .found = row.number(13),
        .lastFound = row.time(14),
        .closedSlot = {},
        .closedAt = timeIn(row, 16),
        .closedBy = {},
        .closedAsNotApplicable = row.integer(19) != 0,
        .owner = row.text(20),
        .due = row.time(21),
        .remark = row.text(22),
        .measure = row.text(23),
        .mendedBy = row.text(24),
        .mendedAt = timeIn(row, 25),
        .verifiedBy = row.text(26),
        .verifiedAt = timeIn(row, 27),
        .reopened = row.number(28)};
    if (!gap.isOpen()) {
        gap.closedSlot = row.integer(15);
        gap.closedBy = RecordId{.station = row.text(17), .seq = row.integer(18)};
    }
    return gap;
}

int isClosed(const Gap& gap) { return gap.isOpen() ? 0 : 1; }

void bindReason(Statement& statement, const Gap& gap)
{
    statement.bind(codeName(gap.severity))
        .bind(codeName(gap.reason.code))
        .bind(gap.reason.value)
        .bind(gap.reason.limit)
        .bind(gap.reason.part)
        .bind(gap.reason.readyAt);
}

void bindMending(Statement& statement, const Gap& gap)
{
    statement.bind(gap.measure)
        .bind(gap.mendedBy)
        .bind(gap.mendedAt)
        .bind(gap.verifiedBy)
        .bind(gap.verifiedAt)
        .bind(gap.reopened);
}

void bindCourse(Statement& statement, const Gap& gap)
{
    statement.bind(gap.found).bind(gap.lastFound).bind(gap.closedSlot).bind(gap.closedAt);
    if (gap.closedBy)
        statement.bind(gap.closedBy->station).bind(gap.closedBy->seq);
    else
        statement.bindNull().bindNull();
    statement.bind(gap.closedAsNotApplicable ? 1 : 0).bind(gap.owner).bind(gap.due).bind(gap.remark);
    bindMending(statement, gap);
}

std::vector<Gap> gapsIn(Statement& rows)
{
    std::vector<Gap> gaps;
    while (rows.next())
        gaps.push_back(gapIn(rows));
    return gaps;
}

}

void GapTable::insert(const Gap& gap)
{
    static const std::string text = "INSERT INTO gap (closed, " + columns
        + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, "
          "?, ?, ?, ?, ?, ?)";
    Statement statement = m_database.prepare(text);
    statement.bind(isClosed(gap)).bind(gap.unit).bind(gap.item).bind(gap.nth);
    bindReason(statement, gap);
    statement.bind(gap.openedSlot).bind(gap.openedAt).bind(gap.openedBy.station).bind(gap.openedBy.seq);
    bindCourse(statement, gap);
    statement.run();
}

void GapTable::update(const Gap& gap)
{
    if (!gap.isOpen()) {
        // It moves to the closed ones: another key.
        m_database.prepare("DELETE FROM gap WHERE unit = ? AND closed IN (0, 1) AND item = ? AND nth = ?")
            .bind(gap.unit)
            .bind(gap.item)
            .bind(gap.nth)
            .run();
        insert(gap);
        return;
    }
    Statement statement = m_database.prepare(
        "UPDATE gap SET severity = ?, reason = ?, reason_value = ?, reason_limit = ?, reason_part = ?, "
        "reason_ready_at = ?, found = ?, last_found = ?, owner = ?, due = ?, remark = ?, "
        "measure = ?, mended_by = ?, mended_at = ?, verified_by = ?, verified_at = ?, reopened = ? "
        "WHERE unit = ? AND closed = 0 AND item = ? AND nth = ?");
    bindReason(statement, gap);
    statement.bind(gap.found).bind(gap.lastFound).bind(gap.owner).bind(gap.due).bind(gap.remark);
    bindMending(statement, gap);
    statement.bind(gap.unit).bind(gap.item).bind(gap.nth).run();
}

void GapTable::drop(const std::string& unit)
{
    m_database.prepare("DELETE FROM gap WHERE unit = ?").bind(unit).run();
}

std::vector<Gap> GapTable::open(const std::string& unit) const
{
    Statement rows = m_database.prepare(select + "closed = 0");
    rows.bind(unit);
    std::vector<Gap> gaps = gapsIn(rows);
    std::sort(gaps.begin(), gaps.end(),
        [](const Gap& a, const Gap& b) { return std::tie(a.due, a.item) < std::tie(b.due, b.item); });
    return gaps;
}

std::vector<Gap> GapTable::closedSince(const std::string& unit, Instant since) const
{
    Statement rows = m_database.prepare(
        select + "closed = 1 AND closed_at >= ? ORDER BY closed_at DESC, item, nth DESC");
    rows.bind(unit).bind(since);
    return gapsIn(rows);
}

std::vector<Gap> GapTable::during(const std::string& unit, Instant from, Instant to) const
{
    // Two questions, since most gaps were closed long ago: each has a key that leads past them.
    Statement open = m_database.prepare(select + "closed = 0 AND opened_at < ?");
    open.bind(unit).bind(to);
    std::vector<Gap> gaps = gapsIn(open);
    Statement closed = m_database.prepare(select + "closed = 1 AND closed_at >= ? AND opened_at < ?");
    closed.bind(unit).bind(from).bind(to);
    for (Gap& gap : gapsIn(closed))
        gaps.push_back(std::move(gap));
    std::sort(gaps.begin(), gaps.end(), [](const Gap& a, const Gap& b) {
        return std::tie(a.openedAt, a.item, a.nth) < std::tie(b.openedAt, b.item, b.nth);
    });
    return gaps;
}

std::vector<Gap> GapTable::ofItem(const std::string& unit, const std::string& item) const
{
    Statement rows = m_database.prepare(select + "closed IN (0, 1) AND item = ? ORDER BY nth");
    rows.bind(unit).bind(item);
    return gapsIn(rows);
}

std::optional<Gap> GapTable::find(const std::string& unit, const std::string& item, int nth) const
{
    Statement row = m_database.prepare(select + "closed IN (0, 1) AND item = ? AND nth = ?");
    row.bind(unit).bind(item).bind(nth);
    if (!row.next())
        return std::nullopt;
    return gapIn(row);
}

int GapTable::count(const std::string& unit, const std::string& item) const
{
    // Each of the two ends at the last row of its part of the key; max() over both would read every one.
    int count = 0;
    for (const int closed : {0, 1}) {
        Statement row = m_database.prepare(
            "SELECT nth FROM gap WHERE unit = ? AND closed = ? AND item = ? ORDER BY nth DESC LIMIT 1");
        row.bind(unit).bind(closed).bind(item);
        count = std::max(count, row.next() ? row.number(0) : 0);
    }
    return count;
}

void GapTable::putAction(const std::string& unit, const Origin& origin, const GapAction& action)
{
    m_database.prepare("INSERT INTO gap_action (unit, at, station, seq, item, nth) VALUES (?, ?, ?, ?, ?, ?)")
        .bind(unit)
        .bind(origin.at)
        .bind(origin.id.station)
        .bind(origin.id.seq)
        .bind(action.item)
        .bind(action.nth)
        .run();
}

std::vector<RecordId> GapTable::actionsOn(const std::string& unit, const std::string& item, int nth) const
{
    std::vector<RecordId> actions;
    Statement rows = m_database.prepare("SELECT station, seq FROM gap_action WHERE unit = ? AND item = ? "
                                        "AND nth = ? ORDER BY at, station, seq");
    rows.bind(unit).bind(item).bind(nth);
    while (rows.next())
        actions.push_back({.station = rows.text(0), .seq = rows.integer(1)});
    return actions;
}

std::vector<Origin> GapTable::actions(const std::string& unit) const
{
    std::vector<Origin> actions;
    Statement rows = m_database.prepare("SELECT at, station, seq FROM gap_action WHERE unit = ?");
    rows.bind(unit);
    while (rows.next())
        actions.push_back({.at = rows.time(0), .id = {.station = rows.text(1), .seq = rows.integer(2)}});
    return actions;
}

std::optional<GapProgress> GapTable::progress(const std::string& unit) const
{
    Statement row = m_database.prepare("SELECT at, station, seq, held FROM gap_progress WHERE unit = ?");
    row.bind(unit);
    if (!row.next())
        return std::nullopt;
    return GapProgress{.last = {.at = row.time(0), .id = {.station = row.text(1), .seq = row.integer(2)}},
        .held = row.integer(3)};
}

void GapTable::setProgress(const std::string& unit, const GapProgress& progress)
{
    m_database
        .prepare("INSERT INTO gap_progress (unit, at, station, seq, held) VALUES (?, ?, ?, ?, ?) "
                 "ON CONFLICT (unit) DO UPDATE SET at = excluded.at, station = excluded.station, "
                 "seq = excluded.seq, held = excluded.held")
        .bind(unit)
        .bind(progress.last.at)
        .bind(progress.last.id.station)
        .bind(progress.last.id.seq)
        .bind(progress.held)
        .run();
}

}
