# SPDX-License-Identifier: MIT
"""monthforms.py REPORT.json: the same figures in all five forms.

Beside it lie REPORT.csv, .xlsx, .html and .pdf of the same month. Every cell of the JSON is looked for in the CSV
and in the work book; every figure of every table that the page and the paper print must be the JSON's, rounded as
its column says. Prints how many cells were compared; fails on any that differs.
"""

import csv
import datetime as dt
import decimal
import html.parser
import json
import os
import re
import subprocess
import sys
import zoneinfo

import openpyxl

FIGURES = ("count", "number", "share")
WEEKDAYS = ("", "Mon", "Tues", "Wednes", "Thurs", "Fri", "Satur", "Sun")
# Tables of which a reader of the page finds every row.
MUST_PRINT = ("summary", "done", "lost-readiness", "item-weeks", "by-shift", "by-weekday", "readings",
              "reading-histogram", "restore", "restore-summary", "open-gaps", "availability", "trust",
              "trust-readings", "trust-agreement")


class Count:
    def __init__(self):
        self.cells = {"csv": 0, "xlsx": 0, "html": 0, "pdf": 0}
        self.misses = []

    def same(self, form, where, shown, expected):
        self.cells[form] += 1
        if shown != expected:
            self.misses.append(f"{form} {where}: {shown!r}, JSON says {expected!r}")


def check_csv(count, report, path):
    with open(path, newline="", encoding="utf-8") as file:
        lines = list(csv.DictReader(file))
    found = {(line["table"], line["row"], line["column"]): (line["value"], line["unit"]) for line in lines}
    if len(found) != len(lines):
        count.misses.append("csv: a cell stands twice")
    for table in report["tables"]:
        for number, row in enumerate(table["rows"], 1):
            for column, cell in zip(table["columns"], row):
                key = table["id"], str(number), column["id"]
                value, unit = found.pop(key, (None, ""))
                if isinstance(cell, bool):
                    value = {"0": False, "1": True}.get(value)
                elif isinstance(cell, (int, float)) and value is not None:
                    value = float(value)
                elif isinstance(cell, str) and cell == "" and value is None:
                    value = ""  # no line for a text that is empty
                count.same("csv", key, value, cell)
                if cell is not None and unit not in (column["unit"], ""):
                    count.misses.append(f"csv {key}: unit {unit}")
    left = [key for key in found if key[0] not in ("about", "cautions")]
    if left:
        count.misses.append(f"csv: {len(left)} cells that the JSON has not, {left[0]}")


def in_sheet(cell, column, zone):
    """What a cell of the JSON is in the work book."""
    if cell is None or cell == "":
        return None
    if column["kind"] == "day":
        return dt.datetime.fromisoformat(cell)
    if column["kind"] == "time":
        moment = dt.datetime.fromisoformat(cell.replace("Z", "+00:00"))
        return moment.astimezone(zone).replace(tzinfo=None)
    return cell


def check_xlsx(count, report, path):
    zone = zoneinfo.ZoneInfo(report["about"]["zone"])
    book = openpyxl.load_workbook(path)
    sheets = book.worksheets[1:]
    if len(sheets) != len(report["tables"]):
        count.misses.append(f"xlsx: {len(sheets)} sheets for {len(report['tables'])} tables")
    for table, sheet in zip(report["tables"], sheets):
        rows = list(sheet.iter_rows(min_row=2, values_only=True))
        count.same("xlsx", f"{table['id']} rows", len([r for r in rows if any(c is not None for c in r)]),
                   len(table["rows"]))
        words = {}
        for number, (shown, row) in enumerate(zip(rows, table["rows"]), 1):
            for value, column, cell in zip(shown, table["columns"], row):
                where = table["id"], number, column["id"]
                expected = in_sheet(cell, column, zone)
                if column["kind"] == "code" and cell is not None and (cell or value):
                    # A word for each code, always the same one.
                    expected = words.setdefault((column["id"], cell), value) or "a word"
                elif isinstance(expected, float) and isinstance(value, (int, float)):
                    # The library writes 16 digits.
                    value = expected if abs(value - expected) <= 1e-15 * abs(expected) else value
                elif isinstance(expected, dt.datetime) and isinstance(value, dt.datetime):
                    value = expected if abs(value - expected) < dt.timedelta(milliseconds=2) else value
                count.same("xlsx", where, value, expected)


class Tables(html.parser.HTMLParser):
    """(caption, rows of (text, whether it is a figure)) of each table of a page."""

    def __init__(self):
        super().__init__()
        self.tables, self.cell, self.caption = [], None, None

    def handle_starttag(self, tag, attributes):
        if tag == "table":
            self.tables.append(["", []])
        elif tag == "tr" and self.tables:
            self.tables[-1][1].append([])
        elif tag in ("td", "th"):
            self.cell = ["", dict(attributes).get("class") == "n"]
        elif tag == "caption":
            self.caption = ""

    def handle_endtag(self, tag):
        if tag in ("td", "th") and self.cell is not None:
            self.tables[-1][1][-1].append(tuple(self.cell))
            self.cell = None
        elif tag == "caption":
            self.tables[-1][0] = self.caption
            self.caption = None

    def handle_data(self, data):
        if self.cell is not None:
            self.cell[0] += data
        elif self.caption is not None:
            self.caption += data


def number_of(text):
    """A printed figure: its value and how many decimals it was rounded to."""
    plain = text.replace(",", "").replace("\u2212", "-")
    share = plain.endswith("%")
    value = decimal.Decimal(plain.rstrip("%"))
    return value, share, -value.as_tuple().exponent


def is_printed_as(text, cell, column):
    if cell is None:
        return text in ("", "–", "—")
    if column["id"] == "weekday":
        return text.startswith(WEEKDAYS[cell])
    if column["kind"] == "day":
        return text == cell
    if column["kind"] == "flag":
        return text in ("yes", "no") and (text == "yes") == cell
    if column["kind"] == "text":
        return text == cell
    if column["kind"] not in FIGURES:
        return text != "" or cell == ""
    if text.startswith("<"):
        limit, share, _ = number_of(text.lstrip("< "))
        return abs(cell) * (100 if share else 1) < limit
    try:
        value, share, decimals = number_of(text)
    except decimal.InvalidOperation:
        return False
    if share != (column["kind"] == "share"):
        return False
    exact = decimal.Decimal(cell) * (100 if share else 1)
    return abs(value - exact) <= decimal.Decimal("0.5000001") * decimal.Decimal(10) ** -decimals


def rows_of(report_table, rows):
    """The JSON's rows that these printed rows are, in order; None when one of them is none of the table's."""
    found, at = [], 0
    columns = report_table["columns"]
    for row in rows:
        while at < len(report_table["rows"]) and not all(
                is_printed_as(text, cell, column)
                for (text, _), cell, column in zip(row, report_table["rows"][at], columns)):
            at += 1
        if at == len(report_table["rows"]):
            return None
        found.append(at)
        at += 1
    return found


def rows_of_tables(tables, rows):
    """The same for rows of one table, or of one and then another; nothing for no rows."""
    if not rows:
        return []
    for table in tables:
        at = rows_of(table, rows)
        if at is not None:
            return [(table["id"], at)]
    for one in tables:
        for other in tables:
            end = len(one["rows"])
            first, second = rows_of(one, rows[:end]), rows_of(other, rows[end:])
            if one is not other and end and first is not None and second is not None:
                return [(one["id"], first), (other["id"], second)]
    return None


def check_html(count, report, path):
    """Every printed table is rows of one of the JSON's; gives the tables with a caption, for the paper."""
    page = Tables()
    with open(path, encoding="utf-8") as file:
        page.feed(file.read())
    printed = {}
    for caption, rows in page.tables:
        head, body = rows[0], rows[1:]
        taken = rows_of_tables([t for t in report["tables"] if len(t["columns"]) == len(head)], body)
        if taken is None:
            count.misses.append(f"html: a table {caption or [text for text, _ in head]} that is none of the JSON's")
            continue
        for name, at in taken:
            printed.setdefault(name, set()).update(at)
        count.cells["html"] += sum(is_figure for row in body for _, is_figure in row)
    for table in report["tables"]:
        missing = len(table["rows"]) - len(printed.get(table["id"], ()))
        if missing and table["id"] in MUST_PRINT:
            count.misses.append(f"html: {missing} rows of {table['id']} are not printed")
    print("printed rows:", ", ".join(f"{t['id']} {len(printed.get(t['id'], ()))}/{len(t['rows'])}"
                                     for t in report["tables"]))
    return [(caption, rows[1:]) for caption, rows in page.tables if caption]


def holds(tokens, wanted):
    at = iter(tokens)
    return all(any(token == want for token in at) for want in wanted)


def match_lines(lines, start, rows, first, last):
    """Where the rows' figures first..last end, each row on a later line than the one before; None: not there."""
    at = start
    for row in rows:
        wanted = [text for text in row[first:last] if text]
        if not wanted:
            continue
        while at < len(lines) and not holds(lines[at], wanted):
            at += 1
        if at == len(lines):
            return None
        at += 1
    return at


def check_pdf(count, captioned, path):
    text = subprocess.run(["pdftotext", "-layout", path, "-"], check=True, capture_output=True, text=True).stdout
    lines = text.splitlines()
    tokens = [re.split(r"\s+", line.strip()) for line in lines]
    start = 0
    for caption, rows in captioned:
        titles = [i for i, line in enumerate(lines) if i >= start and line.strip() == caption]
        if not titles:
            count.misses.append(f"pdf: no table {caption}")
            continue
        at = titles[0]
        figures = [[text for text, is_figure in row if is_figure] for row in rows]
        first, width = 0, max((len(row) for row in figures), default=0)
        # Columns that do not fit stand below, in further groups.
        while first < width:
            for last in range(width, first, -1):
                end = match_lines(tokens, at, figures, first, last)
                if end is not None:
                    break
            else:
                count.misses.append(f"pdf: figures of {caption} are not those of the page")
                break
            at, first = end, last
        else:
            count.cells["pdf"] += sum(bool(text) for row in figures for text in row)
        start = titles[0] + 1


def main():
    count = Count()
    stem = os.path.splitext(sys.argv[1])[0]
    with open(stem + ".json", encoding="utf-8") as file:
        report = json.load(file)
    check_csv(count, report, stem + ".csv")
    check_xlsx(count, report, stem + ".xlsx")
    check_pdf(count, check_html(count, report, stem + ".html"), stem + ".pdf")
    print(os.path.basename(stem), ", ".join(f"{form} {cells} cells" for form, cells in count.cells.items()))
    for miss in count.misses[:40]:
        print("MISS", miss)
    print(len(count.misses), "misses")
    return 1 if count.misses or not all(count.cells.values()) else 0


if __name__ == "__main__":
    sys.exit(main())
