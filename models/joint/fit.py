#!/usr/bin/env python3
"""Fits models/joint/judgement.json from joints whose truth is known.

    ./leadlight trial FOLDER --measures joints.csv      (once for each set of pictures)
    python3 models/joint/fit.py --out models/joint/judgement.json joints.csv [more.csv ...]

Needs numpy, pandas and scikit-learn; the program itself does not. Each question is an additive
logistic model: one-split trees are boosted (Friedman, Hastie and Tibshirani 2000), and the trees of
one signal are added up to one step function. The number of trees and the last scaling of the log
odds (Platt 1999) come from pictures left out of the fit, five groups of whole pictures, so that the
chances are honest on pictures not seen.
"""
import argparse
import json

import numpy as np
import pandas as pd
from sklearn.ensemble import HistGradientBoostingClassifier
from sklearn.model_selection import GroupKFold

SEED = 20261125
RATE = 0.1
TREES = (40, 70, 120, 200, 320)
LEAST_IN_LEAF = 12
# Place, size and width of the row are no signs of a joint's state.
NO_SIGNALS = {"pitch_px", "match", "lead_half", "land_half", "ahead", "offset", "heel_offset"}


def read(files):
    frames = []
    for number, file in enumerate(files):
        frame = pd.read_csv(file, keep_default_na=False)
        frame["file"] = number
        frames.append(frame)
    table = pd.concat(frames, ignore_index=True)
    first = list(table.columns).index("toe_bright_band")
    signals = [c for c in table.columns[first:] if c != "file"]
    for column in signals:
        table[column] = pd.to_numeric(table[column], errors="coerce")
    table = table.copy()
    # Variants of one picture are one picture.
    table["picture"] = table["photo"].str.replace(r"-v\d+\.jpg$", ".jpg", regex=True)
    return table, signals


def bridged(table):
    """Does metal span the gap from this pin to the next?"""
    to = pd.to_numeric(table["bridge_to"], errors="coerce")
    back = {
        (file, photo, int(target)): int(pin)
        for file, photo, pin, target in zip(table.file, table.photo, table.pin, to)
        if target == target
    }
    yes = []
    for file, photo, pin, target in zip(table.file, table.photo, table.pin, to):
        yes.append(target == pin + 1 or back.get((file, photo, pin)) == pin + 1)
    return np.array(yes)


def loss(truth, score, weight):
    return np.average(np.logaddexp(0, np.where(truth, -score, score)), weights=weight)


def boosted(rows, truth, weight, trees):
    model = HistGradientBoostingClassifier(
        max_iter=trees, max_leaf_nodes=2, learning_rate=RATE, min_samples_leaf=LEAST_IN_LEAF,
        l2_regularization=1.0, max_bins=64, early_stopping=False, random_state=SEED)
    return model.fit(rows, truth, sample_weight=weight)


def left_out_scores(rows, truth, weight, groups):
    scores = {trees: np.zeros(len(truth)) for trees in TREES}
    for fit, test in GroupKFold(5).split(rows, truth, groups):
        model = boosted(rows[fit], truth[fit], weight[fit], max(TREES))
        for number, score in enumerate(model._staged_raw_predict(rows[test]), start=1):
            if number in scores:
                scores[number][test] = score.ravel()
    return scores


def scaled(score, truth, weight):
    """Slope and shift of the log odds (Platt 1999), by Newton's method, slope kept within reason."""
    slope, shift = 1.0, 0.0
    for _ in range(50):
        chance = 1 / (1 + np.exp(-np.clip(slope * score + shift, -40, 40)))
        error, spread = weight * (chance - truth), weight * chance * (1 - chance)
        gradient = np.array([np.sum(error * score) + (slope - 1), np.sum(error)])
        curve = np.array([[np.sum(spread * score ** 2) + 1, np.sum(spread * score)],
                          [np.sum(spread * score), np.sum(spread) + 1e-6]])
        step = np.linalg.solve(curve, gradient)
        slope, shift = slope - np.clip(step[0], -0.3, 0.3), shift - np.clip(step[1], -1, 1)
    return float(np.clip(slope, 0.4, 1.2)), float(shift)


def step_functions(model, signals, scale):
    """Adds up the one-split trees of each signal."""
    splits = {}
    base = float(np.ravel(model._baseline_prediction)[0])
    for predictors in model._predictors:
        nodes = predictors[0].nodes
        if nodes[0]["is_leaf"]:
            base += float(nodes[0]["value"])
            continue
        left, right = (float(nodes[nodes[0][side]]["value"]) for side in ("left", "right"))
        splits.setdefault(int(nodes[0]["feature_idx"]), []).append(
            (float(nodes[0]["num_threshold"]), left, right))
    terms = []
    for feature in sorted(splits, key=lambda f: signals[f]):
        merged = {}
        start = 0.0
        for threshold, left, right in splits[feature]:
            cut = round(threshold, 5)
            start += left
            merged[cut] = merged.get(cut, 0.0) + right - left
        cuts = sorted(merged)
        points = [start]
        for cut in cuts:
            points.append(points[-1] + merged[cut])
        terms.append((signals[feature], cuts, [round(scale * p, 4) for p in points]))
    return base, terms


def card(question, table, signals, keep, truth, weight):
    names = [s for s in signals if s not in NO_SIGNALS]
    used = table[keep]
    names = [n for n in names if used[n].notna().all()]
    rows, yes, w = used[names].values, truth[keep], weight[keep]
    scores = left_out_scores(rows, yes, w, used["picture"].values)
    trees = min(TREES, key=lambda t: loss(yes, scores[t], w))
    slope, shift = scaled(scores[trees], yes, w)
    model = boosted(rows, yes, w, trees)
    base, terms = step_functions(model, names, slope)
    intercept = slope * base + shift
    chance = 1 / (1 + np.exp(-(slope * scores[trees] + shift)))
    print(f"{question}: {yes.sum()} yes of {len(yes)}, {trees} trees, slope {slope:.2f};",
          "left out: " + ", ".join(
              f"at {t}: missed {np.mean(chance[yes] < t):.2%} false {np.mean(chance[~yes] >= t):.2%}"
              for t in (0.1, 0.3, 0.5, 0.8)))
    sound = used[~yes]
    result = []
    for name, cuts, points in terms:
        usual = float(sound[name].median())
        result.append({"signal": name, "usual": round(usual, 4),
                       "usual_points": points[int(np.searchsorted(cuts, usual))],
                       "cuts": cuts, "points": points})
    return {"question": question, "intercept": round(float(intercept), 4), "terms": result}


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--out", required=True)
    parser.add_argument("--source", action="append", default=[])
    parser.add_argument("csv", nargs="+")
    options = parser.parse_args()
    table, signals = read(options.csv)
    condition = table["condition"].values
    # Each file counts alike, however many variants of a picture it holds.
    weight = np.ones(len(table))
    gap = [s for s in signals if "gap_" in s]
    joint = [s for s in signals if "gap_" not in s]
    everything = np.ones(len(table), bool)
    there = condition != "missing-lead"
    bad = np.isin(condition, ["open", "insufficient"])
    has_gap = table["gap_span"].notna().values
    result = {
        "source": options.source,
        "unwetted": card("no fillet from the toe to the land", table, joint, there, bad, weight),
        "open_not_starved": card("open rather than starved", table, joint, bad,
                                 condition == "open", weight),
        "missing": card("no lead on the land", table, joint, everything,
                        condition == "missing-lead", weight),
        "excess": card("solder hides the lead", table, joint, there, condition == "excess", weight),
        "bridge": card("metal spans the gap", table, gap, has_gap, bridged(table), weight),
    }
    with open(options.out, "w", encoding="utf-8") as file:
        json.dump(result, file, indent=1)
        file.write("\n")


if __name__ == "__main__":
    main()
