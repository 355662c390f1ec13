"""How often intervals by cluster hold: the first four tables of docs/quality-coverage.md and its last two, by NumPy and SciPy.

    python coverage.py [STUDIES]

The arithmetic of leadlight.statistics.ClusterFit once more: beta-binomial counts, Jeffreys' prior of
the share, Beta(1, 4) of the likeness; never narrower than Wilson's interval of each unit alone, nor, where every
cluster is hit as a whole or not at all, than Wilson's of clusters.
"""
import sys

import numpy as np
from scipy.special import gammaln
from scipy.stats import norm, t

Z = norm.ppf(.975)
LOGITS = np.linspace(np.log(1e-5), np.log(.999 / .001), 350)
SHARES = 1 / (1 + np.exp(-LOGITS))
ODDS = np.exp(np.linspace(-9.2, 9.2, 48))
LIKENESSES = ODDS / (1 + ODDS)
PRIOR = np.log(LIKENESSES) - 4 * np.log(1 + ODDS)


def wilson(share, size):
    wide = 1 + Z * Z / size
    half = Z / wide * np.sqrt(share * (1 - share) / size + Z * Z / 4 / size ** 2)
    centre = (share + Z * Z / 2 / size) / wide
    return centre - half, centre + half


def logs(size):
    """Logarithm of the likelihood of each count of a cluster, by share and likeness."""
    count = np.arange(size + 1)[:, None, None]
    weight = 1 / ODDS[None, None, :]
    a, b = SHARES[None, :, None] * weight, (1 - SHARES)[None, :, None] * weight
    return (gammaln(a + count) - gammaln(a) + gammaln(b + size - count) - gammaln(b)
            - gammaln(a + b + size) + gammaln(a + b)).reshape(size + 1, -1)


def held(share, likeness, clusters, size, studies, kinds):
    """Shares of studies whose interval holds it, lies above it, below it; Wilson's that hold it."""
    dice = np.random.default_rng(2026)
    if kinds:
        bad = share + likeness * (1 - share)
        own = bad * (dice.random((studies, clusters)) < share / bad)
    elif likeness == 0:
        own = np.full((studies, clusters), share)
    else:
        beta = (1 - likeness) / likeness
        own = dice.beta(share * beta, (1 - share) * beta, (studies, clusters))
    counts = dice.binomial(size, own)
    table = np.apply_along_axis(lambda c: np.bincount(c, minlength=size + 1), 1, counts)
    fit = (table.astype(float) @ logs(size)).reshape(studies, len(SHARES), -1)
    fit += .5 * (np.log(SHARES) + np.log(1 - SHARES))[None, :, None] + PRIOR[None, None, :]
    weights = np.exp(fit - fit.max((1, 2), keepdims=True)).sum(2)
    below = (weights / weights.sum(1, keepdims=True)).cumsum(1)
    alone = wilson(counts.sum(1) / (clusters * size), clusters * size)
    lower = np.minimum(SHARES[(below < .025).sum(1)], alone[0])
    upper = np.maximum(SHARES[np.minimum((below < .975).sum(1), len(SHARES) - 1)], alone[1])
    hit = (counts > 0).sum(1)
    whole = ((counts == 0) | (counts == size)).all(1) & (hit > 0) & (hit < clusters)
    each = wilson(hit / clusters, clusters)
    lower = np.where(whole, np.minimum(lower, each[0]), lower)
    upper = np.where(whole, np.maximum(upper, each[1]), upper)
    return (np.mean((lower <= share) & (share <= upper)), np.mean(lower > share),
            np.mean(upper < share), np.mean((alone[0] <= share) & (share <= alone[1])))


def lines(cases, studies, kinds=False):
    print("| share | likeness | a cluster | clusters | by cluster | too high | too low | Wilson, each alone |")
    print("|---|---|---|---|---|---|---|---|")
    for share, likeness, clusters, size in cases:
        rates = held(share, likeness, clusters, size, studies, kinds)
        print(f"| {100 * share:g} % | {likeness:.2f} | {size} | {clusters} |",
              " | ".join(f"{100 * rate:.1f} %" for rate in rates), "|")


def biases(studies):
    """Bias by part, a t interval (leadlight.quality.gauge.Bias): of these operators, and of operators at large."""
    print("| operators | parts, trials | reproducibility to repeatability | of these operators | of operators at large |")
    print("|---|---|---|---|---|")
    dice = np.random.default_rng(2026)
    for operators, parts, trials in ((1, 10, 3), (3, 10, 3), (3, 10, 2), (6, 10, 3)):
        for spread in (0, .5, 1.15):
            own = dice.normal(0, spread, (studies, operators))
            read = own[:, None, :] + dice.normal(0, 1 / np.sqrt(trials), (studies, parts, operators))
            part = read.mean(2)
            mean, half = part.mean(1), t.ppf(.975, parts - 1) * part.std(1, ddof=1) / np.sqrt(parts)
            print(f"| {operators} | {parts}, {trials} | {spread:g} | {100 * np.mean(abs(mean - own.mean(1)) < half):.1f} % |"
                  f" {100 * np.mean(abs(mean) < half):.1f} % |")


def mean(known, off):
    return off.mean(1)


def slope(known, off):
    x = known - known.mean(1, keepdims=True)
    return (x * off).sum(1) / (x * x).sum(1)


def errors(boards, count, known, off, statistic):
    """Standard errors by leaving out a board at a time."""
    without = np.array([statistic(known[:, boards != b], off[:, boards != b]) for b in range(count)])
    return np.sqrt((count - 1) * without.var(0))


def boards(studies):
    """Bias and linearity of joints on boards: a board left out at a time, and by part as if each stood alone."""
    print("| boards | joints a board | likeness | bias, by board | by part | slope, by board | by part |")
    print("|---|---|---|---|---|---|---|")
    dice = np.random.default_rng(2026)
    for sizes in ((4,) * 5, (4,) * 10, (12,) * 5, (12,) * 10, (1, 2, 3, 5, 9, 12)):
        for alike in (0, .3, .6):
            on, n, k = np.repeat(np.arange(len(sizes)), sizes), sum(sizes), len(sizes)
            known, off = (np.sqrt(a) * dice.normal(0, 1, (studies, k))[:, on]
                          + np.sqrt(1 - a) * dice.normal(0, 1, (studies, n)) for a in (.5, alike))
            m, s = mean(known, off), slope(known, off)
            x = known - known.mean(1, keepdims=True)
            rest = (off - off.mean(1, keepdims=True) - s[:, None] * x).var(1) * n / (n - 2)
            plain = off.std(1, ddof=1) / np.sqrt(n), np.sqrt(rest / (x * x).sum(1))
            held = (abs(m) < t.ppf(.975, k - 1) * errors(on, k, known, off, mean), abs(m) < t.ppf(.975, n - 1) * plain[0],
                    abs(s) < t.ppf(.975, k - 2) * errors(on, k, known, off, slope), abs(s) < t.ppf(.975, n - 2) * plain[1])
            size = sizes[0] if len(set(sizes)) == 1 else ", ".join(map(str, sizes))
            print(f"| {k} | {size} | {alike:g} |", " | ".join(f"{100 * np.mean(h):.1f} %" for h in held), "|")


if __name__ == "__main__":
    STUDIES = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    lines([(p, r, k, 19) for p in (.005, .02, .04) for r in (0, .05, .1, .3) for k in (10, 20, 40, 100)],
          STUDIES)
    lines([(p, r, k, m) for p in (.04, .2) for r in (0, .1, .3)
           for k, m in ((20, 2), (16, 5), (16, 57), (16, 200))], STUDIES)
    lines([(p, r, k, m) for p in (.02, .04) for r in (.05, .1, .3)
           for k, m in ((20, 19), (40, 19), (100, 19), (16, 57))], STUDIES, kinds=True)
    lines([(p, r, k, m) for p in (.02, .05, .2) for r in (.6, .85, .95)
           for k, m in ((10, 19), (20, 19), (40, 19), (100, 19), (20, 5))], STUDIES)
    biases(20 * STUDIES)
    boards(10 * STUDIES)
