# SPDX-License-Identifier: MIT
"""Tables of measured values: limits, XmR chart, histogram, last digits."""

from collections import Counter
from fractions import Fraction

import numpy
from scipy.stats import chisquare
from statsmodels.stats.proportion import proportion_confint

from ledger import written
from rounds import share


def measured(month, rounds, item):
    """(round, value) for each reading of an item."""
    found = []
    for one in rounds:
        at = month.unit.checklist_of(one).position(item)
        answer = None if at is None else one.body["answers"][at]
        if isinstance(answer, dict) and "v" in answer:
            found.append((one, written(answer["v"])))
    return found


def limits_of(month, one, item):
    """What was in force in that round: id, low, high."""
    checklist = month.unit.checklist_of(one)
    chosen = one.body["limits"][item]
    rule = checklist.items[checklist.position(item)].rule
    limit = next(l for l in rule["limits"] if l["id"] == chosen)
    return chosen, *(written(str(limit[end])) if end in limit else None for end in ("low", "high"))


def side(value, low, high):
    return -1 if low is not None and value < low else 1 if high is not None and value > high else 0


def step_of(month, item, decimals):
    values = [v for _, v in measured(month, month.all, item)]
    unit = Fraction(1, 10 ** decimals)
    return max(unit * times for times in (1, 2, 5, 10) if all((v / (unit * times)).denominator == 1 for v in values))


class Readings:
    def __init__(self, month, item):
        self.item = item.id
        self.rule = item.rule
        self.points = measured(month, month.rounds, item.id)
        self.values = [v for _, v in self.points]
        self.step = step_of(month, item.id, item.rule["decimals"])
        self.sides = [side(v, *limits_of(month, r, item.id)[1:]) for r, v in self.points]
        self.limits = limits_of(month, month.rounds[-1], item.id)
        numbers = [float(v) for v in self.values]
        ranges = numpy.abs(numpy.diff(numbers))
        self.centre = float(numpy.mean(numbers))
        self.reach = 3 * float(numpy.mean(ranges)) / 1.128 if len(ranges) else 0

    def rows(self):
        rows = []
        for (one, value), beyond in zip(self.points, self.sides):
            low, high = self.centre - self.reach, self.centre + self.reach
            limits = [low, high] if self.reach else [None, None]
            rows.append([self.item, one.day, one.shift, float(value), beyond != 0, self.centre, *limits,
                         bool(self.reach and abs(float(value) - self.centre) > self.reach * (1 + 1e-9))])
        return rows

    def summary(self):
        outside = sum(s != 0 for s in self.sides)
        name, low, high = self.limits
        return [self.item, self.rule["unit"], name, *(None if l is None else float(l) for l in (low, high)),
                *share(outside, len(self.sides)), self.sides.count(-1), self.sides.count(1),
                float(numpy.median([float(v) for v in self.values])), float(self.step), None]

    def histogram(self, edges):
        """Counts between given edges: what the ledger says of bins as the report cuts them."""
        return [[self.item, float(low), float(high), sum(low <= v < high for v in self.values)] for low, high in edges]

    def steps_wide(self):
        """Of the middle nine tenths, in steps of the instrument."""
        low, high = numpy.quantile([float(v / self.step) for v in self.values], [0.05, 0.95])
        return high - low

    def on_fives(self, values=None):
        return sum((v / (5 * self.step)).denominator == 1 for v in values or self.values)

    def rounded(self):
        """Wilson's lower limit of 99.9 % above three tenths, also without the commonest value."""
        counts = Counter(self.values)
        heap = min(counts, key=lambda v: (-counts[v], v))
        without = [v for v in self.values if v != heap]
        return all(values and proportion_confint(self.on_fives(values), len(values), 0.001, "wilson")[0] > 0.3
                   for values in (self.values, without))

    def digits(self):
        """Pearson's chi-square of the last digits against equal shares, p, Cramer's V."""
        n = len(self.values)
        if n < 50 or self.steps_wide() < 10:
            return [None, None, None]
        counts = numpy.bincount([int(abs(v / self.step)) % 10 for v in self.values], minlength=10)
        statistic, p = chisquare(counts)
        return [statistic, p, (statistic / (n * 9)) ** 0.5]

    def longest_run(self):
        longest = run = 1
        for before, value in zip(self.values, self.values[1:]):
            run = run + 1 if value == before else 1
            longest = max(longest, run)
        return longest


def readings_of(month):
    found = [Readings(month, item) for item in month.items
             if item.rule["kind"] == "measure" and measured(month, month.rounds, item.id)]
    return found


def tables(month):
    found = readings_of(month)
    return {
        "readings": [row for one in found for row in one.rows()],
        "reading-summary": [one.summary() for one in found],
    }
