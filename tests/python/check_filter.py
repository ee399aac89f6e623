"""Checks the engine's filter (5.2) against general libraries.

    python tests/python/check_filter.py EXPORTER [--series 2000] [--seed 1]

Where c is known and fixed, the filter is linear: its states then agree with the Kalman filter of statsmodels to 1e-9, on random
series with days missing. The one-sided update of "5 or more" agrees with numerical integration by scipy to 1e-8.

What is exact: given the linearised observation y = g x + e, the state given y is Gaussian with its mean linear in y and a
covariance that does not depend on y. So the mean and covariance of the state, given only y >= L, follow exactly from the mean and
variance of y given y >= L. Here they are found by another way, which uses no formula of a truncated Gaussian: the density of
u = g x, times the chance that u + e reaches L, is integrated.

Ends with 1 where anything disagrees.
"""

import argparse
import json
import subprocess
import sys
from itertools import pairwise

import numpy as np
from again import constants as k
from scipy.integrate import dblquad, fixed_quad
from scipy.optimize import minimize_scalar
from scipy.special import log_ndtr
from scipy.stats import norm
from statsmodels.tsa.statespace.kalman_filter import KalmanFilter

LINEAR_WITHIN = 1e-9
INTEGRAL_WITHIN = 1e-8
# Gauss-Legendre nodes for each piece; the integrand is smooth, so that fewer would do.
NODES = 60


def unfold(numbers):
    """b, c, d and the upper half of the covariance, as mean and matrix."""
    p = np.zeros((3, 3))
    p[np.triu_indices(3)] = numbers[3:]
    return np.array(numbers[:3]), p + np.triu(p, 1).T


def apart(ours, theirs):
    """The greatest distance of two states (mean, covariance): of the means relative to their size or to 1, of the covariances
    relative to the SDs that they belong to."""
    (x, p), (y, q) = ours, theirs
    sd = np.sqrt(np.diag(q))
    scale = np.where(np.outer(sd, sd) > 0, np.outer(sd, sd), 1.0)
    return max(float(np.max(np.abs(x - y) / np.maximum(1.0, np.abs(y)))), float(np.max(np.abs(p - q) / scale)))


def check_linear(series):
    """The distance between the engine's states and those of statsmodels; the state there is (b, d)."""
    sets, c = series["sets"], series["slope"]
    model = KalmanFilter(k_endog=1, k_states=2, k_posdef=2)
    n = len(sets)
    reps = np.array([s["reps"] + s["reserve"] for s in sets])
    known = np.array([10 - c * np.log(s["load"]) - k.PHI * s["j"] for s in sets])
    model.bind((reps - known).reshape(n, 1))
    model["design"] = np.array([[c, c]])
    model["obs_cov"] = np.array([(k.S0 + k.S1 * s["reserve"]) ** 2 for s in sets]).reshape(1, 1, n)
    transition, drift = np.zeros((2, 2, n)), np.zeros((2, 2, n))
    for i, s in enumerate(sets):
        # What stands at i leads from set i to the next one; after the last there is none.
        t1, t2 = s["day"], sets[min(i + 1, n - 1)]["day"]
        transition[:, :, i] = np.eye(2)
        if t2 > t1:
            transition[1, 1, i] = 0.0
            early = k.Q0 * k.T_DAYS * (np.exp(-t1 / k.T_DAYS) - np.exp(-t2 / k.T_DAYS))
            drift[:, :, i] = np.diag([k.Q_INF * (t2 - t1) + early, k.SIGMA_D**2])
    model["transition"], model["state_cov"], model["selection"] = transition, drift, np.eye(2)
    b = np.log(series["load"]) + (series["bottom"] + series["target"] + k.START_MARGIN - 10) / c
    model.initialize_known(np.array([b, 0.0]), np.diag([k.SD_B**2, k.SIGMA_D**2]))
    # It must not take the covariance for settled, since the gaps are not alike.
    model.tolerance = 0
    told = model.filter()
    worst = 0.0
    for i, s in enumerate(sets):
        mean, p = np.zeros(3), np.zeros((3, 3))
        mean[[0, 2]], mean[1] = told.filtered_state[:, i], c
        p[np.ix_([0, 2], [0, 2])] = told.filtered_state_cov[:, :, i]
        worst = max(worst, apart(unfold(s["after"]), (mean, p)))
    return worst


def moments(mean, sd, noise, least):
    """Mean and variance of u ~ N(mean, sd^2) given u + e >= least, e ~ N(0, noise^2), by integration over u."""

    def log_weight(z):
        return -z * z / 2 + log_ndtr((mean + sd * z - least) / noise)

    # The weight has one peak, and falls off like a step of this width where u passes the bound. The integral is taken piece by
    # piece between those places, and cut where nothing is left.
    step, width = (least - mean) / sd, noise / sd
    peak = minimize_scalar(lambda z: -log_weight(z), bracket=(-1.0, 1.0)).x
    top = log_weight(peak)

    ends = (peak - 12, peak + 12)
    cuts = sorted({*ends, peak, *np.clip([step + n * width for n in (-12, -4, 0, 4, 12)], *ends)})

    def part(power):
        shifted = lambda z: (z - peak) ** power * np.exp(log_weight(z) - top)
        return sum(fixed_quad(shifted, a, b, n=NODES)[0] for a, b in pairwise(cuts))

    whole, first, second = part(0), part(1), part(2)
    middle = first / whole
    return mean + sd * (peak + middle), sd**2 * (second / whole - middle**2)


def check_one_sided(series):
    """The distance between the engine's update by a bound and the integral, and how many SDs the bound lay above the mean."""
    x, p = unfold(series["before"])
    after, q = unfold(series["after"])
    b, c, d = x
    log_w = np.log(series["load"])
    g = np.array([c, b + d - log_w, c])
    expected = 10 + c * (b + d - log_w) - k.PHI * series["j"]
    noise = k.S0 + k.S1 * series["reserve"]
    along = float(g @ p @ g)
    least = series["reps"] + series["reserve"]
    mean, variance = moments(expected, np.sqrt(along), noise, least)
    # Given u the rest of the state is Gaussian and knows nothing more of the bound.
    slope = p @ g / along
    exact_x = x + slope * (mean - expected)
    exact_p = p - np.outer(slope, slope) * (along - variance)
    worst = apart((after, q), (exact_x, exact_p))
    return worst, (least - expected) / np.sqrt(along + noise**2)


def check_moments():
    """The way above against an integral over two dimensions that uses no regression, at a few places."""
    worst = 0.0
    for mean, sd, noise, least in ((12.0, 3.0, 2.5, 13.0), (9.0, 1.5, 1.0, 15.0), (20.0, 4.0, 2.5, 8.0)):
        weight = lambda e, u: norm.pdf(u, mean, sd) * norm.pdf(e, 0, noise)
        low = lambda u: min(max(least - u, -12 * noise), 12 * noise)

        def part(power, weight=weight, low=low, mean=mean, sd=sd, noise=noise):
            inner = lambda e, u: (u - mean) ** power * weight(e, u)
            return dblquad(inner, mean - 10 * sd, mean + 10 * sd, low, lambda u: 12 * noise, epsabs=1e-12, epsrel=1e-11)[0]

        whole, first, second = part(0), part(1), part(2)
        middle = first / whole
        direct = (mean + middle, second / whole - middle**2)
        here = moments(mean, sd, noise, least)
        worst = max(worst, abs(here[0] - direct[0]) / abs(direct[0]), abs(here[1] - direct[1]) / direct[1])
    return worst


def main():
    asks = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    asks.add_argument("exporter")
    asks.add_argument("--series", type=int, default=2000)
    asks.add_argument("--seed", type=int, default=1)
    asked = asks.parse_args()
    command = [asked.exporter, "--filter", "--seed", str(asked.seed), "--logs", str(asked.series)]
    lines = subprocess.run(command, check=True, capture_output=True, text=True, encoding="utf-8").stdout.splitlines()
    every = [json.loads(line) for line in lines]
    linear = [(check_linear(s), s["number"]) for s in every if s["form"] == "linear"]
    bounds = [(*check_one_sided(s), s["number"]) for s in every if s["form"] == "one_sided"]
    integral = check_moments()
    sets = sum(len(s["sets"]) for s in every if s["form"] == "linear")
    wrong = [f"series {n}: {w:.2e} from statsmodels" for w, n in linear if not w <= LINEAR_WITHIN]
    wrong += [f"series {n}: {w:.2e} from the integral, at z = {z:.2f}" for w, z, n in bounds if not w <= INTEGRAL_WITHIN]
    if not integral <= INTEGRAL_WITHIN:
        wrong.append(f"the integrals over one and two dimensions lie {integral:.2e} apart")
    for line in wrong[:20]:
        print(line)
    far = [z for _, z, _ in bounds]
    print(
        f"filter: {len(linear)} linear series of {sets} sets within {max(w for w, _ in linear):.1e} of statsmodels; "
        f"{len(bounds)} updates by a bound, z from {min(far):.1f} to {max(far):.1f}, within {max(w for w, *_ in bounds):.1e} of "
        f"the integral; {len(wrong)} disagree"
    )
    if len(every) != asked.series or not linear or not bounds or wrong:
        sys.exit(1)


if __name__ == "__main__":
    main()
