"""The figures of these tests once more, by libraries that are not ours.

Run in this folder:  python3 outside.py > outside.json
(Debian 12: python3-scipy, python3-sklearn, python3-statsmodels)
"""
import csv
import json
import sys

import numpy as np
import pandas
import scipy
import sklearn
import statsmodels
from scipy.stats import beta, binom, hypergeom, norm
from sklearn.metrics import cohen_kappa_score
from statsmodels.formula.api import ols
from statsmodels.stats.anova import anova_lm
from statsmodels.stats.contingency_tables import mcnemar
from statsmodels.stats.inter_rater import cohens_kappa, fleiss_kappa
from statsmodels.stats.proportion import proportion_confint

out = {
    "made_with": f"scipy {scipy.__version__}, scikit-learn {sklearn.__version__}, "
    f"statsmodels {statsmodels.__version__}"
}

# Operating characteristics of the normal plans.
for n, c in [(13, 0), (50, 1), (80, 2), (125, 3), (200, 5), (315, 7)]:
    for share in [0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12]:
        out[f"oc {n}/{c} at {share}"] = binom.cdf(c, n, share)
    for pa in [0.95, 0.5, 0.1]:
        lo, hi = 0.0, 1.0
        for _ in range(200):
            mid = (lo + hi) / 2
            lo, hi = (mid, hi) if binom.cdf(c, n, mid) > pa else (lo, mid)
        out[f"quality {n}/{c} at {pa}"] = lo
for k in [2, 5, 10, 25, 50]:
    out[f"oc 50/1 in lot of 500 with {k}"] = hypergeom.cdf(1, 500, k, 50)


def risk_plan(lot, good, bad, alpha, beta_):
    for n in range(1, lot + 1):
        for c in range(0, n):
            if 1 - hypergeom.cdf(c, lot, good, n) <= alpha:
                if hypergeom.cdf(c, lot, bad, n) <= beta_:
                    return [n, c]
                break
    return None


out["risk plan 500, 5, 25, .05, .10"] = risk_plan(500, 5, 25, 0.05, 0.10)
out["risk plan 200, 1, 20, .05, .10"] = risk_plan(200, 1, 20, 0.05, 0.10)
out["risk plan 1000, 0, 10, .05, .05"] = risk_plan(1000, 0, 10, 0.05, 0.05)

# Intervals.
for k, n in [(81, 263), (15, 148), (0, 20), (1, 29), (0, 19)]:
    out[f"wilson {k}/{n}"] = list(proportion_confint(k, n, 0.05, "wilson"))
    out[f"exact {k}/{n}"] = list(proportion_confint(k, n, 0.05, "beta"))
out["exact 90 % 4/20"] = list(proportion_confint(4, 20, 0.10, "beta"))

# Agreement.
cohen = np.array([[88, 10, 2], [14, 40, 6], [18, 10, 12]])
weights = np.array([[0, 1, 3], [1, 0, 6], [3, 6, 0]])
negative = np.array([[25, 13, 12], [12, 2, 16], [3, 15, 2]])
joints = np.array([[316, 408], [435, 8841]])
for name, table in [("cohen", cohen), ("negative", negative), ("joints", joints)]:
    k = cohens_kappa(table)
    out[f"kappa {name}"] = [k.kappa, k.kappa_low, k.kappa_upp]
k = cohens_kappa(cohen, weights=weights)
out["weighted kappa cohen"] = [k.kappa, k.kappa_low, k.kappa_upp]

fleiss = np.loadtxt("fleiss-1971.csv", delimiter=",", skiprows=1)
out["kappa fleiss"] = fleiss_kappa(fleiss)
left = np.array([fleiss_kappa(np.delete(fleiss, i, 0)) for i in range(len(fleiss))])
error = np.sqrt((len(left) - 1) / len(left) * np.sum((left - left.mean()) ** 2))
out["jackknife error fleiss"] = error

grades = pandas.read_csv("aiag-attribute.csv")
ref = grades[grades.grader == "reference"].set_index("item").verdict
wide = grades[grades.grader != "reference"].pivot(index=["item", "trial"], columns="grader", values="verdict")
truth = wide.index.get_level_values("item").map(ref)
for a, b in ["AB", "BC", "AC"]:
    out[f"aiag kappa {a}{b}"] = cohen_kappa_score(wide[a], wide[b])
for a in "ABC":
    out[f"aiag kappa {a}"] = cohen_kappa_score(wide[a], truth)
    miss = int(((wide[a] == 1) & (truth == 0)).sum())
    alarm = int(((wide[a] == 0) & (truth == 1)).sum())
    out[f"aiag miss, alarm {a}"] = [miss, alarm]
    out[f"aiag mcnemar {a}"] = mcnemar([[0, miss], [alarm, 0]], exact=True).pvalue

# Gauge.
gauge = pandas.read_csv("aiag-gauge.csv")
table = anova_lm(ols("value ~ C(part) * C(operator)", gauge).fit())
out["gauge sums"] = [
    table.sum_sq["C(operator)"],
    table.sum_sq["C(part)"],
    table.sum_sq["C(part):C(operator)"],
    table.sum_sq["Residual"],
]
out["gauge interaction p"] = table["PR(>F)"]["C(part):C(operator)"]
drift = pandas.DataFrame(
    {
        "part": list("aaabbbccc"),
        "day": [0, 3, 9, 1, 4, 8, 0, 5, 9],
        "value": [1.0, 1.3, 1.6, 5.0, 5.4, 5.5, 3.1, 3.2, 3.9],
    }
)
fit = ols("value ~ C(part) + day", drift).fit()
out["drift"] = [fit.params.day, *fit.conf_int().loc["day"], fit.pvalues.day]

# Conformance (JCGM 106:2012).
out["conformance"] = [
    norm.cdf((-5.40 + 5.47) / 0.05),
    norm.cdf((509.7 - 490) / 8.6),
    norm.cdf((16.3 - 13.6) / 1.8) - norm.cdf((12.5 - 13.6) / 1.8),
]

json.dump(out, sys.stdout, indent=1, default=float)
print()
