# SPDX-License-Identifier: MIT
"""month.py DATABASE REPORT.json...: every figure of a month's reports worked out from the ledger.

One line a table: figures compared, worst relative difference. Fails on any miss, on a table that is not known
here, and on a column that nobody compared.
"""

import datetime as dt
import json
import math
import os
import sys

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "month"))

import changes
import chosen
import course
import gaps
import ledger
import readings
import rounds
import trust

# Relative; sums of hours and products of many shares are all that is not the same arithmetic.
TOLERANCE = 1e-9
# How a row is found: by its first so many cells. 0: in order.
KEYS = {"lost-readiness": 1, "item-weeks": 4, "course": 3, "course-signals": 6, "readings": 3, "restore": 2,
        "open-gaps": 1, "availability": 1, "trust-agreement": 1}
# Rows stand by this column, falling or rising; equal ones as they like.
ORDER = {"lost-readiness": ("loss", -1), "open-gaps": ("opened", 1), "availability": ("share", 1)}


class Comparison:
    def __init__(self):
        self.figures = {}
        self.worst = {}
        self.misses = []

    def miss(self, *what):
        self.misses.append(" ".join(str(w) for w in what))

    def cell(self, table, where, shown, mine):
        self.figures[table] = self.figures.get(table, 0) + 1
        if isinstance(mine, dt.date):
            mine = mine.isoformat()
        if isinstance(shown, (int, float)) and isinstance(mine, (int, float)):
            scale = max(abs(shown), abs(mine), 1e-300)
            difference = abs(shown - mine) / scale if shown != mine else 0.0
            if abs(shown - mine) < 1e-14:
                difference = 0.0
            self.worst[table] = max(self.worst.get(table, 0.0), difference)
            if difference > TOLERANCE or math.isnan(mine):
                self.miss(table, where, "report", shown, "ledger", mine)
        elif shown != mine:
            self.miss(table, where, "report", shown, "ledger", mine)


def plain(report, column, cell):
    """A cell of a report as this side has it: moments in milliseconds."""
    if column["kind"] == "time" and cell is not None:
        return round(dt.datetime.fromisoformat(cell.replace("Z", "+00:00")).timestamp() * 1000)
    return cell


def compare_table(comparison, where, table, mine):
    columns = table["columns"]
    shown = [[plain(table, c, cell) for c, cell in zip(columns, row)] for row in table["rows"]]
    name = table["id"]
    mine = [[c.isoformat() if isinstance(c, dt.date) else c for c in row] for row in mine]
    if len(shown) != len(mine):
        comparison.miss(name, where, "rows: report", len(shown), "ledger", len(mine))
    keys = KEYS.get(name, 0)
    if keys:
        shown.sort(key=lambda row: json.dumps(row[:keys]) if name != "restore" else (row[0], row[1]))
        mine.sort(key=lambda row: json.dumps(row[:keys]) if name != "restore" else (row[0], row[1]))
    for at, (left, right) in enumerate(zip(shown, mine)):
        if len(left) != len(right):
            comparison.miss(name, where, "columns", len(left), len(right))
        for column, a, b in zip(columns, left, right):
            comparison.cell(name, f"{where} row {at} {left[0]} {column['id']}", a, b)


def compare_histogram(comparison, where, month, table):
    """The report chooses the bins; the ledger says what lies in them."""
    for one in readings.readings_of(month):
        shown = [row for row in table["rows"] if row[0] == one.item]
        edges = [(ledger.written(repr(row[1])), ledger.written(repr(row[2]))) for row in shown]
        mine = one.histogram(edges)
        for left, right in zip(shown, mine):
            for a, b in zip(left, right):
                comparison.cell("reading-histogram", f"{where} {one.item}", a, b)
        widths = {high - low for low, high in edges}
        whole = sum(row[3] for row in shown) == len(one.values)
        joined = all(a[1] == b[0] for a, b in zip(edges, edges[1:]))
        if len(widths) != 1 or not whole or not joined or (widths.pop() / one.step).denominator != 1:
            comparison.miss("reading-histogram", where, one.item, "bins with holes or of uneven width")
    items = {one.item for one in readings.readings_of(month)}
    if items != {row[0] for row in table["rows"]}:
        comparison.miss("reading-histogram", where, "items")


def compare_order(comparison, where, table):
    if table["id"] in ORDER:
        name, sign = ORDER[table["id"]]
        at = [column["id"] for column in table["columns"]].index(name)
        cells = [row[at] for row in table["rows"]]
        if cells != sorted(cells, reverse=sign < 0):
            comparison.miss(table["id"], where, "is not in order of", name)


def compare_report(comparison, database, path):
    with open(path, encoding="utf-8") as file:
        report = json.load(file)
    where = report["about"]["unit"]
    now = round(dt.datetime.fromisoformat(report["about"]["madeAt"].replace("Z", "+00:00")).timestamp() * 1000)
    first = dt.date.fromisoformat(report["about"]["firstDay"])
    month = chosen.Month(ledger.read_unit(database, where), first.year, first.month, now)
    mine = {
        "summary": rounds.summary(month),
        "done": rounds.done(month),
        "lost-readiness": rounds.lost_readiness(month),
        "item-weeks": rounds.item_weeks(month),
        "by-shift": rounds.by_shift(month),
        "by-weekday": rounds.by_weekday(month),
        "pattern-tests": rounds.pattern_tests(month),
        **course.tables(month), **readings.tables(month), **gaps.tables(month), **trust.tables(month),
        **changes.tables(month),
    }
    for table in report["tables"]:
        name = table["id"]
        if name == "reading-histogram":
            compare_histogram(comparison, where, month, table)
        elif name in mine:
            compare_table(comparison, where, table, mine[name])
            compare_order(comparison, where, table)
        elif name != "findings":
            comparison.miss("table", name, "is not known here")


def main():
    database, *reports = sys.argv[1:]
    comparison = Comparison()
    for path in reports:
        compare_report(comparison, database, path)
    for table, count in comparison.figures.items():
        print(f"{table:20} {count:6} figures, worst relative difference {comparison.worst.get(table, 0):.1e}")
    print(f"{'all':20} {sum(comparison.figures.values()):6} figures in {len(reports)} reports")
    for miss in comparison.misses[:60]:
        print("MISS", miss)
    print(f"{len(comparison.misses)} misses")
    return 1 if comparison.misses or not comparison.figures else 0


if __name__ == "__main__":
    sys.exit(main())
