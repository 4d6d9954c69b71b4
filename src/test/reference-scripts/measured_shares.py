"""Integrated intervals of Poisson counts with measured shares, by brute force; no shared code with
the program. The counted density is gamma distributed, each share Beta; weight density^(-3/4).

Checks the arithmetic of the method in docs/methods.md, not the method itself.
Run by hand:  python3 measured_shares.py > ../resources/reference/interval/measured-shares.csv
Needs numpy and scipy.
"""

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.special import betainc, betaln, gammaincinv

CASES = [
    ("3 1 0 12 0 2", "18/24"),
    ("3 1 0 12 0 2", "1/1 18/24"),
    ("1000000 1000001 999999", "18/24"),
    ("1000000 1000001 999999", "24/24"),
    ("1000000 1000001 999999", "0/1"),
    ("1000000 1000001 999999", "18/24 46/50"),
    ("1000000 1000001 999999", "24/24 50/50"),
    ("1000000 1000001 999999", "999999/1000000 18/24"),
    ("1000000000 1000000000 999999999", "18/24"),
    ("1000000000 1000000000 999999999", "18/24 46/50"),
    ("1000000000 1000000000 999999999", "24/24 46/50"),
    ("1000000000 1000000000 999999999", "999999999/999999999"),
]
LEVEL = 0.95


def shapes(share):
    """Found and missed; the weight density^(-3/4) takes a quarter from the first."""
    found, known = (int(v) for v in share.split("/"))
    return found + 0.25, known - found + 0.5


def gamma_points(shape, number):
    """Midpoints of equally likely slices, denser in the tails than it needs to be."""
    z = np.linspace(-8, 8, number)
    weight = np.exp(-z * z / 2)
    weight /= weight.sum()
    p = scipy.special.ndtr(z)
    return gammaincinv(shape, p), weight


class Case:
    def __init__(self, counts, shares):
        y = [int(v) for v in counts.split()]
        self.total, self.exposure = sum(y), len(y)
        self.shapes = [shapes(s) for s in shares.split()]
        mean = np.prod([(int(s.split("/")[0]) + 0.5) / (int(s.split("/")[1]) + 1) for s in shares.split()])
        self.largest = 50 * (self.total + 1) / (self.exposure * mean)
        few = 81 if len(self.shapes) == 2 else 2_000
        counted, self.weight = gamma_points(self.total + 0.25, few)
        self.counted = counted / self.exposure

    def below(self, density):
        """P(counted / (e s) <= density): the last share's distribution is summed exactly."""
        a, b = self.shapes[-1]
        if len(self.shapes) == 1:
            share = np.minimum(1, self.counted / density)
            return np.sum(self.weight * betainc(b, a, 1 - share))
        parts = [self.both(x / density) for x in self.counted]
        return np.sum(self.weight * np.array(parts))

    def both(self, least):
        """P(e s >= least), by adaptive quadrature over e = 1 - u^2, smooth also where e nears 1."""
        if least >= 1:
            return 0
        (a, b), (c, d) = self.shapes
        f = lambda u: 2 * (1 - u * u) ** (a - 1) * u ** (2 * b - 1) * betainc(d, c, 1 - least / (1 - u * u))
        end = np.sqrt(1 - least)
        middle = np.sqrt(b / (a + b))
        points = [middle] if middle < end else None
        return quad(f, 0, end, points=points, epsabs=1e-12, epsrel=1e-11, limit=500)[0] / np.exp(betaln(a, b))

    def quantile(self, p):
        all_of_it = self.below(self.largest)
        start = self.counted[0] / 2
        f = lambda t: self.below(np.exp(t)) / all_of_it - p
        return np.exp(brentq(f, np.log(start), np.log(self.largest), xtol=1e-12))


def main():
    print("# source: brute-force sums over the counted density and the shares (own arithmetic),")
    print("#   src/test/reference-scripts/measured_shares.py; scipy", scipy.__version__)
    print("# one unit a jar, k infinite, level 0.95. tolerance: 1e-6 relative")
    print("counts;shares;lower;upper")
    for counts, shares in CASES:
        case = Case(counts, shares)
        tail = (1 - LEVEL) / 2
        print(f"{counts};{shares};{case.quantile(tail):.12g};{case.quantile(1 - tail):.12g}", flush=True)


if __name__ == "__main__":
    main()
