# SPDX-License-Identifier: MIT
"""What a month's review looks at: the rounds of the span and of the 26 weeks before it, and the gaps."""

import datetime as dt
import math
from dataclasses import dataclass
from fractions import Fraction

DAY = dt.timedelta(1)
HOUR = 3_600_000.0  # milliseconds
WEIGHT = {"critical": 3, "major": 2, "minor": 1}


def monday(day):
    return day - dt.timedelta(day.weekday())


@dataclass
class Gap:
    item: str
    nth: int
    severity: str
    opened: int
    due: int
    closed: int = None
    mended: bool = False  # else closed because it does not apply
    owner: str = ""


class Month:
    """One unit, one month."""

    def __init__(self, unit, year, month, now):
        self.unit = unit
        self.first = dt.date(year, month, 1)
        self.last = (self.first + 31 * DAY).replace(day=1)  # exclusive
        self.look_back = monday(self.first) - 26 * 7 * DAY
        self.now = now
        self.due_all = unit.shifts(self.look_back, self.last, now)
        self.due = [s for s in self.due_all if s.date >= self.first]
        self.all = [r for r in unit.shift_rounds() if self.look_back <= r.day < self.last]
        self.before = [r for r in self.all if r.day < self.first]
        self.rounds = [r for r in self.all if r.day >= self.first]
        self.begin = self.due[0].begins
        self.end = min(self.due[-1].ends, now)
        self.items = self.items_of_lists()
        self.codes = [code for code in dict.fromkeys(s.code for s in sorted(self.due, key=lambda s: s.index))]
        self.gaps = carried(unit)

    def items_of_lists(self):
        """The latest checklist's first, older ones after them."""
        lists = dict.fromkeys((r.body["checklist"], r.body["version"]) for r in reversed(self.all))
        items = {}
        for key in lists:
            for item in self.unit.checklists[key].items:
                items.setdefault(item.id, item)
        return list(items.values())

    def letter(self, one, item):
        at = self.unit.checklist_of(one).position(item)
        return None if at is None else one.outcomes[at]

    def tallies(self, item, rounds):
        """Gaps, met, not checked of these rounds."""
        letters = [self.letter(r, item) for r in rounds]
        return letters.count("g"), letters.count("m"), letters.count("u")

    def in_span(self, gap):
        """Open at any time of the span."""
        return gap.opened < self.end and (gap.closed is None or gap.closed > self.begin)

    def down(self, gap):
        """The part of a gap that lies in the span, in milliseconds."""
        until = self.end if gap.closed is None else min(gap.closed, self.end)
        return until - max(gap.opened, self.begin)


def met_of(one):
    """Met of applicable; what was not checked is applicable and not met."""
    return one.outcomes.count("m"), len(one.outcomes) - one.outcomes.count("n")


def state_of(month, one):
    items = month.unit.checklist_of(one).items
    bad = [item.severity for item, letter in zip(items, one.outcomes) if letter in "gu"]
    return "not-ready" if "critical" in bad else "ready-with-gaps" if bad else "ready"


def index_of(month, one):
    """Mean over sections of the share of applicable items met, to the nearest ten-thousandth, half upwards."""
    sections = {}
    for item, letter in zip(month.unit.checklist_of(one).items, one.outcomes):
        if letter != "n":
            sections.setdefault(item.section, []).append(letter == "m")
    shares = [Fraction(sum(met), len(met)) for met in sections.values()]
    return math.floor(10000 * sum(shares) / len(shares) + Fraction(1, 2)) / 10000


def due_for(severity, at, shift_ends):
    if severity == "critical":
        return max(at, shift_ends)
    return at + int((24 if severity == "major" else 24 * 7) * HOUR)


def carried(unit):
    """All gaps of a unit from the outcomes of its rounds, re-checks and checks, with what was decided on them."""
    steps = [(r.body["finished"], r.id, r, None) for r in unit.rounds]
    steps += [(at, (station, seq), None, body) for at, station, seq, body in unit.actions]
    steps.sort(key=lambda step: step[:2])
    gaps, waiting = {}, {}
    for at, _, one, action in steps:
        if action is not None:
            had = gaps.get(action["item"], [])
            if action["nth"] <= len(had):
                decide(had[action["nth"] - 1], action)
            else:
                waiting.setdefault((action["item"], action["nth"]), []).append(action)
            continue
        for item, letter in zip(unit.checklist_of(one).items, one.outcomes):
            had = gaps.setdefault(item.id, [])
            carry(had, item, letter, at, one.body["shift"]["ends"], waiting)
    return [gap for had in gaps.values() for gap in had]


def carry(had, item, letter, at, shift_ends, waiting):
    is_open = bool(had) and had[-1].closed is None
    if letter == "g" and is_open:
        had[-1].severity = item.severity
    elif letter == "g":
        gap = Gap(item.id, len(had) + 1, item.severity, at, due_for(item.severity, at, shift_ends))
        had.append(gap)
        for action in waiting.pop((item.id, gap.nth), []):
            decide(gap, action)
    elif letter in "mn" and is_open:
        had[-1].closed, had[-1].mended = at, letter == "m"


def decide(gap, action):
    gap.owner = action.get("owner", gap.owner)
    gap.due = action.get("due", gap.due)
