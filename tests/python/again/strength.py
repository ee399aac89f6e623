"""Strength as a state that is tracked (5.2): per client and group b, c and d with their covariance.

b: ln of the ten-rep-max effective load in kg. c: reps per unit of ln load. d: how today differs from usual, in ln load.
"""

import math

import numpy as np

from . import constants as k


class State:
    """The state of a group, its covariance, and the day its count of days began."""

    def __init__(self, b, c, day):
        self.x = np.array([b, c, 0.0])
        self.p = np.diag([k.SD_B**2, k.SD_C**2, k.SIGMA_D**2])
        self.first_day = day
        self.day = day

    def copy(self):
        other = State.__new__(State)
        other.x, other.p = self.x.copy(), self.p.copy()
        other.first_day, other.day = self.first_day, self.day
        return other

    def at(self, day):
        """The state as it is expected on a later day, of which nothing is known yet."""
        later = self.copy()
        if day > self.day:
            t1 = (self.day - self.first_day).days
            t2 = (day - self.first_day).days
            later.p[0, 0] += k.Q_INF * (t2 - t1)
            later.p[0, 0] += k.Q0 * k.T_DAYS * (math.exp(-t1 / k.T_DAYS) - math.exp(-t2 / k.T_DAYS))
            later.p[1, 1] += k.Q_C * (t2 - t1)
            later.x[2] = 0.0
            later.p[2, :] = 0.0
            later.p[:, 2] = 0.0
            later.p[2, 2] = k.SIGMA_D**2
            later.day = day
        return later


def begin(mean_c, load_kg, bottom, target, day):
    """A state before its first set: c from its group's mean, b so that the start load W comes out right."""
    b = math.log(load_kg) + (bottom + target + k.START_MARGIN - 10) / mean_c
    return State(b, mean_c, day)


def gradient(state, load_kg):
    """Of reps to failure, by b, c and d."""
    b, c, d = state.x
    return np.array([c, b + d - math.log(load_kg), c])


def reps_to_failure(state, load_kg, earlier):
    """Mean reps to failure at an effective load, after so many earlier sets of the group today."""
    b, c, d = state.x
    return 10 + c * (b + d - math.log(load_kg)) - k.PHI * earlier


def reserve(state, load_kg, reps, earlier):
    """Mean and variance of the reps in reserve after so many reps (5.3)."""
    g = gradient(state, load_kg)
    return reps_to_failure(state, load_kg, earlier) - reps, float(g @ state.p @ g)


def chance_below(state, load_kg, reps, earlier, floor):
    """P(reps in reserve < floor)."""
    mean, variance = reserve(state, load_kg, reps, earlier)
    return 0.5 * math.erfc((mean - floor) / math.sqrt(2 * variance))


def hazard(z):
    """phi(z) / (1 - Phi(z)), by a continued fraction far out, where both are too small for a quotient."""
    if z < 5:
        return math.exp(-z * z / 2) / k.SQRT_2PI / (0.5 * math.erfc(z / math.sqrt(2)))
    tail = z
    for n in range(200, 0, -1):
        tail = z + n / tail
    return tail


def update(state, load_kg, earlier, reps, said, open_ended):
    """A working set of effective load W, reps r and reserve f, the j-th of its group today; "5+" is a bound from below."""
    g = gradient(state, load_kg)
    noise = (k.S0 + k.S1 * said) ** 2
    spread = float(g @ state.p @ g) + noise
    gain = state.p @ g / spread
    mean = reps_to_failure(state, load_kg, earlier)
    new = state.copy()
    if open_ended:
        # The observation is a Gaussian of which only the part at or above r + 5 is left; its mean and variance are matched.
        z = (reps + said - mean) / math.sqrt(spread)
        h = hazard(z)
        left = 1 - h * (h - z)
        new.x = state.x + gain * (h * math.sqrt(spread))
        new.p = state.p - np.outer(gain, gain) * (spread * (1 - left))
    else:
        new.x = state.x + gain * (reps + said - mean)
        keep = np.eye(3) - np.outer(gain, g)
        new.p = keep @ state.p @ keep.T + np.outer(gain, gain) * noise
    keep_slope(new)
    return new


def keep_slope(state):
    """c stays in its band; what it gives up is handed on to b and d by their covariance with it."""
    kept = min(max(state.x[1], k.C_MIN), k.C_MAX)
    state.x += state.p[:, 1] / state.p[1, 1] * (kept - state.x[1])
    state.x[1] = kept
