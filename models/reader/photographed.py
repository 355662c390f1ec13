#!/usr/bin/env python3
"""Sets the scale of "photographed" in reader.json, from networks that saw neither maker nor set.

    python3 models/reader/photographed.py --reader reader.json --fold FOLDER --without MAKER,... [...]

Each FOLDER is written by train.py --without MAKERS: photographs of these makers, and the path-traced
set lamps, were not learned from. Photographs and pictures that were drawn count alike (Platt 1999).
Says how photographs and drawn sets lie, joint by joint and row by row. Needs numpy and pandas.
"""
import argparse
import json
import os

import numpy as np
import pandas as pd

DRAWN = ["lamps-plain", "keep", "keep-bench", "rendered", "whole-bad-odd", "rough-odd"]
FIT = ["lamps-plain", "keep"]  # drawn sets that the scale is set on


def read(folder, name):
    table = pd.read_csv(os.path.join(folder, f"read-{name}.csv"), keep_default_na=False)
    return table[table.row.str.upper() == "RIGHT"]


def platt(score, truth, weight):
    slope, shift = 1.0, 0.0
    for _ in range(100):
        chance = 1 / (1 + np.exp(-np.clip(slope * score + shift, -40, 40)))
        error, spread = weight * (chance - truth), weight * chance * (1 - chance)
        gradient = np.array([np.sum(error * score) + slope - 1, np.sum(error)])
        curve = np.array([[np.sum(spread * score ** 2) + 1, np.sum(spread * score)],
                          [np.sum(spread * score), np.sum(spread) + 1e-6]])
        step = np.linalg.solve(curve, gradient)
        slope, shift = slope - np.clip(step[0], -0.3, 0.3), shift - np.clip(step[1], -1, 1)
    return float(slope), float(shift)


def area(yes, no):
    rank = pd.Series(np.concatenate([yes, no])).rank().values[:len(yes)].sum()
    return (rank - len(yes) * (len(yes) + 1) / 2) / (len(yes) * len(no))


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--reader", required=True)
    parser.add_argument("--fold", action="append", required=True)
    parser.add_argument("--without", action="append", required=True)
    options = parser.parse_args()
    real, drawn = [], {name: [] for name in DRAWN}
    for number, (folder, makers) in enumerate(zip(options.fold, options.without)):
        photos = read(folder, "real")
        real.append(photos[photos.maker.isin(makers.split(","))].assign(fold=number))
        for name in DRAWN:
            drawn[name].append(read(folder, name).assign(fold=number))
    real = pd.concat(real)
    drawn = {name: pd.concat(tables) for name, tables in drawn.items()}
    seen = pd.concat(drawn[name] for name in FIT)
    score = np.concatenate([real.score_photographed, seen.score_photographed])
    truth = np.concatenate([np.ones(len(real)), np.zeros(len(seen))])
    slope, shift = platt(score, truth, np.where(truth == 1, len(seen) / len(real), 1.0))
    with open(options.reader, encoding="utf-8") as file:
        description = json.load(file)
    description["scales"]["photographed"] = {"slope": round(slope, 5), "shift": round(shift, 5)}
    with open(options.reader, "w", encoding="utf-8") as file:
        json.dump(description, file, indent=1)
        file.write("\n")
    print(f"slope {slope:.3f} shift {shift:.3f}")
    means = {}
    for name, table in {"photographs": real, **drawn}.items():
        chance = 1 / (1 + np.exp(-(slope * table.score_photographed + shift)))
        means[name] = chance.groupby([table.fold, table.photo]).mean()
        joints = "" if name == "photographs" else (
            f" area joints {area(real.score_photographed, table.score_photographed):.4f}"
            f" rows {area(means['photographs'], means[name]):.4f}")
        print(f"{name}: {len(table)} joints, {len(means[name])} rows, row means at 0 5 25 50 75 95 100"
              f" % {means[name].quantile([0, .05, .25, .5, .75, .95, 1]).round(3).tolist()}{joints}")
    print(means["photographs"].sort_values().head(8).round(3).to_string())


if __name__ == "__main__":
    main()
