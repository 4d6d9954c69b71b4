"""Integrated intervals by brute force: plain sums on fine grids, no shared code with the program.

Checks the arithmetic of the method in docs/methods.md, not the method itself.
Run by hand:  python3 integrated_interval.py > ../resources/reference/interval/integrated.csv
Needs numpy and scipy.
"""

import sys

import numpy as np
from scipy.interpolate import CubicSpline
from scipy.special import betaln, gammaln

T_STEPS = 40_001
K_STEPS = 1_601


def log_likelihood(t, k, counts, exposures):
    """Negative binomial log-likelihood without constants, t on axis 0, k on axis 1."""
    total = np.zeros((t.size, k.size))
    for y, c in zip(counts, exposures):
        z = c * np.exp(t)[:, None] / k[None, :]
        total += (
            gammaln(k + y) - gammaln(k) - y * np.log(k)
        )[None, :] + y * t[:, None] - (k[None, :] + y) * np.log1p(z)
    return total


def mixed(t, counts, exposures, median, spread, given_k):
    """ln of the likelihood integrated over k, at each t."""
    out = np.empty(t.size)
    x = np.linspace(np.log(median) - 8 * spread, np.log(median) + 8 * spread, K_STEPS)
    for start in range(0, t.size, 2000):
        part = t[start : start + 2000]
        if given_k is not None and np.isinf(given_k):
            out[start : start + 2000] = sum(counts) * part - np.exp(part) * sum(exposures)
        elif given_k is not None:
            out[start : start + 2000] = log_likelihood(
                part, np.array([given_k]), counts, exposures
            )[:, 0]
        else:
            values = log_likelihood(part, np.exp(x), counts, exposures)
            values += -0.5 * ((x - np.log(median)) / spread) ** 2
            top = values.max(axis=1)
            out[start : start + 2000] = top + np.log(np.exp(values - top[:, None]).sum(axis=1))
    return out


def beta_grid(found, known):
    """ln q and weights of Beta(found + 1/2, known - found + 1/2)."""
    a, b = found + 0.5, known - found + 0.5
    x = np.linspace(-60 / a - 5, 60 / b + 5, 6001)
    log_q, log_r = -np.logaddexp(0, -x), -np.logaddexp(0, x)
    w = np.exp(a * log_q + b * log_r - betaln(a, b)) * (x[1] - x[0])
    keep = w > 1e-14 * w.max()
    return log_q[keep], w[keep]


def interval(counts, exposures, median, spread, given_k, shares, threshold):
    mean_share = 1.0
    for found, known in shares:
        mean_share *= (found + 0.5) / (known + 1)
    total = sum(counts)
    largest = 50 * (total + 1) / (sum(exposures) * mean_share)
    end = np.log(largest)
    width = 45 if total < 100 else 25 if total < 1000 else 8
    t = np.linspace(end - width, end, T_STEPS)
    log_f = mixed(t, counts, exposures, median, spread, given_k) + 0.25 * t
    f = np.exp(log_f - log_f.max())
    for found, known in shares:
        log_q, w = beta_grid(found, known)
        spline = CubicSpline(t, f)
        g = np.zeros_like(f)
        for v, weight in zip(log_q, w):
            inside = t + v >= t[0]
            g[inside] += weight * np.exp(-0.25 * v) * spline(t[inside] + v)
        f = g
    below = CubicSpline(t, f).antiderivative()(t)
    above = 1 - CubicSpline(t, below)(np.log(threshold)) / below[-1]
    below /= below[-1]
    core = (below > 1e-4) & (below < 1 - 1e-4)
    inverse = CubicSpline(below[core], t[core])
    limits = np.exp(inverse([0.025, 0.975]))
    return limits[0], limits[1], above, largest


CASES = [
    ("12 jars, one find", [1] + [0] * 11, [10] * 12, None, []),
    ("12 jars, three finds", [1, 0, 0, 2, 0, 0, 0, 0, 0, 0, 0, 0], [10] * 12, None, []),
    ("12 jars, clumped", [0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0], [10] * 12, None, []),
    ("12 jars, unequal", [0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0],
     [8, 10, 12, 6, 14, 9, 10, 11, 7, 10, 13, 8], None, []),
    ("4 jars, clumped", [0, 7, 1, 0], [10] * 4, None, []),
    ("2 jars", [2, 5], [10] * 2, None, []),
    ("2 jars, equal", [3, 3], [10] * 2, None, []),
    ("20 jars, many", [22, 31, 8, 14, 9, 40, 17, 25, 3, 12, 19, 28, 7, 33, 21, 10, 15, 6, 18, 24],
     [10] * 20, None, []),
    ("8 jars, large counts", [912, 1350, 788, 1104, 1523, 640, 987, 1210], [1] * 8, None, []),
    ("one jar, k 0.5", [4], [10], 0.5, []),
    ("12 jars, k 0.8", [0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0], [10] * 12, 0.8, []),
    ("12 jars, Poisson", [0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0], [10] * 12, np.inf, []),
    ("12 jars, efficiency 18/24", [0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0], [10] * 12, None, [(18, 24)]),
    ("12 jars, efficiency 3/5, sensitivity 19/20", [0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0],
     [10] * 12, None, [(3, 5), (19, 20)]),
    ("2 jars, efficiency 18/24", [2, 5], [10] * 2, None, [(18, 24)]),
]


def main():
    print("# source: plain sums on fine grids of the formula in docs/methods.md#interval,")
    print("#   src/test/reference-scripts/integrated_interval.py; numpy", np.__version__)
    print("# tolerance: 1e-6 relative")
    print("case;counts;exposures;k;shares;threshold;lower;upper;above;largest")
    for name, counts, exposures, k, shares in CASES:
        threshold = 0.3 if sum(counts) < 100 else 2.0 if sum(counts) < 1000 else 1000.0
        lower, upper, above, largest = interval(counts, exposures, 0.5, 2.0, k, shares, threshold)
        print(";".join([
            name, " ".join(map(str, counts)), " ".join(map(str, exposures)),
            "" if k is None else "Infinity" if np.isinf(k) else str(k),
            " ".join(f"{a}/{b}" for a, b in shares), str(threshold),
            f"{lower:.12g}", f"{upper:.12g}", f"{above:.12g}", f"{largest:.12g}"]))
        sys.stdout.flush()


main()
