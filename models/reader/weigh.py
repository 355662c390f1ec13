#!/usr/bin/env python3
"""Fits models/grade/opinions.json: how the measures' and the reader's chances become one.

    python3 models/reader/weigh.py --out models/grade/opinions.json --source "..." \\
        --fit measures.csv [...] --test NAME=measures.csv

The files are written by `leadlight trial FOLDER --measures measures.csv`, which puts both opinions beside
the truth, or by train.py. Each question gets a weight for either opinion and a shift
(logistic regression on the two log odds, with a weak pull towards the mean of the two), from
pictures that neither opinion learned from. Needs numpy and pandas.
"""
import argparse
import json

import numpy as np
import pandas as pd

SUREST = 6.0  # as in leadlight.grade.TwoOpinions
PULL = 2.0
QUESTIONS = {"missing": ["missing"], "unwetted": ["unwetted"], "excess": ["excess"],
             "bridge": ["bridge_before", "bridge_after"], "ball": ["ball"],
             "overhang": ["over_quarter", "over_half"], "open": ["open"]}
# Shares of a lead's width between which its overhang is at the limit asked for: train.py.
AT_LIMIT = {"over_quarter": (0.18, 0.32), "over_half": (0.40, 0.58)}


def log_odds(chance):
    inside = np.clip(chance.astype(float), 1e-12, 1 - 1e-12)
    return np.clip(np.log(inside / (1 - inside)), -SUREST, SUREST)


def asked(table, name):
    """Which joints a question is put to, and the truth."""
    condition, grade = table.condition, table.class2
    right = (table.row.str.upper() == "RIGHT") & (condition != "by-eye")
    there = condition != "missing-lead"
    lack = condition.isin(["open", "insufficient"])
    if name == "missing":
        return right, ~there
    if name == "unwetted":
        return right & there & ~(lack & (grade == "limit")), lack
    if name == "open":  # which name a lack of solder gets
        return right & lack, condition == "open"
    if name == "excess":
        return right & there, condition == "excess"
    if name == "ball":
        return right, table.true_findings.str.contains("solder-ball")
    if name in AT_LIMIT:
        over = pd.to_numeric(table.side_overhang_of_lead_width, errors="coerce")
        low, high = AT_LIMIT[name]
        return right & there & (condition != "excess") & ((over < low) | (over > high)), over > high
    return right, table[name].astype(str).str.lower() == "true"


def bridges(table):
    """Which gaps metal spans, to the pin before and to the next."""
    to = pd.to_numeric(table["bridge_to"], errors="coerce")
    pairs = {(photo, min(pin, other), max(pin, other))
             for photo, pin, other in zip(table.photo, table.pin, to) if other == other}
    return ([(photo, pin - 1, pin) in pairs for photo, pin in zip(table.photo, table.pin)],
            [(photo, pin, pin + 1) in pairs for photo, pin in zip(table.photo, table.pin)])


def read(file):
    """A table of train.py, in which both joints of a gap have the greater of its two chances."""
    table = pd.read_csv(file, keep_default_na=False)
    table = table.rename(columns=lambda name: name.replace("in_row_", "r_"))
    table = table[table["r_missing"].astype(str) != ""].reset_index(drop=True)
    if "bridge_before" not in table:
        table["bridge_before"], table["bridge_after"] = bridges(table)
    after, before = table.r_bridge_after.values.copy(), table.r_bridge_before.values.copy()
    same = (table.photo.values[1:] == table.photo.values[:-1]) & (
        table.pin.values[1:] == table.pin.values[:-1] + 1)
    both = np.maximum(after[:-1], before[1:])
    table["r_bridge_after"] = np.append(np.where(same, both, after[:-1]), after[-1])
    table["r_bridge_before"] = np.insert(np.where(same, both, before[1:]), 0, before[0])
    return table


def gathered(tables, names):
    measures, reader, truth = [], [], []
    for table in tables:
        for name in names:
            use, yes = asked(table, name)
            measures.append(log_odds(table["m_" + name][use].values))
            reader.append(log_odds(table["r_" + name][use].values))
            truth.append(yes[use].values)
    return np.concatenate(measures), np.concatenate(reader), np.concatenate(truth).astype(float)


def weights(measures, reader, truth):
    x = np.stack([measures, reader, np.ones_like(measures)], 1)
    prior, pull = np.array([0.5, 0.5, 0.0]), np.array([PULL, PULL, 1e-3])
    w = prior.copy()
    for _ in range(100):
        chance = 1 / (1 + np.exp(-x @ w))
        gradient = x.T @ (chance - truth) + pull * (w - prior)
        curve = (x * (chance * (1 - chance))[:, None]).T @ x + np.diag(pull + 1e-6)
        step = np.linalg.solve(curve, gradient)
        w = w - np.clip(step, -0.5, 0.5)
    return np.concatenate([np.clip(w[:2], 0, 2), w[2:]])


def both(w, measures, reader):
    return 1 / (1 + np.exp(-(w[0] * measures + w[1] * reader + w[2])))


def faults(table, fitted):
    """The largest chance of a defect, by each opinion and by both, and what is true."""
    worst = {}
    for who in ("measures", "reader", "both"):
        total = np.zeros(len(table))
        for question, names in QUESTIONS.items():
            if question in ("excess", "open"):
                continue
            for name in names:
                if name == "over_quarter":  # no fault by class 2
                    continue
                m, r = log_odds(table["m_" + name].values), log_odds(table["r_" + name].values)
                chance = {"measures": 1 / (1 + np.exp(-m)), "reader": 1 / (1 + np.exp(-r)),
                          "both": both(fitted[question], m, r)}[who]
                total = np.maximum(total, chance)
        worst[who] = total
    return worst


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--out", required=True)
    parser.add_argument("--source", default="")
    parser.add_argument("--fit", action="append", required=True)
    parser.add_argument("--test", action="append", default=[])
    options = parser.parse_args()
    tables = [read(file) for file in options.fit]
    fitted = {q: weights(*gathered(tables, names)) for q, names in QUESTIONS.items()}
    result = {"source": options.source, "weights": {}}
    for question, w in fitted.items():
        for name in QUESTIONS[question]:
            result["weights"][name] = {"measures": round(float(w[0]), 4),
                                       "reader": round(float(w[1]), 4),
                                       "shift": round(float(w[2]), 4)}
    with open(options.out, "w", encoding="utf-8") as file:
        json.dump(result, file, indent=1)
        file.write("\n")
    print(json.dumps(result))
    for name, path in (t.split("=", 1) for t in options.test):
        table = read(path)
        right = table.row.str.upper() == "RIGHT"
        bad, good = right & (table.class2 == "defect"), right & (table.class2 == "acceptable")
        by_eye = right & (table.condition == "by-eye") & (pd.to_numeric(table.pitch_px) >= 15)
        for who, worst in faults(table, fitted).items():
            for low, high in ((0.15, 0.5), (0.1, 0.5), (0.05, 0.5), (0.1, 0.7), (0.1, 0.8)):
                print(f"{name} {who} {low} {high}: missed {(worst[bad] < low).sum()}/{bad.sum()}"
                      f" false {(worst[good] >= high).sum()}/{good.sum()} unjudged "
                      f"{((worst[bad | good] >= low) & (worst[bad | good] < high)).sum()}"
                      f"/{(bad | good).sum()}"
                      + (f" real called {(worst[by_eye] >= high).sum()}/{by_eye.sum()}"
                         if by_eye.any() else ""))


if __name__ == "__main__":
    main()
