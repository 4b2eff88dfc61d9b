# SPDX-License-Identifier: MIT
"""compare.py FOLDER: the engine's answers against R's and Python's. Prints the worst relative difference of each figure
and ends with 1 when one passes its tolerance, when an answer exists on one side only, or when cases are too few."""
import csv
import sys
from pathlib import Path

folder = Path(sys.argv[1])
FEWEST = 2000
# Relative tolerance, and the size below which differences count against this size instead (rounding units of a
# reference that subtracts numbers near 1). Every exception to 1e-9 has its reason.
USUAL = (1e-9, 1e-290)
LOOSER = {
    # Limits around 0 and probabilities are differences of numbers near 1 in the reference.
    ("funnellimit", "limit"): (1e-9, 1e-3),
    # SciPy's lower tail gives 0 below about 1e-260.
    ("funnellimit", "exact_p", "python"): (1e-9, 1e-200),
    # SciPy forms p = size/(size + mean) and loses digits of 1 - p for a large size.
    ("demand", "exactly", "python"): (1e-7, 1e-290),
    ("demand", "stock_out", "python"): (1e-7, 1e-290),
    ("demand", "empty_shelf", "python"): (1e-7, 1e-290),
    # An iterative inversion in the reference.
    ("rate", "garwood_low", "python"): (1e-8, 1e-290),
    # statsmodels subtracts a squared mean from a mean square.
    ("agreement", "kappa_se"): (1e-6, 1e-290),
    ("agreement", "linear_se"): (1e-6, 1e-290),
    ("agreement", "quadratic_se"): (1e-6, 1e-290),
    ("agreement", "ac1_se"): (1e-6, 1e-290),
    # Q of units that hardly differ is a difference of near equals.
    ("randomeffects", "q"): (1e-9, 1e-3),
    ("randomeffects", "tau2"): (1e-9, 1e-6),
}


def read(path):
    with open(path, newline="") as file:
        return {(row["field"], int(row["case"])): row["value"] for row in csv.DictReader(file)}


def difference(a, b, floor):
    if a == b:
        return 0.0
    return abs(a - b) / max(abs(a), abs(b), floor)


def compare(family, engine, other, name):
    worst = {}
    one_sided = []
    for key, text in other.items():
        field, case = key
        mine = engine.get(key)
        if mine is None or (mine == "") != (text == ""):
            one_sided.append((field, case, mine, text))
            continue
        tolerance, floor = LOOSER.get((family, field, name), LOOSER.get((family, field), USUAL))
        now = difference(float(mine), float(text), floor) if text != "" else 0.0
        if field not in worst or now > worst[field][0]:
            worst[field] = (now, case, mine, text, tolerance)
    return worst, one_sided


def main():
    failed = 0
    families = sorted(path.stem for path in (folder / "engine").glob("*.csv"))
    print(f"{'figure':<38} {'against':<8} {'worst':>9} {'allowed':>9}")
    for family in families:
        engine = read(folder / "engine" / f"{family}.csv")
        count = max(case for _, case in engine)
        others = [(name, folder / name / f"{family}.csv") for name in ("r", "python")]
        others = [(name, read(path)) for name, path in others if path.exists()]
        if count < FEWEST or not others:
            print(f"{family}: {count} cases, {len(others)} references: too few")
            failed += 1
        covered = set()
        for name, other in others:
            worst, one_sided = compare(family, engine, other, name)
            for field, (value, case, mine, text, tolerance) in sorted(worst.items()):
                covered.add(field)
                mark = ""
                if value > tolerance:
                    mark = f"  FAILED at case {case}: {mine} against {text}"
                    failed += 1
                print(f"{family + '.' + field:<38} {name:<8} {value:>9.1e} {tolerance:>9.0e}{mark}")
            for field, case, mine, text in one_sided[:3]:
                print(f"{family}.{field} {name}: case {case} FAILED: engine '{mine}' against '{text}'")
            failed += len(one_sided)
        missed = {field for field, _ in engine} - covered
        if missed:
            print(f"{family}: no reference for {sorted(missed)}")
            failed += 1
    print(f"{len(families)} families, {FEWEST} cases each, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
