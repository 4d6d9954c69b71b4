"""Calibrated limits of an efficacy at confidence levels next to 1, by plain sums on fine grids; no
shared code with the program. Every term is positive and tails are added up from their own end.

Checks the arithmetic of the method in docs/methods.md, not the method itself.
Run by hand:  python3 high_level_efficacy.py > ../resources/reference/efficacy/high-levels.csv
Needs numpy and scipy.
"""

import sys

import numpy as np
import scipy
from scipy.interpolate import CubicSpline
from scipy.special import gammaln

TRIALS = [
    ("3 12 0 7 9 1", "0 1 2 0 1 0", "5 8 2 0 11 3", "9 4 7 12 3 0"),
    ("30 41 25 36 28 33", "2 1 4 0 3 2", "27 35 31 22 40 29", "33 28 45 30 26 38"),
]
LEVELS = ["0.95", "0.999999", "0.999999999", "0.999999999999", "0.9999999999999999"]
UNITS = 10.0
STEP = 0.03


def group(counts, k, t):
    """ln of likelihood times weight (m / (1 + m))^(1/2), m individuals expected in a sample."""
    y = np.array([float(v) for v in counts.split()])
    m = UNITS * np.exp(t)
    clumping = sum(gammaln(k + v) - gammaln(k) - v * np.log(k) for v in y)
    log = y.sum() * t - (y.size * k + y.sum()) * np.log1p(m / k)
    return clumping + log - 0.5 * np.log1p(1 / m)



def distribution(trial):
    """Values on an even grid around 0, scaled."""
    half = 150.0
    t = np.arange(-half, half + STEP / 2, STEP)
    total, top = 0, None
    log_k = np.arange(np.log(0.5) - 24, np.log(0.5) + 24, 0.15)
    heights = []
    for x in log_k:
        k = np.exp(x)
        before_t, after_t, before_c, after_c = (group(c, k, t) for c in trial)
        scale = sum(v.max() for v in (before_t, after_t, before_c, after_c))
        heights.append(scale - ((x - np.log(0.5)) / 2) ** 2 / 2)
    heights = np.array(heights)
    for x, height in zip(log_k, heights):
        if height < heights.max() - 60:
            continue
        k = np.exp(x)
        f = [np.exp(v - v.max()) for v in (group(c, k, t) for c in trial)]
        keep = [np.flatnonzero(v > 1e-26) for v in f]
        f = [(v[i[0] : i[-1] + 1], i[0]) for v, i in zip(f, keep)]
        arm_t, at_t = minus(f[1], f[0])
        arm_c, at_c = minus(f[3], f[2])
        whole, at = minus((arm_t, at_t), (arm_c, at_c))
        out = np.zeros(8 * t.size)
        start = at + 4 * t.size
        out[start : start + whole.size] = whole
        total = total + np.exp(height - heights.max()) * out
    x = (np.arange(total.size) - 4 * t.size) * STEP
    return x, total


def minus(a, b):
    (f, i), (g, j) = a, b
    return np.convolve(f, g[::-1]), i - j - (g.size - 1)


def limits(x, f, alpha):
    parts = np.zeros(f.size)
    parts[1:-2] = STEP / 24 * (-f[:-3] + 13 * f[1:-2] + 13 * f[2:-1] - f[3:])
    parts = np.maximum(parts, 0)
    wanted = np.log(parts.sum() * alpha / 2)
    with np.errstate(divide="ignore"):
        below = np.log(np.cumsum(parts))
        above = np.log(np.cumsum(parts[::-1]))
    return crossing(x + STEP, below, wanted), -crossing(-x[::-1], above, wanted)


def crossing(x, rising, wanted):
    near = np.searchsorted(rising, wanted)
    window = slice(near - 8, near + 8)
    return float(CubicSpline(rising[window], x[window])(wanted))


def main():
    print("# source: sums on fine grids of the formulas in docs/methods.md, every tail from its own end")
    print("#   (own arithmetic), src/test/reference-scripts/high_level_efficacy.py; numpy", np.__version__, "scipy", scipy.__version__)
    print("# interaction = ln(1 - efficacy); 10 units a jar. tolerance: 2e-5 absolute")
    print("treated_before;treated_after;check_before;check_after;level;lower;upper")
    for trial in TRIALS:
        x, f = distribution(trial)
        for level in LEVELS:
            lower, upper = limits(x, f, 1 - float(level))
            print(";".join(trial + (level, f"{lower:.9g}", f"{upper:.9g}")))
            sys.stdout.flush()


main()
