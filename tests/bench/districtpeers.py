# SPDX-License-Identifier: MIT
"""districtpeers.py FOLDER: pandas answers the questions of Units from the same rounds (see district.cpp), two ways:
with all three years in memory already, and from the files. Prints milliseconds, median of 7."""

import os
import resource
import statistics
import sys
import time

import numpy
import pandas

FIRST, LAST, BEFORE, YEAR = (pandas.Timestamp(day) for day in ("2026-10-01", "2026-10-31", "2026-09-01", "2025-11-01"))


def read(folder):
    rounds = pandas.read_csv(os.path.join(folder, "rounds.csv"), parse_dates=["day"])
    for column in ("unit", "state"):
        rounds[column] = rounds[column].astype("category")
    return rounds


def answers_of(folder, rounds):
    items = pandas.read_csv(os.path.join(folder, "items.csv"))["item"]
    letters = numpy.frombuffer("".join(rounds["outcomes"]).encode(), dtype="S1")
    return pandas.DataFrame({
        "unit": rounds["unit"].repeat(len(items)).reset_index(drop=True),
        "day": rounds["day"].repeat(len(items)).reset_index(drop=True),
        "item": pandas.Categorical.from_codes(numpy.tile(numpy.arange(len(items), dtype="int8"), len(rounds)), items),
        "outcome": pandas.Categorical.from_codes(numpy.searchsorted([b"g", b"m", b"n", b"u"], letters).astype("int8"),
                                                 ["g", "m", "n", "u"])})


def district(rounds, answers):
    clear = rounds.assign(clear=rounds["state"] != "not-ready")
    both = clear[(clear["day"] >= BEFORE) & (clear["day"] <= LAST)]
    span = clear[(clear["day"] >= FIRST) & (clear["day"] <= LAST)]
    year = clear[(clear["day"] >= YEAR) & (clear["day"] <= LAST)]
    sums = both.groupby(["unit", both["day"].dt.to_period("M")], observed=True)[["met", "applicable", "late"]].sum()
    states = both.groupby(["unit", both["day"].dt.to_period("M"), "state"], observed=True).size()
    months = year.groupby(["unit", year["day"].dt.to_period("M")], observed=True).agg(
        n=("clear", "size"), clear=("clear", "sum"), met=("met", "sum"), applicable=("applicable", "sum"))
    shifts = span.groupby(["unit", "shift"], observed=True)["clear"].agg(["size", "sum"])
    looked = answers[(answers["day"] >= FIRST) & (answers["day"] <= LAST) & answers["outcome"].isin(["m", "g"])]
    items = looked.assign(gap=looked["outcome"] == "g").groupby(["unit", "item"], observed=True)["gap"].agg(["sum", "size"])
    days = span[["unit", "day"]].drop_duplicates().sort_values(["unit", "day"])
    silence = days.groupby("unit", observed=True)["day"].agg(["max", lambda day: day.diff().max()])
    return sums, states, months, shifts, items, silence


def median_ms(times, run):
    """By the clock and of the processor."""
    took = []
    for _ in range(times):
        start = time.perf_counter(), time.process_time()
        run()
        took.append(((time.perf_counter() - start[0]) * 1000, (time.process_time() - start[1]) * 1000))
    return " ".join(f"{statistics.median(times):.3f}" for times in zip(*took))


def main():
    folder = sys.argv[1]
    rounds = read(folder)
    answers = answers_of(folder, rounds)
    in_memory = median_ms(7, lambda: district(rounds, answers))
    gaps = int(district(rounds, answers)[4]["sum"].sum())

    def from_files():
        fresh = read(folder)
        district(fresh, answers_of(folder, fresh))
    files = median_ms(1, from_files)
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
    print(f"pandas {pandas.__version__}: {in_memory} {files} {gaps} {memory}")


if __name__ == "__main__":
    main()
