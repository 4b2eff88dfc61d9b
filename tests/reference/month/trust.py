# SPDX-License-Identifier: MIT
"""Tables of trust: completeness, time, pace, repeats, digits, agreement with spot checks."""

from collections import Counter
import math

import numpy
from scipy.stats import poisson
from statsmodels.stats.inter_rater import cohens_kappa

from readings import measured, readings_of
from rounds import done, figure, pooled_figure, share, share_figure

FLOOR = 2  # seconds an item


def pace(month):
    """Too fast, below the floor, median seconds, median seconds an item."""
    timed = [r for r in month.rounds if not r.paper]
    seconds = numpy.array([(r.body["finished"] - r.body["started"]) / 1000 for r in timed])
    answered = numpy.array([len(r.outcomes) - r.outcomes.count("u") for r in timed])
    logs = numpy.log(seconds[seconds > 0])
    middle = numpy.median(logs)
    spread = 1.4826 * numpy.median(numpy.abs(logs - middle))
    below = seconds < answered * FLOOR
    z = (numpy.log(numpy.maximum(seconds, 1e-12)) - middle) / spread
    return [
        share_figure("too-fast", int((below | (z < -3)).sum()), len(timed)),
        share_figure("below-floor", int(below.sum()), len(timed)),
        figure("median-seconds", float(numpy.median(seconds)), "s"),
        figure("median-seconds-per-item", float(numpy.median(seconds / answered)), "s"),
    ]


def told(month, one):
    """Whole round: every answer and every reading, item by item."""
    items = month.unit.checklist_of(one).items
    return tuple((item.id, letter, answer["v"] if isinstance(answer, dict) and "v" in answer else None)
                 for item, letter, answer in zip(items, one.outcomes, one.body["answers"]))


def repeats(month):
    compared = [t for t in (told(month, r) for r in month.rounds) if any(v is not None for _, _, v in t)]
    seen, repeating, pairs = Counter(), 0, 0
    for text in compared:
        repeating += seen[text] > 0
        pairs += seen[text]
        seen[text] += 1
    per_item = {}
    for text in (told(month, r) for r in month.all):
        for item, letter, value in text:
            per_item.setdefault(item, Counter())[(letter, value)] += 1
    same = math.prod(sum((n / sum(c.values())) ** 2 for n in c.values()) for c in per_item.values())
    expected = len(compared) * (len(compared) - 1) / 2 * same
    return [
        share_figure("repeating", repeating, len(compared)),
        figure("equal-pairs", pairs, "pairs"),
        figure("equal-pairs-expected", expected, "pairs"),
        figure("equal-pairs-chance", float(poisson.sf(pairs - 1, expected)), ""),
    ]


def seen_by_both(month):
    """(item, round says, spot check says) where both looked, and how many checks had a round."""
    at = {r.slot: r for r in month.rounds}
    pairs, checks = [], 0
    for check in month.unit.spot_checks:
        if check.slot not in at:
            continue
        checks += 1
        for item, letter in zip(month.unit.checklist_of(check).items, check.outcomes):
            says = month.letter(at[check.slot], item.id)
            if letter in "mg" and says in ("m", "g"):
                pairs.append((item.id, says, letter))
    return pairs, checks


def estimate(name, value, se, most=math.inf):
    """A standard error of 0 has no limits."""
    z = 1.959963984540054
    limits = [value - z * se, min(most, value + z * se)] if se > 1e-12 else [None, None]
    return [name, None, None, None, *limits, value, "", None]


def ac1(table):
    """Gwet 2008: estimate and standard error of two observers and two categories."""
    n = table.sum()
    pi = (table.sum(0) + table.sum(1)) / (2 * n)
    by_chance = float((pi * (1 - pi)).sum())
    observed = float(table.trace() / n)
    value = (observed - by_chance) / (1 - by_chance)
    # Variance through what each subject adds (Gwet 2008, eq. 26, with no finite population).
    terms = 0.0
    for i in range(2):
        for j in range(2):
            agree = float(i == j)
            mean = (1 - (pi[i] + pi[j]) / 2)
            terms += table[i, j] / n * (agree - 2 * (1 - value) * mean) ** 2
    variance = (terms - (observed - 2 * (1 - value) * by_chance) ** 2) / (n * (1 - by_chance) ** 2)
    return value, math.sqrt(variance)


def agreement(month):
    pairs, checks = seen_by_both(month)
    head = figure("spot-checks", checks, "rounds")
    if len(pairs) < 30:
        why = "no-data" if checks == 0 else "too-few"
        agreed = pooled_figure("agreed", sum(a == b for _, a, b in pairs), len(pairs))
        return [head, [*agreed[:-1], why],
                *(figure(name, None, "", why) for name in ("kappa", "ac1", "adjusted-kappa"))]
    table = numpy.array([[sum((a, b) == (i, j) for _, a, b in pairs) for j in "mg"] for i in "mg"])
    n = table.sum()
    kappa = cohens_kappa(table)
    observed = table.trace() / n
    adjusted_se = 2 * math.sqrt(observed * (1 - observed) / n)
    return [head, pooled_figure("agreed", int(table.trace()), int(n)),
            estimate("kappa", float(kappa.kappa), math.sqrt(float(kappa.var_kappa))),
            estimate("ac1", *ac1(table), most=1.0),
            estimate("adjusted-kappa", float(2 * observed - 1), adjusted_se)]


def agreement_rows(month):
    pairs, _ = seen_by_both(month)
    rows = []
    for item in month.items:
        mine = [(a, b) for i, a, b in pairs if i == item.id]
        if mine:
            rows.append([item.id, len(mine), sum(a == b for a, b in mine), mine.count(("m", "g")),
                         mine.count(("g", "m"))])
    return sorted(rows, key=lambda row: row[2] - row[1])


def trust(month):
    calendar = done(month)
    by_screen = [row for row in calendar if row[4] in ("in-time", "late")]
    rounds = month.rounds
    ends = {(s.date.isoformat(), s.index): s.ends for s in month.due}
    asked = sum(len(r.outcomes) for r in rounds)  # "does not apply" is an answer
    looked = asked - sum(r.outcomes.count("u") for r in rounds)
    due = sum(row[4] != "running" for row in calendar)
    return [
        share_figure("complete", len(rounds), due),
        share_figure("in-time", sum(row[4] == "in-time" for row in by_screen), len(by_screen)),
        pooled_figure("looked-at", looked, asked),
        figure("amended", sum(bool(r.amendments) for r in rounds), "rounds"),
        figure("amended-late", sum(any(at > ends[r.slot] for at in r.amendments[-1:]) for r in rounds), "rounds"),
        figure("recorded-late", sum(r.made_at > ends[r.slot] for r in rounds if not r.paper), "rounds"),
        figure("paper", sum(r.paper for r in rounds), "rounds"),
        *pace(month), *repeats(month), *agreement(month),
    ]


def trust_readings(month):
    rows = []
    for one in readings_of(month):
        n = len(one.values)
        why = "too-few" if n < 25 else "no-spread" if one.steps_wide() < 8 else None
        varied = len({v for _, v in measured(month, month.before, one.item)}) > 1
        never = len(set(one.values)) == 1 and n >= 20 and varied
        rows.append([one.item, float(one.step), *share(one.on_fives(), n), not why and one.rounded(), why, *one.digits(),
                     len(set(one.values)), one.longest_run(), never])
    return rows


def tables(month):
    return {"trust": trust(month), "trust-readings": trust_readings(month),
            "trust-agreement": agreement_rows(month)}
