#!/usr/bin/env python3
"""Sets measures, second reader and both side by side: tables in Markdown and a reliability plot.

    src/test/bench/reader-tables.py joints read-keep.csv > tables.md
    src/test/bench/reader-tables.py plot read-keep.csv docs/pictures/reader-reliability.png
    src/test/bench/reader-tables.py real read-real.csv [PART/OF=read-left-out.csv ...]
    src/test/bench/reader-tables.py trial measures.csv[,...] reader.csv[,...] both.csv[,...]

Those of the last line are written by `leadlight trial --joints --opinions ...`, one list an opinion:
what the whole program said, inside the operating range. The other files are written by
models/reader/train.py and hold the chances of either opinion for each joint of a found row. They
become verdicts here by models/grade/opinions.json and decision.json as in leadlight.grade; sharpness
and pixels a pitch, by which the program leaves joints unjudged too, play no part. PART/OF names what
a network was trained without (train.py --leave-out). Needs numpy, pandas and matplotlib.

Sources: intervals Wilson 1927 (J. Am. Stat. Assoc. 22, 209-212); expected calibration error in 15
bins of equal width, Naeini et al. 2015 (AAAI, 2901-2907).
"""
import json
import math
import pathlib
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
import numpy as np
import pandas as pd

MODELS = pathlib.Path(__file__).resolve().parents[3] / "models"
RULE = json.loads((MODELS / "grade/opinions.json").read_text())
DECISION = json.loads((MODELS / "grade/decision.json").read_text())
UNLIKE_FROM = json.loads((MODELS / "reader/beside.json").read_text())["unlike_from"]
SEEN, DOUBT_MEASURES, DOUBT, WITNESS = (DECISION[key]["value"] for key in (
    "seen_from", "doubt_from", "doubt_from_with_reader", "witness_share"))
PROVEN = 0.95  # decision_level of models/acceptance: what a measured length must prove by itself
SUREST = 6  # as in leadlight.grade.TwoOpinions
QUESTIONS = {"missing": "missing", "unwetted": "unwetted", "bridge_before": "bridge",
             "bridge_after": "bridge", "over_half": "overhang", "ball": "ball"}  # name: its weights
WHO = ("measures", "reader", "both")
KINDS = ("bridge", "open", "insufficient", "missing-lead", "side-overhang")
Z = 1.959964
FEWEST = 10  # joints that a point of the plot stands for


def wilson(count, of):
    p, z2 = count / of, Z * Z
    middle = (p + z2 / (2 * of)) / (1 + z2 / of)
    half = Z / (1 + z2 / of) * math.sqrt(p * (1 - p) / of + z2 / (4 * of * of))
    return p, max(0.0, middle - half), min(1.0, middle + half)


def rate(hits, among):
    count, of = int((hits & among).sum()), int(among.sum())
    if of == 0:
        return "-"
    return "{}/{} {:.1f} % ({:.1f}-{:.1f})".format(count, of, *(100 * x for x in wilson(count, of)))


def log_odds(chance):
    inside = np.clip(chance, 1e-12, 1 - 1e-12)
    return np.clip(np.log(inside / (1 - inside)), -SUREST, SUREST)


def gaps_as_one(table):
    """The greater chance of a gap's two joints counts for both, as in leadlight.reader."""
    after, before = table.r_bridge_after.values, table.r_bridge_before.values
    same = ((table.photo.values[1:] == table.photo.values[:-1])
            & (table.pin.values[1:] == table.pin.values[:-1] + 1))
    gap = np.maximum(after[:-1], before[1:])
    table["r_bridge_after"] = np.append(np.where(same, gap, after[:-1]), after[-1:])
    table["r_bridge_before"] = np.insert(np.where(same, gap, before[1:]), 0, before[:1])


def read(path):
    """Joints of right rows, with both opinions' chance of each question."""
    table = pd.read_csv(path, keep_default_na=False)
    table = table[table.row.str.upper() == "RIGHT"].reset_index(drop=True)
    for key in ("pitch_px", "edge_blur_px"):
        table[key] = pd.to_numeric(table[key], errors="coerce")
    gaps_as_one(table)
    first, last = (table.groupby("photo").pin.transform(end) for end in ("min", "max"))
    for of in ("m_", "r_"):  # a joint at the end has one gap
        table.loc[table.pin == first, of + "bridge_before"] = 0.0
        table.loc[table.pin == last, of + "bridge_after"] = 0.0
    for question, weights in QUESTIONS.items():
        weight = RULE[weights]
        total = (weight["measures"] * log_odds(table["m_" + question])
                 + weight["reader"] * log_odds(table["r_" + question]) + weight["shift"])
        none = ((table["m_" + question] == 0) & (table["r_" + question] == 0)
                & question.startswith("bridge"))
        table["b_" + question] = np.where(none, 0, 1 / (1 + np.exp(-total)))
    for who in WHO:
        judge(table, who)
    return table


def judge(table, who, border=None):
    """Column WHO: defect, unjudged or good; columns WHO_KIND: chances by name."""
    of = who[0] + "_"
    border = border or (DOUBT_MEASURES if who == "measures" else DOUBT)
    over = table[of + "over_half"] * (table[of + "missing"] < SEEN)
    over_seen, over_doubt = (PROVEN, 1 - PROVEN) if who == "measures" else (SEEN, border)
    lacking = (1 - table[of + "missing"]) * table[of + "unwetted"]
    bridge = table[[of + "bridge_before", of + "bridge_after"]].max(axis=1)
    witness = (lacking < border).groupby(table.photo).transform("mean") >= WITNESS
    table[who + "_missing-lead"], table[who + "_bridge"] = table[of + "missing"], bridge
    table[who + "_unwetted"], table[who + "_side-overhang"] = lacking, over
    worst = np.maximum(table[of + "missing"], bridge)
    seen = (worst >= SEEN) | ((lacking >= SEEN) & witness) | (over >= over_seen)
    doubt = ((worst >= border) | (lacking >= border) | (over >= over_doubt)
             | (table[of + "ball"] >= SEEN))  # a ball is for the bench to judge
    table[who] = np.where(seen, "defect", np.where(doubt, "unjudged", "good"))
    if who != "measures":
        table.loc[table.r_strange > UNLIKE_FROM, who] = "unjudged"


def heading(first):
    print(f"\n| {first} | " + " | ".join(WHO) + " |\n|---|---|---|---|")


def line(name, cells):
    print(f"| {name} | " + " | ".join(cells) + " |")


def groups(table):
    blur = table.edge_blur_px / table.pitch_px
    inside = (table.pitch_px >= 20) & (blur <= 0.04)
    yield "all", table.pitch_px > 0
    yield "**inside the range**", inside
    for lamp in sorted(set(table.lamp)):
        yield "inside, " + lamp, inside & (table.lamp == lamp)
    yield "10 to 20 px a pitch", table.pitch_px < 20
    yield "from 20 px, edges wider than 0.04 pitch", (table.pitch_px >= 20) & (blur > 0.04)


def joints(path):
    table = read(path)
    bad, good = table.class2 == "defect", table.class2 == "acceptable"
    for name, word, among in (("missed", "good", bad), ("false calls", "defect", good),
                              ("unjudged", "unjudged", bad | good)):
        heading(name)
        for group, where in groups(table):
            line(group, [rate(table[who] == word, among & where) for who in WHO])
    inside = dict(groups(table))["**inside the range**"]
    by_finding(table[inside], bad[inside], good[inside])
    borders(table[inside], bad[inside], good[inside])
    same = table.verdict.map({"acceptable": "good", "process-indicator": "good"}).fillna(
        table.verdict)
    fit = (bad | good) & inside
    print(f"Verdict here and in the program the same, inside, measures: "
          f"{rate(same == table.measures, fit)}")


def borders(table, bad, good):
    """What another doubt_from would do to both together."""
    print("\n| doubt from | missed | false calls | unjudged |\n|---|---|---|---|")
    for border in (0.15, 0.1, 0.05, 0.03, 0.02, 0.01):
        judged = table.copy()
        judge(judged, "both", border)
        line(border, [rate(judged.both == word, among) for word, among in (
            ("good", bad), ("defect", good), ("unjudged", bad | good))])


def by_finding(table, bad, good):
    heading("inside: missed, by what is true")
    for kind in KINDS:
        line(kind, [rate(table[who] == "good", bad & table.true_findings.str.contains(kind))
                    for who in WHO])
    heading("inside: unjudged, by what is true")
    for kind in KINDS:
        line(kind, [rate(table[who] == "unjudged", bad & table.true_findings.str.contains(kind))
                    for who in WHO])
    heading("inside: called in error on acceptable joints, by what was said")
    for kind in ("bridge", "unwetted", "missing-lead", "side-overhang"):
        line(kind, [rate(table[f"{who}_{kind}"] >= SEEN, good) for who in WHO])


def real(path, left_out):
    sound = set(json.loads((MODELS / "joint/real-rows.json").read_text())["sound"])
    sets = [("all learned from", read(path))]
    parts = []
    for part, of, file in left_out:
        table = read(file)
        all_photos = sorted(set(pd.read_csv(file, keep_default_na=False).photo))
        number = table.photo.map({photo: i for i, photo in enumerate(all_photos)})
        parts.append(table[number % of == part])
    if parts:
        sets.append(("left out", pd.concat(parts, ignore_index=True)))
    for name, table in sets:
        table = table[table.photo.isin(sound)]
        heading(f"sound rows, {name}")
        for size, where in (("below 15 px", table.pitch_px < 15), ("from 15 px",
                                                                   table.pitch_px >= 15)):
            for word in ("defect", "unjudged"):
                line(f"{size}: {word}", [rate(table[who] == word, where) for who in WHO])


def trial(lists):
    """What the whole program said by either opinion and by both, inside the operating range."""
    tables = []
    for paths in lists:
        table = pd.concat([pd.read_csv(path, keep_default_na=False).assign(set=path)
                           for path in paths.split(",")], ignore_index=True)
        for key in ("pitch_px", "edge_blur_px", "tilt_deg"):
            table[key] = pd.to_numeric(table[key])
        tables.append(table[(table.pitch_px >= 20) & (table.tilt_deg <= 8)
                            & (table.edge_blur_px <= 0.04 * table.pitch_px)])
    heading("rows")
    for word in ("right", "not-found", "wrong"):
        cells = []
        for table in tables:
            rows = table.groupby(["set", "photo"]).row.first()
            cells.append(rate(rows == word, rows != ""))
        line(word, cells)
    faulty = [(t.class2 == "defect") & t.result.isin(["caught", "missed", "unjudged"]) for t in tables]
    sound = [(t.class2 == "acceptable") & t.result.isin(["passed", "false-call", "unjudged"])
             for t in tables]
    either = [bad | good for bad, good in zip(faulty, sound)]
    for name, word, among in (("missed", "missed", faulty), ("false calls", "false-call", sound),
                              ("unjudged", "unjudged", either)):
        heading(name)
        line("**all**", [rate(t.result == word, a) for t, a in zip(tables, among)])
        for lamp in sorted(set(tables[0].lamp)):
            line(lamp, [rate(t.result == word, a & (t.lamp == lamp)) for t, a in zip(tables, among)])
    for word in ("missed", "unjudged"):
        heading(word + ", by what is true")
        for kind in KINDS:
            line(kind, [rate(t.result == word, a & t.true_findings.str.contains(kind))
                        for t, a in zip(tables, faulty)])


def truths(table):
    """For each question that is plotted: what is true, and which joints it is put to."""
    there = table.condition != "missing-lead"
    lack = table.condition.isin(["open", "insufficient"])
    flag = lambda name: table[name].astype(str).str.lower() == "true"
    return {"missing lead": [("missing", ~there, table.pin > 0)],
            "no fillet": [("unwetted", lack, there & ~(lack & (table.class2 == "limit")))],
            "bridge": [(name, flag(name), table.m_missing >= 0)
                       for name in ("bridge_before", "bridge_after")]}


def calibration(chance, truth, bins):
    """Per bin: mean chance, share true, interval, joints; and the expected calibration error."""
    place = np.minimum((chance * bins).astype(int), bins - 1)
    points = [(chance[place == b].mean(), *wilson(truth[place == b].sum(), (place == b).sum()),
               (place == b).sum()) for b in range(bins) if (place == b).any()]
    error = sum(abs(p[0] - p[1]) * p[4] for p in points) / len(chance)
    return np.array(points), error


def plot(path, out):
    table = read(path)
    figure, axes = plt.subplots(1, 3, figsize=(12, 4.4), sharey=True)
    for axis, (name, parts) in zip(axes, truths(table).items()):
        axis.plot([0, 1], [0, 1], color="0.7", linewidth=1)
        for who, mark in zip(WHO, "s^o"):
            chance = np.concatenate([table[f"{who[0]}_{q}"][use] for q, _, use in parts])
            truth = np.concatenate([true[use] for _, true, use in parts]).astype(float)
            points = calibration(chance, truth, 10)[0]
            points = points[points[:, 4] >= FEWEST]
            error = calibration(chance, truth, 15)[1]
            spread = [points[:, 1] - points[:, 2], points[:, 3] - points[:, 1]]
            axis.errorbar(points[:, 0], points[:, 1], np.maximum(spread, 0), marker=mark, ms=5,
                          lw=1, capsize=2, label=f"{who}: error {100 * error:.2f} %")
            between = (chance >= 0.1) & (chance < 0.9)
            print(f"{name}, {who}: expected calibration error {100 * error:.2f} %, "
                  f"{between.sum()} of {len(chance)} between 0.1 and 0.9; of these stated "
                  f"{100 * chance[between].mean():.0f} %, true {100 * truth[between].mean():.0f} %")
        axis.set(title=name, xlabel="stated chance", aspect="equal")
        axis.legend(loc="upper left", fontsize=8)
    axes[0].set_ylabel("share that is so, with 95 % interval")
    figure.tight_layout()
    figure.savefig(out, dpi=90, metadata={"Software": None})


def main():
    what, path, *rest = sys.argv[1:]
    if what == "joints":
        joints(path)
    elif what == "plot":
        plot(path, rest[0])
    elif what == "trial":
        trial([path, *rest])
    else:
        parts = [value.split("=", 1) for value in rest]
        real(path, [(*map(int, of.split("/")), file) for of, file in parts])


if __name__ == "__main__":
    main()
