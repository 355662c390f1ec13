#!/usr/bin/env python3
"""Tells the operating range from trials on scenes: tables and plots from folders of pictures.

    leadlight scene set models/scene/mix-range.json --count 408 --seed 606 --out build/606
    leadlight trial build/606 --joints build/606.csv --out build/trial-606
    leadlight scene set models/scene/mix-range.json --count 220 --seed 808 --out build/808
    leadlight trial build/808 --joints build/808.csv --out build/trial-808
    src/test/bench/range-trial.py docs build/606 build/606.csv build/808 build/808.csv

writes docs/operating-range.md and docs/pictures/range-*.png. Needs numpy, OpenCV and matplotlib
(Debian: python3-numpy python3-opencv python3-matplotlib); takes about 40 ms a picture.

Sources: intervals Wilson 1927 (J. Am. Stat. Assoc. 22, 209-212). Bound on the standard deviation of
a shift estimate: Robinson and Milanfar 2004 (IEEE Trans. Image Processing 13(9), 1185-1199, from
memory): sigma / sqrt(sum of squared derivatives along the shift). Noise by Immerkaer 1996 (Computer
Vision and Image Understanding 64(2), 300-302, from memory).
"""
import collections
import csv
import json
import math
import pathlib
import sys

import cv2
import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
import numpy as np

PITCH = [10, 15, 20, 30, 40, 60, 80, 130]
BLUR = [0, 0.02, 0.03, 0.04, 0.06, 0.08, 0.2]
TILT = [0, 2, 4, 6, 8, 11, 15.1]
INSIDE = "20 px a pitch or more, edges to 0.04 pitch, tilt to 8 degrees"
COUNTED = {"caught", "missed", "passed", "false-call", "unjudged"}
Z = 1.959964


def wilson(count, of):
    """Share with its 95 % interval."""
    if of == 0:
        return float("nan"), float("nan"), float("nan")
    p, z2 = count / of, Z * Z
    middle = (p + z2 / (2 * of)) / (1 + z2 / of)
    half = Z / (1 + z2 / of) * math.sqrt(p * (1 - p) / of + z2 / (4 * of * of))
    return p, max(0.0, middle - half), min(1.0, middle + half)


def read(folder, path):
    with open(path, newline="") as file:
        joints = list(csv.DictReader(file))
    for joint in joints:
        joint["photo"] = folder / joint["photo"]
        for key in ("pitch_px", "edge_blur_px", "tilt_deg", "along_row_px", "u_along_row_px",
                    "along_lead_px", "u_along_lead_px"):
            joint[key] = float(joint[key]) if joint[key] else float("nan")
        joint["blur"] = joint["edge_blur_px"] / joint["pitch_px"]
    return joints


def inside(joint):
    return joint["pitch_px"] >= 20 and joint["blur"] <= 0.04 and joint["tilt_deg"] <= 8


def rates(joints):
    """Misses, false calls, unjudged, each as (count, of)."""
    count = lambda result: sum(j["result"] == result for j in joints)
    bad = [j for j in joints if j["class2"] == "defect" and j["result"] in COUNTED]
    good = [j for j in joints if j["class2"] == "acceptable" and j["result"] in COUNTED]
    return ((count("missed"), len(bad)), (count("false-call"), len(good)),
            (count("unjudged"), len(bad) + len(good)))


def rows(joints):
    """Rows right, not found, wrong, each as (count, of)."""
    photos = {j["photo"]: j["row"] for j in joints}
    return tuple((sum(r == name for r in photos.values()), len(photos))
                 for name in ("right", "not-found", "wrong"))


def covered(joints, error, u):
    found = [j for j in joints if j["row"] == "right" and not math.isnan(j[error])]
    return sum(abs(j[error]) <= 2 * j[u] for j in found), len(found)


def bins(joints, key, edges):
    for low, high in zip(edges, edges[1:]):
        yield low, high, [j for j in joints if low <= j[key] < high]


# Pictures: gradient energy and noise

def noise(grey):
    """Deviation of the noise, by the Laplacian's response where the picture is calm."""
    kernel = np.array([[1, -2, 1], [-2, 4, -2], [1, -2, 1]], float)
    response = cv2.filter2D(grey, cv2.CV_64F, kernel)[2:-2, 2:-2]
    slope = np.abs(cv2.Sobel(grey, cv2.CV_64F, 1, 0)) + np.abs(cv2.Sobel(grey, cv2.CV_64F, 0, 1))
    slope = cv2.blur(slope, (5, 5))[2:-2, 2:-2]
    calm = slope <= np.quantile(slope, 0.25)
    return math.sqrt(math.pi / 2) * np.abs(response[calm]).mean() / 6


def bounds(photo):
    """Least deviation of a shift along the row and along the lead, by pin, in pixels."""
    truth = json.loads(photo.with_suffix(".truth.json").read_text())
    picture = cv2.imread(str(photo))
    grey = picture[:, :, 1].astype(np.float64)
    sigma = max(noise(grey), 1 / math.sqrt(12))
    dx = np.zeros_like(grey)
    dy = np.zeros_like(grey)
    dx[:, 1:-1] = (grey[:, 2:] - grey[:, :-2]) / 2
    dy[1:-1, :] = (grey[2:, :] - grey[:-2, :]) / 2
    joints = truth["joints"]
    ends = [np.array(joints[k]["land_toe_px"]) for k in (0, -1)]
    along = (ends[1] - ends[0]) / np.linalg.norm(ends[1] - ends[0])
    across = np.array([-along[1], along[0]])
    pitch = np.linalg.norm(ends[1] - ends[0]) * truth["pitch_mm"] / truth["lands_at_mm"][-1]
    out = {}
    for joint in joints:
        if "toe_px" not in joint:
            continue
        toe, heel = np.array(joint["land_toe_px"]), np.array(joint["heel_px"])
        corners = [toe - along * pitch / 2, toe + along * pitch / 2,
                   heel + along * pitch / 2, heel - along * pitch / 2]
        mask = np.zeros(grey.shape, np.uint8)
        cv2.fillConvexPoly(mask, np.round(corners).astype(np.int32), 1)
        at = mask > 0
        own = at.sum() * sigma ** 2 / 2
        energy = [max(((dx[at] * d[0] + dy[at] * d[1]) ** 2).sum() - own, own) for d in (along, across)]
        out[str(joint["pin"])] = tuple(sigma / math.sqrt(e) for e in energy)
    return out


def add_bounds(joints):
    known = {}
    for joint in joints:
        if joint["row"] != "right" or math.isnan(joint["along_row_px"]):
            continue
        photo = joint["photo"]
        if photo not in known:
            known[photo] = bounds(photo)
        joint["bound_row"], joint["bound_lead"] = known[photo][joint["pin"]]


# Output

def percent(count_of):
    p, low, high = wilson(*count_of)
    if count_of[1] == 0:
        return "-"
    return f"{count_of[0]}/{count_of[1]} {100 * p:.1f} % ({100 * low:.1f}-{100 * high:.1f})"


def table(name, groups):
    lines = [f"| {name} | rows right | not found | wrong | missed | false calls | unjudged |",
             "|---|---|---|---|---|---|---|"]
    for label, joints in groups:
        if joints:
            cells = [percent(c) for c in (*rows(joints), *rates(joints))]
            lines.append(f"| {label} | " + " | ".join(cells) + " |")
    return "\n".join(lines) + "\n"


def bars(axis, places, counts, label, colour, marker, line="-"):
    values = np.array([wilson(*c) for c in counts]) * 100
    spread = np.maximum(0, [values[:, 0] - values[:, 1], values[:, 2] - values[:, 0]])
    axis.errorbar(places, values[:, 0], spread, label=label, color=colour, marker=marker,
                  linestyle=line, capsize=3, linewidth=1, markersize=4)


def plot_rates(joints, to):
    figure, axes = plt.subplots(1, 3, figsize=(12, 3.8), sharey=True)
    for axis, (key, edges, name) in zip(axes, (
            ("pitch_px", PITCH, "pixels a pitch"), ("blur", BLUR, "edge blur over pitch"),
            ("tilt_deg", TILT, "tilt, degrees"))):
        groups = [g for _, _, g in bins(joints, key, edges)]
        places = np.arange(len(groups))
        names = [f"{a:g}-{b:g}" for a, b in zip(edges, edges[1:])]
        for k, (label, colour, marker) in enumerate((
                ("missed", "#b3261e", "o"), ("false calls", "#1f5fa8", "s"),
                ("unjudged", "#666666", "^"))):
            bars(axis, places + 0.08 * (k - 1), [rates(g)[k] for g in groups], label, colour, marker)
        axis.set_xticks(places, names, fontsize=7)
        axis.set_xlabel(name)
        axis.grid(alpha=0.3)
    axes[0].set_ylabel("% of joints, 95 % interval")
    axes[0].set_ylim(0, 100)
    axes[0].set_yscale("symlog", linthresh=1)
    axes[0].set_yticks([0, 0.5, 1, 3, 10, 30, 100], ["0", "0.5", "1", "3", "10", "30", "100"])
    axes[0].legend(fontsize=8)
    save(figure, to)


def plot_lamps(joints, to):
    lamps = sorted({j["lamp"] for j in joints})
    figure, axis = plt.subplots(figsize=(10, 3.8))
    places = np.arange(len(lamps))
    for k, (label, colour, marker) in enumerate((
            ("missed", "#b3261e", "o"), ("false calls", "#1f5fa8", "s"), ("unjudged", "#666666", "^"))):
        counts = [rates([j for j in joints if j["lamp"] == lamp])[k] for lamp in lamps]
        bars(axis, places + 0.15 * (k - 1), counts, label, colour, marker, "none")
    axis.set_xticks(places, lamps, rotation=30, ha="right", fontsize=8)
    axis.set_ylabel("% of joints, 95 % interval")
    axis.grid(alpha=0.3)
    axis.legend(fontsize=8)
    save(figure, to)


def plot_bound(joints, to):
    figure, axes = plt.subplots(1, 2, figsize=(10, 4), sharey=True)
    found = [j for j in joints if "bound_row" in j]
    for axis, error, bound, name in ((axes[0], "along_row_px", "bound_row", "along the row"),
                                     (axes[1], "along_lead_px", "bound_lead", "along the lead")):
        x = np.array([j[bound] for j in found])
        y = np.abs([j[error] for j in found])
        axis.loglog(x, np.maximum(y, 1e-3), ".", markersize=2, alpha=0.35, color="#1f5fa8")
        ends = np.array([x.min(), x.max()])
        axis.loglog(ends, ends * 0.6745, color="#b3261e", linewidth=1.2,
                    label="median error of an estimate at the bound")
        edges = np.quantile(x, np.linspace(0, 1, 9))
        middle = [(np.median(x[s]), np.median(y[s]))
                  for s in ((x >= a) & (x <= b) for a, b in zip(edges, edges[1:]))]
        axis.loglog(*zip(*middle), "ko-", markersize=3, linewidth=1, label="median error")
        axis.set_xlabel(f"bound on the deviation {name}, px")
        axis.grid(alpha=0.3, which="both", linewidth=0.3)
    axes[0].set_ylabel("error of the toe, px")
    axes[0].legend(fontsize=7)
    save(figure, to)


def plot_coverage(joints, to):
    figure, axes = plt.subplots(1, 2, figsize=(10, 3.6), sharey=True)
    for axis, (key, edges, name) in zip(axes, (("pitch_px", PITCH, "pixels a pitch"),
                                               ("blur", BLUR, "edge blur over pitch"))):
        groups = [g for _, _, g in bins(joints, key, edges)]
        places = np.arange(len(groups))
        bars(axis, places - 0.05, [covered(g, "along_row_px", "u_along_row_px") for g in groups],
             "along the row", "#1f5fa8", "s")
        bars(axis, places + 0.05, [covered(g, "along_lead_px", "u_along_lead_px") for g in groups],
             "along the lead", "#8a5a00", "o")
        axis.axhspan(93, 97, color="#2e7d32", alpha=0.15)
        axis.set_xticks(places, [f"{a:g}-{b:g}" for a, b in zip(edges, edges[1:])], fontsize=7)
        axis.set_xlabel(name)
        axis.grid(alpha=0.3)
    axes[0].set_ylabel("truth within 2 u, %")
    axes[0].set_ylim(60, 101)
    axes[0].legend(fontsize=8)
    save(figure, to)


def plot_unjudged(joints, to):
    share = np.full((len(BLUR) - 1, len(PITCH) - 1), np.nan)
    figure, axis = plt.subplots(figsize=(7, 4))
    for a, (_, _, soft) in enumerate(bins(joints, "blur", BLUR)):
        for b, (_, _, group) in enumerate(bins(soft, "pitch_px", PITCH)):
            count, of = rates(group)[2]
            if of:
                share[a, b] = 100 * count / of
                axis.text(b, a, f"{share[a, b]:.0f}\n({of})", ha="center", va="center", fontsize=7)
    axis.imshow(share, cmap="Greys", vmin=0, vmax=160, origin="lower", aspect="auto")
    axis.set_xticks(range(len(PITCH) - 1), [f"{a:g}-{b:g}" for a, b in zip(PITCH, PITCH[1:])])
    axis.set_yticks(range(len(BLUR) - 1), [f"{a:g}-{b:g}" for a, b in zip(BLUR, BLUR[1:])])
    axis.set_xlabel("pixels a pitch")
    axis.set_ylabel("edge blur over pitch")
    axis.set_title("joints not judged, % (of how many)", fontsize=9)
    save(figure, to)


def save(figure, to):
    figure.tight_layout()
    figure.savefig(to, dpi=90, metadata={"Software": None})
    plt.close(figure)


def position_table(joints):
    lines = ["| | median error, px | median bound, px | error at the bound | truth within 2 u |",
             "|---|---|---|---|---|"]
    for label, group in (("all", joints), ("inside the range", [j for j in joints if inside(j)])):
        found = [j for j in group if "bound_row" in j]
        if not found:
            continue
        for way, error, u, bound in (("along the row", "along_row_px", "u_along_row_px", "bound_row"),
                                     ("along the lead", "along_lead_px", "u_along_lead_px", "bound_lead")):
            size = np.abs([j[error] for j in found])
            least = np.array([j[bound] for j in found])
            lines.append(f"| {label}, {way} | {np.median(size):.3f} | {np.median(least):.4f} | "
                         f"{np.median(size) / (0.6745 * np.median(least)):.1f} times | "
                         f"{percent(covered(group, error, u))} |")
    return "\n".join(lines) + "\n"


def goals(joints):
    group = [j for j in joints if inside(j)]
    missed, false, unjudged = rates(group)
    lines = ["| | wanted | found |", "|---|---|---|",
             f"| rows right | 99 % | {percent(rows(group)[0])} |",
             f"| rows wrong | | {percent(rows(group)[2])} |",
             f"| missed | 1 % | {percent(missed)} |",
             "| missed, without those starved behind a filled toe | | "
             f"{percent(rates([j for j in group if not toe_filled(j)])[0])} |",
             f"| false calls | 0.5 % | {percent(false)} |",
             f"| unjudged | 3 % | {percent(unjudged)} |",
             "| truth within 2 u along the row | 93-97 % | "
             f"{percent(covered(group, 'along_row_px', 'u_along_row_px'))} |",
             "| truth within 2 u along the lead | 93-97 % | "
             f"{percent(covered(group, 'along_lead_px', 'u_along_lead_px'))} |"]
    return "\n".join(lines) + "\n"


def toe_filled(joint):
    """Starved towards the heel, with a sound toe: from above hardly a difference shows."""
    return (joint["condition"] == "insufficient" and joint["wetted_from"] != ""
            and float(joint["wetted_from"]) <= 0.02)


def kinds(joint):
    if joint["condition"] != "insufficient":
        return joint["true_findings"].split()
    return ["insufficient, toe filled" if toe_filled(joint) else "insufficient, toe bare"] + [
        kind for kind in joint["true_findings"].split() if kind != "insufficient"]


def by_finding(joints):
    lines = ["| fault | missed | unjudged |", "|---|---|---|"]
    faulty = [j for j in joints if j["class2"] == "defect" and j["result"] in COUNTED and inside(j)]
    for kind in sorted({k for j in faulty for k in kinds(j)}):
        group = [j for j in faulty if kind in kinds(j)]
        missed = sum(j["result"] == "missed" for j in group)
        unjudged = sum(j["result"] == "unjudged" for j in group)
        lines.append(f"| {kind} | {percent((missed, len(group)))} | {percent((unjudged, len(group)))} |")
    return "\n".join(lines) + "\n"


def by_reason(joints):
    """Why joints are not judged: the first doubt, by code."""
    group = [j for j in joints if inside(j) and j["result"] == "unjudged"]
    reasons = collections.Counter(
        j["unjudged_because"].split(",")[0] for j in group)
    lines = ["| not judged because | joints |", "|---|---|"]
    lines += [f"| {reason} | {count} |" for reason, count in reasons.most_common()]
    return "\n".join(lines) + "\n"


def coverages(joints, seeds):
    lines = ["| seed | truth within 2 u along the row | along the lead |", "|---|---|---|"]
    for seed in seeds:
        group = [j for j in joints if j["photo"].parent.name == seed and inside(j)]
        lines.append(f"| {seed} | {percent(covered(group, 'along_row_px', 'u_along_row_px'))} | "
                     f"{percent(covered(group, 'along_lead_px', 'u_along_lead_px'))} |")
    return "\n".join(lines) + "\n"


def ranges(key, edges, joints):
    return [(f"{low:g} to {high:g}", group) for low, high, group in bins(joints, key, edges)]


def report(joints):
    photos = len({j["photo"] for j in joints})
    lamps = sorted({j["lamp"] for j in joints})
    seeds = sorted({j["photo"].parent.name for j in joints})
    return f"""# Operating range, from a trial on scenes

{len(joints)} joints of {photos} pictures drawn from `models/scene/mix-range.json`, seeds 606 and 808: every lamp, mask and finish,
10 to 120 px a pitch, edges to 0.09 pitch and over, tilt to 15 degrees, even rows and rows of known connectors, single faults
and whole bad rows. Written by `src/test/bench/range-trial.py` from `leadlight trial --joints`; how it is counted: [accuracy.md](accuracy.md).
Neither opinion learned from these pictures and no threshold was set on them. (The fit of lead placement saw 360 scenes that
had seed 606, too, but of another mix: of 408 scenes of the same number not one has its part, lamps, camera or a joint in common.)
Counts are joints; brackets are Wilson 95 % intervals that take joints as independent, which joints of one picture are not
quite. The truth counts a bridge as a defect however thin, also where the picture cannot resolve it.

## Inside the stated range: {INSIDE}

{goals(joints)}
{by_finding(joints)}
{by_reason(joints)}
## By set, inside the range

{table("seed", [(seed, [j for j in joints if j["photo"].parent.name == seed and inside(j)]) for seed in seeds])}
{coverages(joints, seeds)}
## By pixels a pitch

{table("px a pitch", ranges("pitch_px", PITCH, joints))}
## By blur (standard deviation of an edge over the pitch)

{table("blur", ranges("blur", BLUR, joints))}
## By tilt

{table("degrees", ranges("tilt_deg", TILT, joints))}
![Rates against pixels a pitch, blur and tilt](pictures/range-rates.png)

## By lamp, inside the range

{table("lamp", [(lamp, [j for j in joints if j["lamp"] == lamp and inside(j)]) for lamp in lamps])}
![Rates by lamp](pictures/range-lamps.png)

## Position of the toe against the bound

{position_table(joints)}
The bound is that of Robinson and Milanfar (2004): noise over the root of the summed squared derivative, over the lead,
its land and half a pitch to both sides, in the green channel; the noise is measured in each picture's calm quarter, at least that of
rounding to grey levels. It holds for a shift of a known picture in white noise. A real lead's picture is not known beforehand (its
solder, shadows and glints differ from its neighbours'), which is why the error stands above it; the row's lattice is
fitted to all leads at once, which can bring a single lead's error nearer to it.

![Error against the bound](pictures/range-bound.png)

![Coverage of the stated uncertainties](pictures/range-coverage.png)

## Where "unjudged" takes over

![Share of joints not judged](pictures/range-unjudged.png)
"""


def main(to, sets):
    joints = [joint for folder, table in sets for joint in read(pathlib.Path(folder), table)]
    add_bounds(joints)
    pictures = to / "pictures"
    pictures.mkdir(parents=True, exist_ok=True)
    plot_rates(joints, pictures / "range-rates.png")
    plot_lamps([j for j in joints if inside(j)], pictures / "range-lamps.png")
    plot_bound(joints, pictures / "range-bound.png")
    plot_coverage(joints, pictures / "range-coverage.png")
    plot_unjudged(joints, pictures / "range-unjudged.png")
    (to / "operating-range.md").write_text(report(joints))
    print(goals(joints))


if __name__ == "__main__":
    if len(sys.argv) < 4 or len(sys.argv) % 2:
        sys.exit("usage: range-trial.py DOCS FOLDER JOINTS.csv [FOLDER JOINTS.csv ...]")
    main(pathlib.Path(sys.argv[1]), list(zip(sys.argv[2::2], sys.argv[3::2])))
