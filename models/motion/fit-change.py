"""Fits the log odds that solder came, by the signals of a joint, and prints them.

Reads lines "set,lamp,pitch_px,likeness,pin,condition,signal..." of pairs before and after. What is
open after was left as it was; missing leads play no part. Ridge of 1e-3, Newton's method.
"""
import sys

import numpy

rows = [line.strip().split(",") for line in open(sys.argv[1]) if line.startswith("placed")]
rows = [r for r in rows if r[5] != "missing-lead"]
x = numpy.log(numpy.maximum(numpy.nan_to_num(numpy.array([[float(v) for v in r[6:]] for r in rows])), 0) + 0.003)
y = numpy.array([r[5] != "open" for r in rows], float)
one = numpy.hstack([numpy.ones((len(x), 1)), x])
c = numpy.zeros(one.shape[1])
for _ in range(60):
    p = 1 / (1 + numpy.exp(-one @ c))
    hessian = (one * (p * (1 - p))[:, None]).T @ one + 1e-3 * len(x) * numpy.eye(len(c)) * 0.01
    c += numpy.linalg.solve(hessian, one.T @ (y - p) - 1e-3 * len(x) * 0.01 * c)
p = 1 / (1 + numpy.exp(-one @ c))
print("weights", [round(v, 3) for v in c])
for t in (0.02, 0.05, 0.1, 0.2, 0.3, 0.5):
    print(t, "unchanged called", (p[y == 0] <= t).mean(), "soldered called unchanged", (p[y == 1] <= t).mean(), (y == 0).sum(), (y == 1).sum())
