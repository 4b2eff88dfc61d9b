# SPDX-License-Identifier: MIT
"""Tables of gaps: time to restore by R's survival package, open gaps, availability."""

import csv
import os
import subprocess
import tempfile

from chosen import HOUR

SEVERITIES = ("critical", "major", "minor")


def chosen_gaps(month):
    """Of the items of the shift rounds and of the other checks in use."""
    in_use = {key for _, day, key, _ in month.unit.adopted if day < month.last}
    ids = {item.id for key in in_use for item in month.unit.checklists[key].items} | {i.id for i in month.items}
    return [g for g in month.gaps if g.item in ids and month.in_span(g)]


def durations(month):
    """(severity, hours, mended) of the gaps that opened in the span."""
    found = []
    for gap in chosen_gaps(month):
        if gap.opened >= month.begin:
            closed = gap.closed is not None and gap.closed <= month.end
            until = gap.closed if closed else month.end
            found.append((gap.severity, (until - gap.opened) / HOUR, int(closed and gap.mended), closed))
    return found


def by_r(rows):
    """Curves, medians and the log-rank test of R: {severity: (steps, median, low, high)}, (chi-square, p)."""
    here = os.path.dirname(os.path.abspath(__file__))
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "gaps.csv"), "w", newline="") as out:
            csv.writer(out).writerows([("severity", "hours", "mended"), *((s, repr(h), m) for s, h, m, _ in rows)])
        subprocess.run(["Rscript", "--vanilla", os.path.join(here, "survival.R"), folder], check=True)

        def read(name):
            with open(os.path.join(folder, name), newline="") as file:
                return [[None if c == "NA" else c for c in row] for row in list(csv.reader(file))[1:]]

        steps = {}
        for group, *cells in read("steps.csv"):
            hours, risk, events, survival, low, high = cells
            steps.setdefault(group, []).append([float(hours), int(risk), int(events), float(survival),
                                                None if low is None else float(low),
                                                None if high is None else float(high)])
        medians = {row[0]: [None if c is None else float(c) for c in row[1:]] for row in read("medians.csv")}
        test = [None if c is None else float(c) for c in read("test.csv")[0]]
        return steps, medians, test


def first_at_half(steps, column):
    """Smallest time at which a curve has come down to a half (R takes the middle of a stretch at a half)."""
    for step in steps:
        if step[column] is not None and step[column] <= 0.5 + 1e-8:
            return step[0]
    return None


def restore(month):
    rows = durations(month)
    steps, medians, test = by_r(rows)
    curve, summary = [], []
    for group in ("all", *SEVERITIES):
        mine = [r for r in rows if group in ("all", r[0])]
        # Times of one group at which nothing was mended are no steps.
        drawn = [s for s in steps.get(group, []) if s[2]]
        curve += [[group, *(s if s[3] > 0 else [*s[:4], None, None])] for s in drawn]
        median = [first_at_half(drawn, column) for column in (3, 4, 5)]
        if not any(abs(s[column] - 0.5) < 1e-8 for s in drawn for column in (3, 4, 5) if s[column] is not None):
            median = medians.get(group, [None] * 3)
        tested = [test[0], int(test[1]), test[2]] if group == "all" and test[0] is not None else [None] * 3
        carried_in = sum(g.opened < month.begin for g in chosen_gaps(month)) if group == "all" else None
        summary.append([group, len(mine), sum(r[2] for r in mine), sum(not r[3] for r in mine), *median, *tested,
                        carried_in, None])
    return {"restore": curve, "restore-summary": summary}


def open_gaps(month):
    rows = []
    for gap in chosen_gaps(month):
        if gap.closed is None or gap.closed > month.end:
            rows.append([gap.item, gap.severity, gap.opened, (month.end - gap.opened) / HOUR, gap.nth - 1, gap.owner,
                         gap.due < month.end])
    return sorted(rows, key=lambda row: row[2])


def availability(month):
    rows = []
    whole = (month.end - month.begin) / HOUR
    for item in month.items:
        looked = any(month.letter(r, item.id) in ("m", "g") for r in month.rounds)
        if item.rule["kind"] not in ("steps", "since", "cylinder") or not looked:
            continue
        gaps = [g for g in chosen_gaps(month) if g.item == item.id]
        down = sum(month.down(g) for g in gaps) / HOUR
        failures = sum(g.opened >= month.begin for g in gaps)
        rows.append([item.id, whole, down, 1 - down / whole, failures,
                     (whole - down) / failures if failures else None,
                     max(month.down(g) for g in gaps) / HOUR if gaps else None,
                     any(g.closed is None or g.closed > month.end for g in gaps)])
    return sorted(rows, key=lambda row: row[3])


def tables(month):
    return {**restore(month), "open-gaps": open_gaps(month), "availability": availability(month)}
