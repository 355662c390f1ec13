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
from sklearn.ensemble import GradientBoostingClassifier
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import GroupKFold

SEED = 20261125
RATE = 0.08
TREES = (60, 100, 150, 220, 320, 450)
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


def log_odds(model, rows, trees):
    for number, score in enumerate(model.staged_decision_function(rows), start=1):
        if number == trees:
            return score.ravel()
    raise ValueError("fewer trees than asked for")


def loss(truth, score, weight):
    return np.average(np.logaddexp(0, np.where(truth, -score, score)), weights=weight)


def boosted(rows, truth, weight, trees):
    model = GradientBoostingClassifier(
        n_estimators=trees, max_depth=1, learning_rate=RATE, subsample=0.6,
        max_features=0.4, min_samples_leaf=8, random_state=SEED)
    return model.fit(rows, truth, sample_weight=weight)


def left_out_scores(rows, truth, weight, groups):
    scores = {trees: np.zeros(len(truth)) for trees in TREES}
    for fit, test in GroupKFold(5).split(rows, truth, groups):
        model = boosted(rows[fit], truth[fit], weight[fit], max(TREES))
        for trees in TREES:
            scores[trees][test] = log_odds(model, rows[test], trees)
    return scores


def step_functions(model, signals, scale):
    """Adds up the one-split trees of each signal."""
    splits = {}
    base = 0.0
    for tree in model.estimators_.ravel():
        tree = tree.tree_
        if tree.feature[0] < 0:
            base += RATE * tree.value[0][0][0]
            continue
        left, right = (RATE * tree.value[k][0][0] for k in (1, 2))
        splits.setdefault(tree.feature[0], []).append((float(tree.threshold[0]), left, right))
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
    platt = LogisticRegression(C=10).fit(scores[trees].reshape(-1, 1), yes, sample_weight=w)
    slope, shift = float(platt.coef_[0][0]), float(platt.intercept_[0])
    model = boosted(rows, yes, w, trees)
    base, terms = step_functions(model, names, slope)
    prior = float(model.init_.class_prior_[1])
    intercept = slope * (np.log(prior / (1 - prior)) + base) + shift
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
