"""Quantiles at levels next to 1 and to 0, in high-precision arithmetic: bisection on the logarithm.

Run by hand:  python3 quantiles.py > ../resources/reference/quantiles/high-precision.csv
Needs mpmath.
"""

import mpmath
from mpmath import mp, mpf

mp.dps = 60
LEVELS = ["5e-324", "1e-300", "1e-9", "0.5", "0.95", "0.999999", "0.9999999", "0.999999999999",
          "0.9999999999999998", "0.9999999999999999"]
TAILS = ["5.551115123125783e-17", "1e-12", "0.025", "0.5"]


def solve(rising, wanted, low, high):
    wanted = mpmath.log(wanted)
    for _ in range(170):
        middle = (low + high) / 2
        if mpmath.log(rising(middle)) < wanted:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def student(level, degrees):
    n = mpf(degrees)
    if level < mpf("1e-8"):  # the density at 0; the next term is smaller by the square of t
        peak = mpmath.gamma((n + 1) / 2) / (mpmath.sqrt(n * mpmath.pi) * mpmath.gamma(n / 2))
        return level / (2 * peak)
    inside = lambda x: mpmath.betainc(n / 2, mpf(1) / 2, 0, 1 / (1 + mpmath.exp(-x)), True)
    logit = solve(inside, 1 - level, mpf(-200), mpf(60))
    return mpmath.sqrt(n * mpmath.exp(-logit))


def beta(tail, a, b):
    f = lambda x: mpmath.betainc(a, b, 0, 1 / (1 + mpmath.exp(-x)), True)
    return 1 / (1 + mpmath.exp(-solve(f, tail, mpf(-200), mpf(60))))


def gamma(tail, shape):
    f = lambda x: mpmath.gammainc(shape, 0, mpmath.exp(x), True)
    return mpmath.exp(solve(f, tail, mpf(-200), mpf(12)))


def gamma_above(tail, shape):
    f = lambda x: mpmath.gammainc(shape, mpmath.exp(-x), mpmath.inf, True)
    return mpmath.exp(-solve(f, tail, mpf(-9), mpf(30)))


def write(name, probability, value, a="", b=""):
    print(f"{name},{probability},{a},{b},{mpmath.nstr(value, 15, min_fixed=0, max_fixed=0)}")


def main():
    print("# source: high-precision arithmetic, 60 digits, src/test/reference-scripts/quantiles.py;")
    print("#   mpmath", mpmath.__version__, "- probabilities are the doubles nearest to what is printed")
    print("# tolerance: 1e-11 relative")
    print("distribution,probability,a,b,value")
    for level in LEVELS:
        write("normal", level, mpmath.sqrt(2) * mpmath.erfinv(mpf(float(level))))
        for degrees in (1, 4, 30):
            write("student", level, student(mpf(float(level)), degrees), degrees)
    for tail in TAILS:
        p = mpf(float(tail))
        for a, b in (("0.5", "18.5"), ("1", "12"), ("18.5", "6.5"), ("300", "2")):
            write("beta", tail, beta(p, mpf(a), mpf(b)), a, b)
        for shape in ("1", "5", "400"):
            write("gamma", tail, gamma(p, mpf(shape)), shape)
            write("gammaAbove", tail, gamma_above(p, mpf(shape)), shape)


main()
