"""What Stirling's formula leaves out, Loader's deviance, and the negative binomial near Poisson, in
60-digit arithmetic; no shared code with the program.

Checks the arithmetic, not the formulas.
Run by hand:  python3 numeric_parts.py ../resources/reference/negative-binomial
Needs mpmath.
"""

import sys
from pathlib import Path

import mpmath
from mpmath import mp, mpf

mp.dps = 60
SOURCE = f"# source: high-precision arithmetic, 60 digits (mpmath {mpmath.__version__}), numeric_parts.py\n"


def said(x):
    return mp.nstr(x, 25, strip_zeros=False)


def stirling_error(z):
    return mp.loggamma(z) - (z - mpf(1) / 2) * mp.log(z) + z - mp.log(2 * mp.pi) / 2


def deviance(x, mean):
    return x * mp.log(x / mean) + mean - x


def log_probability(mean, k, y):
    if mp.isinf(k):
        return y * mp.log(mean) - mean - mp.loggamma(y + 1)
    return (mp.loggamma(k + y) - mp.loggamma(k) - mp.loggamma(y + 1)
            + k * mp.log(k / (k + mean)) + y * mp.log(mean / (k + mean)))


def upper_tail(mean, k, y):
    total, j = mpf(0), y + 1
    while True:
        term = mp.exp(log_probability(mean, k, mpf(j)))
        total += term
        if j > mean and term < total * mpf(10) ** -45:
            return total
        j += 1


folder = Path(sys.argv[1])
with open(folder / "stirling.csv", "w") as out:
    out.write(SOURCE + "# tolerance: 1e-13 relative\nz,error\n")
    for z in ["1e-8", "0.01", "0.5", "0.99", "1", "1.5", "3", "7.25", "15", "15.999", "16", "17.5", "20",
              "30", "100", "12345.6", "1e9"]:
        out.write(f"{z},{said(stirling_error(mpf(float(z))))}\n")
with open(folder / "deviance.csv", "w") as out:
    out.write(SOURCE + "# tolerance: 1e-13 relative\nx,mean,deviance\n")
    for x, mean in [("1", "1000"), ("100", "100.5"), ("100", "81"), ("100", "82"), ("100", "123"),
                    ("1000000", "1000001"), ("0.25", "0.3"), ("7", "7.000000001"), ("5", "5"), ("3", "1")]:
        out.write(f"{x},{mean},{said(deviance(mpf(float(x)), mpf(float(mean))))}\n")
with open(folder / "near-poisson.csv", "w") as out:
    out.write(SOURCE + "# tolerance: 1e-11 relative\nmu,k,x,log_pmf,pmf,cdf,sf\n")
    for mean, k in [("3", "Infinity"), ("100", "Infinity"), ("100", "20000"), ("100", "1e8"), ("2.5", "10001")]:
        m, d = mpf(float(mean)), mpf("inf") if k == "Infinity" else mpf(float(k))
        for y in [0, 1, 2, 5, 9] if m < 10 else [60, 85, 100, 120, 140]:
            log_p, above = log_probability(m, d, mpf(y)), upper_tail(m, d, y)
            out.write(f"{mean},{k},{y},{said(log_p)},{said(mp.exp(log_p))},{said(1 - above)},{said(above)}\n")
