#!/usr/bin/env python3
"""Trains the second reader and writes alone.onnx, in-row.onnx, their .json and figures.json.

    leadlight reader patches FOLDER --out DIR       (once for each set of pictures)
    python3 models/reader/train.py --out models/reader --fit scenes=DIR --fit more=DIR \\
        --fit real=DIR --notes REAL --calibrate DIR --test NAME=DIR [--without MAKER,...]

Needs PyTorch, numpy and pandas (a GPU helps); the program itself needs none of them. Pictures of
--fit are learned from, those of --calibrate scale the chances (Platt 1999) and set the border of
strangeness, those of --test are only counted. benchmark/rendered may be named in --test alone.
Of photographs, --notes has what a person noted: the maker and, of some, each joint's state.
"""
import argparse
import glob
import hashlib
import json
import os
import time

import numpy as np
import pandas as pd
import torch
from net import (EMBEDDING, FAULTS, HEIGHT, LOOK, MIRRORED, QUESTIONS, STRANGE, WIDTH, Reader,
                 RowReader, Show, bridged, flooded, in_row, scaled)

# Share of each source in what is shown. A quarter of the rows is bad throughout: a third of bench
# scenes, and the set whole-bad.
SHARES = {"bench": 0.25, "scenes": 0.26, "metal": 0.08, "more": 0.09, "lamps": 0.05, "nudge": 0.03,
          "whole-bad": 0.07, "rough": 0.08, "real": 0.09}
# Of photographed joints that are shown: bad and good ones of makers of whom there are both, alike
# often, so that a make of picture does not come to mean good, or bad; sound ones, of which half get
# metal across a gap; and those of which nobody knows.
PAIRED, GRAFTED, UNKNOWN = 0.6, 0.2, 0.2
STRANGE_SHARE = 0.12
ROWS, JOINTS = 96, 16  # shown at once
RATE = 3e-3
DECAY = 0.03
AVERAGE = 0.998
USUAL = 0.997  # of known joints, this share must not be called strange
# Scenes alone would draw the border at 0.62, where one in five joints of photographed rows whose maker
# a training left out (--without) are beyond it; at 0.95 it is one in 14, and of joints of wrong rows on
# kept scenes (mix-range, seed 303) 89 %.
BORDER = (0.95, 0.995)
SOUND = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "joint", "real-rows.json")


def rows(table):
    """Number of the row that each joint belongs to; a photo's row may be cut more than once."""
    pin = table.pin.astype(int)
    return ((table.photo != table.photo.shift()) | (pin <= pin.shift())).cumsum().values - 1


def bridges(table, row):
    """Which gaps metal spans, to the pin before and to the next."""
    to = pd.to_numeric(table["bridge_to"], errors="coerce").values
    place = {(r, int(n)): i for i, (r, n) in enumerate(zip(row, table.pin))}
    before, after = np.zeros(len(table), bool), np.zeros(len(table), bool)
    for i, (r, pin) in enumerate(zip(row, table.pin.astype(int))):
        if to[i] == to[i]:
            other = place.get((r, int(to[i])))
            (after if to[i] > pin else before)[i] = True
            if other is not None:
                (before if to[i] > pin else after)[other] = True
    return before, after


class Notes:
    """What people noted of photographs: who made them, and what became of each joint."""

    def __init__(self, folder):
        with open(SOUND, encoding="utf-8") as file:
            self.sound = set(json.load(file)["sound"])
        self.maker, self.grade = {}, {}
        for path in sorted(glob.glob(os.path.join(folder, "*.row.json"))) if folder else []:
            with open(path, encoding="utf-8") as file:
                note = json.load(file)
            self.maker[note["photo"]] = note["source"]["repository"]
            for pin, said in note.get("grades", {}).items():
                self.grade[note["photo"], int(pin)] = (said["grade"], said.get("kind", ""))

    def of(self, photo, pin):
        """good, open, bridge, bad of another kind, or unsure."""
        grade, kind = self.grade.get(
            (photo, pin), ("good" if photo in self.sound else "unsure", ""))
        named = [k for k in ("open", "bridge") if kind.startswith(k)]
        return named[0] if grade == "bad" and named else grade


def noted(table, notes, truth, weight):
    """Truth of photographed joints, as far as anybody knows it."""
    said = np.array([notes.of(p, int(n)) for p, n in zip(table.photo, table.pin)])
    weight[np.isin(said, ["unsure", "bad"]), :LOOK] = 0
    weight[said == "open"] = 0
    weight[said == "bridge"] = 0
    for q, yes in (("missing", 0), ("unwetted", 1), ("open", 1), ("unlike", 0)):
        i = QUESTIONS.index(q)
        truth[said == "open", i], weight[said == "open", i] = yes, 1
    gaps = [QUESTIONS.index("bridge_before"), QUESTIONS.index("bridge_after")]
    for i in [QUESTIONS.index("missing"), STRANGE]:
        truth[said == "bridge", i], weight[said == "bridge", i] = 0, 1
    for i in gaps:  # the band spans the row, so both of a joint's gaps
        truth[said == "bridge", i], weight[said == "bridge", i] = 1, 1
    truth[:, LOOK], weight[:, LOOK] = 1, 1
    return said


def load(folder, notes):
    """Joints of a folder of patches: table, pictures, row of each, truth, weights."""
    table = pd.read_csv(os.path.join(folder, "joints.csv"), keep_default_na=False)
    shape = (-1, 3, HEIGHT, WIDTH)
    own = np.fromfile(os.path.join(folder, "joints.bin"), np.uint8).reshape(shape)
    row = rows(table)
    assert len(own) == len(table), folder
    condition, grade = table.condition.values, table.class2.values
    before, after = bridges(table, row)
    lack = np.isin(condition, ["open", "insufficient"])
    ball = table.true_findings.str.contains("solder-ball").values
    over = pd.to_numeric(table.side_overhang_of_lead_width, errors="coerce").values
    no = np.zeros(len(table), bool)
    truth = np.stack([condition == "missing-lead", lack, condition == "open",
                      condition == "excess", before, after, no, ball, over > 0.25, over > 0.5,
                      no], 1)
    weight = np.ones(truth.shape, np.float32)
    there = condition != "missing-lead"
    weight[:, 1] = there & ~(lack & (grade == "limit"))
    weight[:, 2] = lack
    weight[:, 3] = there
    weight[:, 7] = ball.any()  # pictures that do not tell where balls lie teach nothing of them
    seen = there & (condition != "excess") & ~np.isnan(over)
    weight[:, 8] = seen & ((over < 0.18) | (over > 0.32))
    weight[:, 9] = seen & ((over < 0.40) | (over > 0.58))
    wrong = table.row.str.upper().values != "RIGHT"
    truth[wrong, STRANGE] = True
    weight[wrong] = 0
    weight[wrong, STRANGE] = 1
    by_eye = condition == "by-eye"
    weight[by_eye, 9] = 1  # a row noted as good has no lead half off its land
    table["said"], table["maker"] = "", table.photo.map(notes.maker).fillna("")
    if by_eye.any():
        table["said"] = noted(table, notes, truth, weight)
    weight[by_eye & wrong] = 0
    return table, own, row, truth, weight


class Source:
    """Rows of joints of one kind of picture on the GPU."""

    def __init__(self, folders, device, notes, without):
        own, row, truth, weight, said, maker = [], [], [], [], [], []
        rows_before = 0
        for folder in folders:
            table, o, r, y, w = load(folder, notes)
            w[table.maker.isin(without).values] = 0
            said.append(table.said.values)
            maker.append(table.maker.values)
            row.append(r + rows_before)
            rows_before = row[-1][-1] + 1
            own.append(torch.from_numpy(o))
            truth.append(torch.from_numpy(y))
            weight.append(torch.from_numpy(w))
        weight = torch.cat(weight)
        keep = weight.sum(1) > 0
        self.own = torch.cat(own)[keep].to(device)
        self.truth = torch.cat(truth)[keep].float().to(device)
        self.weight = weight[keep].to(device)
        self.said = np.concatenate(said)[keep.numpy()]
        self.maker = np.concatenate(maker)[keep.numpy()]
        _, self.row, count = np.unique(np.concatenate(row)[keep.numpy()], return_inverse=True,
                                       return_counts=True)
        self.count = torch.from_numpy(count).to(device)
        self.first = self.count.cumsum(0) - self.count

    def batch(self, n, show):
        """Joints of n rows, JOINTS of each, by chance."""
        return self.of(torch.randint(len(self.count), (n,), generator=show.generator,
                                     device=show.device), show)

    def of(self, row, show):
        place = (show.rand(len(row), JOINTS) * self.count[row].unsqueeze(1)).long()
        i = (self.first[row].unsqueeze(1) + place).flatten()
        return scaled(self.own[i]), self.truth[i], self.weight[i].clone()


class Photographs(Source):
    """Rows of photographs, of which some have a maker with joints known to be bad and good."""

    def __init__(self, *options):
        super().__init__(*options)
        bad, good = np.isin(self.said, ["open", "bridge"]), self.said == "good"
        both = sorted(set(self.maker[bad]) & set(self.maker[good]))
        lonely = good & ~np.isin(self.maker, both)
        wetting = [QUESTIONS.index(q) for q in ("missing", "unwetted", "open")]
        self.weight[np.ix_(np.flatnonzero(lonely), wetting)] = 0
        self.paired = [self.rows_with(state & (self.maker == who))
                       for who in both for state in (bad, good)]
        self.sound, self.unknown = self.rows_with(good), self.rows_with(~bad & ~good)

    def rows_with(self, which):
        return torch.from_numpy(np.unique(self.row[which])).to(self.own.device)

    def batch(self, n, show):
        kinds = self.paired + [self.unknown, self.sound, self.sound]
        shares = [PAIRED / len(self.paired)] * len(self.paired) if self.paired else []
        shares += [UNKNOWN, GRAFTED / 2, 1]
        parts, left = [], n
        for kind, share in zip(kinds, shares):
            k = min(left, round(n * share))
            parts.append(kind[torch.randint(len(kind), (k,), generator=show.generator,
                                            device=show.device)])
            left -= k
        own, truth, weight = self.of(torch.cat(parts), show)
        before, after = QUESTIONS.index("bridge_before"), QUESTIONS.index("bridge_after")
        at = len(own) - JOINTS * (len(parts[-1]) + len(parts[-2]))
        weight[at:, :LOOK] = 0
        to = at + JOINTS * len(parts[-2])
        own[at:to], truth[at:to, after] = bridged(own[at:to], show)
        weight[at:to, after] = 1
        own[to:], yes = flooded(own[to:], show)
        for gap in (before, after):
            truth[to:, gap], weight[to:, gap] = yes.float(), 1
        return own, truth, weight


class Lesson:
    """Batches of rows with their truth, varied by chance."""

    def __init__(self, sources, show):
        self.sources, self.show = sources, show
        total = sum(SHARES[name] for name in sources)
        self.rows = {name: round(ROWS * SHARES[name] / total) for name in sources}
        largest = max(self.rows, key=self.rows.get)
        self.rows[largest] += ROWS - sum(self.rows.values())

    def batch(self):
        """Pictures, truth and weights, JOINTS to a row."""
        parts = [source.batch(self.rows[name], self.show)
                 for name, source in self.sources.items()]
        x, truth, weight = (torch.cat(p) for p in zip(*parts))
        x, truth, weight = self.mirrored(*self.mixed(x, truth, weight))
        x = self.show.shaded(self.show.lit(self.show.warped(x)))
        x, truth, weight = self.mixed(x, truth, weight)
        x = self.made_strange(x, truth, weight)
        x, truth, weight = self.mixed(x, truth, weight)
        x, truth, weight = self.mixed(self.show.taken(x), truth, weight)
        real = truth[:, LOOK] > 0
        drawn = weight[~real, LOOK].sum()
        weight[real, LOOK] *= drawn / weight[real, LOOK].sum().clamp(1)
        x = x.clamp(-2, 127 / 64).contiguous(memory_format=torch.channels_last)
        return x, truth, weight

    def made_strange(self, x, truth, weight):
        """Half of the joints of some rows."""
        odd = int(STRANGE_SHARE * ROWS) * JOINTS
        i = torch.arange(2 * odd, device=x.device)
        i = i[self.show.rand(2 * odd).argsort()[:odd]]
        x = x.index_copy(0, i, self.show.strange(x[i]))
        truth[i], weight[i] = 0, 0
        truth[i, STRANGE], weight[i, STRANGE] = 1, 1
        return x

    def mixed(self, x, truth, weight):
        """The rows in another order."""
        order = torch.randperm(ROWS, generator=self.show.generator, device=x.device)
        order = (order.unsqueeze(1) * JOINTS + torch.arange(JOINTS, device=x.device)).flatten()
        return x[order], truth[order], weight[order]

    def mirrored(self, x, truth, weight):
        half = ROWS // 2 * JOINTS
        return (torch.cat([x[:half].flip(3), x[half:]]),
                torch.cat([truth[:half][:, MIRRORED], truth[half:]]),
                torch.cat([weight[:half][:, MIRRORED], weight[half:]]))


class Both(torch.nn.Module):
    """The reader of joints and the reader of their row, trained as one."""

    def __init__(self):
        super().__init__()
        self.joint, self.row = Reader(), RowReader()

    def forward(self, x):
        own = self.joint(x)
        thought = own[:, len(QUESTIONS):].unflatten(0, (-1, JOINTS))
        return own[:, :len(QUESTIONS)], self.row(in_row(thought))


def missed(score, truth, weight):
    loss = torch.nn.functional.binary_cross_entropy_with_logits(
        score.float(), truth * 0.99 + 0.005, weight=weight, reduction="none")
    return loss.sum() / weight.sum().clamp(1)


def learn(sources, steps, seed, device, log):
    torch.manual_seed(seed)
    generator = torch.Generator(device=device)
    generator.manual_seed(seed)
    lesson = Lesson(sources, Show(generator, JOINTS))
    net = Both().to(device, memory_format=torch.channels_last)
    kept = torch.optim.swa_utils.AveragedModel(
        net, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(AVERAGE), use_buffers=True)
    optimiser = torch.optim.AdamW(net.parameters(), RATE, weight_decay=DECAY)
    schedule = torch.optim.lr_scheduler.OneCycleLR(optimiser, RATE, total_steps=steps,
                                                   pct_start=0.1)
    for step in range(steps):
        x, truth, weight = lesson.batch()
        with torch.autocast(device.type, torch.bfloat16):
            joint, row = net(x)
        faults = slice(0, LOOK)
        loss = (missed(joint[:, faults], truth[:, faults], weight[:, faults])
                + missed(joint[:, LOOK:], truth[:, LOOK:], weight[:, LOOK:])
                + missed(row, truth[:, faults], weight[:, faults]))
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(net.parameters(), 2.0)
        optimiser.step()
        schedule.step()
        kept.update_parameters(net)
        if step % 500 == 0 or step == steps - 1:
            log(f"step {step} loss {loss.item():.4f}")
    return kept.module.eval()


@torch.no_grad()
def scores(net, folders, device, notes):
    """Table, scores by joint, scores by row, truth, weights."""
    parts = [scores_of(net, folder, device, notes) for folder in folders]
    tables, *values = zip(*parts)
    return (pd.concat(tables, ignore_index=True), *(np.concatenate(v) for v in values))


def scores_of(net, folder, device, notes):
    table, own, row, truth, weight = load(folder, notes)
    joint = []
    for at in range(0, len(own), 2048):
        x = torch.from_numpy(own[at:at + 2048]).to(device)
        joint.append(net.joint(scaled(x)))
    joint = torch.cat(joint)
    thought = joint[:, len(QUESTIONS):]
    by_row = [net.row(in_row(thought[torch.from_numpy(row == r).to(device)].unsqueeze(0)))
              for r in range(row[-1] + 1)]
    return (table, joint.cpu().numpy().astype(np.float64),
            torch.cat(by_row).cpu().numpy().astype(np.float64), truth, weight)


def platt(score, truth, weight):
    """Slope and shift of the log odds (Platt 1999), by Newton's method."""
    slope, shift = 1.0, 0.0
    for _ in range(60):
        chance = 1 / (1 + np.exp(-np.clip(slope * score + shift, -40, 40)))
        error, spread = weight * (chance - truth), weight * chance * (1 - chance)
        gradient = np.array([np.sum(error * score) + (slope - 1), np.sum(error)])
        curve = np.array([[np.sum(spread * score ** 2) + 1, np.sum(spread * score)],
                          [np.sum(spread * score), np.sum(spread) + 1e-6]])
        step = np.linalg.solve(curve, gradient)
        slope, shift = slope - np.clip(step[0], -0.3, 0.3), shift - np.clip(step[1], -1, 1)
    return float(np.clip(slope, 0.2, 3)), float(shift)


def calibrated(net, folders, device, notes):
    """Scales of both readers' chances and the border of strangeness, from pictures that were not
    learned from."""
    _, joint, row, truth, weight = scores(net, folders, device, notes)
    scales = [{q: platt(score[:, QUESTIONS.index(q)], truth[:, QUESTIONS.index(q)],
                        weight[:, QUESTIONS.index(q)]) for q in FAULTS} for score in (joint, row)]
    known = 1 / (1 + np.exp(-joint[weight[:, 0] > 0, STRANGE]))
    return scales, float(np.clip(np.quantile(known, USUAL), *BORDER))


def chances(score, scale):
    """One column a fault, in the order of FAULTS."""
    slope, shift = np.array([scale[q] for q in FAULTS]).T
    asked = score[:, [QUESTIONS.index(q) for q in FAULTS]]
    return 1 / (1 + np.exp(-(asked * slope + shift)))


def calibration_error(chance, truth, bins=15):
    """Expected calibration error in bins of equal width (Naeini et al. 2015)."""
    place = np.minimum((chance * bins).astype(int), bins - 1)
    return float(sum(abs(chance[place == b].mean() - truth[place == b].mean())
                     * (place == b).mean() for b in range(bins) if (place == b).any()))


def reliability(chance, truth, bins=10):
    place = np.minimum((chance * bins).astype(int), bins - 1)
    return [[int((place == b).sum()),
             round(float(chance[place == b].mean()), 4) if (place == b).any() else None,
             round(float(truth[place == b].mean()), 4) if (place == b).any() else None]
            for b in range(bins)]


def area_under(chance, truth):
    """Area under the curve of caught against false calls, by ranks."""
    rank = pd.Series(chance).rank().values
    yes = truth.sum()
    no = len(truth) - yes
    return float((rank[truth].sum() - yes * (yes + 1) / 2) / (yes * no)) if yes * no else None


def figures_of(chance, truth, weight):
    figures = {}
    for f, question in enumerate(FAULTS):
        q = QUESTIONS.index(question)
        use = weight[:, q] > 0
        c, t = chance[use, f], truth[use, q]
        if use.any():
            figures[question] = {
                "yes": int(t.sum()), "of": int(use.sum()), "area": area_under(c, t),
                "error": round(calibration_error(c, t), 4),
                "missed_at_half": int((c[t] < 0.5).sum()),
                "false_at_half": int((c[~t] >= 0.5).sum()),
                "reliability": reliability(c, t)}
    return figures


def counted(net, folders, device, scales, border, out, name, notes):
    table, joint, row, truth, weight = scores(net, folders, device, notes)
    frame = table[["photo", "lamp", "mask", "pitch_px", "edge_blur_px", "row", "pin", "condition",
                   "class2", "true_findings", "side_overhang_of_lead_width", "wetted_from",
                   "wetted_to", "verdict", "said", "maker"] + ["m_" + q for q in FAULTS]].copy()
    figures = {"joints": int(len(table))}
    for reader, score, scale in (("alone", joint, scales[0]), ("in_row", row, scales[1])):
        chance = chances(score, scale)
        figures[reader] = figures_of(chance, truth, weight)
        for f, question in enumerate(FAULTS):
            frame[f"{reader}_{question}"] = np.round(chance[:, f], 6)
        frame[f"{reader}_strange"] = np.round(1 / (1 + np.exp(-score[:, STRANGE])), 5)
    strange = frame.alone_strange.values
    right = truth[:, STRANGE] == 0
    figures["called_strange"] = [int((strange[right] > border).sum()), int(right.sum())]
    figures["wrong_rows_called_strange"] = [int((strange[~right] > border).sum()),
                                            int((~right).sum())]
    frame["score_photographed"] = np.round(joint[:, LOOK], 4)
    frame["bridge_before"], frame["bridge_after"] = truth[:, 4], truth[:, 5]
    frame.to_csv(os.path.join(out, f"read-{name}.csv"), index=False)
    return figures


def by_name(values):
    """NAME=FOLDER options to the folders of each name."""
    folders = {}
    for name, folder in (value.split("=", 1) for value in values):
        folders.setdefault(name, []).append(folder)
    return folders


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--out", required=True)
    parser.add_argument("--fit", action="append", required=True)
    parser.add_argument("--calibrate", action="append", required=True)
    parser.add_argument("--test", action="append", default=[])
    parser.add_argument("--notes", help="folder of *.row.json")
    parser.add_argument("--without", default="", help="makers of photographs not to learn from")
    parser.add_argument("--steps", type=int, default=9500)
    parser.add_argument("--seed", type=int, default=20261125)
    parser.add_argument("--source", default="")
    options = parser.parse_args()
    device = torch.device("cuda" if torch.cuda.is_available() else "cpu")
    began = time.time()
    os.makedirs(options.out, exist_ok=True)

    def log(words):
        print(f"{time.time() - began:6.0f} s {words}", flush=True)

    notes = Notes(options.notes)
    without = [maker for maker in options.without.split(",") if maker]
    sources = {name: (Photographs if name == "real" else Source)(folders, device, notes, without)
               for name, folders in by_name(options.fit).items()}
    log(", ".join(f"{name}: {len(source.own)} joints" for name, source in sources.items()))
    net = learn(sources, options.steps, options.seed, device, log)
    scales, border = calibrated(net, options.calibrate, device, notes)
    figures = {"learned_from": {n: len(s.own) for n, s in sources.items()},
               "steps": options.steps, "seed": options.seed, "without": options.without}
    tests = {**by_name(options.test), "calibrate": options.calibrate}
    for name, folders in tests.items():
        figures[name] = counted(net, folders, device, scales, border, options.out, name,
                                notes)
        log(f"{name}: " + ", ".join(
            f"{q} {f['area'] and round(f['area'], 5)} missed {f['missed_at_half']}/{f['yes']}"
            f" false {f['false_at_half']}/{f['of'] - f['yes']}"
            for q, f in figures[name]["in_row"].items())
            + f", strange {figures[name]['called_strange']}")
    net = net.cpu().float()
    export("alone", net.joint, torch.zeros(1, 6, HEIGHT, WIDTH), options, scales[0],
           {"unlike_from": round(border, 5)})
    export("in-row", net.row, torch.zeros(1, 3 * EMBEDDING), options, scales[1],
           {"unlike_from": BORDER[0]})
    with open(os.path.join(options.out, "figures.json"), "w", encoding="utf-8") as file:
        json.dump(figures, file, indent=1)
    log("done")


def export(name, net, shown, options, scale, more):
    path = os.path.join(options.out, name + ".onnx")
    torch.onnx.export(net, shown, path, input_names=["joints"], output_names=["scores"],
                      opset_version=17, dynamo=False,
                      dynamic_axes={"joints": {0: "n"}, "scores": {0: "n"}})
    with open(path, "rb") as file:
        sha = hashlib.sha256(file.read()).hexdigest()
    with open(os.path.join(options.out, name + ".json"), "w", encoding="utf-8") as file:
        json.dump({"source": options.source, "sha256": sha, "scores": QUESTIONS,
                   "scales": {q: {"slope": round(a, 5), "shift": round(b, 5)}
                              for q, (a, b) in {**scale, "photographed": (1, 0)}.items()},
                   **more}, file, indent=1)
        file.write("\n")


if __name__ == "__main__":
    main()
