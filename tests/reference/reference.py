# SPDX-License-Identifier: MIT
"""reference.py FOLDER: answers the cases with SciPy and statsmodels; where they have no function, with the published
formula written out again in NumPy. Reads cases/*.csv, writes python/*.csv as case,field,value."""
import csv
import sys
import warnings
from pathlib import Path

import numpy as np
from scipy import optimize, stats
from statsmodels.stats.inter_rater import cohens_kappa
from statsmodels.stats.meta_analysis import combine_effects
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

folder = Path(sys.argv[1])
warnings.simplefilter("ignore")


def cases(name):
    with open(folder / "cases" / f"{name}.csv", newline="") as file:
        return list(csv.DictReader(file))


def numbers(text):
    return np.array([float(v) for v in text.split(" ")])


def answer(name, each):
    with open(folder / "python" / f"{name}.csv", "w", newline="") as file:
        out = csv.writer(file)
        out.writerow(["case", "field", "value"])
        for row in cases(name):
            for field, value in each(row).items():
                missing = value is None or np.isnan(value)
                out.writerow([row["case"], field, "" if missing else repr(float(value))])


def proportion(row):
    x, n, alpha = int(row["x"]), int(row["n"]), 1 - float(row["level"])
    low, high = proportion_confint(x, n, alpha, method="beta")
    wilson = proportion_confint(x, n, alpha, method="wilson")
    return {"wilson_low": 0 if x == 0 else wilson[0], "wilson_high": 1 if x == n else wilson[1],
            "exact_low": 0 if x == 0 else low, "exact_high": 1 if x == n else high}


def two_proportions(row):
    x1, n1, x2, n2 = (int(row[c]) for c in ("x1", "n1", "x2", "n2"))
    low, high = confint_proportions_2indep(x1, n1, x2, n2, method="newcomb", alpha=1 - float(row["level"]))
    return {"newcombe_low": low, "newcombe_high": high}


def rate(row):
    x, a = int(row["x"]), (1 - float(row["level"])) / 2
    return {"garwood_low": 0 if x == 0 else stats.chi2.ppf(a, 2 * x) / 2, "garwood_high": stats.chi2.isf(a, 2 * x + 2) / 2}


def lqas(row):
    n, d, lot = int(row["n"]), int(row["d"]), int(row["lot"])
    good, poor = float(row["good"]), float(row["poor"])
    if lot == 0:
        return {"good_failed": stats.binom.cdf(d - 1, n, good), "poor_passed": stats.binom.sf(d - 1, n, poor)}
    right = [int(np.floor(lot * share + 0.5 + 1e-9)) for share in (good, poor)]
    return {"good_failed": stats.hypergeom.cdf(d - 1, lot, right[0], n),
            "poor_passed": stats.hypergeom.sf(d - 1, lot, right[1], n)}


def agreement(row):
    q = int(row["q"])
    table = numbers(row["counts"]).reshape(q, q)
    answers = {}
    for name, weights in (("kappa", None), ("linear", "linear"), ("quadratic", "quadratic")):
        k = cohens_kappa(table, wt=weights)
        answers |= {name: k.kappa, name + "_se": k.std_kappa, name + "_se0": k.std_kappa0}
    n = table.sum()
    p = table / n
    pi = (p.sum(0) + p.sum(1)) / 2
    po, pe = np.trace(p), (pi * (1 - pi)).sum() / (q - 1)
    gamma = (po - pe) / (1 - pe)
    term = np.eye(q) - 2 * (1 - gamma) * (1 - (pi[:, None] + pi[None, :]) / 2) / (q - 1)
    variance = ((p * term**2).sum() - (po - 2 * (1 - gamma) * pe) ** 2) / (n * (1 - pe) ** 2)
    answers |= {"ac1": gamma, "ac1_se": np.sqrt(variance), "pabak": (q * po - 1) / (q - 1),
                "pabak_se": q / (q - 1) * np.sqrt(po * (1 - po) / n)}
    return answers


def run_length(row):
    n, e, s, h = (int(row[c]) for c in ("n", "per_event", "per_sample", "threshold"))
    if n * e <= s:
        return {"samples": None}
    chances = stats.binom.pmf(np.arange(n + 1), n, float(row["p"]))
    moves = np.zeros((h, h))
    for state in range(h):
        for x, chance in enumerate(chances):
            to = max(0, state + e * x - s)
            if to < h:
                moves[state, to] += chance
    return {"samples": np.linalg.solve(np.eye(h) - moves, np.ones(h))[0]}


def random_effects(row):
    y, v = numbers(row["estimates"]), numbers(row["variances"])
    r = combine_effects(y, v, method_re="dl")
    # statsmodels lets tau^2 fall below 0, and its mean with it: comparable only above.
    return {"q": r.q, "tau2": max(0, r.tau2)} | ({"mean": r.mean_effect_re, "se": r.sd_eff_w_re} if r.tau2 > 0 else {})


def funnel_limit(row):
    target, n, tail, x = float(row["target"]), int(row["n"]), float(row["tail"]), int(row["x"])
    low, high = stats.binom.cdf(x, n, target), stats.binom.sf(x - 1, n, target)
    return {"exact_p": min(1, 2 * min(low, high))}


def demand(row):
    mean, size, k = float(row["mean"]), float(row["size"]), int(row["stock"])
    law = stats.nbinom(size, size / (size + mean)) if size > 0 else stats.poisson(mean)
    return {"exactly": law.pmf(k), "at_most": law.cdf(k), "stock_out": law.sf(k), "empty_shelf": law.sf(k - 1)}


def temperature(row):
    kelvin, weight = numbers(row["celsius"]) + 273.15, numbers(row["weight"])
    return {"mkt": 10000 / -np.log((weight * np.exp(-10000 / kelvin)).sum() / weight.sum()) - 273.15}


def transport(row):
    supply, need, cost = numbers(row["supply"]), numbers(row["need"]), numbers(row["cost"])
    givers, takers = len(supply), len(need)
    moved = min(supply.sum(), need.sum())
    if moved == 0:
        return {"cost": 0, "moved": 0}
    rows = np.kron(np.eye(givers), np.ones(takers))
    columns = np.kron(np.ones(givers), np.eye(takers))
    done = optimize.linprog(cost, A_ub=np.vstack([rows, columns]), b_ub=np.concatenate([supply, need]),
                            A_eq=np.ones((1, givers * takers)), b_eq=[moved], method="highs")
    return {"cost": round(done.fun, 6), "moved": moved}


def trend(row):
    time, value = numbers(row["time"]), numbers(row["value"])
    if len(set(time)) < len(time):
        return {}
    return {"slope": stats.theilslopes(value, time).slope}


def run_chance(chances, n, length):
    """Every state (value, run so far) at every step."""
    k = len(chances)
    state = np.zeros((k, length - 1))
    state[:, 0] = chances
    for _ in range(n - 1):
        after = np.zeros_like(state)
        after[:, 1:] = state[:, :-1] * chances[:, None]
        each = state.sum(1)
        after[:, 0] = chances * (each.sum() - each)
        state = after
    return 1 - state.sum()


def trust(row):
    seconds = np.sort(numbers(row["seconds"]))
    n, length = int(row["n"]), int(row["length"])
    chance = run_chance(numbers(row["chances"]), n, length) if length <= n else 0
    apart = np.abs(seconds[:, None] - seconds[None, :]).mean()
    test = stats.chisquare(numbers(row["counts"]))
    return {"digit_chi2": test.statistic, "digit_p": test.pvalue, "run_chance": chance, "gini": apart / (2 * seconds.mean())}


answer("proportion", proportion)
answer("twoproportions", two_proportions)
answer("rate", rate)
answer("lqas", lqas)
answer("agreement", agreement)
answer("runlength", run_length)
answer("randomeffects", random_effects)
answer("funnellimit", funnel_limit)
answer("demand", demand)
answer("mkt", temperature)
answer("transport", transport)
answer("trend", trend)
answer("trust", trust)
