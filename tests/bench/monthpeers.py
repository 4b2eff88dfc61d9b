# SPDX-License-Identifier: MIT
"""monthpeers.py FOLDER: pandas answers the questions of Month from the same rounds (see month.cpp), two ways: with
all five years in memory already, and from the CSV files. Prints milliseconds, median of 15."""

import os
import statistics
import sys
import time

import pandas

FIRST, LAST = "2026-10-01", "2026-10-31"


def read(folder):
    frames = []
    for name in ("rounds", "answers", "readings"):
        frame = pandas.read_csv(os.path.join(folder, name + ".csv"), parse_dates=["day"])
        for column in ("shift", "item", "outcome", "state"):
            if column in frame:
                frame[column] = frame[column].astype("category")
        frames.append(frame)
    return frames


def month(rounds, answers, readings):
    rounds, answers, readings = (f[(f["day"] >= FIRST) & (f["day"] <= LAST)] for f in (rounds, answers, readings))
    share_ready = rounds["state"].value_counts(normalize=True)
    looked = answers[answers["outcome"].isin(["m", "g"])]
    gap = looked.assign(gap=looked["outcome"] == "g")
    lost = gap.groupby("item", observed=True).agg(gaps=("gap", "sum"), n=("gap", "size"), weight=("weight", "first"))
    lost["loss"] = lost["gaps"] * lost["weight"]
    lost = lost[lost["gaps"] > 0].sort_values("loss", ascending=False)
    lost["so_far"] = lost["loss"].cumsum() / lost["loss"].sum()
    week = gap["day"] - pandas.to_timedelta(gap["day"].dt.weekday, unit="D")
    item_weeks = gap.groupby(["item", week], observed=True)["gap"].agg(["sum", "size"])
    by_shift = rounds.groupby("shift", observed=True)[["met", "applicable"]].sum()
    by_weekday = rounds.groupby(rounds["day"].dt.weekday)[["met", "applicable"]].sum()
    outside = readings.groupby("item", observed=True)["outside"].agg(["sum", "size"])
    median = readings.groupby("item", observed=True)["value"].median()
    return share_ready, lost, item_weeks, by_shift, by_weekday, outside, median


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
    frames = read(folder)
    in_memory = median_ms(15, lambda: month(*frames))
    from_files = median_ms(3, lambda: month(*read(folder)))
    lost = month(*frames)[1]
    print(f"pandas {pandas.__version__}: {in_memory} {from_files} {int(lost['gaps'].sum())}")


if __name__ == "__main__":
    main()
