"""Limits at confidence levels next to 1, by plain sums on fine grids; no shared code with the
program. Every term of a sum is positive and tails are added up from their own end, so that a tail
of 5e-17 keeps its digits.

Checks the arithmetic of the method in docs/methods.md, not the method itself.
Run by hand:  python3 high_levels.py > ../resources/reference/interval/high-levels.csv
Needs numpy and scipy.
"""

import sys

import numpy as np
import scipy
from scipy.interpolate import CubicSpline
from scipy.special import betaln, gammaln, logsumexp

T_STEPS = 12_001
K_STEPS = 1_201
CLUMPED = "0 3 1 0 12 0 2 0 0 5 1 0"
SOME = "3 1 0 12 0 2"
HIGHEST = "0.9999999999999999"

CASES = [
    # counts; units; k; shares; level
    (CLUMPED, 10, "", "", "0.9999999"),
    (CLUMPED, 10, "", "", "0.999999999999"),
    (CLUMPED, 10, "", "", HIGHEST),
    ("2 5", 10, "", "", HIGHEST),
    ("1 0 0 0 0 0 0 0 0 0 0 0", 10, "", "", HIGHEST),
    ("912 1350 788 1104 1523 640 987 1210", 1, "", "", HIGHEST),
    (CLUMPED, 10, "", "18/24", "0.999999999"),
    (CLUMPED, 10, "", "18/24", HIGHEST),
    (SOME, 10, "0.8", "", HIGHEST),
    (SOME, 10, "0.8", "18/24", HIGHEST),
    (SOME, 10, "0.8", "18/24 46/50", HIGHEST),
    (SOME, 10, "0.8", "24/24", HIGHEST),
    (SOME, 10, "0.8", "0/1", HIGHEST),
    (SOME, 10, "Infinity", "", HIGHEST),
    (SOME, 10, "Infinity", "18/24", HIGHEST),
    (SOME, 10, "Infinity", "1/1 18/24", HIGHEST),
    ("0 0 0 0 0 0 0 0", 10, "", "", "0.999999999"),
    ("0 0 0 0 0 0 0 0", 10, "", "", HIGHEST),
    ("0 0 0 0 0 0 0 0", 10, "", "18/24", "0.999999999"),
    ("0 0 0 0 0 0 0 0", 10, "0.8", "", HIGHEST),
    ("0 0 0 0 0 0 0 0", 10, "0.8", "18/24", HIGHEST),
    ("0 0 0 0 0 0 0 0", 10, "0.8", "18/24 46/50", HIGHEST),
    ("0 0 0 0 0 0 0 0", 10, "0.8", "18/18", HIGHEST),
    ("0 0 0 0 0 0 0 0", 10, "Infinity", "18/24 46/50", HIGHEST),
]


class Case:
    def __init__(self, counts, units, k, shares, level):
        self.y = np.array([float(v) for v in counts.split()])
        self.u = float(units)
        self.shares = [tuple(int(v) for v in s.split("/")) for s in shares.split()]
        self.mean_share = np.prod([(a + 0.5) / (n + 1) for a, n in self.shares])
        self.alpha = 1 - float(level)
        if k:
            self.log_k, self.log_weight = np.array([np.log(float(k))]), np.zeros(1)
        else:
            self.log_k = np.linspace(np.log(0.5) - 26, np.log(0.5) + 26, K_STEPS)
            step = self.log_k[1] - self.log_k[0]
            z = (self.log_k - np.log(0.5)) / 2
            self.log_weight = -z * z / 2 + np.log(step / (2 * np.sqrt(2 * np.pi)))

    def log_likelihood(self, t):
        """Summed over k, without constants."""
        n, total = self.y.size, self.y.sum()
        out = np.empty(t.size)
        k = np.exp(self.log_k)
        if np.isinf(k[0]):
            return total * t - n * self.u * np.exp(t)
        clumping = sum(gammaln(k + y) - gammaln(k) - y * np.log(k) for y in self.y)
        for start in range(0, t.size, 1000):
            part = t[start : start + 1000]
            z = np.log1p(self.u * np.exp(part)[:, None] / k[None, :])
            values = total * part[:, None] - (n * k + total)[None, :] * z
            out[start : start + 1000] = logsumexp(values + clumping + self.log_weight, axis=1)
        return out


def beta_grid(found, known, tilt):
    """ln q and ln weights of Beta(found + 1/2, known - found + 1/2) times q^tilt."""
    a, b = found + 0.5, known - found + 0.5
    x = np.linspace(-110 / a - 5, 110 / b + 5, 6_001)
    log_q, log_r = -np.logaddexp(0, -x), -np.logaddexp(0, x)
    w = (a + tilt) * log_q + b * log_r - betaln(a, b) + np.log(x[1] - x[0])
    keep = w > w.max() - 90
    return log_q[keep], w[keep]


def averaged(t, log_f, found, known, tilt):
    """ln of the average of f(t + ln q); f falls like its first steps before the grid starts."""
    log_q, w = beta_grid(found, known, tilt)
    spline = CubicSpline(t, log_f)
    out = np.empty(t.size)
    for i, at in enumerate(t):
        place = at + log_q
        inside = place >= t[0]
        out[i] = logsumexp(w[inside] + spline(place[inside])) if inside.any() else -np.inf
    return out


def shared(case, t, log_f, tilt):
    for found, known in case.shares:
        log_f = averaged(t, log_f, found, known, tilt)
        keep = np.isfinite(log_f)
        t, log_f = t[keep], log_f[keep]
    return t, log_f


def integrated(case):
    total, exposure = case.y.sum(), case.u * case.y.size
    end = np.log(50 * (total + 1) / (exposure * case.mean_share))
    width = 75 if total < 10 else 45 if total < 100 else 25
    t = np.linspace(end - width, end, T_STEPS)
    t, log_f = shared(case, t, case.log_likelihood(t) + 0.25 * t, -0.25)
    f = np.exp(log_f - log_f.max())
    # integrals over one step each, of the cubic through its neighbours, at most 1e-12 off
    step = t[1] - t[0]
    parts = step / 24 * (-f[:-3] + 13 * f[1:-2] + 13 * f[2:-1] - f[3:])
    parts = np.concatenate([[step / 2 * (f[0] + f[1])], parts, [step / 2 * (f[-2] + f[-1])]])
    parts = np.maximum(parts, 0)
    wanted = np.log(parts.sum() * case.alpha / 2)
    below = np.log(np.cumsum(parts))
    above = np.log(np.cumsum(parts[::-1])[::-1])
    lower = crossing(t[1:], below, wanted)
    if wanted < above[-1]:  # within the last step before the largest density
        return [lower, t[-1] - np.exp(wanted) / f[-1]]
    return [lower, crossing(-t[:-1][::-1], above[::-1], wanted, -1)]


def crossing(x, rising, wanted, sign=1):
    near = np.searchsorted(rising, wanted)
    window = slice(max(0, near - 8), near + 8)
    return sign * float(CubicSpline(rising[window], x[window])(wanted))


def zero_bound(case):
    exposure = case.u * case.y.size
    farthest = -np.log(exposure * case.mean_share) + 69  # 1e30 individuals in the samples
    t = np.linspace(-np.log(exposure) - 40, farthest + 1, T_STEPS)
    log_f = np.minimum(0, case.log_likelihood(t))
    wanted = np.log(case.alpha)
    if case.shares:
        t, log_f = shared(case, t, log_f, 0)
    keep = log_f < -1e-3
    t, log_f = t[keep], log_f[keep]
    if log_f[t <= farthest].min() > wanted:
        return None
    near = np.searchsorted(-log_f, -wanted)
    window = slice(near - 8, near + 8)
    return float(CubicSpline(-log_f[window], t[window])(-wanted))


def main():
    print("# source: sums on fine grids of the formulas in docs/methods.md, every tail from its own end")
    print("#   (own arithmetic), src/test/reference-scripts/high_levels.py; numpy", np.__version__)
    print("#   scipy", scipy.__version__, "- an empty limit: there is none. tolerance: 1e-6 relative")
    print("counts;units;k;shares;level;lower;upper")
    for cells in CASES:
        case = Case(*cells)
        if case.y.sum() == 0:
            upper = zero_bound(case)
            limits = ["0", "" if upper is None else f"{np.exp(upper):.12g}"]
        else:
            limits = [f"{np.exp(v):.12g}" for v in integrated(case)]
        print(";".join([str(c) for c in cells] + limits))
        sys.stdout.flush()


main()
