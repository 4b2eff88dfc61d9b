# SPDX-License-Identifier: MIT
"""Nanoseconds a call of the same methods in SciPy and statsmodels, as method,ns lines."""
import time
import warnings

import numpy as np
from scipy import optimize, stats
from statsmodels.stats.inter_rater import cohens_kappa
from statsmodels.stats.meta_analysis import combine_effects
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

warnings.simplefilter("ignore")
rng = np.random.default_rng(36)


def measure(name, call):
    call(1)
    best = float("inf")
    for _ in range(3):
        calls, begin, spent = 0, time.perf_counter(), 0.0
        while spent < 0.05:
            for i in range(5):
                call(calls + i)
            calls += 5
            spent = time.perf_counter() - begin
        best = min(best, spent / calls)
    print(f"{name},{best * 1e9:.1f}", flush=True)


print("method,ns")
measure("wilson", lambda i: proportion_confint(15 + i % 40, 148, method="wilson"))
measure("clopper-pearson", lambda i: proportion_confint(15 + i % 40, 148, method="beta"))
measure("newcombe", lambda i: confint_proportions_2indep(40 + i % 20, 70, 48, 80, method="newcomb"))
measure("fisher", lambda i: stats.fisher_exact([[40 + i % 20, 30 - i % 20], [48, 32]]))
measure("garwood", lambda i: (stats.chi2.ppf(0.025, 2 * (5 + i % 50)) / 2, stats.chi2.isf(0.025, 2 * (6 + i % 50)) / 2))
measure("poisson-tail", lambda i: (stats.poisson.pmf(20 + i % 10, 16.1), stats.poisson.cdf(20 + i % 10, 16.1),
                                   stats.poisson.sf(20 + i % 10, 16.1), stats.poisson.sf(19 + i % 10, 16.1)))
measure("negbin-quantile", lambda i: stats.nbinom.ppf(0.95, 4, 4 / (20.1 + i % 5)))
measure("lqas-finite", lambda i: (stats.hypergeom.cdf(9 + i % 6, 100, 80, 19), stats.hypergeom.sf(9 + i % 6, 100, 50, 19)))
measure("digit-preference", lambda i: stats.chisquare([62 + i % 9, 14, 18, 15, 17, 58, 16, 13, 19, 8]))
measure("kappa", lambda i: cohens_kappa([[13 + i % 7, 0, 0], [0, 20, 7], [0, 4, 56]]))
values = rng.normal(70, 4, 36)
times = np.arange(36.0)
measure("mann-kendall-36", lambda i: (stats.kendalltau(times, values), stats.theilslopes(values, times)))
measure("random-effects-60", lambda i, y=rng.random(60), v=0.1 + rng.random(60): combine_effects(y, v, method_re="dl"))
measure("benjamini-hochberg-60", lambda i, p=rng.random(60): multipletests(p, method="fdr_bh"))
kelvin, weight = 273.15 + rng.uniform(2, 8, 100), 1 + rng.random(100)
measure("mkt-100", lambda i: 10000 / -np.log((weight * np.exp(-10000 / kelvin)).sum() / weight.sum()) - 273.15)


def run_chance(chances, n, length):
    state = np.zeros((len(chances), length - 1))
    state[:, 0] = chances
    for _ in range(n - 1):
        after = np.zeros_like(state)
        after[:, 1:] = state[:, :-1] * chances[:, None]
        each = state.sum(1)
        after[:, 0] = chances * (each.sum() - each)
        state = after
    return 1 - state.sum()


measure("identical-runs-60", lambda i: run_chance(np.array([0.5, 0.3, 0.15, 0.05]), 60, 6))
supply, need, cost = rng.integers(5, 40, 6), rng.integers(1, 30, 6), rng.integers(0, 99, 36)
bounds = np.vstack([np.kron(np.eye(6), np.ones(6)), np.kron(np.ones(6), np.eye(6))])
measure("transport-6x6", lambda i: optimize.linprog(cost, A_ub=bounds, b_ub=np.concatenate([supply, need]),
        A_eq=np.ones((1, 36)), b_eq=[min(supply.sum(), need.sum())], method="highs"))
