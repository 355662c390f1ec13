#!/usr/bin/env python3
"""Trains the leg reader: reader.onnx and reader.json.

    train.py OUT --fit DIR... [--scale DIR...] [--keep NAME=DIR...] [--steps N] [--source TEXT]

A DIR holds legs.bin and legs.csv as leadlight.leg.LegPictures (src/test) writes them. Of --fit every tenth photo is
not learned from, only counted; --scale, cut where the program finds the legs, scales the chances (else those photos
do); --keep is only counted. The network says how likely each reach of solder is,
step by step: degrees of the leg's outline that solder meets, share of the land that it covers, share of the hole that is
open (ordinal regression, one logistic a step, after Frank and Hall 2001); and how likely the picture shows the component side. Of each sector it is asked the same while it learns, since
the truth of scenes tells them. Needs PyTorch, onnx and numpy; the program itself needs none of them.
"""
import argparse
import csv
import hashlib
import json
import os
import time

import numpy as np
import torch
import torch.nn.functional as F
from torch import nn

PLANES, HEIGHT, WIDTH, AROUND, OVERLAP = 4, 72, 176, 144, 16  # leadlight.leg.read.LegPicture
SECTORS, CELLS = 72, 20
# Reaches of solder, of each of which the network says how likely there is more; the last means "all".
DEGREES = [15.0 * i for i in range(24)] + [359.0]
SHARES = [round(0.05 * i, 2) for i in range(20)] + [0.995]
CONDITIONS = ["filled", "part-wetted", "recessed", "void", "unsoldered", "excess", "capped"]
BATCH, RATE, DECAY, AVERAGE, SEED = 384, 2e-3, 0.15, 0.998, 20261128
# How far the search lays a land beside its place, standard deviations: of its half-length, of its size, degrees.
OFF, STRETCH, TURN = 0.035, 0.025, 1.5


class Set:
    """Pictures with their truth."""

    def __init__(self, folders):
        rows, pictures = [], []
        for folder in folders:
            with open(os.path.join(folder, "legs.csv"), encoding="utf-8") as file:
                own = list(csv.DictReader(file))
            for row in own:
                row["photo"] = os.path.basename(os.path.normpath(folder)) + "/" + row["photo"]
            rows += own
            raw = np.fromfile(os.path.join(folder, "legs.bin"), np.uint8)
            pictures.append(raw.reshape(len(own), PLANES, HEIGHT, WIDTH))
        self.rows = rows
        self.pictures = torch.from_numpy(np.concatenate(pictures))
        number = lambda name: np.array([float(r[name]) for r in rows], np.float32)
        self.wetted, self.covered, self.open = number("wetted_deg"), number("land_covered"), number("hole_open")
        self.component = np.array([r["side"] == "component" for r in rows])
        self.condition = np.array([CONDITIONS.index(r["condition"]) for r in rows])
        told = np.array([bool(r["wet_sectors"]) for r in rows])
        self.told = told
        self.wet = np.array([[int(c) for c in r["wet_sectors"]] if t else [0] * SECTORS
                             for r, t in zip(rows, told)], np.float32)
        self.reach = np.array([[float(c) for c in r["covered_reach"].split()] if t else [0] * SECTORS
                               for r, t in zip(rows, told)], np.float32)
        self.photos = np.array([r["photo"] for r in rows])
        self.verdict = np.array([r["class2"] for r in rows])

    def truth(self, device):
        cells = (np.arange(CELLS) + 0.5) / CELLS
        to = lambda a: torch.from_numpy(np.ascontiguousarray(a)).to(device)
        return {"wet": to(self.wet), "reach": to((cells[None, None, :] < self.reach[:, :, None]).astype(np.float32)),
                **{k: to(v) for k, v in targets(self).items()}, "component": to(self.component.astype(np.float32)),
                "condition": to(self.condition)}


def more(values, reaches, spread):
    """Whether there is more than each reach; a truth close to it is shared, since it is rounded."""
    return (1 / (1 + np.exp(-(values[:, None] - np.array(reaches)[None, :]) / spread))).astype(np.float32)


def targets(data):
    return {"wetted": more(data.wetted, DEGREES, 2.0), "covered": more(data.covered, SHARES, 0.005),
            "open": more(data.open, SHARES, 0.005)}


class Block(nn.Module):
    def __init__(self, wide):
        super().__init__()
        self.body = nn.Sequential(nn.Conv2d(wide, wide, 3, padding=1, bias=False), nn.BatchNorm2d(wide), nn.ReLU(),
                                  nn.Conv2d(wide, wide, 3, padding=1, bias=False), nn.BatchNorm2d(wide))

    def forward(self, x):
        return F.relu(x + self.body(x))


def step(before, after, stride, size=3):
    return nn.Sequential(nn.Conv2d(before, after, size, stride=stride, padding=size // 2, bias=False),
                         nn.BatchNorm2d(after), nn.ReLU())


class Reader(nn.Module):
    """From a picture's levels, 0 to 255, to logits."""

    def __init__(self):
        super().__init__()
        self.look = nn.Sequential(step(PLANES + 1, 32, 1, 5), step(32, 48, (2, 2)), Block(48),
                                  step(48, 96, (2, 1)), Block(96), step(96, 128, (2, 1)), Block(128),
                                  nn.Dropout2d(0.1))
        self.register_buffer("row", torch.linspace(-1, 1, HEIGHT).view(1, 1, HEIGHT, 1).repeat(1, 1, 1, WIDTH))
        self.down = nn.Sequential(nn.Conv2d(128, 160, (HEIGHT // 8, 1), bias=False), nn.BatchNorm2d(160), nn.ReLU())
        self.along = nn.ModuleList(nn.Sequential(
            nn.Conv2d(160, 160, (1, 3), padding=(0, far), dilation=(1, far), bias=False), nn.BatchNorm2d(160), nn.ReLU())
            for far in (1, 2, 4))
        self.sector = nn.Conv2d(160, 1 + CELLS, 1)
        self.head = nn.Sequential(nn.Linear(2 * 160 + 2 * (1 + CELLS), 256), nn.ReLU(), nn.Dropout(0.3),
                                  nn.Linear(256, len(DEGREES) + 2 * len(SHARES) + 1 + len(CONDITIONS)))

    def forward(self, levels, sectors=False):
        x = levels / 127.5 - 1
        x = torch.cat([x, x[:, :1] * 0 + self.row], 1)
        x = self.down(self.look(x))
        for each in self.along:
            x = x + each(x)
        edge = OVERLAP // 2
        x = x[:, :, :, edge:edge + SECTORS]
        each = self.sector(x)
        chance = torch.sigmoid(each)
        flat = torch.cat([x.mean((2, 3)), x.amax((2, 3)), chance.mean((2, 3)), chance.amin((2, 3))], 1)
        out = self.head(flat)
        return (out, each[:, :, 0].transpose(1, 2)) if sectors else out


def parts(out):
    d, s = len(DEGREES), len(SHARES)
    return {"wetted": out[:, :d], "covered": out[:, d:d + s], "open": out[:, d + s:d + 2 * s],
            "component": out[:, d + 2 * s], "condition": out[:, d + 2 * s + 1:]}


class Vary:
    """The same leg seen otherwise: turned, mirrored, in other light, colour, focus and grain."""

    def __init__(self, generator):
        self.g = generator

    def even(self, n, low, high, *shape):
        u = torch.rand((n,) + shape, generator=self.g, device=self.g.device)
        return low + (high - low) * u

    def normal(self, n, spread, *shape):
        return spread * torch.randn((n,) + shape, generator=self.g, device=self.g.device)

    def beside(self, core):
        """As the picture would be with the land laid a little beside its place, larger and turned."""
        n, device = len(core), core.device
        step_ = (core[:, 3] / 64).clamp(min=0.02)  # photo pixels from row to row
        reach = step_.cumsum(1)
        half = reach[:, 57].mean(1)
        angle = 2 * np.pi * (torch.arange(AROUND, device=device) + 0.5) / AROUND
        x, y = (self.normal(n, OFF, 2) * half[:, None]).unbind(1)
        cos, sin = torch.cos(angle)[None, None], torch.sin(angle)[None, None]
        x, y = x.view(n, 1, 1), y.view(n, 1, 1)
        size = self.normal(n, STRETCH).view(n, 1, 1) + self.normal(n, STRETCH).view(n, 1, 1) * torch.cos(2 * angle)[None, None]
        rows = (x * cos + y * sin + size * reach) / step_
        least = 0.25 * reach[:, 35:36]
        columns = (y * cos - x * sin) / torch.maximum(reach, least) * AROUND / (2 * np.pi)
        columns = columns + self.normal(n, TURN * AROUND / 360).view(n, 1, 1)
        pad = 24
        wide = torch.cat([core[..., -pad:], core, core[..., :pad]], 3)
        to_x = torch.arange(AROUND, device=device)[None, None] + pad + columns.clamp(-pad, pad - 1)
        to_y = torch.arange(HEIGHT, device=device)[None, :, None] + rows
        grid = torch.stack([2 * to_x / (AROUND + 2 * pad - 1) - 1, (2 * to_y / (HEIGHT - 1) - 1).clamp(-1.2, 1.2)], 3)
        moved = F.grid_sample(wide[:, :3], grid, mode="bilinear", padding_mode="border", align_corners=True)
        return torch.cat([moved, core[:, 3:]], 1)

    def __call__(self, pictures, truth):
        n = len(pictures)
        core = pictures[:, :, :, OVERLAP:OVERLAP + AROUND].float()
        step_ = core[:, 3, 0]
        round_ = (step_.amax(1) - step_.amin(1)) < 3
        turn = torch.randint(0, SECTORS, (n,), generator=self.g, device=core.device)
        turn = torch.where(round_, turn, (turn % 2) * (SECTORS // 2))
        mirror = self.even(n, 0, 1) < 0.5
        at = torch.arange(AROUND, device=core.device)[None, :].repeat(n, 1)
        at = (torch.where(mirror[:, None], AROUND - 1 - at, at) + 2 * turn[:, None]) % AROUND
        core = self.beside(core).gather(3, at[:, None, None, :].expand(-1, PLANES, HEIGHT, -1))
        s = at[:, ::2] // 2
        truth = dict(truth)
        truth["wet"] = truth["wet"].gather(1, s)
        truth["reach"] = truth["reach"].gather(1, s[:, :, None].expand(-1, -1, CELLS))
        light, rest = core[:, :3] / 255, core[:, 3:]
        one = lambda x: x.view(n, 1, 1, 1)
        some = lambda share: (self.even(n, 0, 1) < share).float()
        grey = light.mean(1, keepdim=True)
        light = light + one(some(0.3) * self.even(n, 0, 0.8)) * (grey - light)
        angle = 2 * np.pi * (torch.arange(AROUND, device=core.device) + 0.5) / AROUND
        shade = 1 + self.even(n, 0, 0.3)[:, None] * torch.cos(angle[None] + self.even(n, 0, 2 * np.pi)[:, None])
        light = light * torch.exp(self.normal(n, 0.1, 3)).view(n, 3, 1, 1) * one(torch.exp(self.normal(n, 0.2)))
        light = light * shade.view(n, 1, 1, AROUND) + one(self.normal(n, 0.02))
        light = light.clamp(0.002, 1.2) ** one(torch.exp(self.normal(n, 0.15)))
        wide = one(some(0.35) * self.even(n, 0.2, 0.9))
        soft_ = F.avg_pool2d(F.pad(F.pad(light, (1, 1, 0, 0), mode="circular"), (0, 0, 1, 1), mode="replicate"), 3, 1)
        light = light + wide * (soft_ - light)
        sharp = one(some(0.2) * self.even(n, 0.2, 1))
        light = light + sharp * (light - soft_)
        light = light + one(self.even(n, 0, 0.03)) * self.normal(n, 1, 3, HEIGHT, AROUND)
        core = torch.cat([(255 * light).clamp(0, 255), rest], 1)
        return torch.cat([core[..., -OVERLAP:], core, core[..., :OVERLAP]], 3), truth


def loss(out, each, truth):
    p = parts(out)
    yes = F.binary_cross_entropy_with_logits
    return (10 * (yes(p["wetted"], truth["wetted"]) + yes(p["covered"], truth["covered"]))
            + 3 * yes(p["open"], truth["open"]) + 0.5 * yes(p["component"], truth["component"])
            + 0.3 * F.cross_entropy(p["condition"], truth["condition"])
            + 2 * yes(each[:, :, 0], truth["wet"]) + yes(each[:, :, 1:], truth["reach"]))


def learn(fit, inside, steps, device):
    torch.manual_seed(SEED)
    generator = torch.Generator(device=device)
    generator.manual_seed(SEED)
    net = Reader().to(device)
    mean = {k: v.clone() for k, v in net.state_dict().items()}
    pictures = fit.pictures.to(device)
    truth = fit.truth(device)
    own = torch.from_numpy(np.flatnonzero(inside)).to(device)
    # What is rare is shown more often: every condition of a side alike often up to five times its share.
    kind = fit.condition[inside] * 2 + fit.component[inside]
    weight = torch.from_numpy((1.0 / np.maximum(np.bincount(kind)[kind], len(kind) / 60)).astype(np.float32)).to(device)
    optimiser = torch.optim.AdamW(net.parameters(), RATE, weight_decay=DECAY)
    schedule = torch.optim.lr_scheduler.OneCycleLR(optimiser, RATE, total_steps=steps, pct_start=0.15)
    vary = Vary(generator)
    start = time.time()
    for i in range(steps):
        net.train()
        pick = own[torch.multinomial(weight, BATCH, replacement=True, generator=generator)]
        shown, told = vary(pictures[pick], {k: v[pick] for k, v in truth.items()})
        with torch.autocast(device, dtype=torch.bfloat16, enabled=device == "cuda"):
            out, each = net(shown, True)
        value = loss(out.float(), each.float(), told)
        optimiser.zero_grad(set_to_none=True)
        value.backward()
        nn.utils.clip_grad_norm_(net.parameters(), 2.0)
        optimiser.step()
        schedule.step()
        with torch.no_grad():
            keep = min(AVERAGE, (1 + i) / (10 + i))
            for k, v in net.state_dict().items():
                if v.dtype.is_floating_point:
                    mean[k].mul_(keep).add_(v, alpha=1 - keep)
                else:
                    mean[k].copy_(v)
        if i % max(1, steps // 20) == 0:
            print("%d %.3f %.0f s" % (i, float(value.detach()), time.time() - start), flush=True)
    net.load_state_dict(mean)
    net.eval()
    return net


def said(net, pictures, device):
    out = []
    with torch.no_grad():
        for i in range(0, len(pictures), 512):
            out.append(net(pictures[i:i + 512].to(device).float()).cpu())
    return torch.cat(out)


def scaled(scores, true):
    """Slope and shift that make what is true likeliest (Platt 1999), by Newton's method."""
    x, y = scores.double(), torch.from_numpy(np.asarray(true, np.float64))
    slope, shift = torch.tensor(0.5, dtype=torch.float64), torch.tensor(0.0, dtype=torch.float64)
    for _ in range(100):
        p = torch.sigmoid(slope * x + shift)
        w = (p * (1 - p)).clamp(min=1e-6)
        wx = (w * x).sum()
        bend = torch.stack([torch.stack([(w * x * x).sum(), wx]), torch.stack([wx, w.sum()])]) + 1e-3 * torch.eye(2)
        change = torch.linalg.solve(bend, torch.stack([((y - p) * x).sum(), (y - p).sum()]))
        slope, shift = slope + change[0], shift + change[1]
    return round(float(slope), 3), round(float(shift), 3)


def scales(data, out):
    """Of solder sides at the limits of IPC-A-610: 180, 270 and 330 degrees, 75 % of the land."""
    p, mine = parts(out), ~data.component
    limits = [DEGREES.index(d) for d in (180.0, 270.0, 330.0)]
    at = SHARES.index(0.75)
    wetted = scaled(torch.cat([p["wetted"][mine][:, i] for i in limits]),
                    np.concatenate([data.wetted[mine] >= DEGREES[i] for i in limits]))
    covered = scaled(p["covered"][mine][:, at], data.covered[mine] >= SHARES[at])
    opened = scaled(p["open"][mine].reshape(-1), (data.open[mine, None] > np.array(SHARES)[None]).reshape(-1))
    return {"wetted": wetted, "covered": covered, "open": opened, "component": scaled(p["component"], data.component)}


def reaches(logits, scale):
    """Chances of more than each reach, none greater than of a smaller one."""
    return np.minimum.accumulate(torch.sigmoid(scale[0] * logits + scale[1]).numpy(), 1)


def mean(chance, steps):
    """Mean and standard deviation of a reach: chances times the distance from each reach to the next."""
    wide = np.diff(np.append(steps, [360.0 if steps[-1] > 2 else 1.0]))
    middle = np.array(steps) + wide / 2
    first = (chance * wide).sum(1)
    second = (2 * chance * wide * middle).sum(1)
    return first, np.sqrt(np.maximum(0, second - first ** 2))


def count(name, data, out, scale, log):
    p = parts(out)
    wet, cover = reaches(p["wetted"], scale["wetted"]), reaches(p["covered"], scale["covered"])
    degrees, spread = mean(wet, DEGREES)
    covered, _ = mean(cover, SHARES)
    for side in ("solder", "component"):
        mine = data.component == (side == "component")
        if not mine.any():
            continue
        need = 270 if side == "solder" else 180
        kept = wet[:, DEGREES.index(need)]
        if side == "solder":
            kept = np.minimum(kept, cover[:, SHARES.index(0.75)])
        off = np.abs(degrees - data.wetted)
        log("%s %s: %d legs; degrees within 20 %.1f %%, within 2 u %.1f %%; cover mean error %.3f" % (
            name, side, mine.sum(), 100 * (off[mine] <= 20).mean(), 100 * (off[mine] <= 2 * spread[mine] + 5).mean(),
            np.abs(covered - data.covered)[mine].mean()))
        for level in (0.95, 0.98, 0.99):
            words = []
            for true in ("defect", "acceptable", "limit"):
                at = mine & (data.verdict == true)
                words.append("%s %d: good %d, called %d" % (
                    true, at.sum(), (kept[at] >= level).sum(), (kept[at] <= 1 - level).sum()))
            log("  at %.2f  %s" % (level, "; ".join(words)))
        bad = mine & (data.verdict == "defect") & (kept >= 0.95)
        log("  passed at 0.95: " + ", ".join("%s leg %s %s %.3f" % (
            data.photos[i], data.rows[i]["leg"], data.rows[i]["condition"], kept[i]) for i in np.flatnonzero(bad)[:20]))
        wrong = mine & (data.verdict == "acceptable") & (kept <= 0.05)
        log("  called at 0.95: " + ", ".join("%s leg %s %s %.3f" % (
            data.photos[i], data.rows[i]["leg"], data.rows[i]["condition"], kept[i]) for i in np.flatnonzero(wrong)[:20]))
    side = torch.sigmoid(scale["component"][0] * p["component"] + scale["component"][1]).numpy()
    log("  component side: of it least %.3f, 5 %% %.3f; of solder sides most %.3f, 95 %% %.3f" % (
        side[data.component].min(initial=1), np.quantile(side[data.component], 0.05) if data.component.any() else 1,
        side[~data.component].max(initial=0), np.quantile(side[~data.component], 0.95) if (~data.component).any() else 0))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("out")
    parser.add_argument("--fit", nargs="+", required=True)
    parser.add_argument("--keep", nargs="*", default=[])
    parser.add_argument("--scale", nargs="*", default=[])
    parser.add_argument("--steps", type=int, default=6000)
    parser.add_argument("--source", default="models/legs/train.py")
    options = parser.parse_args()
    os.makedirs(options.out, exist_ok=True)
    os.environ.setdefault("CUBLAS_WORKSPACE_CONFIG", ":4096:8")
    torch.backends.cudnn.deterministic = True
    torch.backends.cudnn.benchmark = False
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = True
    device = "cuda" if torch.cuda.is_available() else "cpu"
    file = open(os.path.join(options.out, "figures.txt"), "w", encoding="utf-8")

    def log(line):
        print(line, flush=True)
        file.write(line + "\n")
        file.flush()

    fit = Set(options.fit)
    photos = sorted(set(fit.photos))
    aside = set(photos[::10])
    inside = np.array([p not in aside for p in fit.photos])
    log("%d pictures of legs in %d photos, %d photos aside" % (len(fit.rows), len(photos), len(aside)))
    net = learn(fit, inside, options.steps, device)
    rest = said(net, fit.pictures[~inside], device)
    half = Set.__new__(Set)
    half.__dict__.update({k: (v[~inside] if isinstance(v, np.ndarray) else v) for k, v in fit.__dict__.items()})
    half.rows = [r for r, i in zip(fit.rows, inside) if not i]
    if options.scale:
        found = Set(options.scale)
        scale = scales(found, said(net, found.pictures, device))
    else:
        scale = scales(half, rest)
    log("slopes and shifts " + json.dumps(scale))
    count("aside", half, rest, scale, log)
    net = net.cpu()
    for each in options.keep:
        name, folder = each.split("=")
        data = Set([folder])
        out = said(net.to(device), data.pictures, device)
        count(name, data, out, scale, log)
        np.save(os.path.join(options.out, name + ".npy"), out.numpy())
    net = net.cpu()
    path = os.path.join(options.out, "reader.onnx")
    more = {"dynamo": False} if torch.__version__ >= "2" else {}
    torch.onnx.export(net, fit.pictures[:2].float(), path, input_names=["legs"], output_names=["scores"],
                      opset_version=12, dynamic_axes={"legs": {0: "n"}, "scores": {0: "n"}}, **more)
    with open(path, "rb") as onnx:
        sha = hashlib.sha256(onnx.read()).hexdigest()
    with open(os.path.join(options.out, "reader.json"), "w", encoding="utf-8") as out:
        json.dump({"source": options.source, "sha256": sha, "degrees": DEGREES, "shares": SHARES,
                   **{k: {"slope": a, "shift": b, "source": options.source} for k, (a, b) in scale.items()}, "full_from": 250}, out, indent=1)
        out.write("\n")
    log("sha256 " + sha)


if __name__ == "__main__":
    main()
