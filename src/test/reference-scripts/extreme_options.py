"""Estimates with k, levels and shares at the far ends, in 50-digit arithmetic, no shared code with
the program: the negative binomial log-likelihood as it is defined, Gauss-Legendre sums, bisection.

Checks the arithmetic of the method in docs/methods.md, not the method itself.
Run by hand:  python3 extreme_options.py > ../resources/reference/interval/extreme-options.csv
Needs mpmath.
"""

import sys

import mpmath
from mpmath import mp, mpf

mp.dps = 50
INF = mpf("inf")
NODES = mpmath.calculus.quadrature.GaussLegendre(mp).calc_nodes(4, 200)

CASES = [
    # counts; units of each; k; level; share
    ("3 1 0 12 0 2", "1 1 1 1 1 1", "1e-5", "0.95", "1"),
    ("3 1 0 12 0 2", "1 2 3 1 5 0.5", "1e-5", "0.95", "1"),
    ("3 1 0 12 0 2", "1 2 3 1 5 0.5", "1e-30", "0.95", "1"),
    ("3 1 0 12 0 2", "10 10 10 10 10 10", "1e-300", "0.8", "0.4"),
    ("1 0 0 0 0", "8 8 8 8 8", "5e-324", "0.5", "1"),
    ("250 1 0", "1 1 1", "1e-300", "0.95", "1"),
    ("250 1 0", "1 1 1", "1e-320", "0.95", "1"),
    ("3 1 0 12 0 2", "1 2 3 1 5 0.5", "1.1e6", "0.95", "1"),
    ("3 1 0 12 0 2", "1 2 3 1 5 0.5", "1e9", "0.999999", "1"),
    ("3 1 0 12 0 2", "10 10 10 10 10 10", "1e15", "0.95", "1"),
    ("3 1 0 12 0 2", "10 10 10 10 10 10", "1e300", "0.95", "1"),
    ("1000000000 999999000", "1 1", "1e8", "0.95", "1"),
    ("1000000000 999999000", "1 1", "1e12", "0.95", "1"),
    ("3 1 0 12 0 2", "10 10 10 10 10 10", "0.8", "0.95", "1e-9"),
    ("3 1 0 12 0 2", "10 10 10 10 10 10", "0.8", "0.95", "1e-200"),
    ("3 1 0 12 0 2", "10 10 10 10 10 10", "Inf", "1e-9", "1"),
    ("0 0 0 0", "10 10 10 10", "1e-5", "1e-9", "1"),
    ("0 0 0 0", "10 10 10 10", "1e-300", "1e-305", "1"),
    ("0 0 0 0", "10 5 10 10", "1e7", "0.95", "1"),
    ("0 0 0 0", "10 5 10 10", "1e300", "0.95", "1e-100"),
    ("0 0 0 0", "10 5 10 10", "0.5", "1e-300", "1"),
]


class Case:
    def __init__(self, counts, units, k, level, share):
        self.y = [mpf(v) for v in counts.split()]
        self.u = [mpf(float(v)) for v in units.split()]
        self.k = INF if k == "Inf" else mpf(float(k))
        self.level = mpf(float(level))
        self.share = mpf(float(share))
        self.total = sum(self.y)
        self.end = mpmath.log(50 * (self.total + 1) / sum(self.u))

    def log_likelihood(self, t):
        """All constants included."""
        k, result = self.k, mpf(0)
        for y, u in zip(self.y, self.u):
            m = u * mpmath.exp(t)
            result += y * mpmath.log(m) - mpmath.loggamma(y + 1)
            if k == INF:
                result -= m
            else:
                result += log_rising(k, y)
                result -= (k + y) * mpmath.log1p(m / k)
        return result

    def slope(self, t):
        m = [u * mpmath.exp(t) for u in self.u]
        return sum((y - v) / (1 + v / self.k) for y, v in zip(self.y, m))

    def top(self):
        if len(set(self.u)) == 1 or self.k == INF:
            return mpmath.log(self.total / sum(self.u))
        rates = [y / u for y, u in zip(self.y, self.u)]
        return bisect(lambda t: -self.slope(t), mpf(-60), mpmath.log(max(rates)))

    def standard_error_of_log(self, t):
        m = [u * mpmath.exp(t) for u in self.u]
        return 1 / mpmath.sqrt(sum(v / (1 + v / self.k) for v in m))


def log_rising(k, y):
    """ln of k (k + 1) ... (k + y - 1) / k^y; the difference of log gammas has too few digits far out."""
    if y < 1000:
        return mpmath.fsum(mpmath.log1p(i / k) for i in range(1, int(y)))
    return mpmath.loggamma(k + y) - mpmath.loggamma(k) - y * mpmath.log(k)


def bisect(rising, low, high):
    for _ in range(170):
        middle = (low + high) / 2
        if rising(middle) < 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def gauss(f, a, b):
    half, middle = (b - a) / 2, (a + b) / 2
    return half * sum(w * f(middle + half * x) for x, w in NODES)


def integrated(case):
    top, error = case.top(), case.standard_error_of_log(case.top())
    height = case.log_likelihood(top)
    f = lambda t: mpmath.exp(case.log_likelihood(t) - height + (t - top) / 4)
    step = min(error, mpf(1))
    edges = [top]
    while edges[0] > top - 60 * error and f(edges[0]) > mpf(10) ** -35:
        edges.insert(0, edges[0] - step)
    while edges[-1] < case.end and f(edges[-1]) > mpf(10) ** -35:
        edges.append(min(case.end, edges[-1] + step))
    mass = [gauss(f, a, b) for a, b in zip(edges, edges[1:])]
    tail = (1 - case.level) / 2
    lower = quantile(f, edges, mass, tail * sum(mass))
    upper = quantile(f, edges, mass, (1 - tail) * sum(mass))
    return min(lower, top), max(upper, top)


def quantile(f, edges, mass, target):
    for (a, b), m in zip(zip(edges, edges[1:]), mass):
        if target <= m:
            low, high = a, b
            for _ in range(55):
                middle = (low + high) / 2
                if gauss(f, a, middle) < target:
                    low = middle
                else:
                    high = middle
            return low
        target -= m
    return edges[-1]


def profile(case):
    """Within half a chi-squared quantile of the top; an end 60 above the top is none."""
    top = case.top()
    height = case.log_likelihood(top)
    cut = mpmath.erfinv(case.level) ** 2
    fall = lambda t: height - case.log_likelihood(t) - cut
    lower = bisect(lambda t: -fall(t), top - 900, top)
    upper = bisect(fall, top, top + 60) if fall(top + 60) > 0 else None
    return lower, upper


def zero_bound(case):
    """Density at which finding nothing has the chance 1 - level; above 1e30 expected there is none."""
    log_alpha = mpmath.log1p(-case.level)
    if case.k == INF:
        nothing = lambda t: -sum(u * mpmath.exp(t) for u in case.u)
    else:
        nothing = lambda t: -sum(
            case.k * mpmath.log1p(u * mpmath.exp(t) / case.k) for u in case.u
        )
    top = mpmath.log(mpf(10) ** 30 / sum(case.u))
    if nothing(top) > log_alpha:
        return None
    return bisect(lambda t: log_alpha - nothing(t), mpf(-900), top)


def number(log, share=1):
    return "" if log is None else mpmath.nstr(mpmath.exp(log) / share, 13, min_fixed=0, max_fixed=0)


def row(counts, units, k, level, share):
    case = Case(counts, units, k, level, share)
    cells = [counts, units, "Infinity" if k == "Inf" else k, level, share]
    if case.total == 0:
        upper = number(zero_bound(case), case.share)
        return cells + ["0", "", "0", "0", upper, "0", upper]
    top = case.top()
    estimate = mpmath.exp(top) / case.share
    error = estimate * case.standard_error_of_log(top)
    limits = [number(t, case.share) for t in integrated(case) + profile(case)]
    return cells + [
        mpmath.nstr(estimate, 13, min_fixed=0, max_fixed=0),
        mpmath.nstr(error, 13, min_fixed=0, max_fixed=0),
        mpmath.nstr(case.log_likelihood(top), 13),
    ] + limits


def main():
    print("# source: 50-digit arithmetic of the formulas in docs/methods.md (own arithmetic),")
    print("#   src/test/reference-scripts/extreme_options.py; mpmath", mpmath.__version__)
    print("# an empty limit: there is none. tolerance: 1e-6 relative")
    print(
        "counts;units;k;level;share;estimate;standard_error;log_likelihood;lower;upper;"
        "profile_lower;profile_upper"
    )
    for case in CASES:
        print(";".join(row(*case)))
        sys.stdout.flush()


if __name__ == "__main__":
    main()
