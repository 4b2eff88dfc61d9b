# SPDX-License-Identifier: MIT
"""The table of change ideas: before and after, with Newcombe's limits widened for how rounds spread."""

import datetime as dt

from statsmodels.stats.proportion import confint_proportions_2indep

from chosen import DAY
from rounds import spread

FEWEST_ROUNDS = 10


def tally(month, one, items):
    letters = [letter for item, letter in zip(month.unit.checklist_of(one).items, one.outcomes)
               if letter in "mg" and (not items or item.id in items)]
    return letters.count("m"), len(letters)


def change_row(month, idea):
    since = dt.date.fromisoformat(idea["from"])
    until = dt.date.fromisoformat(idea["until"]) if "until" in idea else None
    last = min(month.last - DAY, until or month.last)
    items = idea.get("items", [])
    tallies = [(r.day >= since, *tally(month, r, items)) for r in month.all if r.day <= last]
    tallies = [t for t in tallies if t[2]]
    sides = [[t for t in tallies if t[0] == after] for after in (False, True)]
    rounds = [len(side) for side in sides]
    (x1, n1), (x2, n2) = ((sum(t[1] for t in side), sum(t[2] for t in side)) for side in sides)
    row = [idea["title"], since, until, " ".join(items), month.look_back, last, *rounds, x1, n1, x2, n2]
    if min(rounds) < FEWEST_ROUNDS:
        return [*row, None, None, None, None, "too-few"]
    dispersion, carry_over = spread(tallies)
    wider = dispersion * carry_over
    low, high = confint_proportions_2indep(x2, n2, x1, n1, method="newcomb", compare="diff")
    difference = x2 / n2 - x1 / n1
    low = max(-1.0, difference - (difference - low) * wider ** 0.5)
    high = min(1.0, difference + (high - difference) * wider ** 0.5)
    return [*row, difference, low, high, wider, None]


def tables(month):
    shown = [idea for idea in month.unit.changes.values()
             if month.look_back <= dt.date.fromisoformat(idea["from"]) < month.last
             and idea.get("until", "9999") >= month.first.isoformat()]
    return {"changes": [change_row(month, idea) for idea in sorted(shown, key=lambda idea: idea["from"])]}
