#!/usr/bin/env python3
"""Fits models/joint/judgement.json from joints whose truth is known.

    ./leadlight trial FOLDER --measures joints.csv      (once for each set of pictures)
    python3 models/joint/fit.py --out models/joint/judgement.json joints.csv [more.csv ...]

With --only CARD that card alone is fitted and set into the file as it is.

Needs numpy, pandas and scikit-learn; the program itself does not. Each question is answered by small
boosted trees (Friedman 2001). The number of trees and the last scaling of the log odds (Platt 1999)
come from pictures left out of the fit, five groups of whole pictures, so that the chances are honest
on pictures not seen.

Whether a lead is there, and whether solder joins it, is answered from the joint's own picture alone:
a row may be bad throughout, and then likeness to it proves nothing. No make of picture teaches wetting
with one answer alone, so photographs, of which nearly all known joints are sound, teach nothing of it.
The last card tells photographs from drawn pictures: on these alone telling soldered from set down was
shown to work.
"""
import argparse
import json
import os

import numpy as np
import pandas as pd
from sklearn.ensemble import HistGradientBoostingClassifier
from sklearn.model_selection import GroupKFold

SEED = 20261125
RATE = 0.07
TREES = (40, 60, 90, 130, 180, 260, 400)
LEAST_IN_LEAF = 30
LEAVES = 15
# Place, size and width of the row are no signs of a joint's state.
NO_SIGNALS = {"match", "lead_half", "land_half", "ahead", "offset", "heel_offset"}


def read(files):
    frames = []
    for number, file in enumerate(files):
        frame = pd.read_csv(file, keep_default_na=False)
        frame["file"] = number
        frames.append(frame)
    table = pd.concat(frames, ignore_index=True)
    table = table[table["row"].str.lower() == "right"]
    table = real_rows(table)
    first = list(table.columns).index("toe_bright_band")
    signals = [c for c in table.columns[first:]
               if c not in ("file", "real", "sound") and not c.startswith("place_")]
    for column in signals:
        table[column] = pd.to_numeric(table[column], errors="coerce")
    table = table.copy()
    # Variants of one picture are one picture.
    table["picture"] = table["photo"].str.replace(r"-v\d+\.jpg$", ".jpg", regex=True)
    return table, signals


def real_rows(table):
    """Marks real photos, and of these the rows that a careful look calls sound."""
    with open(os.path.join(os.path.dirname(__file__), "real-rows.json"), encoding="utf-8") as file:
        sound = set(json.load(file)["sound"])
    table = table.copy()
    table["real"] = table["condition"] == "by-eye"
    table["sound"] = ~table["real"] | table["photo"].isin(sound)
    table.loc[table["real"], "condition"] = "wetted"
    return table.reset_index(drop=True)


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
        max_iter=trees, max_leaf_nodes=LEAVES, learning_rate=RATE, min_samples_leaf=LEAST_IN_LEAF,
        l2_regularization=5.0, max_bins=64, early_stopping=False, random_state=SEED)
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


def as_lists(model, scale, used):
    """The trees as parallel lists; points scaled; signals renumbered to those that count."""
    trees = []
    for predictors in model._predictors:
        nodes = predictors[0].nodes
        leaf = nodes["is_leaf"].astype(bool)
        signal = [-1 if is_leaf else used[int(f)] for f, is_leaf in zip(nodes["feature_idx"], leaf)]
        trees.append({
            "signal": signal,
            "cut": [0.0 if l else round(float(c), 4) for c, l in zip(nodes["num_threshold"], leaf)],
            "low": [0 if l else int(n) for n, l in zip(nodes["left"], leaf)],
            "high": [0 if l else int(n) for n, l in zip(nodes["right"], leaf)],
            "value": [round(scale * float(v), 4) if l else 0.0
                      for v, l in zip(nodes["value"], leaf)],
        })
    return trees


def card(question, table, signals, keep, truth, weight):
    names = [s for s in signals if s not in NO_SIGNALS]
    used = table[keep]
    names = [n for n in names if used[n].notna().all()]
    rows, yes, w = used[names].values, truth[keep], weight[keep]
    scores = left_out_scores(rows, yes, w, used["picture"].values)
    trees = min(TREES, key=lambda t: loss(yes, scores[t], w))
    slope, shift = scaled(scores[trees], yes, w)
    model = boosted(rows, yes, w, trees)
    intercept = slope * float(np.ravel(model._baseline_prediction)[0]) + shift
    chance = 1 / (1 + np.exp(-(slope * scores[trees] + shift)))
    print(f"{question}: {yes.sum()} yes of {len(yes)}, {trees} trees, slope {slope:.2f};",
          "left out: " + ", ".join(
              f"at {t}: missed {np.mean(chance[yes] < t):.2%} false {np.mean(chance[~yes] >= t):.2%}"
              for t in (0.1, 0.3, 0.5, 0.8)))
    split = sorted({int(n["feature_idx"]) for p in model._predictors for n in p[0].nodes
                    if not n["is_leaf"]}, key=lambda f: names[f])
    return {"question": question, "intercept": round(intercept, 4),
            "signals": [names[f] for f in split],
            "usual": [round(float(used[names[f]][~yes].median()), 4) for f in split],
            "trees": as_lists(model, slope, {f: k for k, f in enumerate(split)})}


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--out", required=True)
    parser.add_argument("--only", metavar="CARD")
    parser.add_argument("--source", action="append", default=[])
    parser.add_argument("csv", nargs="+")
    options = parser.parse_args()
    table, signals = read(options.csv)
    condition = table["condition"].values
    weight = np.ones(len(table))
    gap = [s for s in signals if "gap_" in s]
    joint = [s for s in signals if "gap_" not in s]
    own = [s for s in joint if not s.startswith(("row_", "typical_")) and "like_row" not in s]
    drawn = ~table["real"].values
    sound = table["sound"].values
    limit = np.isin(condition, ["open", "insufficient"]) & (table["class2"] == "limit").values
    there = condition != "missing-lead"
    bad = np.isin(condition, ["open", "insufficient"])
    has_gap = table["gap_span"].notna().values
    cards = {
        "unwetted": lambda: card("no fillet from the toe to the land", table, own,
                                 drawn & there & ~limit, bad, weight),
        "open": lambda: card("open rather than starved", table, own, drawn & bad, condition == "open", weight),
        "missing": lambda: card("no lead on the land", table, own, drawn,
                                condition == "missing-lead", weight),
        "excess": lambda: card("solder hides the lead", table, joint, sound & there,
                               condition == "excess", weight),
        "bridge": lambda: card("metal spans the gap", table, gap, sound & has_gap, bridged(table),
                               weight),
        "unfamiliar": lambda: card("a photograph, not a drawn picture", table, own,
                                   np.ones(len(table), bool), ~drawn, weight),
    }
    if options.only:
        with open(options.out, encoding="utf-8") as file:
            result = json.load(file)
        result["source"] = options.source
        if options.only in result["joint"]:
            result["joint"][options.only] = cards[options.only]()
        else:
            result[options.only] = cards[options.only]()
    else:
        fitted = {name: fit() for name, fit in cards.items()}
        joint = {name: fitted.pop(name) for name in ("unwetted", "open", "missing", "excess")}
        result = {"source": options.source, "joint": joint} | fitted
    with open(options.out, "w", encoding="utf-8") as file:
        json.dump(result, file, separators=(",", ":"))
        file.write("\n")


if __name__ == "__main__":
    main()
