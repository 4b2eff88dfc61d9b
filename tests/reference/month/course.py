# SPDX-License-Identifier: MIT
"""The weekly p' charts: limits, signals and changes."""

from chosen import met_of, monday, state_of
from rounds import weeks_of

MEASURES = ("items-met", "no-critical-gap", "ready")
WIDTH = 4.25
RUN = 12
FEWEST_WEEKS = 8


def tally(month, measure, one):
    if measure == "items-met":
        return met_of(one)
    state = state_of(month, one)
    return int(state == "ready" if measure == "ready" else state != "not-ready"), 1


class Chart:
    """One p' chart (Laney 2002): the weeks before the span set the limits."""

    def __init__(self, month, measure, shift):
        self.measure, self.shift = measure, shift
        self.weeks = weeks_of(month, month.look_back)
        taken = [r for r in month.all if shift in ("", r.shift)]
        due = [s for s in month.due_all if shift in ("", s.code)]
        first_week = monday(month.first)
        self.in_span = [w >= first_week for w in self.weeks]
        self.due = [sum(monday(s.date) == w for s in due) for w in self.weeks]
        by_week = [[r for r in taken if monday(r.day) == w] for w in self.weeks]
        self.done = [len(rounds) for rounds in by_week]
        tallies = [[tally(month, measure, r) for r in rounds] for rounds in by_week]
        self.x = [sum(t[0] for t in week) for week in tallies]
        self.n = [sum(t[1] for t in week) for week in tallies]
        baseline = [i for i, inside in enumerate(self.in_span) if not inside and self.n[i]]
        self.from_span = len(baseline) < FEWEST_WEEKS
        if self.from_span:
            baseline = [i for i, n in enumerate(self.n) if n]
        self.set_limits(baseline)

    def set_limits(self, baseline):
        self.baseline = baseline
        self.centre = sum(self.x[i] for i in baseline) / sum(self.n[i] for i in baseline)
        self.sigma = [None] * len(self.weeks)
        self.dispersion, self.state = 1, "no-spread"
        if not 0 < self.centre < 1:
            return
        own = [(self.centre * (1 - self.centre) / n) ** 0.5 if n else None for n in self.n]
        z = [(self.x[i] / self.n[i] - self.centre) / own[i] for i in baseline]
        moves = [abs(b - a) for a, b in zip(z, z[1:])]
        self.dispersion = sum(moves) / len(moves) / 1.128
        self.state = "set"
        self.sigma = [s and s * self.dispersion for s in own]

    def z(self, i):
        if not self.n[i] or self.sigma[i] is None:
            return None
        return (self.x[i] / self.n[i] - self.centre) / self.sigma[i]

    def rows(self):
        rows = []
        for i, week in enumerate(self.weeks):
            limits = [None, None]
            if self.n[i] and self.sigma[i] is not None:
                limits = [max(0.0, self.centre - WIDTH * self.sigma[i]), min(1.0, self.centre + WIDTH * self.sigma[i])]
            rows.append([self.measure, self.shift, week, self.in_span[i], self.due[i], self.done[i], self.x[i],
                         self.n[i], self.x[i] / self.n[i] if self.n[i] else None,
                         self.centre if self.n[i] else None, *limits, self.z(i)])
        return rows

    def limits_row(self):
        return [self.measure, self.shift, self.weeks[0], self.weeks[-1], self.centre, self.dispersion,
                len(self.baseline), self.state, self.from_span]

    def runs(self):
        """Unbroken runs on one side of the centre, as (side, weeks)."""
        runs = []
        for i in range(len(self.weeks)):
            z = self.z(i)
            if z is None:
                continue
            side = (z > 1e-9) - (z < -1e-9)
            if runs and runs[-1][0] == side and side:
                runs[-1][1].append(i)
            else:
                runs.append((side, [i]))
        return [run for run in runs if run[0]]

    def signals(self):
        """(week, rule, side, first week of the pattern), by week."""
        found = []
        for side, weeks in self.runs():
            for at, i in enumerate(weeks):
                if abs(self.z(i)) > WIDTH + 1e-9:
                    found.append((i, "beyond-limit", side, i))
                if at + 1 >= RUN:
                    found.append((i, "run-on-one-side", side, weeks[0]))
        return sorted(found)

    def signal_rows(self):
        return [[self.measure, self.shift, rule, side, self.weeks[first], self.weeks[at]]
                for at, rule, side, first in self.signals()]

    def change_rows(self):
        rows = []
        for want in (-1, 1):
            told = [s for s in self.signals() if s[2] == want and self.in_span[s[0]]]
            if self.from_span or not told:
                continue
            at, rule, side, _ = told[0]
            run = next(weeks for run_side, weeks in self.runs() if run_side == side and at in weeks)
            rows.append([self.measure, self.shift, side, self.weeks[run[0]], self.weeks[at], rule,
                         *self.sum([i for i in self.baseline if i < run[0]]), *self.sum(run),
                         run[-1] == max(i for i in range(len(self.weeks)) if self.n[i])])
        return rows

    def sum(self, weeks):
        return [sum(self.x[i] for i in weeks), sum(self.n[i] for i in weeks)]


def charts(month):
    shifts = ["", *month.codes] if len(month.codes) > 1 else [""]
    return [Chart(month, measure, shift) for measure in MEASURES for shift in shifts]


def tables(month):
    drawn = charts(month)
    return {
        "course": [row for chart in drawn for row in chart.rows()],
        "course-limits": [chart.limits_row() for chart in drawn],
        "course-signals": [row for chart in drawn for row in chart.signal_rows()],
        "course-changes": [row for chart in drawn for row in chart.change_rows()],
    }
