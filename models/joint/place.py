#!/usr/bin/env python3
"""Fits the trends of models/joint/placement.json from joints whose true places are known.

    ./leadlight trial FOLDER --measures joints.csv      (once for each set of pictures)
    python3 models/joint/place.py --out models/joint/placement.json joints.csv [more.csv:3 ...]

Needs numpy, pandas and scikit-learn; the program itself does not. The figures beside the trends stay
as the file has them. A number behind a file's name is the weight of its pictures.

First two trends say how far a row as a whole lies from its true place; what they leave is measured on
pictures left out of their fit. From that two more say how large the error of one toe usually is,
scaled so that 95.45 % of the errors on pictures left out of both fits, the normal distribution's
share, lie within two standard uncertainties (JCGM 100:2008, 6.3).
"""
import argparse
import json

import numpy as np
import pandas as pd
from sklearn.ensemble import GradientBoostingRegressor
from sklearn.model_selection import GroupKFold

SEED = 20261125
# Rows farther off than this, pitches, are counted as this far: they are other faults.
MOST_OFF = 0.12
MOST_ERROR = 0.3
LEAST_ERROR = 0.003
ROW_FORM = dict(loss="huber", alpha=0.9, max_depth=3, learning_rate=0.06, n_estimators=90,
                min_samples_leaf=8, subsample=0.6, max_features=0.3, random_state=SEED)
TOE_FORM = dict(loss="squared_error", max_depth=3, learning_rate=0.06, n_estimators=70,
                min_samples_leaf=60, subsample=0.6, max_features=0.3, random_state=SEED)
COVERED = 0.9545
# Renderers put the toe of a rounded end in different places; of this much more u along the lead, tuned
# on benchmark/rendered against scenes left out of the fit, pictures of either make are covered.
OTHER_MAKE = 1.06
# Corrections are results, not signs.
NOT_SIGNS = {"place_by_row", "place_by_lead"}
OF_ONE_LEAD = {"place_match", "place_u_found", "place_u_toe", "place_u_end", "place_off_row",
               "place_as_found", "place_moved", "place_turn", "place_cues_apart",
               "place_by_row_size", "place_middle_off", "place_lands_off"}


def read(files):
    frames = []
    for number, name in enumerate(files):
        file, _, weight = name.partition(":")
        frame = pd.read_csv(file, keep_default_na=False)
        frame["picture"] = f"{number} " + frame["photo"]
        frame["weight"] = float(weight or 1)
        frames.append(frame)
    table = pd.concat(frames, ignore_index=True)
    table = table[table["row"].str.lower() == "right"].copy()
    signs = [c for c in table.columns if c.startswith("place_")]
    for column in signs + ["lateral_px", "axial_px", "pitch_px"]:
        table[column] = pd.to_numeric(table[column], errors="coerce")
    table = table[table["lateral_px"].notna()].copy()
    # What the trends in the file took off is put on again.
    table["row_error"] = table["lateral_px"] / table["pitch_px"] + table["place_by_row"]
    table["lead_error"] = table["axial_px"] / table["pitch_px"] + table["place_by_lead"]
    signs = [c for c in signs if c not in NOT_SIGNS]
    return table, [c for c in signs if c not in OF_ONE_LEAD], signs


def left_out(form, x, y, pictures, weight):
    """Predictions for each line by a fit without its picture."""
    out = np.zeros(len(y))
    for fit, rest in GroupKFold(8).split(x, y, pictures):
        model = GradientBoostingRegressor(**form).fit(x[fit], y[fit], sample_weight=weight[fit])
        out[rest] = model.predict(x[rest])
    return out


def trees(model, rate, scale=1.0):
    out = []
    for tree in (t[0].tree_ for t in model.estimators_):
        leaf = tree.children_left < 0
        out.append({
            "signal": np.where(leaf, -1, tree.feature).tolist(),
            "cut": np.where(leaf, 0, tree.threshold).round(5).tolist(),
            "low": np.where(leaf, 0, tree.children_left).tolist(),
            "high": np.where(leaf, 0, tree.children_right).tolist(),
            "value": np.where(leaf, scale * rate * tree.value[:, 0, 0], 0).round(6).tolist()})
    return out


def trend(states, model, form, signs, plus=0.0):
    start = float(np.ravel(model.init_.predict(np.zeros((1, len(signs)))))[0])
    return {"states": states, "intercept": round(start + plus, 6), "signals": signs,
            "trees": trees(model, form["learning_rate"])}


def rows(table, signs, error, states):
    """Trend of a row's common error, and for each picture what it leaves when left out."""
    by_picture = table.groupby("picture", sort=True)
    x = by_picture[signs].first()
    y = by_picture[error].median().clip(-MOST_OFF, MOST_OFF)
    weight = by_picture["weight"].first().values
    guess = left_out(ROW_FORM, x.values, y.values, x.index.values, weight)
    model = GradientBoostingRegressor(**ROW_FORM).fit(x.values, y.values, sample_weight=weight)
    print(f"{states}: {len(y)} rows, root mean square {np.sqrt(np.mean(y ** 2)):.4f}, "
          f"left out {np.sqrt(np.mean((y - guess) ** 2)):.4f}")
    return trend(states, model, ROW_FORM, signs), pd.Series(guess, x.index)


def toes(table, signs, error, states, wider=1.0):
    """Trend of the logarithm of a toe's standard uncertainty."""
    size = np.log(error.abs().clip(upper=MOST_ERROR) + LEAST_ERROR)
    weight = (table["weight"] / table.groupby("picture")["picture"].transform("size")).values
    x = table[signs].values
    guess = left_out(TOE_FORM, x, size.values, table["picture"].values, weight)
    factor = wider * np.quantile(error.abs().values / np.exp(guess), COVERED) / 2
    model = GradientBoostingRegressor(**TOE_FORM).fit(x, size.values, sample_weight=weight)
    print(f"{states}: {len(size)} toes, factor {factor:.3f}, median u "
          f"{np.median(factor * np.exp(guess)):.4f}")
    return trend(states, model, TOE_FORM, signs, np.log(factor))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--out", required=True)
    parser.add_argument("--source", action="append", default=[])
    parser.add_argument("files", nargs="+")
    args = parser.parse_args()
    table, row_signs, signs = read(args.files)
    with open(args.out, encoding="utf-8") as file:
        model = json.load(file)
    model["source"] = args.source
    model["along_row"], by_row = rows(
        table, row_signs, "row_error", "toe as found less true toe along the row, pitches")
    model["along_lead"], by_lead = rows(
        table, row_signs, "lead_error", "toe as found less true toe along the lead, pitches")
    across = table["row_error"] - table["picture"].map(by_row)
    along = table["lead_error"] - table["picture"].map(by_lead)
    table["place_by_row_size"] = table["picture"].map(by_row).abs()
    model["u_along_row"] = toes(
        table, signs, across, "logarithm of u of a toe along the row, pitches")
    model["u_along_lead"] = toes(
        table, signs, along, "logarithm of u of a toe along the lead, pitches", OTHER_MAKE)
    with open(args.out, "w", encoding="utf-8") as file:
        parts = {k: v for k, v in model.items() if "along" not in k}
        text = json.dumps(parts, indent=2)[:-2]
        for name in ("along_row", "along_lead", "u_along_row", "u_along_lead"):
            text += f',\n  "{name}": ' + json.dumps(model[name], separators=(",", ":"))
        file.write(text + "\n}\n")


if __name__ == "__main__":
    main()
