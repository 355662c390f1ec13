#!/usr/bin/env python3
"""Trains the second reader and writes reader.onnx, reader.json and figures.json.

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
import json
import os
import time

import numpy as np
import pandas as pd
import torch
from net import FAULTS, HEIGHT, LOOK, MIRRORED, QUESTIONS, STRANGE, WIDTH, Reader, Show, scaled

# Share of each source in what is shown; the rest of a batch is strange pictures.
SHARES = {"scenes": 0.50, "more": 0.12, "lamps": 0.06, "nudge": 0.06, "whole-bad": 0.08,
          "rough": 0.08, "real": 0.10}
# Of photographed joints that are shown: bad, good, and those of which nobody knows. Bad and good
# alike often, so that photographs do not come to mean good, or bad.
REAL_SHARES = (0.4, 0.4, 0.2)
STRANGE_SHARE = 0.12
BATCH = 768
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
    """Joints of a folder of patches: table, pictures, typical picture of each, truth, weights."""
    table = pd.read_csv(os.path.join(folder, "joints.csv"), keep_default_na=False)
    shape = (-1, 3, HEIGHT, WIDTH)
    own = np.fromfile(os.path.join(folder, "joints.bin"), np.uint8).reshape(shape)
    typical = np.fromfile(os.path.join(folder, "typical.bin"), np.uint8).reshape(shape)
    row = rows(table)
    assert len(own) == len(table) and len(typical) == row[-1] + 1, folder
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
    return table, own, typical, row, truth, weight


class Source:
    def __init__(self, folders, device, notes, without):
        own, typical, row, truth, weight, said = [], [], [], [], [], []
        for folder in folders:
            table, o, t, r, y, w = load(folder, notes)
            w[table.maker.isin(without).values] = 0
            said.append(table.said.values)
            row.append(torch.from_numpy(r + sum(len(x) for x in typical)))
            own.append(torch.from_numpy(o))
            typical.append(torch.from_numpy(t))
            truth.append(torch.from_numpy(y))
            weight.append(torch.from_numpy(w))
        keep = torch.cat(weight).sum(1) > 0
        self.own, self.typical = torch.cat(own)[keep].to(device), torch.cat(typical).to(device)
        self.row = torch.cat(row)[keep].to(device)
        self.truth = torch.cat(truth)[keep].float().to(device)
        self.weight = torch.cat(weight)[keep].to(device)
        said = np.concatenate(said)[keep.numpy()]
        of = np.select([np.isin(said, ["open", "bridge"]), said == "good"], [0, 1], 2)
        self.kinds = [torch.from_numpy(np.flatnonzero(of == k)).to(device) for k in range(3)]
        self.first = torch.searchsorted(self.row, self.row)
        self.count = torch.searchsorted(self.row, self.row, right=True) - self.first

    def batch(self, n, show):
        i = self.chosen(n, show)
        other = self.first[i] + (show.rand(len(i)) * self.count[i]).long()
        return (self.own[i], self.typical[self.row[i]], self.own[other], self.truth[i],
                self.weight[i])

    def chosen(self, n, show):
        def some(k, of):
            return torch.randint(of, (k,), generator=show.generator, device=show.device)
        if not len(self.kinds[0]):
            return some(n, len(self.own))
        return torch.cat([kind[some(int(n * share), len(kind))]
                          for kind, share in zip(self.kinds, REAL_SHARES) if len(kind)])


def beside(own, typical, other, show):
    """The joint and what is shown beside it: its row's typical joint, but often only itself, another
    joint of the row, or nothing, so that being like its row is never enough to be good."""
    which = show.rand(len(own)).view(-1, 1, 1, 1)
    shown = torch.where(which < 0.35, typical, own)
    shown = torch.where(which > 0.7, other, shown)
    shown = torch.where(which > 0.85, torch.full_like(own, 128), shown)
    return torch.cat([own, shown], 1)


def learn(sources, steps, seed, planes, device, log):
    torch.manual_seed(seed)
    generator = torch.Generator(device=device)
    generator.manual_seed(seed)
    show = Show(generator)
    net = Reader(planes).to(device, memory_format=torch.channels_last)
    kept = torch.optim.swa_utils.AveragedModel(
        net, multi_avg_fn=torch.optim.swa_utils.get_ema_multi_avg_fn(AVERAGE), use_buffers=True)
    optimiser = torch.optim.AdamW(net.parameters(), RATE, weight_decay=DECAY)
    schedule = torch.optim.lr_scheduler.OneCycleLR(optimiser, RATE, total_steps=steps,
                                                   pct_start=0.1)
    total = sum(SHARES[name] for name in sources)
    for step in range(steps):
        parts = [source.batch(int(BATCH * SHARES[name] / total), show)
                 for name, source in sources.items()]
        own, typical, other, truth, weight = (torch.cat(p) for p in zip(*parts))
        x = beside(own, typical, other, show)
        real = truth[:, LOOK] > 0
        weight[real, LOOK] *= (~real).sum() / real.sum().clamp(1)
        order = torch.randperm(len(x), generator=generator, device=device)
        x, truth, weight = scaled(x[order]), truth[order], weight[order]
        half = len(x) // 2
        x = torch.cat([x[:half].flip(3), x[half:]])
        truth = torch.cat([truth[:half][:, MIRRORED], truth[half:]])
        weight = torch.cat([weight[:half][:, MIRRORED], weight[half:]])
        order = torch.randperm(len(x), generator=generator, device=device)
        x, truth, weight = x[order], truth[order], weight[order]
        x = show.shaded(show.lit(show.warped(x)))
        odd = int(STRANGE_SHARE * len(x))
        x = torch.cat([show.strange(x[:odd]), x[odd:]])
        truth[:odd], weight[:odd] = 0, 0
        truth[:odd, STRANGE], weight[:odd, STRANGE] = 1, 1
        order = torch.randperm(len(x), generator=generator, device=device)
        x, truth, weight = show.taken(x[order]), truth[order], weight[order]
        x = x.clamp(-2, 127 / 64).contiguous(memory_format=torch.channels_last)
        with torch.autocast(device.type, torch.bfloat16):
            score = net(x)
        loss = torch.nn.functional.binary_cross_entropy_with_logits(
            score.float(), truth * 0.99 + 0.005, weight=weight, reduction="none")
        faults, look = weight[:, :LOOK].sum(), weight[:, LOOK].sum().clamp(1)
        loss = loss[:, :LOOK].sum() / faults + loss[:, LOOK].sum() / look
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
    parts = [scores_of(net, folder, device, notes) for folder in folders]
    tables, score, truth, weight = zip(*parts)
    return (pd.concat(tables, ignore_index=True), np.concatenate(score), np.concatenate(truth),
            np.concatenate(weight))


def scores_of(net, folder, device, notes):
    table, own, typical, row, truth, weight = load(folder, notes)
    out = []
    for at in range(0, len(own), 2048):
        x = torch.cat([torch.from_numpy(own[at:at + 2048]),
                       torch.from_numpy(typical[row[at:at + 2048]])], 1).to(device)
        out.append(net(scaled(x)).cpu().numpy())
    return table, np.concatenate(out).astype(np.float64), truth, weight


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
    """Scales and the border of strangeness, from pictures that were not learned from."""
    _, score, truth, weight = scores(net, folders, device, notes)
    scale = {q: platt(score[:, i], truth[:, i], weight[:, i])
             for i, q in enumerate(QUESTIONS) if q in FAULTS}
    known = 1 / (1 + np.exp(-score[weight[:, 0] > 0, STRANGE]))
    return scale, float(np.clip(np.quantile(known, USUAL), *BORDER))


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


def counted(net, folders, device, scale, border, out, name, notes):
    table, score, truth, weight = scores(net, folders, device, notes)
    chance = chances(score, scale)
    figures = {"joints": int(len(table))}
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
    strange = 1 / (1 + np.exp(-score[:, STRANGE]))
    right = truth[:, STRANGE] == 0
    figures["called_strange"] = [int((strange[right] > border).sum()), int(right.sum())]
    figures["wrong_rows_called_strange"] = [int((strange[~right] > border).sum()),
                                            int((~right).sum())]
    frame = table[["photo", "lamp", "mask", "pitch_px", "edge_blur_px", "row", "pin", "condition",
                   "class2", "true_findings", "side_overhang_of_lead_width", "wetted_from",
                   "wetted_to", "verdict", "said", "maker"] + ["m_" + q for q in FAULTS]].copy()
    for f, question in enumerate(FAULTS):
        frame["r_" + question] = np.round(chance[:, f], 6)
    frame["r_strange"] = np.round(strange, 5)
    frame["score_photographed"] = np.round(score[:, LOOK], 4)
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
    parser.add_argument("--beside", action="store_true", help="show the row's typical joint too")
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
    sources = {name: Source(folders, device, notes,
                            [maker for maker in options.without.split(",") if maker])
               for name, folders in by_name(options.fit).items()}
    log(", ".join(f"{name}: {len(source.own)} joints" for name, source in sources.items()))
    net = learn(sources, options.steps, options.seed, 6 if options.beside else 3, device, log)
    scale, border = calibrated(net, options.calibrate, device, notes)
    figures = {"learned_from": {n: len(s.own) for n, s in sources.items()},
               "steps": options.steps, "seed": options.seed, "without": options.without}
    tests = {**by_name(options.test), "calibrate": options.calibrate}
    for name, folders in tests.items():
        figures[name] = counted(net, folders, device, scale, border, options.out, name,
                                notes)
        log(f"{name}: " + ", ".join(
            f"{q} {f['area'] and round(f['area'], 5)} missed {f['missed_at_half']}/{f['yes']}"
            f" false {f['false_at_half']}/{f['of'] - f['yes']}"
            for q, f in figures[name].items() if isinstance(f, dict))
            + f", strange {figures[name]['called_strange']}")
    export(net.cpu().float(), options, scale, border)
    with open(os.path.join(options.out, "figures.json"), "w", encoding="utf-8") as file:
        json.dump(figures, file, indent=1)
    log("done")


def export(net, options, scale, border):
    import hashlib
    path = os.path.join(options.out, "reader.onnx")
    torch.onnx.export(net, torch.zeros(1, 6, HEIGHT, WIDTH), path, input_names=["joints"],
                      output_names=["scores"], opset_version=17, dynamo=False,
                      dynamic_axes={"joints": {0: "n"}, "scores": {0: "n"}})
    with open(path, "rb") as file:
        sha = hashlib.sha256(file.read()).hexdigest()
    with open(os.path.join(options.out, "reader.json"), "w", encoding="utf-8") as file:
        json.dump({"source": options.source, "sha256": sha, "scores": QUESTIONS,
                   "scales": {q: {"slope": round(a, 5), "shift": round(b, 5)}
                              for q, (a, b) in {**scale, "photographed": (1, 0)}.items()},
                   "unlike_from": round(border, 5)}, file, indent=1)
        file.write("\n")


if __name__ == "__main__":
    main()
