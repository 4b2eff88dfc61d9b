# SPDX-License-Identifier: MIT
"""Tables of rounds: done, readiness, lost readiness, items by week, shifts and weekdays."""

import numpy
from scipy.stats import chi2, chi2_contingency
from statsmodels.stats.proportion import proportion_confint, proportions_ztest

from chosen import DAY, WEIGHT, index_of, met_of, monday, state_of


def share(x, n):
    """x, n, share, Wilson's limits."""
    if n == 0:
        return [x, n, None, None, None]
    low, high = proportion_confint(x, n, alpha=0.05, method="wilson")
    return [x, n, x / n, max(0.0, low), min(1.0, high)]


def figure(name, value, unit, why=None):
    return [name, None, None, None, None, None, value, unit, why]


def share_figure(name, x, n, why=None):
    return [name, *share(x, n), None, "", why]


def pooled_figure(name, x, n):
    return [name, x, n, x / n if n else None, None, None, None, "", None]


def done_state(one, shift, now):
    if one is None:
        return "running" if now < shift.ends else "missing"
    if one.paper:
        return "paper"
    half = shift.begins + (shift.ends - shift.begins) / 2
    return "in-time" if max(one.body["finished"], one.made_at) < half else "late"


def done(month):
    at = {r.slot: r for r in month.rounds}
    rows = []
    for shift in month.due:
        one = at.get((shift.date.isoformat(), shift.index))
        rows.append([shift.date, shift.code, shift.begins, shift.ends, done_state(one, shift, month.now),
                     state_of(month, one) if one else None, len(one.amendments) if one else 0])
    return rows


def summary(month):
    rounds = month.rounds
    n = len(rounds)
    states = [state_of(month, r) for r in rounds]
    indices = [index_of(month, r) for r in rounds]
    met = sum(met_of(r)[0] for r in rounds)
    applicable = sum(met_of(r)[1] for r in rounds)
    due = sum(1 for row in done(month) if row[4] != "running")
    return [
        share_figure("done", n, due),
        share_figure("ready", states.count("ready"), n),
        share_figure("ready-with-gaps", states.count("ready-with-gaps"), n),
        share_figure("no-critical-gap", n - states.count("not-ready"), n),
        pooled_figure("items-met", met, applicable),
        figure("mean-index", sum(indices) / n, "share"),
        figure("lowest-index", min(indices), "share"),
        figure("not-ready", states.count("not-ready"), "rounds"),
    ]


def lost_readiness(month):
    rows = []
    for item in month.items:
        gaps, met, unseen = month.tallies(item.id, month.rounds)
        if gaps:
            weight = WEIGHT[item.severity]
            rows.append([item.id, item.section, item.severity, *share(gaps, gaps + met), unseen, weight,
                         gaps * weight])
    rows.sort(key=lambda row: -row[-1])
    whole = sum(row[-1] for row in rows)
    so_far = 0
    for row in rows:
        so_far += row[-1]
        row += [row[-1] / whole, so_far / whole]
    return rows


def weeks_of(month, first=None):
    day = monday(first or month.first)
    weeks = []
    while day < month.last:
        weeks.append(day)
        day += 7 * DAY
    return weeks


def item_weeks(month):
    rows = []
    for item in month.items:
        for week in weeks_of(month):
            gaps, met, _ = month.tallies(item.id, [r for r in month.rounds if monday(r.day) == week])
            n = gaps + met
            rows.append([item.id, item.section, item.severity, week, gaps, n, gaps / n if n else None])
    return rows


def group_row(month, key, due, rounds):
    states = [state_of(month, r) for r in rounds]
    fine = share(len(rounds) - states.count("not-ready"), len(rounds))
    met = sum(met_of(r)[0] for r in rounds)
    items = sum(met_of(r)[1] for r in rounds)
    index = [index_of(month, r) for r in rounds]
    return [key, due, len(rounds), fine[0], *fine[2:], states.count("ready"), met, items,
            met / items if items else None, sum(index) / len(index) if index else None]


def by_shift(month):
    return [group_row(month, code, sum(s.code == code for s in month.due),
                      [r for r in month.rounds if r.shift == code]) for code in month.codes]


def by_weekday(month):
    return [group_row(month, day, sum(s.date.isoweekday() == day for s in month.due),
                      [r for r in month.rounds if r.day.isoweekday() == day]) for day in range(1, 8)]


def spread(tallies):
    """Of (group, met, n) in order of time: dispersion of rounds about the share of their group, and by how much
    the variance of a mean grows since neighbouring rounds are alike."""
    groups = {}
    for group, met, n in tallies:
        total = groups.setdefault(group, [0, 0])
        total[0] += met
        total[1] += n
    groups = {k: t for k, t in groups.items() if 0 < t[0] < t[1]}
    residuals = []
    for group, met, n in tallies:
        if group in groups:
            p = groups[group][0] / groups[group][1]
            residuals.append((met - n * p) / (n * p * (1 - p)) ** 0.5)
    residuals = numpy.array(residuals)
    df = len(residuals) - len(groups)
    dispersion = max(1.0, float((residuals ** 2).sum()) / df)
    r = float((residuals[1:] * residuals[:-1]).sum() / (residuals ** 2).sum())
    r = min(0.95, max(0.0, r))
    return dispersion, (1 + r) / (1 - r)


def pattern_test(name, month, key, carried_over):
    """Pearson's chi-square of groups by met and not met, over the dispersion (quasi-likelihood)."""
    names = sorted({key(r) for r in month.rounds}, key=lambda k: k if isinstance(k, int) else month.codes.index(k))
    counts = {k: [r for r in month.rounds if key(r) == k] for k in names}
    names = [k for k in names if len(counts[k]) >= 5]
    if len(names) < 2:
        return [name, None, None, None, None, None, None, None, "too-few"]
    rounds = [r for r in month.rounds if key(r) in names]
    table = [[sum(met_of(r)[0] for r in counts[k]), sum(met_of(r)[1] - met_of(r)[0] for r in counts[k])]
             for k in names]
    statistic, _, df, _ = chi2_contingency(table, correction=False)
    dispersion, carry_over = spread([(key(r), *met_of(r)) for r in rounds])
    dispersion *= carry_over if carried_over else 1
    p = chi2.sf(statistic / dispersion, df)
    worst = min(range(len(names)), key=lambda i: table[i][0] / sum(table[i]))
    others = [sum(row[c] for i, row in enumerate(table) if i != worst) for c in (0, 1)]
    z, _ = proportions_ztest([table[worst][0], others[0]], [sum(table[worst]), sum(others)])
    worst_p = min(1.0, len(names) * chi2.sf(z * z / dispersion, 1))
    return [name, statistic, df, dispersion, p, str(names[worst]), worst_p, bool(p <= 0.005 and worst_p <= 0.005),
            None]


def pattern_tests(month):
    return [pattern_test("shift", month, lambda r: r.shift, False),
            pattern_test("weekday", month, lambda r: r.day.isoweekday(), True)]
