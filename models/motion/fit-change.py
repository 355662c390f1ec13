"""Fits the log odds that solder came, by the signals of a joint, and prints them.

Arguments: files of lines "pair,lamp,pitch_px,likeness,pin,condition,signal..." (the tests' program
leadlight.together.ChangeTable). What is open after was left as it was; missing leads play no part,
nor do joints of which a zone does not show (NaN): they are never judged by their signals.
Newton's method with a ridge; figures by pairs left out, a sixth of them at a time.
"""
import json
import pathlib
import sys

import numpy

FLOOR = json.loads(pathlib.Path(__file__).with_name("change.json").read_text())["floor"]["value"]


def fitted(x, y):
    mean, spread = x.mean(0), x.std(0) + 1e-9
    z = numpy.hstack([numpy.ones((len(x), 1)), (x - mean) / spread])
    ridge = 1e-4 * len(x) * numpy.diag([0] + [1] * x.shape[1])
    c = numpy.zeros(z.shape[1])
    for _ in range(60):
        p = 1 / (1 + numpy.exp(-numpy.clip(z @ c, -30, 30)))
        hessian = (z * (p * (1 - p))[:, None]).T @ z + ridge + 1e-9 * numpy.eye(len(c))
        c += numpy.linalg.solve(hessian, z.T @ (y - p) - ridge @ c)
    weights = c[1:] / spread
    return c[0] - weights @ mean, weights


rows = [line.strip().split(",") for name in sys.argv[1:] for line in open(name) if line.startswith("placed")]
rows = [r for r in rows if r[5] != "missing-lead" and "NaN" not in r[6:]]
signals = numpy.array([[float(v) for v in r[6:]] for r in rows])
x = numpy.log(numpy.maximum(signals, 0) + FLOOR)
y = numpy.array([r[5] != "open" for r in rows], float)
pair = numpy.unique([r[0] + r[1] + r[2] for r in rows], return_inverse=True)[1]
offset, weights = fitted(x, y)
print("offset", round(float(offset), 3), "weights", [round(float(w), 3) for w in weights])
left = numpy.zeros(len(y))
for part in range(6):
    out = pair % 6 == part
    o, w = fitted(x[~out], y[~out])
    left[out] = 1 / (1 + numpy.exp(-(o + x[out] @ w)))
print("pairs", pair.max() + 1, "unchanged", int((y == 0).sum()), "soldered", int((y == 1).sum()))
for t in (0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.7):
    print(t, "unchanged to it", round((left[y == 0] <= t).mean(), 4), "soldered", round((left[y == 1] <= t).mean(), 4))
