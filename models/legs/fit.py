#!/usr/bin/env python3
"""Fits models/legs/judgement.json.

    fit.py OUT.json SIGNALS_DIR...

SIGNALS_DIR holds sectors.csv and cells.csv as LegBenchmark writes them (see docs/legs.md). The truth of scenes tells
each sector and cell. That of benchmark/legs tells of a leg
how many degrees are wetted and which share of the land is covered, not which: each round labels the sectors (cells)
that score highest, as many as the truth says, and learns from these (self-training by known proportions, after Yu et
al. 2013, "proportion-SVM for learning with label proportions"). Scores of a round are of pictures left out:
thirds of benchmark/legs in turn; scenes are always learned from and never counted.
"""
import json
import re
import sys

import numpy as np
import pandas as pd
from sklearn.ensemble import HistGradientBoostingClassifier

FOLDS, ROUNDS, TREES, LEAVES = 3, 2, 150, 16
INSIDE = -1  # fold of pictures that are never left out


def model():
    return HistGradientBoostingClassifier(
        max_iter=TREES, max_leaf_nodes=LEAVES, learning_rate=0.12, min_samples_leaf=80, l2_regularization=1.0,
        max_features=0.3, early_stopping=False, random_state=1)


def labelled(score, share):
    """1 for the highest scores of each row, as many as its share says."""
    order = np.argsort(-score, axis=1, kind="stable")
    rank = np.empty_like(order)
    np.put_along_axis(rank, order, np.arange(score.shape[1])[None, :].repeat(len(score), 0), axis=1)
    return (rank < np.round(score.shape[1] * share)[:, None]).astype(int).ravel()


def fit(x, signals, share, each, start, fold, known):
    """Learns from labels where the truth tells them (known 0 or 1), else from proportions; folds leave pictures out."""
    told = known >= 0
    score = start.reshape(-1, each)
    for _ in range(ROUNDS):
        y = np.where(told, known, labelled(score, share))
        out = np.zeros(len(x))
        for f in range(FOLDS):
            inside = fold != f
            if inside.all():
                continue
            out[~inside] = model().fit(x.loc[inside, signals], y[inside]).decision_function(x.loc[~inside, signals])
        score = out.reshape(-1, each)
    y = np.where(told, known, labelled(score, share))
    return model().fit(x[signals], y), y, 1 / (1 + np.exp(-score))


def card(question, m, signals, x, y):
    trees = []
    for (tree,) in m._predictors:
        t = tree.nodes
        leaf = t["is_leaf"].astype(bool)
        nodes = np.arange(len(t))
        # Ours must lead onwards.
        assert all(leaf | ((t["left"] > nodes) & (t["right"] > nodes)))
        trees.append({
            "signal": [int(s) if not l else -1 for s, l in zip(t["feature_idx"], leaf)],
            "cut": [round(float(c), 5) if not l else 0 for c, l in zip(t["num_threshold"], leaf)],
            "low": [int(c) if not l else 0 for c, l in zip(t["left"], leaf)],
            "high": [int(c) if not l else 0 for c, l in zip(t["right"], leaf)],
            "value": [round(float(v), 5) if l else 0 for v, l in zip(t["value"], leaf)]})
    return {"question": question, "intercept": round(float(m._baseline_prediction[0, 0]), 5), "signals": signals,
            "usual": [round(float(v), 5) for v in x.loc[y == 0, signals].median()], "trees": trees}


def read(folders, name):
    return pd.concat([pd.read_csv(f + "/" + name) for f in folders], ignore_index=True)


def told_of(legs, scene):
    drawn = legs.photo.isin(scene)
    return tuple(n for part in (legs[~drawn], legs[drawn])
                 for n in (len(part.drop_duplicates(["photo", "leg"])), part.photo.nunique()))


def main(out, *folders):
    key = ["photo", "way", "variant", "leg"]
    sectors, cells = read(folders, "sectors.csv"), read(folders, "cells.csv")
    for table, column in ((sectors, "wet"), (cells, "reach")):
        table[column] = table[column].fillna(-1) if column in table else -1
    cells = cells[cells.sector % 3 == 0].reset_index(drop=True)
    places = np.array([0.04, 0.2, 0.36, 0.52, 0.68, 0.84, 0.96])  # RingCells.CELLS
    cells["known"] = np.where(cells.reach < 0, -1, places[cells.cell.astype(int)] < cells.reach)
    legs = sectors.groupby(key, sort=False).first().reset_index()
    own = lambda x, first: [c for c in x.columns[x.columns.get_loc(first):] if c not in ("wet", "reach", "known")]
    scene = legs[legs.way == "truth"].photo.unique()
    fold_of = {photo: i % FOLDS for i, photo in enumerate(sorted(set(legs.photo) - set(scene)))}
    fold_of.update({photo: INSIDE for photo in scene})
    s_signals, c_signals = own(sectors, "gap_darkest"), own(cells, "cell")
    wetted, wy, wp = fit(sectors, s_signals, legs.wetted_deg.values / 360, 72, sectors.gap_darkest.values,
                         sectors.photo.map(fold_of).values, sectors.wet.values)
    per = len(cells) // len(legs)
    covered, cy, cp = fit(cells, c_signals, legs.land_covered.values, per,
                          (-cells.warm - cells.hole_edge - 0.02 * cells.cell).values, cells.photo.map(fold_of).values, cells.known.values)
    legs["w"], legs["c"] = 5 * (wp > 0.5).sum(1), (cp > 0.5).mean(1)
    legs["uw"], legs["uc"] = 180 * np.sqrt((wp * (1 - wp)).mean(1)), 0.5 * np.sqrt((cp * (1 - cp)).mean(1))
    legs[legs.way != "truth"].to_csv(out + ".left-out.csv", index=False)
    plain = legs[(legs.variant == 0) & (legs.side == "solder") & (legs.way != "truth")]
    sure = plain[plain.uw < 15]
    least_deg = max(20.0, round(float(np.sqrt(np.mean((sure.w - sure.wetted_deg) ** 2))), 1))
    sure = plain[plain.uc < 0.1]
    least_share = max(0.05, round(float(np.sqrt(np.mean((sure.c - sure.land_covered) ** 2))), 3))
    text = json.dumps({
        "source": "models/legs/fit.py on %d legs of %d pictures of benchmark/legs and %d legs of %d scenes of mix-legs (docs/legs.md has their seeds); each moved a little besides; "
                  "scores of thirds of benchmark/legs left out in docs/legs.md" % told_of(legs, scene),
        "wetted": card("does solder meet the leg in this sector", wetted, s_signals, sectors, wy),
        "covered": card("does solder cover this cell of the land", covered, c_signals, cells, cy),
        "least_deg": {"value": least_deg, "source": "root mean square error, pictures left out, of legs whose sectors are sure; not below 20"},
        "least_share": {"value": least_share, "source": "likewise; not below 0.05"},
        "least_land_px": {"value": 45, "source": "the smallest lands of benchmark/legs have 60 pixels; below three quarters of that nothing was shown"},
        "hidden_to": {"value": 0.3, "source": "a land of benchmark/legs whose outline is less of an edge was never found at its place"},
    }, indent=1)
    # A list a line.
    text = re.sub(r"\[\s+([^\[\]{}]*?)\s+\]", lambda m: "[" + re.sub(r"\s+", " ", m.group(1)) + "]", text)
    with open(out, "w") as file:
        file.write(text + "\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
